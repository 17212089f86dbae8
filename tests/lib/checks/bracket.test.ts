import { describe, expect, test } from "vitest";
import { ask, margin, taken, untold, without } from "./bench.ts";

const ID = "bracket";

describe("Bracket in the notch", () => {
  test("half of what the flat of the notch has over the bracket", () => {
    // 320 - 2 x 20 = 280 flat, 240 bracket: 20 each side. Corners nobody took count as square: 40.
    expect(margin(ID, { notchWidthMm: 320 })).toBe(20);
    expect(margin(ID, { notchWidthMm: 320, notchCornerRadiusMm: undefined })).toBe(40);
    expect(ask(ID, { notchWidthMm: 320 }).ruling?.edge).toMatchObject({ have: 280, need: 240 });
  });

  test("the edge: a bracket as wide as the flat goes down, a hair wider does not", () => {
    expect(ask(ID, { notchWidthMm: 280 }).outcome).toBe("fits");
    expect(ask(ID, { notchWidthMm: 279.99 }).outcome).toBe("fouls");
    expect(margin(ID, { notchWidthMm: 270 })).toBe(-5);
  });

  test("spread: the notch and the bracket weigh half, the corners whole", () => {
    // u^2 = (0.25 x 4 + 0.25 x 1 + 1 x 1)/3 = 0.75; U = 1.732.
    const at = (notchWidth: number) =>
      ask(ID, {
        notchWidthMm: taken(notchWidth, 2),
        bracketWidthMm: taken(240, 1),
        notchCornerRadiusMm: taken(20, 1),
      });
    expect(at(284).ruling?.u).toBeCloseTo(Math.sqrt(0.75), 9);
    expect([283.5, 283.4, 276.6, 276.5].map((width) => at(width).outcome)).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
  });

  test("needs the two widths, not the corners", () => {
    expect(without(ID, ["bracketWidthMm", "notchWidthMm"])).toEqual(
      untold(["bracketWidthMm", "notchWidthMm"]),
    );
    expect(ask(ID, { notchCornerRadiusMm: undefined }).missing).toEqual([]);
  });

  test("not asked where nothing is cut", () => {
    expect(ask(ID, { seatMm: undefined, notchWidthMm: undefined })).toMatchObject({
      outcome: "not asked",
      missing: [],
    });
  });

  test("the owner's room each side, said to be the owner's", () => {
    const own = { notchWidthMm: 320, limits: { bracketMm: 20 } };
    expect(ask(ID, own)).toMatchObject({
      outcome: "fits",
      ruling: { margin: 0, edge: { need: 280, limit: { value: 20, status: "set by the owner" } } },
    });
  });
});
