/**
 * Where the anti-ventilation plate comes to stand: its height and attitude in each trim-pin hole, the
 * running hole, and the seat that puts it where it is wanted (which is the cut).
 */
import { cos, sin } from "#lib/quantity/angle.ts";
import { legHeight } from "#lib/rig/frame.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** The numbers of a motor that say where its plate is; all must be known. */
export type PlateMotor = Pick<
  Required<MotorValues>,
  "shaftLengthMm" | "measuredAtDeg" | "tiltAxisForwardMm" | "tiltAxisAboveMm" | "steerAxisAftMm"
>;

/** The face angle whose plate lies nearest to parallel with the keel line on a transom raked by `rakeDeg`; the lower hole wins a tie. */
export function runningHole(pinAnglesDeg: readonly number[], rakeDeg: number): number {
  return pinAnglesDeg.reduce((best, pin) =>
    Math.abs(pin - rakeDeg) < Math.abs(best - rakeDeg) ? pin : best,
  );
}

/**
 * Height above the seat, plumb, of the point of the leg `belowPlateMm` under the plate on the steering
 * axis; minus = below the seat. With D the distance from tilt axis to that point along the leg and
 * t = p - r: `tiltAxisForward sin r + tiltAxisAbove cos r + steerAxisAft sin t - D cos t`.
 */
export function legPointAboveSeat(
  motor: PlateMotor,
  rakeDeg: number,
  faceAngleDeg: number,
  belowPlateMm = 0,
): number {
  const distance = -legHeight(-motor.shaftLengthMm - belowPlateMm, motor.measuredAtDeg, motor);
  const trim = faceAngleDeg - rakeDeg;
  return (
    motor.tiltAxisForwardMm * sin(rakeDeg) +
    motor.tiltAxisAboveMm * cos(rakeDeg) +
    motor.steerAxisAftMm * sin(trim) -
    distance * cos(trim)
  );
}

/** The seat above the datum, plumb, that puts the plate `plateMm` above the datum with the leg at `faceAngleDeg`. */
export const seatForPlate = (
  motor: PlateMotor,
  rakeDeg: number,
  faceAngleDeg: number,
  plateMm: number,
): number => plateMm - legPointAboveSeat(motor, rakeDeg, faceAngleDeg);

/** The seat as it is now: the bottom of the notch, or the uncut top of the transom. Unknown where neither was taken. */
export const seatNow = (stern: SternValues): number | undefined => stern.seatMm ?? stern.transomTopMm;
