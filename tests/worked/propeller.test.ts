/**
 * Propeller and skeg below the water. One published case: a build log (threesigfigs.com, Transom Cutout)
 * with a transom of 20.25 in, the bracket half an inch above it and the plate an inch below the bottom.
 * The rest is worked by hand on round figures.
 */
import { describe, expect, test } from "vitest";
import { inches } from "#lib/quantity/length.ts";
import {
  aboveKeelLine,
  depths,
  draught,
  legMarks,
  legPoint,
  runningLevel,
} from "#lib/rig/afloat/propeller.ts";
import { bracketToHull, legHeight, legToBracket, steeredToLeg } from "#lib/rig/frame.ts";
import { legPointAboveSeat } from "#lib/rig/plate.ts";
import { ventilation } from "#lib/standards/propeller-cover.ts";

/** A leg that turns about its own saddle corner: heights and reaches can be read off. */
const PLAIN = {
  shaftLengthMm: 500,
  measuredAtDeg: 0,
  tiltAxisForwardMm: 0,
  tiltAxisAboveMm: 0,
  steerAxisAftMm: 0,
  plateToPropCentreMm: 130,
  propDiameterMm: 220,
  plateToSkegMm: 260,
};
const DOWN = { rakeDeg: 0, seatMm: 510, faceAngleDeg: 0 };

test("the build log: seat at 20.75 in and a leg of 21.75 in put the plate an inch below the bottom", () => {
  const motor = { ...PLAIN, shaftLengthMm: inches(21.75), measuredAtDeg: 12, steerAxisAftMm: 110 };
  const hang = { rakeDeg: 12, seatMm: inches(20.25 + 0.5), faceAngleDeg: 12 };
  expect(legMarks(motor, hang).plate[2]).toBeCloseTo(inches(-1), 9);
  // Running, that is an inch under the water that leaves the bottom.
  expect(depths(motor, hang, runningLevel(0)).plate).toBeCloseTo(inches(1), 9);
});

describe("motor down, 240 mm of water over the datum", () => {
  const rest = { atTransomMm: 240, bowUpDeg: 0 };

  test("plate 10 mm over the datum: shaft 360, tips 250 and 470, skeg 490 mm deep", () => {
    // 510 - 500 = 10; 240 - 10 = 230; + 130; +- 110; + 260.
    const found = depths(PLAIN, DOWN, rest);
    expect(found.plate).toBeCloseTo(230, 9);
    expect(found.shaft).toBeCloseTo(360, 9);
    expect(found["upper tip"]).toBeCloseTo(250, 9);
    expect(found["lower tip"]).toBeCloseTo(470, 9);
    expect(found.skeg).toBeCloseTo(490, 9);
  });

  test("it draws 490 mm at the skeg; tilted clear, the keel's 240 mm", () => {
    expect(draught(PLAIN, DOWN, rest).at).toBe("skeg");
    expect(draught(PLAIN, DOWN, rest).mm).toBeCloseTo(490, 9);
    expect(draught(PLAIN, { ...DOWN, faceAngleDeg: 80 }, rest)).toMatchObject({ at: "keel" });
    expect(draught(PLAIN, { ...DOWN, faceAngleDeg: 80 }, rest).mm).toBeCloseTo(240, 9);
  });

  test("a blade that reaches lower than the skeg is what it draws", () => {
    expect(draught({ ...PLAIN, plateToSkegMm: 200 }, DOWN, rest).at).toBe("lower tip");
  });

  test("bow up 3 degrees, a point 120 mm aft of the transom lies 120 sin 3 = 6.28 mm deeper, all but the cosine", () => {
    // (240 + 120 tan 3 + 120) cos 3 = 359.51 + 6.28.
    const found = depths({ ...PLAIN, steerAxisAftMm: 120 }, DOWN, { ...rest, bowUpDeg: 3 });
    expect(found.shaft).toBeCloseTo(365.79, 2);
  });
});

describe("kicked up", () => {
  test("at 60 degrees of a leg of 760 mm to the skeg: 510 - 760 cos 60 = 130 mm over the keel line", () => {
    const found = aboveKeelLine(PLAIN, { ...DOWN, faceAngleDeg: 60 });
    expect(found.at).toBe("skeg");
    expect(found.mm).toBeCloseTo(130, 9);
    expect(legMarks(PLAIN, { ...DOWN, faceAngleDeg: 60 }).skeg[0]).toBeCloseTo(-658.18, 2);
  });

  test("down, it reaches 250 mm below the keel line", () => {
    expect(aboveKeelLine(PLAIN, DOWN).mm).toBeCloseTo(-250, 9);
  });

  test("with the leg level aft, blades 150 mm aft of the axis lie 150 mm above it, and the skeg is lowest", () => {
    const level = { ...DOWN, faceAngleDeg: 90 };
    expect(legMarks(PLAIN, level, 150).shaft[2]).toBeCloseTo(660, 9);
    expect(legMarks(PLAIN, level, 150).shaft[0]).toBeCloseTo(-630, 9);
    expect(aboveKeelLine(PLAIN, level, 150)).toMatchObject({ at: "skeg" });
  });
});

test("a leg point is the one the frames give, and stands where the plate's own formula says", () => {
  const motor = {
    ...PLAIN,
    shaftLengthMm: 523,
    measuredAtDeg: 9,
    tiltAxisForwardMm: 31,
    tiltAxisAboveMm: 37,
    steerAxisAftMm: 118,
  };
  const hang = { rakeDeg: 13, seatMm: 511, faceAngleDeg: 47 };
  const inLeg = steeredToLeg([-80, 0, legHeight(-523 - 140, 9, motor)], 0, 118);
  const inHull = bracketToHull(legToBracket(inLeg, 47, motor), 13, 511);
  const found = legPoint(motor, hang, 140, 80);
  expect(found[0]).toBeCloseTo(inHull[0], 9);
  expect(found[2]).toBeCloseTo(inHull[2], 9);
  expect(legPoint(motor, hang, 140)[2]).toBeCloseTo(511 + legPointAboveSeat(motor, 13, 47, 140), 9);
});

describe("running, water level with the bottom beside a keel", () => {
  test("a keel of 80 mm puts the water 80 mm over the datum", () => {
    expect(depths(PLAIN, DOWN, runningLevel(80)).plate).toBeCloseTo(70, 9);
  });

  test("risk of drawing air, in words (common practice, no source): broken, thin, covered", () => {
    expect(ventilation(-1, "running").risk).toBe("draws air");
    expect(ventilation(0, "running").risk).toBe("may draw air");
    expect(ventilation(inches(0.5), "running").risk).toBe("covered");
    expect(ventilation(inches(1), "at rest").risk).toBe("may draw air");
    expect(ventilation(inches(2), "at rest").risk).toBe("covered");
  });
});
