/** Units against their definitions, and angles against a protractor. */
import { describe, expect, test } from "vitest";
import { atan2, cos, sin, tan } from "#lib/quantity/angle.ts";
import { inches, MM_PER_FOOT, MM_PER_INCH } from "#lib/quantity/length.ts";
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { WATTS_PER_HORSEPOWER, WATTS_PER_METRIC_HORSEPOWER } from "#lib/quantity/power.ts";
import { combined, conformance, defaultHalfWidth, propagated, tapeError } from "#lib/quantity/uncertainty.ts";

describe("Units", () => {
  test("inch and foot (international yard and pound agreement, 1959)", () => {
    expect([MM_PER_INCH, MM_PER_FOOT, inches(20)]).toEqual([25.4, 304.8, 508]);
  });

  test("pound (the same agreement), horsepowers (NIST SP 811, appendix B.8)", () => {
    expect(KG_PER_POUND).toBe(0.45359237);
    expect(WATTS_PER_HORSEPOWER).toBeCloseTo(745.6999, 4);
    expect(WATTS_PER_METRIC_HORSEPOWER).toBeCloseTo(735.49875, 9);
  });

  test("angles are degrees", () => {
    expect([sin(30), cos(60), tan(45), atan2(1, 1), atan2(0, -1)].map((x) => Number(x.toFixed(12)))).toEqual([
      0.5, 0.5, 1, 45, 180,
    ]);
  });
});

describe("Half-widths", () => {
  test("the tape's class, its reading and the edge, combined", () => {
    // Class I over 1.5 m: 0.1 + 0.1 x 2 + 0.1 = 0.4; half a half-millimetre 0.25; edge 2: sqrt(0.16 + 0.0625 + 4).
    const fine = { tapeClass: "I", divisionMm: 0.5 } as const;
    expect(tapeError(1500, "I")).toBeCloseTo(0.4, 12);
    expect(defaultHalfWidth(1500, "mm", "measured", fine)).toBeCloseTo(Math.sqrt(4.2225), 9);
    // Below the datum is as long as above it; nought still counts as a metre begun.
    expect(tapeError(-1500, "I")).toBe(tapeError(1500, "I"));
    expect(tapeError(0, "II")).toBeCloseTo(0.7, 12);
  });

  test("masses and powers by their size, counts exact", () => {
    expect(defaultHalfWidth(50, "kg", "measured")).toBeCloseTo(1, 12);
    expect(defaultHalfWidth(40, "kW", "declared")).toBeCloseTo(2, 12);
    expect(defaultHalfWidth(40, "kg", "estimated")).toBeCloseTo(8, 12);
    expect(defaultHalfWidth(4, "count", "estimated")).toBe(0);
  });

  test("a nought spread stays nought", () => {
    expect(combined([])).toBe(0);
    expect(propagated(([a]) => 5 * a!, [{ value: 2, u: 0 }])).toBe(0);
    expect(conformance(1, 0, 0, 2)).toBe(1);
    expect(conformance(3, 0, 0, 2)).toBe(0);
  });
});
