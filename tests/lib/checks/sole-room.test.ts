import { describe, expect, test } from "vitest";
import { ask, margin, taken, untold, without } from "./bench.ts";

const ID = "sole-room";
/**
 * Full up at 95 degrees the cowl's top front corner, 20 ahead of and 410 above the tilt axis along the leg,
 * is the lowest point over the well: v = 40 - 20 sin 95 + 410 cos 95 = 40 - 19.92389 - 35.73383 = -15.65773.
 */
const LOWEST = 15.65773;

describe("Sole room", () => {
  test("from the lowest point of the cowl down to a sole square to the transom", () => {
    // A sole 80 down: 80 - 15.65773 = 64.34 (the leg, 75 aft of the inside face, is further off).
    expect(margin(ID, { soleDropMm: 80 })).toBeCloseTo(80 - LOWEST - 25.4, 2);
    expect(ask(ID, { soleDropMm: 80 }).ruling?.edge.says).toContain("the leg at 95°");
  });

  test("the edge", () => {
    // 15.65773 + 25.4 = 41.05773
    expect(ask(ID, { soleDropMm: 41.1 }).outcome).toBe("fits");
    expect(ask(ID, { soleDropMm: 41 }).outcome).toBe("fouls");
  });

  test("the leg outside is not held against the sole through the transom, though it is nearer", () => {
    // Straight down the leg's front stands 100 - 40 - 30 = 30 aft of the face, 75 of the sole's aft edge;
    // the cowl's lowest point is 300 - 15.65773 = 284.34 above it.
    expect(margin(ID, { soleDropMm: 300 })).toBeCloseTo(300 - LOWEST - 25.4, 2);
  });

  test("a sole that falls away forward", () => {
    // Forward along the sole is (sin a, cos a): at a = 100 it falls, cos 100 = -0.17365. The corner at f = 30 + 20 cos 95 + 410 sin 95
    // = 436.6967 lies 391.6967 ahead of the inside face. Its height over the sole, square to it:
    // (391.6967 x -(cos 100)) + (80 - 15.65773) x sin 100 = 68.0175 + 63.3648 = 131.3823; the lower front
    // corner (160 up the leg, f = 187.648, v = 6.131): 142.648 x 0.173648 + 86.131 x 0.984808 = 109.593:
    // the lower corner rules.
    expect(margin(ID, { soleDropMm: 80, soleAngleDeg: 100 })).toBeCloseTo(109.593 - 25.4, 2);
    // Rising forward, a = 85: (391.6967 x -0.0871557) + 64.34227 x 0.9961947 = -34.1386 + 64.0974 = 29.9588.
    expect(margin(ID, { soleDropMm: 80, soleAngleDeg: 85 })).toBeCloseTo(29.9588 - 25.4, 2);
  });

  test("spread: the sole's drop whole, the arc by the corner's lever", () => {
    // dv per degree of arc: (20 cos 95 + 410 sin 95) pi/180 = 406.6967 x 0.01745329 = 7.09821.
    // Arc +- 0.3, drop +- 2: u^2 = (7.09821^2 x 0.09 + 4)/3 = (4.53461 + 4)/3; u = 1.68667.
    const { ruling } = ask(ID, { soleDropMm: taken(60, 2), tiltArcDeg: taken(95, 0.3) });
    expect(ruling?.u).toBeCloseTo(1.68667, 2);
  });

  test("needs the sole's numbers and the motor's", () => {
    const needs = ["soleDropMm", "soleAngleDeg", "transomThicknessMm", "cowlTopMm", "midsectionAftMm"];
    expect(without(ID, needs, { soleDropMm: 80 })).toEqual(untold(needs));
  });

  test("a cowl that lands fouls even where the leg is not known", () => {
    expect(ask(ID, { soleDropMm: 20, midsectionAftMm: undefined })).toMatchObject({
      outcome: "fouls",
      missing: ["midsectionAftMm"],
    });
  });

  test("not asked where there is no well", () => {
    const well = ["soleDropMm", "soleAngleDeg", "wellDepthMm", "wellFrontHeightMm"];
    const none = [...well, "wellWidthAftMm", "wellWidthFrontMm", "sideFlareDeg"];
    expect(ask(ID, Object.fromEntries(none.map((key) => [key, undefined]))).outcome).toBe("not asked");
  });

  test("the owner's room, said to be the owner's", () => {
    const own = { soleDropMm: 80, limits: { soleRoomMm: 60 } };
    expect(margin(ID, own)).toBeCloseTo(80 - LOWEST - 60, 2);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 60, status: "set by the owner" });
  });
});
