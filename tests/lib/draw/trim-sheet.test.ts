/** The boat drawn on the water, and two motors from above: every length that stands on them is the report's. */
import { expect, test } from "vitest";
import { dimensionsOn } from "#lib/draw/report-drawings.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { trimSheet } from "#lib/draw/trim-sheet.ts";
import { twoPlan } from "#lib/draw/two-plan.ts";
import { assess } from "#lib/fit/assess.ts";
import { assessTwo } from "#lib/fit/two-motors.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import { motorOf, sternOf } from "#tests/lib/data/demo.ts";

const motor = motorOf("15-hp-long-tiller-four-stroke");
const stern = sternOf("vee-runabout-long-well");

test("seat and well's front stand over the water as the report says, before and after", () => {
  const found = assess(motor, stern).afloat.find(({ id }) => id === "freeboard")!;
  const drawing = trimSheet({ stern: sternValues(stern), ...found.trim!, lengths: "mm" })!;
  const drawn = new Map(dimensionsOn(drawing).map(({ of, mm }) => [of, mm]));
  const told = (label: string) => found.figures.find((one) => one.label === label)!.value;
  expect(drawn.get("seat above the water, before")).toBeCloseTo(
    told("Seat above the water, without the motor and the load"),
    1,
  );
  expect(drawn.get("seat above the water, all aboard")).toBeCloseTo(
    told("Seat above the water, all aboard"),
    1,
  );
  expect(drawing.marks.some((mark) => mark.mark === "arc" && mark.of === "motor")).toBe(true);
  expect(toSvg(drawing)).toContain("ALL ABOARD");
});

test("nothing is drawn of a stern without a seat", () => {
  const level = { atTransomMm: 100, bowUpDeg: 0 };
  expect(
    trimSheet({ stern: { rakeDeg: 10 }, before: level, after: level, masses: [], lengths: "mm" }),
  ).toBeUndefined();
});

test("the plan of two has the distance between their middles, and both in full line", () => {
  const second = motorOf("6-hp-long-tiller-four-stroke");
  const found = assessTwo([motor, second], stern, { offsetsMm: [200, -450] });
  const drawing = twoPlan({
    motors: [motorValues(motor), motorValues(second)],
    berths: found.motors,
    between: found.between,
    stern: sternValues(stern),
    lengths: "mm",
  })!;
  expect(dimensionsOn(drawing)).toContainEqual({
    of: "between the motors' middles",
    mm: 650,
    clearance: false,
  });
  const cowls = drawing.marks.filter(
    (mark) => mark.mark === "outline" && mark.of === "cowl" && mark.line === "visible",
  );
  expect(cowls.length).toBe(2);
  // Port is at the foot: the first, 200 to port, lies lower on the sheet than the second.
  const height = (mark: (typeof cowls)[number]) =>
    mark.mark === "outline" ? mark.points.reduce((sum, [, y]) => sum + y / mark.points.length, 0) : 0;
  expect(height(cowls[0]!)).toBeLessThan(height(cowls[1]!));
});
