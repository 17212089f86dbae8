/**
 * The frames, and which way is plus. Every point's type says its frame; the functions below are the only
 * way from one frame to the next.
 *
 * - hull: [x forward along the keel line, y to port, z up]; origin where the outside face of the transom
 *   meets the datum on the centreline.
 * - bracket: [f forward, square to the transom's outside face; y to port; v up along the face]; origin at
 *   the saddle corner on the seat.
 * - leg: [X forward, Y to port, Z up along the leg]; origin on the tilt axis. Tilts with the motor.
 * - steered: [x forward, y to port, z up along the leg]; origin on the steering axis at the tilt axis'
 *   height. Tilts and steers with the motor.
 *
 * Face angle p: leg against transom face, plus = lower end swung aft. Steering angle s: plus = tiller to
 * port. Rake r: plus = top of the transom leans aft. Degrees throughout, lengths in millimetres.
 */
import { cos, sin } from "#lib/quantity/angle.ts";

declare const frame: unique symbol;
type Point<Frame extends string> = readonly [number, number, number] & { readonly [frame]?: Frame };
export type HullPoint = Point<"hull">;
export type BracketPoint = Point<"bracket">;
export type LegPoint = Point<"leg">;
export type SteeredPoint = Point<"steered">;

/** Steered to leg: turned by the steering angle about the steering axis, which stands `steerAxisAftMm` aft of the tilt axis, square to the leg. */
export function steeredToLeg([x, y, z]: SteeredPoint, steeringDeg: number, steerAxisAftMm: number): LegPoint {
  return [
    x * cos(steeringDeg) - y * sin(steeringDeg) - steerAxisAftMm,
    x * sin(steeringDeg) + y * cos(steeringDeg),
    z,
  ];
}

/** Leg to bracket: X along `cos p e_f - sin p e_v`, Z along `cos p e_v + sin p e_f`, from the tilt axis. */
export function legToBracket(
  [x, y, z]: LegPoint,
  faceAngleDeg: number,
  tiltAxis: { readonly tiltAxisForwardMm: number; readonly tiltAxisAboveMm: number },
): BracketPoint {
  return [
    tiltAxis.tiltAxisForwardMm + x * cos(faceAngleDeg) + z * sin(faceAngleDeg),
    y,
    tiltAxis.tiltAxisAboveMm - x * sin(faceAngleDeg) + z * cos(faceAngleDeg),
  ];
}

/** Bracket to hull: the seat stands `seatMm` above the datum, plumb, on a face raked by `rakeDeg`. */
export function bracketToHull([f, y, v]: BracketPoint, rakeDeg: number, seatMm: number): HullPoint {
  return [
    f * cos(rakeDeg) - v * sin(rakeDeg) - (seatMm * sin(rakeDeg)) / cos(rakeDeg),
    y,
    seatMm + f * sin(rakeDeg) + v * cos(rakeDeg),
  ];
}

/** Height along the leg above the saddle, taken with the leg at `measuredAtDeg`, as a Z of the leg frame. */
export function legHeight(
  aboveSaddleMm: number,
  measuredAtDeg: number,
  tiltAxis: { readonly tiltAxisForwardMm: number; readonly tiltAxisAboveMm: number },
): number {
  return (
    aboveSaddleMm -
    (tiltAxis.tiltAxisForwardMm * sin(measuredAtDeg) + tiltAxis.tiltAxisAboveMm * cos(measuredAtDeg))
  );
}
