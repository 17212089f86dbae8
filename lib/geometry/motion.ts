/**
 * The two motions, for the inner loops. They work in the bracket frame with its origin moved to the tilt
 * axis, so that both motions are plain turns. Angles in radians, handed in as cosine and sine.
 *
 * A point (x, y, z) of the steered frame stands in the leg frame at
 *   X = x cos s - y sin s - c,  Y = x sin s + y cos s,  Z = z      (c: steering axis aft of the tilt axis)
 * and from there at
 *   f = X cos p + Z sin p,  y = Y,  v = -X sin p + Z cos p.
 * A tilting part is one with c = 0 whose steering is held at 0.
 */
import type { Mechanism, Obstacle, Part } from "#lib/geometry/mechanism.ts";

/** A part made ready for the search. */
export interface Mover {
  readonly part: Part;
  /** Steering axis aft of the tilt axis, mm; 0 for a tilting part. */
  readonly aft: number;
  readonly corners: Float64Array;
}

/** An obstacle made ready for the search. */
export interface Fixed {
  readonly obstacle: Obstacle;
  /** Its corners from the tilt axis. */
  readonly corners: Float64Array;
  /** How far each face stands out from the tilt axis along its normal. */
  readonly faces: Float64Array;
}

export function mover(mechanism: Mechanism, part: Part): Mover {
  return { part, aft: part.moves === "steered" ? mechanism.steerAxisAftMm : 0, corners: part.solid.corners };
}

export function fixed(mechanism: Mechanism, obstacle: Obstacle): Fixed {
  const corners = new Float64Array(24);
  for (let k = 0; k < 24; k += 3) {
    corners[k] = obstacle.solid.corners[k]! - mechanism.tiltAxisForwardMm;
    corners[k + 1] = obstacle.solid.corners[k + 1]!;
    corners[k + 2] = obstacle.solid.corners[k + 2]! - mechanism.tiltAxisAboveMm;
  }
  const { normals } = obstacle.solid;
  const faces = new Float64Array(6);
  for (let face = 0; face < 6; face++) {
    const n = 3 * face;
    // Corner 0 lies on all low faces, corner 7 on all high ones.
    const on = face % 2 === 0 ? 0 : 21;
    faces[face] =
      normals[n]! * corners[on]! + normals[n + 1]! * corners[on + 1]! + normals[n + 2]! * corners[on + 2]!;
  }
  return { obstacle, corners, faces };
}

/** Writes into `out` the points of `points` (three coordinates each) turned by steering and tilt, `aft` as above; 0 turns directions. */
export function turn(
  points: Float64Array,
  aft: number,
  cosP: number,
  sinP: number,
  cosS: number,
  sinS: number,
  out: Float64Array,
): void {
  for (let k = 0; k < points.length; k += 3) {
    const x = points[k]!;
    const y = points[k + 1]!;
    const z = points[k + 2]!;
    const forward = x * cosS - y * sinS - aft;
    out[k] = forward * cosP + z * sinP;
    out[k + 1] = x * sinS + y * cosS;
    out[k + 2] = z * cosP - forward * sinP;
  }
}
