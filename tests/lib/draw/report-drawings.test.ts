import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dimensionLine } from "#lib/draw/dimension.ts";
import type { Drawing, Mark, Outline } from "#lib/draw/drawing.ts";
import { wordsBox } from "#lib/draw/extent.ts";
import { collide, paperSize } from "#lib/draw/lettering.ts";
import { clearancesAtPose } from "#lib/draw/pose-clearance.ts";
import { dimensionsOn, posedDrawing } from "#lib/draw/report-drawings.ts";
import { SCALES } from "#lib/draw/sheet.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { SHEET } from "#lib/draw/title-strip.ts";
import { TYPICAL_MOTOR, TYPICAL_STERN } from "#lib/draw/typical.ts";
import { viewsOf } from "#lib/draw/views-of.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import { drawn, INVENTED } from "#tests/lib/draw/invented-pairs.ts";

const all = (drawings: object): Drawing[] => Object.values(drawings) as Drawing[];
const outlines = (drawing: Drawing, of: string): Outline[] =>
  drawing.marks.filter((mark): mark is Outline => mark.mark === "outline" && mark.of === of);
const span = (points: readonly (readonly number[])[], axis: 0 | 1): number =>
  Math.max(...points.map((p) => p[axis]!)) - Math.min(...points.map((p) => p[axis]!));
const dimension = (drawing: Drawing, of: string) => {
  const found = drawing.marks.find((mark: Mark) => mark.mark === "dimension" && mark.of === of);
  if (found?.mark !== "dimension") throw new Error(`no dimension of ${of}`);
  return found;
};

describe.each(Object.entries(INVENTED))("drawings of %s", (_name, [motor, stern, lengths]) => {
  const { report, drawings, pairing } = drawn(motor, stern, lengths);

  test("all three are to one scale of ISO 5455, and the strip says which", () => {
    const scales = new Set(all(drawings).map(({ scale }) => scale));
    expect(scales.size).toBe(1);
    const [scale] = scales;
    expect(SCALES).toContain(scale);
    for (const drawing of all(drawings)) expect(toSvg(drawing)).toContain(`SCALE 1:${scale}`);
  });

  test("all three sheets are equally broad, so that they stay to one scale on a screen", () => {
    for (const drawing of all(drawings)) expect(paperSize(drawing)[0]).toBeCloseTo(SHEET, 6);
  });

  test("the scale bar is as long as it says", () => {
    for (const drawing of all(drawings)) {
      const bar = span(
        outlines(drawing, "scale bar").flatMap(({ points }) => points),
        0,
      );
      const said = drawing.marks.flatMap((mark) => (mark.mark === "lettering" ? [mark.text] : []));
      const [words] = said.filter((text) => /^[\d.]+ (mm|in)$/.test(text));
      const long = Number.parseFloat(words!) * (words!.endsWith("in") ? 25.4 : 1);
      expect(bar).toBeCloseTo(long, 6);
    }
  });

  test("every clearance of the report but one through the transom stands on exactly one drawing, with the report's own number", () => {
    const on = all(drawings).flatMap(dimensionsOn);
    const drawn = report.clearances.filter(({ throughTransom }) => !throughTransom);
    for (const { mm } of drawn) expect(on.filter((one) => one.mm === mm).length).toBeGreaterThan(0);
    const ends = all(drawings).flatMap(({ marks }) =>
      marks.filter(
        (mark) =>
          mark.mark === "dimension" && / to /.test(mark.of) && mark.along === "along" && mark.figureAt,
      ),
    );
    expect(ends).toHaveLength(drawn.length);
  });

  test("the plate stands as high over the datum as the report says, and is drawn there", () => {
    if (!report.plate || !motor.shaftLengthMm)
      return expect(outlines(drawings.profile, "plate")).toHaveLength(0);
    const plate = dimension(drawings.profile, "plate above the datum");
    expect(plate.mm).toBe(report.plate.aboveDatumMm);
    // Reports are rounded to 0.01 mm.
    expect(Math.abs(plate.to[1] - plate.from[1] - report.plate.aboveDatumMm)).toBeLessThan(0.006);
  });

  test("a dimension line never shows more than its figure, and shows all of it where it lies in the plane", () => {
    for (const drawing of all(drawings)) {
      for (const mark of drawing.marks) {
        if (mark.mark !== "dimension") continue;
        const [a, b] = dimensionLine(mark, drawing.scale);
        const drawnLong = Math.hypot(a[0] - b[0], a[1] - b[1]);
        const clearance = mark.figureAt !== undefined && mark.of !== "plate above the datum";
        if (clearance) expect(drawnLong).toBeLessThanOrEqual(Math.abs(mark.mm) + 0.05);
        else expect(Math.abs(drawnLong - Math.abs(mark.mm))).toBeLessThan(0.006);
      }
    }
  });

  test("no two figures or words run into each other", () => {
    for (const drawing of all(drawings)) {
      const boxes = drawing.marks.flatMap((mark) => wordsBox(mark, drawing.scale) ?? []);
      for (const [i, a] of boxes.entries()) {
        for (const b of boxes.slice(i + 1)) expect(collide(a, b), JSON.stringify([a, b])).toBe(false);
      }
    }
  });

  test("a moved motor is drawn in the same window with the nearest clearance of that pose", () => {
    const pose = { faceAngleDeg: 30, steeringDeg: 12 };
    const [nearest] = clearancesAtPose(pairing.mounting, pose);
    const { profile: view, plan } = viewsOf({ profile: drawings.profile, plan: drawings.plan });
    expect(paperSize(plan)[0]).toBeCloseTo(paperSize(view)[0], 6);
    const posed = posedDrawing(pairing, "profile", pose, nearest, view);
    const above = posedDrawing(pairing, "plan", pose, nearest, plan);
    expect(posed.window).toEqual(view.window);
    expect([posed, above].flatMap(dimensionsOn).map(({ mm }) => mm)).toEqual(nearest ? [nearest.mm] : []);
    expect(toSvg(posed) + toSvg(above)).not.toContain("NaN");
  });
});

