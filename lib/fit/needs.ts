/**
 * The smallest dimensions that meet their limits with this motor, whatever the stern has now. Where a
 * seat is cut they are asked of that seat; where nothing is cut yet, of the seat that would put the
 * plate in the middle of its window: then they are the answer to "what must I cut".
 */
import { known, limitOf } from "#lib/checks/check.ts";
import { runningHoleNumber } from "#lib/checks/plate-height.ts";
import { handleSweep } from "#lib/checks/screw-handles.ts";
import type { ReportNeeds } from "#lib/fit/report.ts";
import { leastSlide } from "#lib/geometry/slide.ts";
import { cos } from "#lib/quantity/angle.ts";
import { LEG, type Mounting, type Rig } from "#lib/rig/mounting.ts";
import {
  bulkhead,
  cheek,
  isUncut,
  OBSTACLE_KEYS,
  type Outline,
  type Side,
  sole,
  solidOf,
  wellSide,
} from "#lib/rig/obstacles.ts";
import { seatForPlate } from "#lib/rig/plate.ts";

/** No notch, well or drop is sought beyond this, mm. */
const REACH_MM = 3000;

/** Seats that put the plate at the high and the low end of its window, and midway between. */
export function seatNeed(rig: Rig): { low: number; middle: number; high: number } | undefined {
  const { motor, stern } = rig;
  const hole = runningHoleNumber(rig);
  const leg = known(
    motor,
    "shaftLengthMm",
    "measuredAtDeg",
    "tiltAxisForwardMm",
    "tiltAxisAboveMm",
    "steerAxisAftMm",
  );
  if (!leg || hole === undefined) return undefined;
  const pin = motor.pinAnglesDeg![hole]!;
  const seatAt = (plateMm: number) => seatForPlate(leg, stern.rakeDeg!, pin, plateMm);
  const [low, high] = [seatAt(limitOf(rig, "plateLowMm").value), seatAt(limitOf(rig, "plateHighMm").value)];
  return { low, high, middle: (low + high) / 2 };
}

/** The seat the needs are asked of: the one that is cut, else the one to be cut. */
export const seatAsked = (rig: Rig, middle: number | undefined): number | undefined =>
  isUncut(rig.stern) ? middle : (rig.stern.seatMm ?? middle);

/** Every part known: only then is a need more than a guess. */
const complete = (mounting: Mounting): boolean => mounting.missing.length === 0 && mounting.parts.length > 0;

function slid(
  mounting: Mounting,
  outlineAt: (position: number) => Outline,
  limitMm: number,
  from: number,
  parts = mounting.parts,
): number | undefined {
  if (!mounting.mechanism || !complete(mounting)) return undefined;
  const range = { from, to: REACH_MM };
  const at = (position: number) => solidOf(outlineAt(position));
  return leastSlide(mounting.mechanism, parts, at, limitMm, range, { jumps: false }).position;
}

/** Narrowest notch that takes the bracket and leaves the moving motor its room each side; the cheeks are as deep as the notch. */
export function notchWidthNeed(mounting: Mounting, seatMm: number, beyondMm = 0): number | undefined {
  const { motor, stern } = mounting.rig;
  const transom = known(stern, "transomThicknessMm", "rakeDeg", "transomTopMm");
  if (!transom) return undefined;
  const room = limitOf(mounting.rig, "steeringRoomMm").value + beyondMm;
  const eachSide = limitOf(mounting.rig, "bracketMm").value + beyondMm + (stern.notchCornerRadiusMm ?? 0);
  const least = (motor.bracketWidthMm ?? 0) / 2 + eachSide;
  const half = (side: Side, from: number) =>
    slid(mounting, (position) => cheek(side, position, transom, seatMm), room, from);
  const port = half("port", least);
  const starboard = port === undefined ? undefined : half("starboard", port);
  return starboard === undefined ? undefined : 2 * starboard;
}

/** Least drop from the seat to the sole: the trade's least, the clamps, the handles, and the moving motor. */
export function soleDropNeed(mounting: Mounting, beyondMm = 0): number | undefined {
  const { rig } = mounting;
  const { transomThicknessMm, soleAngleDeg = 90 } = rig.stern;
  const hands = known(rig.motor, "screwDropMm", "handleSwingMm", "clampDepthMm");
  const bolted = rig.motor.fixing === "bolted";
  if (transomThicknessMm === undefined || (!hands && !bolted)) return undefined;
  const standing = Math.max(
    limitOf(rig, "soleDropMm").value,
    ...(hands && !bolted
      ? [
          handleSweep(rig) + limitOf(rig, "screwHandlesMm").value,
          hands.clampDepthMm + limitOf(rig, "clampRoomMm").value,
        ]
      : []),
  );
  return slid(
    mounting,
    (soleDropMm) => sole({ transomThicknessMm, soleAngleDeg, soleDropMm }),
    limitOf(rig, "soleRoomMm").value + beyondMm,
    standing + beyondMm,
    mounting.parts.filter(({ id }) => id !== LEG),
  );
}

/**
 * Shortest well fore and aft. Where none is built its sole is taken to lie at the needed drop, square to
 * the transom, and its front to rise to the level of the uncut top.
 */
export function wellDepthNeed(
  mounting: Mounting,
  seatMm: number,
  soleDropMm: number | undefined,
  beyondMm = 0,
): number | undefined {
  const { rig } = mounting;
  const drop = rig.stern.soleDropMm ?? soleDropMm;
  const transom = known(rig.stern, "transomThicknessMm", "rakeDeg", "transomTopMm");
  if (!transom || drop === undefined) return undefined;
  const front = rig.stern.wellFrontHeightMm ?? drop + (transom.transomTopMm - seatMm) / cos(transom.rakeDeg);
  const well = {
    ...transom,
    soleDropMm: drop,
    soleAngleDeg: rig.stern.soleAngleDeg ?? 90,
    wellFrontHeightMm: Math.max(0, front),
  };
  return slid(
    mounting,
    (wellDepthMm) => bulkhead({ ...well, wellDepthMm }),
    limitOf(rig, "bulkheadRoomMm").value + beyondMm,
    limitOf(rig, "wellDepthMm").value + beyondMm,
  );
}

/** How much wider the well must be on both sides for the moving motor to keep its room, mm of width; 0 where it already does. */
export function wellWideningNeed(mounting: Mounting, beyondMm = 0): number | undefined {
  const { rig } = mounting;
  const well = known(rig.stern, ...OBSTACLE_KEYS.side);
  if (!well) return undefined;
  const room = limitOf(rig, "sideRoomMm").value + beyondMm;
  const each = (side: Side, from: number) =>
    slid(mounting, (moreMm) => wellSide(side, well, moreMm), room, from);
  const port = each("port", 0);
  const starboard = port === undefined ? undefined : each("starboard", port);
  return starboard === undefined ? undefined : 2 * starboard;
}

/** All the needs that can be told. */
export function needsOf(mounting: Mounting): ReportNeeds {
  const { rig } = mounting;
  const seats = seatNeed(rig);
  const seat = seatAsked(rig, seats?.middle);
  const top = rig.stern.transomTopMm;
  const soleDropMm = soleDropNeed(mounting);
  return {
    ...(seats && { seatMm: seats.middle, seatRangeMm: [seats.low, seats.high] as const }),
    ...(seats && top !== undefined && { notchDepthMm: top - seats.middle }),
    ...(seat !== undefined && {
      notchWidthMm: notchWidthNeed(mounting, seat),
      wellDepthMm: wellDepthNeed(mounting, seat, soleDropMm),
    }),
    soleDropMm,
  };
}
