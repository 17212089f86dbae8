/** Figures as people read them. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { figure, inDegrees, inInches, inMillimetres, lengthWriter } from "#lib/quantity/words.ts";

describe("Figures", () => {
  test("a tenth below ten, whole above, no trailing zero", () => {
    expect([0, 0.04, 0.05, 9.94, 9.96, 10.4, 10.6, 508].map(figure)).toEqual([
      "0",
      "0",
      "0.1",
      "9.9",
      "10",
      "10",
      "11",
      "508",
    ]);
  });

  test("a true minus sign, and none before nought", () => {
    expect([-0.04, -0.06, -12.7].map(figure)).toEqual(["0", "\u22120.1", "\u221213"]);
    expect(inMillimetres(-43)).toBe("\u221243 mm");
    expect(inDegrees(-2.5)).toBe("\u22122.5°");
  });

  test("inches to the nearest sixteenth, fractions in lowest terms", () => {
    // 43 mm is 1.69291 in, 27.09 sixteenths: 1 11/16. 508 mm is 20 in. 3.175 mm is 2/16.
    expect([43, 508, 3.175, 12.7, 0, 25.4 / 16].map(inInches)).toEqual([
      "1 11/16 in",
      "20 in",
      "1/8 in",
      "1/2 in",
      "0 in",
      "1/16 in",
    ]);
    expect([-12.7, -0.5].map(inInches)).toEqual(["\u22121/2 in", "0 in"]);
    expect(lengthWriter("in")(25.4)).toBe("1 in");
    expect(lengthWriter("mm")(25.4)).toBe("25 mm");
  });

  test("what is read is never more than half a sixteenth from what is meant", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 15_000, noNaN: true }), (mm) => {
        const [whole = "0", fraction] = inInches(mm).replace(" in", "").split(" ");
        const value = (text: string) =>
          text
            .split("/")
            .map(Number)
            .reduce((a, b) => a / b);
        const inches = value(whole) + (fraction ? value(fraction) : 0);
        expect(Math.abs(inches * 25.4 - mm)).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
      }),
      { seed: 81, numRuns: 500 },
    );
  });
});
