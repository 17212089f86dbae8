/** Transom and motor-well height after 33 CFR 183.3, by hand on round figures. */
import { expect, test } from "vitest";
import { regulationMotorwellHeight, regulationTransomHeight } from "#lib/rig/afloat/regulation-heights.ts";

test("the cutout counts and the keel does not: 508 over a keel of 60 is 448, whatever the uncut top", () => {
  expect(regulationTransomHeight({ seatMm: 508, transomTopMm: 620, keelDepthMm: 60 })).toBe(448);
  expect(regulationTransomHeight({ transomTopMm: 620, keelDepthMm: 60 })).toBe(560);
  expect(regulationTransomHeight({ seatMm: 508 })).toBeUndefined();
  expect(regulationTransomHeight({ keelDepthMm: 60 })).toBeUndefined();
});

test("the well's height is that of its lowest edge: front 560, sides 540, keel 60", () => {
  const well = {
    rakeDeg: 0,
    seatMm: 500,
    transomThicknessMm: 50,
    soleDropMm: 200,
    soleAngleDeg: 90,
    wellDepthMm: 400,
    wellFrontHeightMm: 260,
    keelDepthMm: 60,
  };
  expect(regulationMotorwellHeight(well)).toBeCloseTo(500, 9);
  expect(regulationMotorwellHeight({ ...well, wellSideHeightMm: 240 })).toBeCloseTo(480, 9);
});