test("the silhouette stays inside the measured envelope and fills it from end to end", () => {
  const { drawings } = drawn(TYPICAL_MOTOR, TYPICAL_STERN);
  for (const [part, of] of [
    ["cowl", "cowl"],
    ["midsection", "leg"],
  ] as const) {
    for (const drawing of [drawings.profile, drawings.elevation]) {
      const [envelope] = outlines(drawing, `envelope ${part}`);
      const body = outlines(drawing, of).at(-1)!;
      for (const axis of [0, 1] as const) {
        const [inner, outer] = [span(body.points, axis), span(envelope!.points, axis)];
        expect(inner).toBeLessThanOrEqual(outer + 1e-6);
        expect(inner).toBeGreaterThan(0.9 * outer);
      }
    }
  }
});

test("forward is to the left: the well's bulkhead stands left of the transom, the propeller right of it", () => {
  const { profile } = drawn(TYPICAL_MOTOR, TYPICAL_STERN).drawings;
  const middle = (of: string) =>
    outlines(profile, of)
      .at(-1)!
      .points.reduce((sum, p) => sum + p[0], 0) / outlines(profile, of).at(-1)!.points.length;
  expect(middle("bulkhead")).toBeLessThan(middle("transom"));
  expect(middle("propeller")).toBeGreaterThan(middle("transom"));
});

test("port is to the left from aft: a tiller set off to port shows left of the centreline", () => {
  const { elevation } = drawn(TYPICAL_MOTOR, TYPICAL_STERN).drawings;
  const [grip] = outlines(elevation, "envelope tiller");
  // The offset is 45 mm to port, the tiller 62 mm thick: 76 mm to port and 14 mm to port.
  expect(Math.min(...grip!.points.map((p) => p[0]))).toBeCloseTo(-76, 6);
  expect(Math.max(...grip!.points.map((p) => p[0]))).toBeCloseTo(-14, 6);
});

test("an overlap is hatched and called a foul; where nothing overlaps there is neither", () => {
  const tight = drawn(TYPICAL_MOTOR, TYPICAL_STERN);
  const roomy = drawn(...(INVENTED["clear-in-a-roomy-well"] as readonly [MotorValues, SternValues, "mm"]));
  const fouls = (drawings: object) =>
    all(drawings).flatMap(({ marks }) =>
      marks.filter(({ mark, ...rest }) => "of" in rest && rest.of.startsWith("foul ")),
    );
  expect(tight.report.clearances.some(({ mm }) => mm < 0)).toBe(true);
  expect(roomy.report.clearances.every(({ mm }) => mm > 0)).toBe(true);
  expect(fouls(tight.drawings).length).toBeGreaterThan(0);
  expect(
    all(tight.drawings)
      .map((drawing) => toSvg(drawing))
      .join(""),
  ).toContain("FOULS");
  expect(fouls(roomy.drawings)).toHaveLength(0);
});

test("a drawing of any subset of the numbers exists: nothing in it is not a number", () => {
  const motorKeys = Object.keys(TYPICAL_MOTOR) as (keyof typeof TYPICAL_MOTOR)[];
  const sternKeys = Object.keys(TYPICAL_STERN) as (keyof typeof TYPICAL_STERN)[];
  const without = <T extends object>(values: T, left: readonly (keyof T)[]): Partial<T> =>
    Object.fromEntries(
      Object.entries(values).filter(([key]) => !left.includes(key as keyof T)),
    ) as Partial<T>;
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.constantFrom(...motorKeys), { maxLength: 12 }),
      fc.uniqueArray(fc.constantFrom(...sternKeys), { maxLength: 10 }),
      (m, s) => {
        const { drawings } = drawn(
          without(TYPICAL_MOTOR, m) as MotorValues,
          without(TYPICAL_STERN, s) as SternValues,
        );
        for (const drawing of all(drawings)) {
          const svg = toSvg(drawing);
          expect(svg).not.toMatch(/NaN|Infinity|undefined/);
          expect(svg).toContain("<title");
        }
      },
    ),
    { numRuns: 60 },
  );
});
