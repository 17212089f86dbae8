import type { Solid, Triple } from "#lib/geometry/solid.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Where the two axes of a bracket stand: the tilt axis in the bracket frame, and how far aft of it, square to the leg, the steering axis. */
export interface Mechanism {
  readonly tiltAxisForwardMm: number;
  readonly tiltAxisAboveMm: number;
  readonly steerAxisAftMm: number;
}

/** One attitude of the motor. Face angle plus = lower end swung aft; steering plus = tiller to port. */
export interface Pose {
  readonly faceAngleDeg: number;
  readonly steeringDeg: number;
}

/** All angles from `from` to `to`, degrees; a single angle when the two are equal. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** A solid that moves with the motor, in the leg frame (`tilting`) or the steered frame (`steered`), and the poses in which it is out. A tilting part does not mind the steering. */
export interface Part {
  readonly id: string;
  readonly moves: "tilting" | "steered";
  readonly solid: Solid;
  readonly faceAngles: Range;
  readonly steeringAngles: Range;
}

/** A solid that stays with the boat, in the bracket frame; one without end is given cut off some 20 m away. */
export interface Obstacle {
  readonly id: string;
  readonly solid: Solid;
}

/**
 * The corners of a part in one pose, in the bracket frame [f, y, v], in the order of `Solid`: turned by
 * the steering angle about the steering axis, then by the face angle about the tilt axis.
 */
export function placed(mechanism: Mechanism, part: Part, pose: Pose): Triple[] {
  const steering = part.moves === "steered" ? pose.steeringDeg : 0;
  const aft = part.moves === "steered" ? mechanism.steerAxisAftMm : 0;
  const [cosP, sinP, cosS, sinS] = [
    cos(pose.faceAngleDeg),
    sin(pose.faceAngleDeg),
    cos(steering),
    sin(steering),
  ];
  const points: Triple[] = [];
  for (let i = 0; i < 24; i += 3) {
    const [x, y, z] = part.solid.corners.subarray(i, i + 3) as unknown as Triple;
    const forward = x * cosS - y * sinS - aft;
    points.push([
      mechanism.tiltAxisForwardMm + forward * cosP + z * sinP,
      x * sinS + y * cosS,
      mechanism.tiltAxisAboveMm - forward * sinP + z * cosP,
    ]);
  }
  return points;
}
