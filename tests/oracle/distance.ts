/**
 * Signed distance of two convex solids of eight corners by plain enumeration, as a judge of the engine and
 * written without any of its code: apart, the least of all corner-to-face and edge-to-edge distances;
 * overlapping, the least overlap over every axis square to a face of one or to an edge of each.
 */
import type { Triple } from "#lib/geometry/solid.ts";

type Corners = readonly Triple[];

/** Rings of corners round the six faces of a box whose corner i lies at the high end of a direction by the bits 1, 2, 4 of i. */
export const RINGS = [
  [0, 2, 6, 4],
  [1, 5, 7, 3],
  [0, 4, 5, 1],
  [2, 3, 7, 6],
  [0, 1, 3, 2],
  [4, 6, 7, 5],
] as const;
const ENDS = [
  [0, 1],
  [2, 3],
  [4, 5],
  [6, 7],
  [0, 2],
  [1, 3],
  [4, 6],
  [5, 7],
  [0, 4],
  [1, 5],
  [2, 6],
  [3, 7],
] as const;

const minus = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Distance when apart, minus the penetration depth when overlapping. */
export function signedDistance(a: Corners, b: Corners): number {
  const gap = greatestAxisGap(a, b);
  return gap < 0 ? gap : apart(a, b);
}

/** Greatest gap along any face normal or edge-by-edge axis; below 0 exactly when the solids overlap. */
function greatestAxisGap(a: Corners, b: Corners): number {
  const axes = [...faceNormals(a), ...faceNormals(b)];
  for (const edge of edgeDirections(a)) for (const other of edgeDirections(b)) axes.push(cross(edge, other));
  let greatest = Number.NEGATIVE_INFINITY;
  for (const axis of axes) {
    const length = Math.sqrt(dot(axis, axis));
    if (length < 1e-9) continue;
    const heights = a.map((corner) => dot(corner, axis) / length);
    const others = b.map((corner) => dot(corner, axis) / length);
    greatest = Math.max(
      greatest,
      Math.min(...heights) - Math.max(...others),
      Math.min(...others) - Math.max(...heights),
    );
  }
  return greatest;
}

const unit = (a: Triple): Triple => {
  const length = Math.sqrt(dot(a, a));
  return [a[0] / length, a[1] / length, a[2] / length];
};
const faceNormals = (corners: Corners): Triple[] =>
  RINGS.map(([i, j, , l]) =>
    unit(cross(unit(minus(corners[j]!, corners[i]!)), unit(minus(corners[l]!, corners[i]!)))),
  );
const edgeDirections = (corners: Corners): Triple[] =>
  ENDS.map(([i, j]) => unit(minus(corners[j]!, corners[i]!)));

function apart(a: Corners, b: Corners): number {
  let least = Number.POSITIVE_INFINITY;
  for (const corner of a) for (const ring of RINGS) least = Math.min(least, cornerToFace(corner, b, ring));
  for (const corner of b) for (const ring of RINGS) least = Math.min(least, cornerToFace(corner, a, ring));
  for (const [i, j] of ENDS) {
    for (const [k, l] of ENDS) least = Math.min(least, edgeToEdge(a[i]!, a[j]!, b[k]!, b[l]!));
  }
  return least;
}

/** Distance to the face's plane where the foot falls within the face; infinite elsewhere (an edge is nearer then). */
function cornerToFace(point: Triple, corners: Corners, ring: readonly number[]): number {
  const [p0, p1, , p3] = ring.map((i) => corners[i]!) as [Triple, Triple, Triple, Triple];
  const normal = unit(cross(minus(p1, p0), minus(p3, p0)));
  const sides = ring.map((i, k) => {
    const from = corners[i]!;
    const to = corners[ring[(k + 1) % 4]!]!;
    return dot(cross(minus(to, from), minus(point, from)), normal);
  });
  if (Math.min(...sides) < 0 && Math.max(...sides) > 0) return Number.POSITIVE_INFINITY;
  return Math.abs(dot(normal, minus(point, p0)));
}

/** Distance of two segments p + t d, q + u e: both lines' nearest points when they fall within, else the nearer of the four ends to the other segment. */
function edgeToEdge(p: Triple, pEnd: Triple, q: Triple, qEnd: Triple): number {
  const d = minus(pEnd, p);
  const e = minus(qEnd, q);
  const r = minus(p, q);
  const normal = cross(d, e);
  const square = dot(normal, normal);
  if (square > 1e-18 * dot(d, d) * dot(e, e)) {
    const t = dot(cross(e, r), normal) / square;
    const u = dot(cross(d, r), normal) / square;
    if (t >= 0 && t <= 1 && u >= 0 && u <= 1) return Math.abs(dot(r, normal)) / Math.sqrt(square);
  }
  return Math.min(
    pointToEdge(p, q, e),
    pointToEdge(pEnd, q, e),
    pointToEdge(q, p, d),
    pointToEdge(qEnd, p, d),
  );
}

function pointToEdge(point: Triple, from: Triple, along: Triple): number {
  const offset = minus(point, from);
  const t = Math.min(1, Math.max(0, dot(offset, along) / dot(along, along)));
  return Math.hypot(offset[0] - t * along[0], offset[1] - t * along[1], offset[2] - t * along[2]);
}
