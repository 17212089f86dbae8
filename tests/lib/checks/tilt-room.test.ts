import { describe, expect, test } from "vitest";
import { ask, rooms, taken, untold, without } from "./bench.ts";

const ID = "tilt-room";
/**
 * Cowl's top front corner: 120 - 100 = 20 ahead of the tilt axis, 450 - 40 = 410 above it, so it swings on
 * a radius of sqrt(20^2 + 410^2) = 410.4875 about an axis 30 forward: at most 440.4875 ahead of the face,
 * tilted 87.2 degrees (the arc goes to 88, so that the cowl's aft corner, 300 behind the axis, stays behind).
 * The bulkhead, 1500 high, stands at 45 + the well.
 */
const REACH = 440.4875;
/** The trade's least length of a well put out of the way. */
const SHORT = { tiltArcDeg: 88, limits: { wellDepthMm: 100 } };

describe("Tilt room forward", () => {
  test("bulkhead's face to the arc of the cowl's corner, and 22 in of well", () => {
    const [bulkhead, length] = rooms(ID, { wellDepthMm: 600, tiltArcDeg: 88 });
    expect(bulkhead).toBeCloseTo(645 - REACH - 25.4, 2);
    // 600 - 22 x 25.4 = 41.2
    expect(length).toBeCloseTo(41.2, 9);
  });

  test("the edges", () => {
    const at = (wellDepthMm: number, changes = {}) => ask(ID, { ...changes, wellDepthMm }).outcome;
    expect([558.8, 558.79].map((depth) => at(depth))).toEqual(["fits", "fouls"]);
    // 440.4875 + 25.4 - 45 = 420.8875 (clearances are true to a hundredth).
    expect([420.95, 420.8].map((depth) => at(depth, SHORT))).toEqual(["fits", "fouls"]);
  });

  test("a low bulkhead lets the head pass over it", () => {
    // Top at -200 + 150 = -50, face at 400. Full up at 95 degrees the cowl's top front corner stands over it,
    // at f = 30 + 20 cos 95 + 410 sin 95 = 436.70, v = 40 - 20 sin 95 + 410 cos 95 = 40 - 19.92389 - 35.73383
    // = -15.65773, and no point of the cowl is lower: 50 - 15.65773 = 34.34227.
    const [bulkhead] = rooms(ID, { ...SHORT, wellDepthMm: 355, wellFrontHeightMm: 150, tiltArcDeg: 95 });
    expect(bulkhead).toBeCloseTo(34.34227 - 25.4, 2);
  });

  test("spread: well and thickness whole, the cowl's top by its share of the radius", () => {
    // At the tightest pose the top weighs 410/410.49 = 0.9988, the front 20/410.49 = 0.0487.
    // Well 3, thickness 2, top 4, front 1: u^2 = (9 + 4 + 15.962 + 0.0024)/3, u = 3.107.
    const { ruling } = ask(ID, {
      ...SHORT,
      wellDepthMm: taken(450, 3),
      transomThicknessMm: taken(45, 2),
      cowlTopMm: taken(450, 4),
      cowlFrontMm: taken(120, 1),
    });
    expect(ruling?.u).toBeCloseTo(3.107, 2);
    expect(ruling?.jumps).toBe(false);
  });

  test("needs the bulkhead's numbers", () => {
    const needs = ["soleDropMm", "soleAngleDeg", "transomThicknessMm", "wellDepthMm", "wellFrontHeightMm"];
    expect(without(ID, needs)).toEqual(untold(needs));
    expect(without(ID, ["cowlTopMm", "tiltArcDeg"])).toEqual(untold(["cowlTopMm", "tiltArcDeg"]));
  });

  test("too short a well fouls even where the motor is not known", () => {
    expect(ask(ID, { wellDepthMm: 500, cowlTopMm: undefined, shaftLengthMm: undefined }).outcome).toBe(
      "fouls",
    );
  });

  test("not asked where there is no well", () => {
    const well = ["soleDropMm", "soleAngleDeg", "wellDepthMm", "wellFrontHeightMm"];
    const none = [...well, "wellWidthAftMm", "wellWidthFrontMm", "sideFlareDeg"];
    expect(ask(ID, Object.fromEntries(none.map((key) => [key, undefined]))).outcome).toBe("not asked");
  });

  test("the owner's limits, each for its own edge", () => {
    const own = { wellDepthMm: 600, tiltArcDeg: 88, limits: { bulkheadRoomMm: 200, wellDepthMm: 595 } };
    const [bulkhead, length] = rooms(ID, own);
    expect(bulkhead).toBeCloseTo(645 - REACH - 200, 2);
    expect(length).toBe(5);
    expect(ask(ID, own).ruling?.edge.limit.status).toBe("set by the owner");
  });
});
