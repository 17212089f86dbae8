/**
 * How deep two convex solids overlap (the separating-axis test, in full).
 *
 * The gap along a unit direction n is the least n·a of the part minus the greatest n·b of the obstacle:
 * moving the part by -gap along n parts them. For two overlapping solids with flat faces the greatest gap
 * over all n, minus the penetration depth, is met where n is square to a face of one or to an edge of each.
 */
import type { Solid } from "#lib/geometry/solid.ts";

/** What the last call found: the direction of the greatest gap, from obstacle to part, at [0..2], and that gap at [3]. */
export const axis = new Float64Array(4);

/** Directions square to faces and edges of a moved solid: face axes first. */
export interface MovedAxes {
  readonly faces: Float64Array;
  readonly edges: Float64Array;
}

/**
 * Greatest gap of two solids over the directions that can decide whether and how deep they overlap;
 * negative is the penetration depth. All arguments in one frame.
 */
export function greatestGap(
  part: Float64Array,
  partAxes: MovedAxes,
  obstacle: Float64Array,
  obstacleSolid: Solid,
): number {
  axis[3] = Number.NEGATIVE_INFINITY;
  const { faces, edges } = partAxes;
  const { faceAxes, edgeAxes } = obstacleSolid;
  for (let k = 0; k < faces.length; k += 3) tryAxis(part, obstacle, faces[k]!, faces[k + 1]!, faces[k + 2]!);
  for (let k = 0; k < faceAxes.length; k += 3) {
    tryAxis(part, obstacle, faceAxes[k]!, faceAxes[k + 1]!, faceAxes[k + 2]!);
  }
  for (let i = 0; i < edges.length; i += 3) {
    for (let j = 0; j < edgeAxes.length; j += 3) tryEdges(part, obstacle, edges, i, edgeAxes, j);
  }
  return axis[3]!;
}

/** The direction square to two edges; edges that run parallel have none of their own. */
function tryEdges(
  part: Float64Array,
  obstacle: Float64Array,
  a: Float64Array,
  i: number,
  b: Float64Array,
  j: number,
): void {
  const x = a[i + 1]! * b[j + 2]! - a[i + 2]! * b[j + 1]!;
  const y = a[i + 2]! * b[j]! - a[i]! * b[j + 2]!;
  const z = a[i]! * b[j + 1]! - a[i + 1]! * b[j]!;
  const length = Math.sqrt(x * x + y * y + z * z);
  if (length > 1e-9) tryAxis(part, obstacle, x / length, y / length, z / length);
}

/** Keeps the unit direction, or its reverse, if the gap along it is greater than along the best so far. */
function tryAxis(part: Float64Array, obstacle: Float64Array, x: number, y: number, z: number): void {
  let partLow = Number.POSITIVE_INFINITY;
  let partHigh = Number.NEGATIVE_INFINITY;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) {
    const a = part[k]! * x + part[k + 1]! * y + part[k + 2]! * z;
    if (a < partLow) partLow = a;
    if (a > partHigh) partHigh = a;
    const b = obstacle[k]! * x + obstacle[k + 1]! * y + obstacle[k + 2]! * z;
    if (b < low) low = b;
    if (b > high) high = b;
  }
  const along = partLow - high;
  const against = low - partHigh;
  if (along <= axis[3]! && against <= axis[3]!) return;
  const sense = along >= against ? 1 : -1;
  axis[0] = sense * x;
  axis[1] = sense * y;
  axis[2] = sense * z;
  axis[3] = Math.max(along, against);
}
