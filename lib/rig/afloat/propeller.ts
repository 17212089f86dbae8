/**
 * Where propeller and skeg come to lie below the water, down, running and kicked up. The shaft is taken
 * square to the leg, so the blade tips lie along the leg above and below the shaft's centre. `propAftMm`
 * is how far aft of the steering axis the blades turn; not a number of the record, 0 unless given.
 */
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import { aboveWater, type Level } from "#lib/rig/afloat/floating.ts";
import type { Seat } from "#lib/rig/afloat/freeboard.ts";
import { type HullPoint, legHeight } from "#lib/rig/frame.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { legPointAboveSeat, type PlateMotor } from "#lib/rig/plate.ts";

export type PropellerMotor = PlateMotor &
  Required<Pick<MotorValues, "plateToPropCentreMm" | "propDiameterMm" | "plateToSkegMm">>;

/** A motor on its seat, with the leg at an angle to the transom's face. */
export interface Hang extends Seat {
  readonly faceAngleDeg: number;
}

/** The point of the leg `belowPlateMm` under the plate and `aftMm` aft of the steering axis, in the hull's frame. */
export function legPoint(motor: PlateMotor, hang: Hang, belowPlateMm: number, aftMm = 0): HullPoint {
  const { rakeDeg: r, seatMm, faceAngleDeg } = hang;
  const trim = faceAngleDeg - r;
  const down = -legHeight(-motor.shaftLengthMm - belowPlateMm, motor.measuredAtDeg, motor);
  const axisX = motor.tiltAxisForwardMm * cos(r) - motor.tiltAxisAboveMm * sin(r) - seatMm * tan(r);
  return [
    axisX - (motor.steerAxisAftMm + aftMm) * cos(trim) - down * sin(trim),
    0,
    seatMm + legPointAboveSeat(motor, r, faceAngleDeg, belowPlateMm) + aftMm * sin(trim),
  ];
}

/** The points of a leg that matter afloat. */
export type LegMark = "plate" | "upper tip" | "shaft" | "lower tip" | "skeg";

/** Those points in the hull's frame; the blades `propAftMm` aft of the steering axis. */
export function legMarks(motor: PropellerMotor, hang: Hang, propAftMm = 0): Record<LegMark, HullPoint> {
  const { plateToPropCentreMm: shaft, propDiameterMm, plateToSkegMm } = motor;
  return {
    plate: legPoint(motor, hang, 0),
    "upper tip": legPoint(motor, hang, shaft - propDiameterMm / 2, propAftMm),
    shaft: legPoint(motor, hang, shaft, propAftMm),
    "lower tip": legPoint(motor, hang, shaft + propDiameterMm / 2, propAftMm),
    skeg: legPoint(motor, hang, plateToSkegMm),
  };
}

/** Depths below a water level, mm, plumb; minus = above it. */
export function depths(
  motor: PropellerMotor,
  hang: Hang,
  level: Level,
  propAftMm = 0,
): Record<LegMark, number> {
  const marks = legMarks(motor, hang, propAftMm);
  const depth = (mark: LegMark) => 0 - aboveWater(level, marks[mark]);
  return {
    plate: depth("plate"),
    "upper tip": depth("upper tip"),
    shaft: depth("shaft"),
    "lower tip": depth("lower tip"),
    skeg: depth("skeg"),
  };
}

/** The water a boat on the plane leaves behind its transom: level with the bottom beside the keel and parallel to it, near the transom (common practice, no source). */
export const runningLevel = (keelDepthMm: number): Level => ({ atTransomMm: keelDepthMm, bowUpDeg: 0 });

const LOW_MARKS = ["upper tip", "lower tip", "skeg"] as const satisfies readonly LegMark[];

/** Draught with the motor as it hangs, mm, and what draws it: skeg, a blade tip, or the keel at the transom. */
export function draught(
  motor: PropellerMotor,
  hang: Hang,
  level: Level,
  propAftMm = 0,
): { readonly mm: number; readonly at: "keel" | (typeof LOW_MARKS)[number] } {
  const below = depths(motor, hang, level, propAftMm);
  const keel = { mm: 0 - aboveWater(level, [0, 0, 0]), at: "keel" as const };
  return LOW_MARKS.map((at) => ({ mm: below[at], at })).reduce<ReturnType<typeof draught>>(
    (deepest, mark) => (mark.mm > deepest.mm ? mark : deepest),
    keel,
  );
}

/** Height of the lowest of skeg and blades above the keel line, square to it, mm: clearance on a beach when kicked up; minus = below. */
export function aboveKeelLine(
  motor: PropellerMotor,
  hang: Hang,
  propAftMm = 0,
): { readonly mm: number; readonly at: (typeof LOW_MARKS)[number] } {
  const marks = legMarks(motor, hang, propAftMm);
  return LOW_MARKS.map((at) => ({ mm: marks[at][2], at })).reduce((lowest, mark) =>
    mark.mm < lowest.mm ? mark : lowest,
  );
}
