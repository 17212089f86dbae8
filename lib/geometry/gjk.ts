/**
 * Distance between two convex solids that lie apart (the method of Gilbert, Johnson and Keerthi).
 *
 * All differences a - b of a point of the part and a point of the obstacle form a convex body; the solids
 * are as far apart as that body is from the origin. A corner of the body in any direction is a corner of
 * one solid minus a corner of the other, so the nearest point v is found by growing a simplex of such
 * corners: take the corner w lowest along v, keep the smallest face of the simplex that holds the point
 * nearest to the origin, and repeat. For every v, v·w / |v| is a distance the solids certainly keep and
 * |v| one they certainly do not exceed; the search ends when the two meet.
 *
 * The state lives in typed arrays: plain numbers outside a function would be boxed on every write.
 */

import {
  best,
  kept,
  ofObstacle,
  ofPart,
  tryPoint,
  trySegment,
  tryTetrahedron,
  tryTriangle,
  w,
} from "#lib/geometry/simplex.ts";

/** What the last call of `nearest` found: v at [0..2], from obstacle to part, and its length at [3]. */
export const found = new Float64Array(4);
/** Corners that carry v: how many at [0], then (as offsets into the 24 coordinates) the part's at [1..3] and the obstacle's at [4..6]. */
export const carriers = new Int32Array(7);
/** Share of each carrier in v. */
export const shares = new Float64Array(3);

const STEPS = 60;
/** Closer than this, mm, the solids count as touching. */
const TOUCHING = 1e-7;
/** Least gap, mm, left between the certain and the attained distance. */
const ACCURACY = 1e-9;
/**
 * Nearest points of two solids of eight corners each (24 coordinates, both in the same frame), starting
 * along (x, y, z), the expected direction from obstacle to part. True when they lie apart: `found`,
 * `carriers` and `shares` hold the answer. False when they touch or overlap.
 */
export function nearest(
  part: Float64Array,
  obstacle: Float64Array,
  x: number,
  y: number,
  z: number,
): boolean {
  addCorner(part, obstacle, 0, x, y, z);
  best[0] = Number.POSITIVE_INFINITY;
  tryPoint(0);
  return approach(part, obstacle);
}

/** The same, starting from the corners that carried the last answer: quick when the solids have moved little since. */
export function nearestAgain(part: Float64Array, obstacle: Float64Array): boolean {
  const count = carriers[0]!;
  for (let k = 0; k < count; k++) setCorner(part, obstacle, k, carriers[k + 1]!, carriers[k + 4]!);
  best[0] = Number.POSITIVE_INFINITY;
  if (count === 1) tryPoint(0);
  else if (count === 2) trySegment(0, 1);
  else tryTriangle(0, 1, 2);
  return approach(part, obstacle);
}

/** Grows and shrinks the simplex until its nearest point is that of the whole body. */
function approach(part: Float64Array, obstacle: Float64Array): boolean {
  for (let step = 0; step < STEPS; step++) {
    keep();
    const count = kept[0]!;
    const squared = best[0]!;
    if (squared <= TOUCHING * TOUCHING) return false;
    const height = addCorner(part, obstacle, count, best[1]!, best[2]!, best[3]!);
    if (squared - height <= ACCURACY * found[3]! || isRepeated(count)) break;
    kept[0] = 0;
    if (count === 1) trySegment(0, 1);
    else if (count === 2) tryTriangle(0, 1, 2);
    else if (!tryTetrahedron()) return false;
    if (kept[0] === 0) break;
  }
  return true;
}

/** Puts into `slot` the corner of the difference body lowest along (x, y, z); returns its height there times the length of (x, y, z). */
function addCorner(
  part: Float64Array,
  obstacle: Float64Array,
  slot: number,
  x: number,
  y: number,
  z: number,
): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let i = 0;
  let j = 0;
  for (let k = 0; k < 24; k += 3) {
    const a = part[k]! * x + part[k + 1]! * y + part[k + 2]! * z;
    if (a < low) {
      low = a;
      i = k;
    }
    const b = obstacle[k]! * x + obstacle[k + 1]! * y + obstacle[k + 2]! * z;
    if (b > high) {
      high = b;
      j = k;
    }
  }
  setCorner(part, obstacle, slot, i, j);
  return low - high;
}

/** Puts into `slot` the part's corner at offset i minus the obstacle's at j. */
function setCorner(part: Float64Array, obstacle: Float64Array, slot: number, i: number, j: number): void {
  ofPart[slot] = i;
  ofObstacle[slot] = j;
  w[3 * slot] = part[i]! - obstacle[j]!;
  w[3 * slot + 1] = part[i + 1]! - obstacle[j + 1]!;
  w[3 * slot + 2] = part[i + 2]! - obstacle[j + 2]!;
}

/** The simplex has the new corner already: nothing nearer is left. */
function isRepeated(slot: number): boolean {
  for (let k = 0; k < slot; k++) {
    if (ofPart[k] === ofPart[slot] && ofObstacle[k] === ofObstacle[slot]) return true;
  }
  return false;
}

/** Drops the simplex corners that do not carry v, moves the others to the front, and writes the answer so far. */
function keep(): void {
  const count = kept[0]!;
  carriers[0] = count;
  for (let k = 0; k < count; k++) {
    const from = kept[k + 1]!;
    w[3 * k] = w[3 * from]!;
    w[3 * k + 1] = w[3 * from + 1]!;
    w[3 * k + 2] = w[3 * from + 2]!;
    ofPart[k] = ofPart[from]!;
    ofObstacle[k] = ofObstacle[from]!;
    carriers[k + 1] = ofPart[k]!;
    carriers[k + 4] = ofObstacle[k]!;
    shares[k] = best[k + 4]!;
  }
  found[0] = best[1]!;
  found[1] = best[2]!;
  found[2] = best[3]!;
  found[3] = Math.sqrt(best[0]!);
}
