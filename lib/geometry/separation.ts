/**
 * Signed distance of one part from one obstacle in one pose: the distance when they lie apart, minus the
 * penetration depth when they overlap.
 */
import { carriers, found, nearest, nearestAgain, shares } from "#lib/geometry/gjk.ts";
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
  stand(mover, p, s);
  finish(mover, fixed, nearest(standing, fixed.corners, x, y, z));
}

/** The same for a part and an obstacle measured last in another pose: starts from the corners nearest then. */
export function separateAgain(mover: Mover, fixed: Fixed, p: number, s: number): void {
  stand(mover, p, s);
  finish(mover, fixed, nearestAgain(standing, fixed.corners));
}

/** Cosine and sine of p and s of the pose. */
const turned = new Float64Array(4);

function stand(mover: Mover, p: number, s: number): void {
  turned[0] = Math.cos(p);
  turned[1] = Math.sin(p);
  turned[2] = Math.cos(s);
  turned[3] = Math.sin(s);
  turn(mover.corners, mover.aft, turned[0]!, turned[1]!, turned[2]!, turned[3]!, standing);
}

function finish(mover: Mover, fixed: Fixed, apart: boolean): void {
  if (apart) {
    const length = found[3]!;
    separation[0] = found[0]! / length;
    separation[1] = found[1]! / length;
    separation[2] = found[2]! / length;
    separation[3] = length;
  } else overlapping(mover, fixed);
}

function overlapping(mover: Mover, fixed: Fixed): void {
  const { faceAxes, edgeAxes } = mover.part.solid;
  const axes = {
    faces: moved.faces.subarray(0, faceAxes.length),
    edges: moved.edges.subarray(0, edgeAxes.length),
  };
  turn(faceAxes, 0, turned[0]!, turned[1]!, turned[2]!, turned[3]!, axes.faces);
  turn(edgeAxes, 0, turned[0]!, turned[1]!, turned[2]!, turned[3]!, axes.edges);
  greatestGap(standing, axes, fixed.corners, fixed.obstacle.solid);
  separation.set(axis);
}

/** Step, mm, by which overlapping solids are moved apart to see where they touch last. */
const ASIDE = 1;

/**
 * The nearest points of the last measurement, from the tilt axis: the part's at [0..2], the obstacle's at
 * [3..5]. Overlapping solids are moved apart along the direction found; the points that are nearest then
 * are the deepest now, and differ by the depth.
 */
export function nearestPoints(fixed: Fixed): Float64Array {
  const [x, y, z, mm] = [separation[0]!, separation[1]!, separation[2]!, separation[3]!];
  const points = new Float64Array(6);
  const shift = mm > 0 ? 0 : ASIDE - mm;
  if (shift > 0) {
    for (let k = 0; k < 24; k++) standing[k]! += shift * separation[k % 3]!;
    nearest(standing, fixed.corners, x, y, z);
  }
  for (let k = 0; k < carriers[0]!; k++) {
    for (let way = 0; way < 3; way++) {
      points[way]! += shares[k]! * (standing[carriers[k + 1]! + way]! - shift * separation[way]!);
      points[3 + way]! += shares[k]! * fixed.corners[carriers[k + 4]! + way]!;
    }
  }
  return points;
}
