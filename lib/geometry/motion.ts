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
  /** Distance of each corner from the steering axis. */
  readonly radii: Float64Array;
}

/** An obstacle made ready for the search. */
export interface Fixed {
  readonly obstacle: Obstacle;
  /** Corners from the tilt axis. */
  readonly corners: Float64Array;
  /** No corner is further than this from the steering axis, whatever the tilt; for `aft` of each mover. */
  readonly reach: Float64Array;
}

export function mover(mechanism: Mechanism, part: Part): Mover {
  const { corners } = part.solid;
  const aft = part.moves === "steered" ? mechanism.steerAxisAftMm : 0;
  const radii = new Float64Array(8);
  for (let i = 0; i < 8; i++) radii[i] = Math.hypot(corners[3 * i]!, corners[3 * i + 1]!);
  return { part, aft, corners, radii };
}

export function fixed(mechanism: Mechanism, obstacle: Obstacle): Fixed {
  const corners = Float64Array.from(obstacle.solid.corners);
  const reach = new Float64Array(8);
  for (let i = 0; i < 8; i++) {
    corners[3 * i]! -= mechanism.tiltAxisForwardMm;
    corners[3 * i + 2]! -= mechanism.tiltAxisAboveMm;
    const across = Math.hypot(corners[3 * i]!, corners[3 * i + 2]!) + Math.abs(mechanism.steerAxisAftMm);
    reach[i] = Math.hypot(across, corners[3 * i + 1]!);
  }
  return { obstacle, corners, reach };
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
