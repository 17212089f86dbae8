/** The moving parts by hand: boxes in steered or leg coordinates, and the poses each takes. */
import { describe, expect, test } from "vitest";
import type { MotorValues } from "#lib/rig/motor.ts";
import { handled, mount } from "#lib/rig/mounting.ts";
import { missingOfParts, partBox, partIds, partsOf, pinRange, tiltRange } from "#lib/rig/parts.ts";

const MOTION = {
  measuredAtDeg: 0,
  tiltAxisForwardMm: 30,
  tiltAxisAboveMm: 40,
  steerAxisAftMm: 100,
  pinAnglesDeg: [4, 8, 12],
  tiltArcDeg: 66,
  steerPortDeg: 35,
  steerStarboardDeg: 50,
};
const COWL = {
  cowlFrontMm: 120,
  cowlAftMm: 200,
  cowlWidthMm: 210,
  cowlBottomMm: 90,
  cowlTopMm: 450,
};
const LEG = { midsectionFrontMm: 40, midsectionAftMm: 60, midsectionWidthMm: 80, shaftLengthMm: 520 };
const TILLER = { tillerLengthMm: 600, tillerHeightMm: 130, tillerThicknessMm: 40, tillerOffsetMm: -25 };
const motor: MotorValues = { ...MOTION, ...COWL, ...LEG, ...TILLER, steering: "tiller" };

describe("Parts", () => {
  test("cowl, leg and tiller: widths halved, heights taken from the tilt axis 40 above the saddle", () => {
    expect(partIds(motor)).toEqual(["cowl", "midsection", "tiller"]);
    expect(partBox(motor, "cowl")).toMatchObject({ from: [-200, -105, 50], to: [120, 105, 410] });
    // From the plate, 520 below the saddle, up to the cowl's bottom.
    expect(partBox(motor, "midsection")).toMatchObject({ from: [-60, -40, -560], to: [40, 40, 50] });
    // Forward from the steering axis; 25 to starboard, 40 broad and deep.
    expect(partBox(motor, "tiller")).toMatchObject({ from: [0, -45, 90], to: [600, -5, 130] });
  });

  test("heights measured with the leg at an angle", () => {
    // 30 sin 30 + 40 cos 30 = 15 + 34.641 = 49.641.
    const { from, to } = partBox({ ...motor, measuredAtDeg: 30 }, "cowl");
    expect(from[2]).toBeCloseTo(90 - 49.641, 3);
    expect(to[2]).toBeCloseTo(450 - 49.641, 3);
  });

  test("poses: lowest hole to full up, hard starboard (minus) to hard port", () => {
    expect(partBox(motor, "cowl")).toMatchObject({
      moves: "steered",
      faceAngles: { from: 4, to: 70 },
      steeringAngles: { from: -50, to: 35 },
    });
    expect(tiltRange({ ...motor, pinAnglesDeg: [4, 8, 12], tiltArcDeg: 66 })).toEqual({ from: 4, to: 70 });
  });

  test("a tiller that folds counts only in the holes; absent is taken as one that does not", () => {
    expect(partBox(motor, "tiller").faceAngles).toEqual({ from: 4, to: 70 });
    expect(partBox({ ...motor, tillerFolds: true }, "tiller").faceAngles).toEqual({ from: 4, to: 12 });
    expect(partBox({ ...motor, tillerFolds: true }, "cowl").faceAngles).toEqual({ from: 4, to: 70 });
    // An arc that ends before the highest hole ends the holes too.
    expect(pinRange({ ...motor, pinAnglesDeg: [4, 8, 12], tiltArcDeg: 5 })).toEqual({ from: 4, to: 9 });
  });

  test("extra solids: steered, or only tilting; heights above the saddle too", () => {
    const arm = { label: "arm", group: "steered", fromMm: [0, -25, 70], toMm: [190, 25, 110] } as const;
    const tank = { label: "tank", group: "tilting", fromMm: [-50, -60, 0], toMm: [50, 60, 40] } as const;
    const full = { ...motor, extraSolids: [arm, tank] };
    expect(partBox(full, "arm")).toMatchObject({ moves: "steered", from: [0, -25, 30], to: [190, 25, 70] });
    expect(partBox(full, "tank")).toMatchObject({ moves: "tilting", from: [-50, -60, -40] });
    expect(partsOf(full).map(({ id }) => id)).toEqual(["cowl", "midsection", "tiller", "arm", "tank"]);
  });

  test("what is missing: the parts that are whole stay", () => {
    const { cowlTopMm: _, ...topless } = motor;
    expect(partIds(topless)).toEqual(["midsection", "tiller"]);
    expect(missingOfParts(topless)).toEqual(["cowlTopMm"]);
    // The cowl's bottom is the leg's upper end too.
    const { cowlBottomMm: __, ...bottomless } = motor;
    expect(partIds(bottomless)).toEqual(["tiller"]);
    // Without a motion nothing is known of any part.
    const { tiltArcDeg: ___, ...arcless } = motor;
    expect(partIds(arcless)).toEqual([]);
    expect(missingOfParts({})).toContain("steering");
  });

  test("a tiller is there when it is said or measured; steered remotely it is not missed", () => {
    const bare = { ...MOTION, ...COWL, ...LEG };
    expect(missingOfParts({ ...bare, steering: "remote" })).toEqual([]);
    expect(missingOfParts(bare)).toEqual(["steering"]);
    expect(missingOfParts({ ...bare, steering: "tiller" })).toEqual(Object.keys(TILLER));
    expect(missingOfParts({ ...bare, tillerLengthMm: 600 })).toEqual([
      "tillerHeightMm",
      "tillerThicknessMm",
      "tillerOffsetMm",
    ]);
  });

  test("held straight while tilting: steering in the holes, straight ahead from there on", () => {
    const rig = { motor, stern: {}, handling: { straightWhileTilting: true } };
    const [holes, up] = handled([partBox(motor, "cowl")], rig);
    expect(holes).toMatchObject({ faceAngles: { from: 4, to: 12 }, steeringAngles: { from: -50, to: 35 } });
    expect(up).toMatchObject({ faceAngles: { from: 4, to: 70 }, steeringAngles: { from: 0, to: 0 } });
    expect(mount(rig).parts).toHaveLength(6);
    expect(mount({ motor, stern: {} }).parts).toHaveLength(3);
  });
});
