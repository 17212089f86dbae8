/** Where each number of a motor is taken. */
import { onMotor, overMotor } from "#lib/draw/schematic.ts";
import { angle, level, type Picture, picture, plumb, pointer } from "#lib/draw/taken.ts";
import { TYPICAL_MOTOR as M } from "#lib/draw/typical.ts";
import type { MotorKey } from "#lib/rig/motor.ts";

const STEER = onMotor(0, 0)[0];

const TUBE = onMotor(M.steerAxisAftMm, M.tiltAxisAboveMm);

const PLATE = -M.shaftLengthMm;

const SHAFT = PLATE - M.plateToPropCentreMm;

const PROP = -0.72 * M.midsectionAftMm - 0.16 * M.propDiameterMm;

/** Where each number of a motor is taken. */
export const MOTOR_PICTURES: Record<MotorKey, Picture> = {
  shaftLengthMm: picture("motorSide", "motor", plumb([-42, 0], onMotor(50, PLATE), -160)),
  measuredAtDeg: picture("motorSwung", "motorSwung", angle(TUBE, 420, 270, 286)),
  clampOpeningMinMm: picture("motorSide", "clamp", level([-42, -78], [0, -78], -130)),
  clampOpeningMaxMm: picture("motorSide", "clamp", level([-42, -78], [0, -78], -130)),
  tiltAxisForwardMm: picture("motorSide", "clamp", level([0, 0], TUBE, 60)),
  tiltAxisAboveMm: picture("motorSide", "clamp", plumb([-42, 0], TUBE, -90)),
  steerAxisAftMm: picture("motorSide", "clamp", level(TUBE, [STEER, 20], 60)),
  pinAnglesDeg: picture("motorSwung", "motorSwung", angle(TUBE, 420, 270, 286)),
  tiltArcDeg: picture("motorTilted", "motorTilted", angle(TUBE, 430, 274, 340)),
  bracketWidthMm: picture(
    "motorAft",
    "motorAft",
    level([-M.bracketWidthMm / 2, 0], [M.bracketWidthMm / 2, 0], -230),
  ),
  bracketDropMm: picture("motorSide", "clamp", plumb([0, 0], [0, -M.bracketDropMm], 120)),
  steerPortDeg: picture("motorToPort", "motorPlan", angle([STEER, 0], 500, 180, 220)),
  steerStarboardDeg: picture("motorToStarboard", "motorPlan", angle([STEER, 0], 500, 140, 180)),
  cowlFrontMm: picture("motorSide", "head", level(onMotor(M.cowlFrontMm, 200), [STEER, 200], 270)),
  cowlAftMm: picture("motorSide", "head", level([STEER, 200], onMotor(-M.cowlAftMm, 200), 270)),
  cowlWidthMm: picture("motorPlan", "motorPlan", plumb(overMotor(-60, 150), overMotor(-60, -150), 250)),
  cowlBottomMm: picture("motorSide", "head", plumb([0, 0], onMotor(-M.cowlAftMm + 60, M.cowlBottomMm), 60)),
  cowlTopMm: picture("motorSide", "head", plumb([0, 0], onMotor(-60, M.cowlTopMm), 240)),
  midsectionFrontMm: picture(
    "motorSide",
    "head",
    level(onMotor(M.midsectionFrontMm, -30), [STEER, -30], -120),
  ),
  midsectionAftMm: picture("motorSide", "head", level([STEER, -30], onMotor(-M.midsectionAftMm, -30), -120)),
  midsectionWidthMm: picture(
    "motorAft",
    "motorAft",
    level([-M.midsectionWidthMm / 2, -10], [M.midsectionWidthMm / 2, -10], -250),
  ),
  tillerLengthMm: picture("motorSide", "head", level(onMotor(M.tillerLengthMm, 180), [STEER, 180], -150)),
  tillerHeightMm: picture("motorSide", "head", plumb([-42, 0], onMotor(380, M.tillerHeightMm), -60)),
  tillerThicknessMm: picture(
    "motorSide",
    "head",
    plumb(onMotor(540, M.tillerHeightMm), onMotor(540, M.tillerHeightMm + M.tillerThicknessMm), -120),
  ),
  tillerOffsetMm: picture(
    "motorPlan",
    "motorPlan",
    plumb(overMotor(560, M.tillerOffsetMm), overMotor(560, 0), -80),
  ),
  clampDepthMm: picture("motorSide", "clamp", plumb([-42, 0], [-49, -97], -90)),
  screwDropMm: picture("motorSide", "clamp", plumb([-42, 0], [-90, -M.screwDropMm], -80)),
  handleSwingMm: picture(
    "motorSide",
    "clamp",
    plumb([-105, -M.screwDropMm], [-105, -M.screwDropMm - 42], -50),
  ),
  powerKw: picture("motorPlated", "motor", pointer([-330, 330], [90, 285], "kW")),
  massKg: picture("motorHung", "motorHung", pointer([-180, 640], [-10, 640], "kg")),
  propDiameterMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP, SHAFT + M.propDiameterMm / 2), onMotor(PROP, SHAFT - M.propDiameterMm / 2), 120),
  ),
  plateToPropCentreMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP - 40, PLATE), onMotor(PROP - 30, SHAFT), 110),
  ),
  plateToSkegMm: picture(
    "motorSide",
    "foot",
    plumb(onMotor(PROP - 60, PLATE), onMotor(-80, PLATE - M.plateToSkegMm), 130),
  ),
};
