/**
 * The frames by hand: points whose place can be read off a sketch. (The motions against Rodrigues' formula
 * and another implementation are in tests/worked.)
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bracketToHull, legHeight, legToBracket, steeredToLeg } from "#lib/rig/frame.ts";
import { legPointAboveSeat, runningHole, seatForPlate } from "#lib/rig/plate.ts";

const AXIS = { tiltAxisForwardMm: 30, tiltAxisAboveMm: 40 };

function expectAt(point: readonly number[], wanted: readonly number[]): void {
  point.forEach((value, k) => {
    expect(value).toBeCloseTo(wanted[k]!, 9);
  });
}

describe("Frames", () => {
  test("tiller to port: a point ahead of the steering axis goes to port, one to port goes aft", () => {
    expectAt(steeredToLeg([600, 0, 7], 90, 100), [-100, 600, 7]);
    expectAt(steeredToLeg([0, 40, 7], 90, 100), [-140, 0, 7]);
    // 600 cos 30 = 519.6152; 600 sin 30 = 300.
    expectAt(steeredToLeg([600, 0, 0], 30, 100), [600 * Math.sqrt(0.75) - 100, 300, 0]);
  });

  test("face angle: at 90 the lower end points straight aft, the head lies forward", () => {
    expectAt(legToBracket([0, 5, -500], 90, AXIS), [30 - 500, 5, 40]);
    expectAt(legToBracket([0, 5, 300], 90, AXIS), [330, 5, 40]);
    // What was forward of the leg hangs below it.
    expectAt(legToBracket([80, 0, 0], 90, AXIS), [30, 0, 40 - 80]);
    expectAt(legToBracket([80, 0, 20], 0, AXIS), [110, 0, 60]);
  });

  test("a raked transom: its top leans aft, the saddle corner stands on the seat", () => {
    // Rake 30, seat 600: the corner is 600 tan 30 = 346.4102 aft of the transom's foot, 600 up.
    expectAt(bracketToHull([0, 0, 0], 30, 600), [-600 / Math.sqrt(3), 0, 600]);
    // 100 up the face: 50 further aft, 86.6025 higher; 100 forward, square to it: 86.6025 ahead, 50 up.
    expectAt(bracketToHull([0, 9, 100], 30, 600), [-600 / Math.sqrt(3) - 50, 9, 600 + 100 * Math.sqrt(0.75)]);
    expectAt(bracketToHull([100, 9, 0], 30, 600), [-600 / Math.sqrt(3) + 100 * Math.sqrt(0.75), 9, 650]);
    // The transom's foot is where the datum is: seat / cos r down the face.
    expectAt(bracketToHull([0, 0, -600 / Math.sqrt(0.75)], 30, 600), [0, 0, 0]);
  });

  test("heights above the saddle become heights above the tilt axis", () => {
    expect(legHeight(200, 0, AXIS)).toBeCloseTo(160, 9);
    expect(legHeight(200, 90, AXIS)).toBeCloseTo(170, 9);
    // 30 sin 30 + 40 cos 30 = 15 + 34.6410.
    expect(legHeight(-520, 30, AXIS)).toBeCloseTo(-520 - 15 - 40 * Math.sqrt(0.75), 9);
  });

  test("the plate's formula is the frames' own: a point on the steering axis carried to the hull", () => {
    const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        fc.tuple(angle(-15, 15), angle(-20, 40), angle(-30, 110), angle(-180, 180)),
        fc.tuple(angle(200, 1000), angle(-150, 200), angle(-150, 250), angle(-50, 300), angle(0, 400)),
        ([measured, rake, face, steering], [shaft, forward, above, aft, below]) => {
          const motor = {
            shaftLengthMm: shaft,
            measuredAtDeg: measured,
            tiltAxisForwardMm: forward,
            tiltAxisAboveMm: above,
            steerAxisAftMm: aft,
          };
          const z = legHeight(-shaft - below, measured, motor);
          const inLeg = steeredToLeg([0, 0, z], steering, aft);
          const [, , up] = bracketToHull(legToBracket(inLeg, face, motor), rake, 500);
          expect(500 + legPointAboveSeat(motor, rake, face, below)).toBeCloseTo(up, 8);
        },
      ),
      { seed: 1, numRuns: 200 },
    );
  });
});

describe("Plate", () => {
  const motor = { ...AXIS, shaftLengthMm: 520, measuredAtDeg: 14, steerAxisAftMm: 100 };

  test("leg, rake and measuring at one angle: a shaft below the seat", () => {
    expect(legPointAboveSeat(motor, 14, 14)).toBeCloseTo(-520, 9);
    expect(legPointAboveSeat(motor, 14, 14, 250)).toBeCloseTo(-770, 9);
    expect(seatForPlate(motor, 14, 14, -12)).toBeCloseTo(508, 9);
  });

  test("trimmed out, the steering axis goes down and the plate swings up about the tilt axis", () => {
    // All angles 0 but the hole at 10: 40 + 100 sin 10 - 560 cos 10 = 40 + 17.36482 - 551.49234 = -494.12752.
    expect(legPointAboveSeat({ ...motor, measuredAtDeg: 0 }, 0, 10)).toBeCloseTo(-494.12752, 4);
  });

  test("the running hole is the nearest to the rake; the lower wins a tie", () => {
    expect(runningHole([4, 8, 12, 16], 11)).toBe(12);
    expect(runningHole([4, 8, 12, 16], 10)).toBe(8);
    expect(runningHole([4, 8, 12, 16], -3)).toBe(4);
    expect(runningHole([4, 8, 12, 16], 30)).toBe(16);
  });
});
