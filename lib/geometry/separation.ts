/**
 * Signed distance of one part from one obstacle in one pose: the distance when they lie apart, minus the
 * penetration depth when they overlap.
 */
import { carriers, found, nearest, shares } from "#lib/geometry/gjk.ts";
import { type Fixed, type Mover, turn } from "#lib/geometry/motion.ts";
import { axis, greatestGap } from "#lib/geometry/overlap.ts";

/** The last answer: unit direction from obstacle to part, bracket frame, at [0..2]; signed distance, mm, at [3]. */
export const separation = new Float64Array(4);

/** The part where it was last put, from the tilt axis. */
const standing = new Float64Array(24);
const moved = { faces: new Float64Array(18), edges: new Float64Array(36) };

/** Measures at face angle p and steering s (radians), starting along the expected direction (x, y, z) from obstacle to part. */
export function separate(
  mover: Mover,
  fixed: Fixed,
  p: number,
  s: number,
  x: number,
  y: number,
  z: number,
): void {
  const cosP = Math.cos(p);
  const sinP = Math.sin(p);
  const cosS = Math.cos(s);
  const sinS = Math.sin(s);
  turn(mover.corners, mover.aft, cosP, sinP, cosS, sinS, standing);
  if (nearest(standing, fixed.corners, x, y, z)) {
    const length = found[3]!;
    separation[0] = found[0]! / length;
    separation[1] = found[1]! / length;
    separation[2] = found[2]! / length;
    separation[3] = length;
    return;
  }
  const { faceAxes, edgeAxes } = mover.part.solid;
  const axes = {
    faces: moved.faces.subarray(0, faceAxes.length),
    edges: moved.edges.subarray(0, edgeAxes.length),
  };
  turn(faceAxes, 0, cosP, sinP, cosS, sinS, axes.faces);
  turn(edgeAxes, 0, cosP, sinP, cosS, sinS, axes.edges);
  greatestGap(standing, axes, fixed.corners, fixed.obstacle.solid);
  separation.set(axis);
}

/** Step, mm, by which overlapping solids are moved apart to see where they touch last. */
const ASIDE = 1;

/**
 * The nearest points of the last `separate`, from the tilt axis: the part's at [0..2], the obstacle's at
 * [3..5]. Overlapping solids are first moved apart along the direction found; the points that are nearest
 * then are the deepest now, and differ by the depth.
 */
export function nearestPoints(fixed: Fixed): Float64Array {
  const points = new Float64Array(6);
  const shift = separation[3]! > 0 ? 0 : ASIDE - separation[3]!;
  const shifted = standing.map((value, k) => value + shift * separation[k % 3]!);
  nearest(shifted, fixed.corners, separation[0]!, separation[1]!, separation[2]!);
  for (let k = 0; k < carriers[0]!; k++) {
    for (let axis = 0; axis < 3; axis++) {
      points[axis]! += shares[k]! * (shifted[carriers[k + 1]! + axis]! - shift * separation[axis]!);
      points[3 + axis]! += shares[k]! * fixed.corners[carriers[k + 4]! + axis]!;
    }
  }
  return points;
}
