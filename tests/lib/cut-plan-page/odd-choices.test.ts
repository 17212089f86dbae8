/** Choices no builder would make, and some only a slip of the pen makes: all are drawn, or refused in plain words. */
import { describe, expect, test } from "vitest";
import { planOf } from "#app/_parts/cut-plan/plan-of.ts";
import motors from "#data/demo/motors.json" with { type: "json" };
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { bareSheet } from "#lib/draw/bare-sheet.ts";
import { onScreen } from "#lib/draw/on-screen.ts";
import { allPages, templatesOf, viewsOfPlan } from "#lib/draw/paper/plan-pages.ts";
import { sheetSvg } from "#lib/draw/paper/svg.ts";
import { stockView } from "#lib/draw/stock-view.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { type CutChoicesSent, cutChoicesSchema } from "#lib/entry/cut-choices.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { between, screwPositions } from "#lib/fit/cut-plan/fasteners.ts";

const stern = sternSchema.parse(sterns.find(({ id }) => id === "vee-new-build-well-planned"));
const motor = (id: string) => motorSchema.parse(motors.find((each) => each.id === id));
const LONG = motor("15-hp-long-tiller-four-stroke");
const STAMP = {
  record: "A stern",
  identification: "a",
  owner: "",
  creator: "",
  approval: "",
  issued: "2026-01-31",
  version: "1",
};

function planned(choices: CutChoicesSent, hung = LONG) {
  const made = planOf([hung], stern, cutChoicesSchema.parse(choices));
  if (!("plan" in made)) throw new Error(made.impossible);
  return made.plan;
}

describe("a plan from odd choices is drawn on screen and on paper", () => {
  const odd: [string, CutChoicesSent][] = [
    [
      "a well hardly wider than its cleats",
      { wellWidthAftMm: 100, cleatThicknessMm: 100, filletRadiusMm: 60 },
    ],
    ["sides that flare nearly flat", { sideFlareDeg: 57.5, cleatThicknessMm: 48.3, cleatDepthMm: 147 }],
    ["a sheet smaller than any part", { sheetLongMm: 300, sheetWideMm: 200, boardLongMm: 300 }],
    ["marks in inches on metric stock", { lengths: "in", soleThicknessMm: 9, sheetLongMm: 3050 }],
  ];
  test.each(odd)("%s", (_, choices) => {
    const plan = planned(choices);
    expect(plan.well).toBeDefined();
    // The writer throws where a coordinate is not a finite number.
    for (const view of viewsOfPlan(plan)) toSvg(bareSheet(onScreen(view), plan.lengths));
    for (const sheet of allPages(plan, "letter", STAMP)) sheetSvg(sheet);
    const { stock } = plan.well!;
    if (stock.sheets.length + stock.boards.length > 0) toSvg(bareSheet(stockView(plan.well!, "mm"), "mm"));
  });
});

test("a seat far above the transom is refused; one a riser can lift is built up, and nothing is sawn or drawn", () => {
  expect(planOf([LONG], stern, { seatMm: 900 })).toEqual({
    impossible:
      "The seat (900 mm) lies more than 150 mm above the top of the transom (640 mm); no riser lifts it so far.",
  });
  const plan = planned({ seatMm: 700, well: "leave" });
  expect([plan.raiseMm, plan.notch?.action]).toEqual([60, "none"]);
  expect([viewsOfPlan(plan), templatesOf(plan)]).toEqual([[], []]);
  expect(plan.checklist.map(({ id }) => id)).not.toContain("saw-notch");
});

test("the parts of the stock drawing lie inside their sheets and boards, as large as they are", () => {
  const plan = planned({});
  const well = plan.well!;
  const { things } = stockView(well, "mm");
  const reach = (of: string) =>
    things.flatMap((mark) => {
      if (mark.mark !== "outline" || mark.of !== of) return [];
      const [xs, ys] = [mark.points.map(([x]) => x), mark.points.map(([, y]) => y)];
      return [{ left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) }];
    });
  const held = [...reach("sheet"), ...reach("board")];
  for (const { id, outline } of well.parts) {
    const [part] = reach(id);
    expect(part, id).toBeDefined();
    const inside = held.some(
      ({ left, right, low, high }) =>
        part!.left >= left - 0.01 &&
        part!.right <= right + 0.01 &&
        part!.low >= low - 0.01 &&
        part!.high <= high + 0.01,
    );
    expect(inside, id).toBe(true);
    const long = Math.max(...outline.map(([x]) => x)) - Math.min(...outline.map(([x]) => x));
    expect(Math.max(part!.right - part!.left, part!.high - part!.low), id).toBeGreaterThanOrEqual(
      long - 0.01,
    );
  }
});

test("two rows of screws in one cleat stand apart by half their spacing (common practice, no source)", () => {
  const row = screwPositions(1000, 100, 25);
  const second = between(row);
  const apart = Math.min(...row.flatMap((a) => second.map((b) => Math.abs(a - b))));
  expect(apart).toBeCloseTo((row[1]! - row[0]!) / 2, 6);
  const { fasteners } = planned({}).well!;
  const [down, through] = fasteners.filter(({ id }) => id.startsWith("aft-cleat"));
  expect(down!.positionsMm.filter((at) => through!.positionsMm.includes(at))).toEqual([]);
});
