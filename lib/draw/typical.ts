/** An invented motor and an invented stern, so that pictures of how to measure have something to be drawn on. No real object; proportions exaggerated where a small number must be seen. */
import type { MotorValues } from "#lib/rig/motor.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** The invented motor. */
export const TYPICAL_MOTOR = {
  steering: "tiller",
  shaftLengthMm: 420,
  measuredAtDeg: 0,
  tiltAxisForwardMm: 26,
  tiltAxisAboveMm: 46,
  steerAxisAftMm: 95,
  pinAnglesDeg: [4, 8, 12, 16, 20],
  tiltArcDeg: 66,
  bracketWidthMm: 220,
  bracketDropMm: 215,
  steerPortDeg: 40,
  steerStarboardDeg: 40,
  cowlFrontMm: 200,
  cowlAftMm: 280,
  cowlWidthMm: 300,
  cowlBottomMm: 85,
  cowlTopMm: 430,
  midsectionFrontMm: 60,
  midsectionAftMm: 125,
  midsectionWidthMm: 130,
  tillerLengthMm: 610,
  tillerHeightMm: 150,
  tillerThicknessMm: 62,
  tillerOffsetMm: 45,
  clampDepthMm: 110,
  screwDropMm: 78,
  handleSwingMm: 42,
  propDiameterMm: 230,
  plateToPropCentreMm: 150,
  plateToSkegMm: 320,
} as const satisfies MotorValues;

/** The invented stern. */
export const TYPICAL_STERN = {
  hullForm: "vee",
  rakeDeg: 14,
  transomThicknessMm: 42,
  transomTopMm: 570,
  keelDepthMm: 60,
  seatMm: 425,
  notchWidthMm: 580,
  notchCornerRadiusMm: 70,
  soleDropMm: 190,
  soleAngleDeg: 104,
  wellDepthMm: 470,
  wellFrontHeightMm: 270,
  wellWidthAftMm: 820,
  wellWidthFrontMm: 700,
  sideFlareDeg: 12,
  wellSideHeightMm: 270,
  deckThicknessMm: 14,
  transomWidthMm: 1400,
} as const satisfies SternValues;
