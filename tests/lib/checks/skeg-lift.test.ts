import { describe, expect, test } from "vitest";
import { ask, margin, taken, untold, without } from "./bench.ts";

const ID = "skeg-lift";
const NEEDS = [
  "shaftLengthMm",
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
  "tiltArcDeg",
  "plateToSkegMm",
  "rakeDeg",
];

describe("Skeg lift", () => {
  test("full up at the very angle of rake and measuring: seat less shaft less plate to skeg", () => {
    // Lowest hole 4, arc 10: full up 14 = r = m. 800 - 520 - 250 = 30.
    const at14 = { pinAnglesDeg: [4], tiltArcDeg: 10, rakeDeg: 14, measuredAtDeg: 14, seatMm: 800 };
    expect(margin(ID, at14)).toBeCloseTo(30, 9);
    expect(margin(ID, { ...at14, seatMm: 755 })).toBeCloseTo(-15, 9);
    expect(ask(ID, { ...at14, seatMm: 770 }).outcome).toBe("fits");
    expect(ask(ID, { ...at14, seatMm: 769.99 }).outcome).toBe("fouls");
  });

  test("a raked transom and a full tilt", () => {
    // Full up 70 on a rake of 10, t = 60; D to the skeg 520 + 40 + 250 = 810 (measured at 0).
    // 508 + 30 x 0.1736482 + 40 x 0.9848078 + 100 x 0.8660254 - 810 x 0.5
    //   = 508 + 5.20945 + 39.39231 + 86.60254 - 405 = 234.20430.
    expect(margin(ID, { pinAnglesDeg: [0, 10], tiltArcDeg: 70, rakeDeg: 10 })).toBeCloseTo(234.2043, 3);
  });

  test("spread: at a quarter turn past the rake the leg's length no longer matters, the angle does", () => {
    // r = 0, full up 90: z = 508 + 40 + 100 - 810 cos 90 = 648; per degree of arc 810 x pi/180 = 14.137 mm.
    // Arc +- 0.5: u = 14.137 x 0.5/sqrt 3 = 4.081; shaft +- 5 adds nothing.
    const { ruling } = ask(ID, { tiltArcDeg: taken(90, 0.5), shaftLengthMm: taken(520, 5) });
    expect(ruling?.margin).toBeCloseTo(648, 9);
    expect(ruling?.u).toBeCloseTo(4.081, 3);
  });

  test("each number is needed; the uncut top stands for the seat", () => {
    expect(without(ID, NEEDS)).toEqual(untold(NEEDS));
    const uncut = { seatMm: undefined, notchWidthMm: undefined, pinAnglesDeg: [0], tiltArcDeg: 90 };
    expect(margin(ID, { ...uncut, transomTopMm: 500 })).toBeCloseTo(640, 9);
    expect(ask(ID, { ...uncut, transomTopMm: undefined }).missing).toEqual(["seatMm"]);
  });

  test("the owner's limit, said to be the owner's", () => {
    const own = { tiltArcDeg: 90, limits: { skegLiftMm: 700 } };
    expect(margin(ID, own)).toBeCloseTo(-52, 9);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 700, status: "set by the owner" });
  });
});
