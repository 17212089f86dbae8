/** Where each number of a stern is taken. */
import type { Flat } from "#lib/draw/drawing.ts";
import { inSternWell, onStern, overSternWell, sternFromAft, wellFromAft } from "#lib/draw/schematic.ts";
import { angle, level, type Picture, picture, plumb, pointer, straight } from "#lib/draw/taken.ts";
import { TYPICAL_STERN as S } from "#lib/draw/typical.ts";
import { cos } from "#lib/quantity/angle.ts";
import type { SternKey } from "#lib/rig/stern.ts";

const FACE_FOOT = onStern(0, (S.keelDepthMm - S.seatMm) / cos(S.rakeDeg));

const HALF_CUT = S.notchWidthMm / 2;

const CORNER: Flat = [HALF_CUT - S.notchCornerRadiusMm, S.seatMm + S.notchCornerRadiusMm * cos(S.rakeDeg)];

const DRAIN = overSternWell(60, -330);

/** Where each number of a stern is taken. */
export const STERN_PICTURES: Record<SternKey, Picture> = {
  rakeDeg: picture("sternSide", "stern", angle(FACE_FOOT, 480, 90 - S.rakeDeg, 90)),
  transomThicknessMm: picture(
    "sternSide",
    "seat",
    straight(onStern(S.transomThicknessMm, -70), onStern(0, -70)),
  ),
  transomTopMm: picture(
    "sternSide",
    "stern",
    plumb([-60, 0], onStern(0, (S.transomTopMm - S.seatMm) / cos(S.rakeDeg)), 130),
  ),
  keelDepthMm: picture("sternSide", "heel", plumb([-170, 0], [-170, S.keelDepthMm], 0)),
  seatMm: picture("sternSide", "stern", plumb([-60, 0], onStern(0, 0), 130)),
  plateHighMm: picture("sternPlates", "plates", plumb([300, 0], [300, 45], 0)),
  plateLowMm: picture("sternPlates", "plates", plumb([300, 0], [300, -75], 0)),
  notchWidthMm: picture("sternAft", "sternAft", level([-HALF_CUT, 540], [HALF_CUT, 540], 90)),
  notchCornerRadiusMm: picture(
    "sternAft",
    "notchCorner",
    straight(CORNER, [
      CORNER[0] + Math.SQRT1_2 * S.notchCornerRadiusMm,
      CORNER[1] - Math.SQRT1_2 * S.notchCornerRadiusMm,
    ]),
  ),
  soleDropMm: picture(
    "sternSide",
    "well",
    straight(onStern(S.transomThicknessMm, 0), onStern(S.transomThicknessMm, -S.soleDropMm), -90),
  ),
  soleAngleDeg: picture(
    "sternSide",
    "well",
    angle(inSternWell(0, 0), 150, 90 - S.rakeDeg, 90 - S.rakeDeg + S.soleAngleDeg),
  ),
  wellDepthMm: picture("sternSide", "well", straight(inSternWell(0, 0), inSternWell(S.wellDepthMm, 0), -70)),
  wellFrontHeightMm: picture(
    "sternSide",
    "well",
    straight(inSternWell(S.wellDepthMm, 0), inSternWell(S.wellDepthMm, S.wellFrontHeightMm), -80),
  ),
  wellWidthAftMm: picture(
    "sternPlan",
    "sternPlan",
    straight(overSternWell(20, S.wellWidthAftMm / 2), overSternWell(20, -S.wellWidthAftMm / 2)),
  ),
  wellWidthFrontMm: picture(
    "sternPlan",
    "sternPlan",
    straight(
      overSternWell(S.wellDepthMm, S.wellWidthFrontMm / 2),
      overSternWell(S.wellDepthMm, -S.wellWidthFrontMm / 2),
      90,
    ),
  ),
  sideFlareDeg: picture("wellAcross", "across", angle(wellFromAft(-S.wellWidthAftMm / 2, 0), 210, 75, 90)),
  wellSideHeightMm: picture(
    "wellAcross",
    "across",
    plumb(
      wellFromAft(S.wellWidthAftMm / 2, 0),
      wellFromAft(S.wellWidthAftMm / 2 + 70, S.wellSideHeightMm),
      -70,
    ),
  ),
  deckThicknessMm: picture(
    "sternSide",
    "well",
    straight(inSternWell(300, -S.deckThicknessMm), inSternWell(300, 0)),
  ),
  drainDiameterMm: picture(
    "sternPlan",
    "drain",
    level([DRAIN[0] - 42, DRAIN[1]], [DRAIN[0] + 42, DRAIN[1]], 0),
  ),
  lengthOverallMm: picture("boatSide", "boat", level([-4200, 720], [110, 520], 180)),
  transomWidthMm: picture(
    "sternAft",
    "sternAft",
    level(sternFromAft(700, S.transomTopMm), sternFromAft(-700, S.transomTopMm), 100),
  ),
  beamMm: picture("boatPlan", "boatPlan", plumb([-1600, -790], [-1600, 790], 0)),
  waterlineMm: picture("sternAfloat", "stern", plumb([180, 0], [180, 230], 0)),
  waterlineLengthMm: picture("boatSide", "boat", level([-3890, 200], [40, 200], -380)),
  waterlineBeamMm: picture("boatPlan", "boatPlan", plumb([-1350, -640], [-1350, 640], 0)),
  ratedPowerKw: picture("sternLabelled", "sternAft", pointer([-480, -70], [360, 400], "kW")),
  ratedMotorMassKg: picture("sternLabelled", "sternAft", pointer([-480, -70], [360, 400], "kg")),
  ratedTotalMassKg: picture("sternLabelled", "sternAft", pointer([-480, -70], [360, 366], "kg")),
};
