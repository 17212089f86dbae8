import { describe, expect, test } from "vitest";
import { ask, margin, rooms, taken, untold, without } from "./bench.ts";

const ID = "side-room";
const wide = (mm: number) => ({ wellWidthAftMm: mm, wellWidthFrontMm: mm });

describe("Side room", () => {
  test("upright parallel sides, held straight: half the well less half the cowl", () => {
    // 1400/2 - 200/2 = 600; less an inch 574.6.
    for (const room of rooms(ID)) expect(room).toBeCloseTo(574.6, 2);
  });

  test("the edge: 2 x (100 + 25.4) = 250.8 wide", () => {
    expect(margin(ID, wide(250.8))).toBeCloseTo(0, 6);
    expect(ask(ID, wide(250.6)).outcome).toBe("fouls");
  });

  test("sides that close in forward: the cowl's front corner at full reach", () => {
    // From 600 aft to 400 in front over 900: each side closes by 100 in 900, tan 6.340 degrees.
    // The cowl's front corner, 20 ahead of and 410 above the tilt axis, swings on a radius of 410.4875 about
    // an axis 30 forward: furthest along the sole at 87.2 degrees, 440.4875 - 45 = 395.4875 from the inside
    // face (the arc to 88 keeps the aft corner behind it): there the side stands 300 - 395.4875/9 = 256.0569 off; square to the side
    // (256.0569 - 100) x cos 6.340 = 156.0569 x 0.9938837 = 155.1024.
    const closing = { wellWidthAftMm: 600, wellWidthFrontMm: 400, wellDepthMm: 900, tiltArcDeg: 88 };
    for (const room of rooms(ID, closing)) expect(room).toBeCloseTo(155.1024 - 25.4, 2);
  });

  test("a long leg, straight down, beside the foot of sides that lean out", () => {
    // Its lower end at v = -520, 320 under the sole's line: 300 - 320 x 0.1763270 = 243.5754 to the side,
    // square to it (243.5754 - 40) x 0.9848078 = 200.4826; and its front stands 30 aft of the face, 75 aft
    // of the side's edge: sqrt(75^2 + 200.4826^2) = 214.0521.
    for (const room of rooms(ID, { ...wide(600), sideFlareDeg: 10 }))
      expect(room).toBeCloseTo(214.0521 - 25.4, 2);
  });

  test("sides that lean out: tightest at the cowl's lowest corner", () => {
    // Lowest corner at v = -15.65773, 184.34227 above the sole; flare 10: 300 + 184.34227 x 0.1763270 =
    // 332.5045 there; square to the side (332.5045 - 100) cos 10 = 232.5045 x 0.9848078 = 228.9723. (A short
    // leg, 250, so that it is not the nearer one, aft of the transom where the sides close in below.)
    for (const room of rooms(ID, { ...wide(600), sideFlareDeg: 10, shaftLengthMm: 250 }))
      expect(room).toBeCloseTo(228.9723 - 25.4, 2);
  });

  test("low sides: the cowl tilts over them", () => {
    // Sides 50 high on a sole 80 down: top at -30, the cowl's lowest edge -15.65773, 14.34 above, and
    // 200 wide over a well of 150. Nobody took the height: they go up without end, and it strikes.
    const low = { ...wide(150), soleDropMm: 80 };
    expect(margin(ID, { ...low, wellSideHeightMm: 50 })).toBeCloseTo(30 - 15.65773 - 25.4, 2);
    expect(ask(ID, { ...low, wellSideHeightMm: 50, limits: { sideRoomMm: 10 } }).outcome).toBe("fits");
    expect(ask(ID, { ...low, limits: { sideRoomMm: 10 } }).outcome).toBe("fouls");
    expect(ask(ID, low).missing).toEqual([]);
  });

  test("spread: half the cowl", () => {
    const { ruling } = ask(ID, { ...wide(300), cowlWidthMm: taken(200, 4) });
    // u = 4/2/sqrt 3 = 1.1547
    expect(ruling?.u).toBeCloseTo(1.1547, 3);
  });

  test("needs the sides' numbers, not their height", () => {
    const needs = [
      "soleDropMm",
      "soleAngleDeg",
      "transomThicknessMm",
      "wellDepthMm",
      "wellWidthAftMm",
      "wellWidthFrontMm",
      "sideFlareDeg",
    ];
    expect(without(ID, needs)).toEqual(untold(needs));
    expect(ask(ID).outcome).toBe("fits");
  });

  test("not asked where there is no well", () => {
    const well = ["soleDropMm", "soleAngleDeg", "wellDepthMm", "wellFrontHeightMm"];
    const none = [...well, "wellWidthAftMm", "wellWidthFrontMm", "sideFlareDeg"];
    expect(ask(ID, Object.fromEntries(none.map((key) => [key, undefined]))).outcome).toBe("not asked");
  });

  test("the owner's room, said to be the owner's", () => {
    const own = { ...wide(300), limits: { sideRoomMm: 45 } };
    expect(margin(ID, own)).toBeCloseTo(5, 6);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 45, status: "set by the owner" });
  });
});
