/**
 * Freeboards rules ask for, against figures worked by hand from the rules as read (MCA Workboat Code
 * edition 3, NSCV C6A: secondary texts; 46 CFR 178.330: the text itself), and freeboard at the seat and at
 * the well's front of a box-shaped hull, by hand.
 */
import { describe, expect, test } from "vitest";
import type { Level } from "#lib/rig/afloat/floating.ts";
import { loaded } from "#lib/rig/afloat/floating.ts";
import {
  floodingEdge,
  freeboardAtSeat,
  freeboardAtWellFront,
  motorMassX,
  soleAboveWater,
} from "#lib/rig/afloat/freeboard.ts";
import { hydrostatics } from "#lib/rig/afloat/waterplane.ts";
import { greatestImmersion, immersionByFreeboard } from "#lib/standards/cfr-46-178-330.ts";
import { FREEBOARD_RULES } from "#lib/standards/freeboard-rules.ts";

const least = (id: string, metres: number) =>
  FREEBOARD_RULES.find((rule) => rule.id === id)!.leastMm(metres * 1000);

describe("rules by length", () => {
  test.each([
    ["workboat-open", 4.5, 400],
    ["workboat-open", 7, 400],
    ["workboat-open", 8, 436.4],
    ["workboat-open", 10, 509.1],
    ["workboat-open", 12, 581.8],
    ["workboat-open", 20, 800],
    ["workboat-decked", 5, 300],
    ["workboat-decked", 10, 422.7],
    ["workboat-decked", 18, 750],
    ["workboat-stepped", 5, 200],
    ["workboat-stepped", 10, 254.5],
    ["workboat-stepped", 18, 400],
    ["nscv-c6a", 4.5, 150],
    ["nscv-c6a", 8, 200],
    ["nscv-c6a", 12, 250],
    ["uk-inland", 5, 250],
    ["uk-inland-open", 5, 400],
    ["mgn-280", 7, 200],
    ["mgn-280", 12.5, 300],
    ["mgn-280", 18, 400],
    ["cockpit-deck", 5, 254],
    ["transom-cutout", 5, 250],
  ])("%s at %d m: %d mm", (id, metres, mm) => {
    expect(least(id, metres)).toBeCloseTo(mm, 1);
  });

  test("nothing is taken outside the lengths that were read", () => {
    expect(least("mgn-280", 5)).toBeUndefined();
    expect(least("mgn-280", 19)).toBeUndefined();
  });

  test("two rules for the same 4.5 m open boat differ 2.7 times: there is no one minimum", () => {
    expect(least("workboat-open", 4.5)! / least("nscv-c6a", 4.5)!).toBeCloseTo(2.7, 1);
  });
});

describe("immersion under heel, 46 CFR 178.330(d) (75 FR 78088, 14 December 2010)", () => {
  test("cockpit of 8 in 20 with a freeboard of 2: 0.70 on exposed waters, 0.80 otherwise", () => {
    const cockpit = { deck: "cockpit", cockpitLengthMm: 8 } as const;
    expect(greatestImmersion(2, 20, { ...cockpit, waters: "exposed" })).toBeCloseTo(0.7, 9);
    expect(greatestImmersion(2, 20, { ...cockpit, waters: "protected" })).toBeCloseTo(0.8, 9);
  });

  test("flush deck half the freeboard, open boat a quarter; a cockpit of no length is a flush deck", () => {
    expect(greatestImmersion(400, 5000, { deck: "flush" })).toBe(200);
    expect(greatestImmersion(400, 5000, { deck: "open" })).toBe(100);
    expect(greatestImmersion(400, 5000, { deck: "cockpit", cockpitLengthMm: 0, waters: "exposed" })).toBe(
      200,
    );
  });

  test("NSCV C6A 7.3.5.4: half to the deck's edge or a quarter to the flooding point, the lesser", () => {
    expect(immersionByFreeboard(300, 400)).toBe(100);
    expect(immersionByFreeboard(150, 400)).toBe(75);
  });
});

describe("a box 4.0 x 1.5 m with 150 mm of water at the transom, seat 500 mm over the datum, 50 kg hung on it", () => {
  const box = hydrostatics({ waterlineLengthMm: 4000, waterlineBeamMm: 1500, fullness: 1 });
  const before: Level = { atTransomMm: 150, bowUpDeg: 0 };
  const after = loaded(before, box, [{ label: "motor", kg: 50, xMm: 0 }]);
  const seat = { rakeDeg: 0, seatMm: 500 };
  const well = {
    ...seat,
    transomThicknessMm: 50,
    soleDropMm: 200,
    soleAngleDeg: 90,
    wellDepthMm: 400,
    wellFrontHeightMm: 260,
  };

  test("the seat loses 33.3 mm of 350", () => {
    expect(freeboardAtSeat(before, seat)).toBeCloseTo(350, 9);
    // (500 - 183.33) cos 0.716, cos = 0.999922.
    expect(freeboardAtSeat(after, seat)).toBeCloseTo(316.64, 2);
  });

  test("the well's front, 450 mm forward and 560 mm up, keeps 382.26 mm: it is the edge the floor is safe behind", () => {
    // Water there: 183.33 - 450 x 50/4000 = 177.71; (560 - 177.71) 0.999922.
    expect(freeboardAtWellFront(after, well)).toBeCloseTo(382.26, 2);
    expect(floodingEdge(after, seat, well).at).toBe("well front");
    expect(floodingEdge(after, seat, well).freeboardMm).toBeCloseTo(382.26, 2);
    expect(floodingEdge(after, seat).freeboardMm).toBeCloseTo(316.64, 2);
  });

  test("a front lower than the seat adds nothing: the seat is met first", () => {
    const low = { ...well, wellFrontHeightMm: 100 };
    expect(floodingEdge(after, seat, low)).toMatchObject({ at: "seat" });
  });

  test("the sole, 300 mm over the datum, stands 117.28 mm over the water at its drains", () => {
    // Drains 50 mm forward: water 183.33 - 0.625 = 182.71; 117.29 x 0.999922.
    expect(soleAboveWater(after, well)).toBeCloseTo(117.28, 2);
    expect(soleAboveWater({ atTransomMm: 320, bowUpDeg: 0 }, well)).toBeCloseTo(-20, 9);
  });

  test("a motor's mass hangs aft of the transom: 40 forward less 120 aft is 80 mm aft on an upright one", () => {
    const motor = { tiltAxisForwardMm: 40, tiltAxisAboveMm: 35, steerAxisAftMm: 120 };
    expect(motorMassX(motor, seat, 0)).toBeCloseTo(-80, 9);
    // Raked 12 degrees and run level: -500 tan 12 + 40 cos 12 - 35 sin 12 - 120 = -194.43.
    expect(motorMassX(motor, { rakeDeg: 12, seatMm: 500 }, 12)).toBeCloseTo(-194.43, 2);
  });
});
