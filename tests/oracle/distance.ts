/**
 * Signed distance of two convex solids of eight corners by plain enumeration: a judge of the engine,
 * written without any of its code. Apart: the least of all corner-to-face and edge-to-edge distances.
 * Overlapping: the least overlap over every axis square to a face of one or to an edge of each.
 */

/** Rings of corners round the six faces of a box whose corner i lies at the high end of a direction by the bits 1, 2, 4 of i. */
const RINGS = [
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

/** A solid with what the enumeration needs: corners, outward normals and edge directions (units), three coordinates each. */
export interface Body {
  readonly corners: Float64Array;
  readonly normals: Float64Array;
  readonly edges: Float64Array;
}

/** The body with these corners (24 coordinates). */
export function body(corners: Float64Array): Body {
  const middle = [0, 1, 2].map((k) => {
    let sum = 0;
    for (let i = k; i < 24; i += 3) sum += corners[i]! / 8;
    return sum;
  });
  const normals = new Float64Array(18);
  RINGS.forEach(([i, j, , l], face) => {
    const n = unit(cross(unit(between(corners, i, j)), unit(between(corners, i, l))));
    const out = [0, 1, 2].reduce((sum, k) => sum + n[k]! * (corners[3 * i + k]! - middle[k]!), 0);
    for (let k = 0; k < 3; k++) normals[3 * face + k] = n[k]! * Math.sign(out);
  });
  const edges = Float64Array.from(ENDS.flatMap(([i, j]) => unit(between(corners, i, j))));
  return { corners, normals, edges };
}

type Vector = [number, number, number];
const between = (corners: Float64Array, i: number, j: number): Vector => [
  corners[3 * j]! - corners[3 * i]!,
  corners[3 * j + 1]! - corners[3 * i + 1]!,
  corners[3 * j + 2]! - corners[3 * i + 2]!,
];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
  const length = Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** Distance when apart, minus the penetration depth when overlapping. */
export function signedDistance(a: Body, b: Body): number {
  let gap = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 18; k += 3) {
    gap = Math.max(
      gap,
      gapAlong(a, b, a.normals[k]!, a.normals[k + 1]!, a.normals[k + 2]!),
      gapAlong(a, b, b.normals[k]!, b.normals[k + 1]!, b.normals[k + 2]!),
    );
  }
  if (gap < 0) gap = Math.max(gap, gapAlongEdges(a, b));
  return gap < 0 ? gap : apart(a, b);
}

/** The wider of the two gaps along an axis, negative when the shadows on it overlap. */
function gapAlong(a: Body, b: Body, x: number, y: number, z: number): number {
  let [aLow, aHigh, bLow, bHigh] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let k = 0; k < 24; k += 3) {
    const p = a.corners[k]! * x + a.corners[k + 1]! * y + a.corners[k + 2]! * z;
    const q = b.corners[k]! * x + b.corners[k + 1]! * y + b.corners[k + 2]! * z;
    aLow = Math.min(aLow, p);
    aHigh = Math.max(aHigh, p);
    bLow = Math.min(bLow, q);
    bHigh = Math.max(bHigh, q);
  }
  return Math.max(aLow - bHigh, bLow - aHigh);
}

function gapAlongEdges(a: Body, b: Body): number {
  let greatest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < 36; i += 3) {
    for (let j = 0; j < 36; j += 3) {
      const x = a.edges[i + 1]! * b.edges[j + 2]! - a.edges[i + 2]! * b.edges[j + 1]!;
      const y = a.edges[i + 2]! * b.edges[j]! - a.edges[i]! * b.edges[j + 2]!;
      const z = a.edges[i]! * b.edges[j + 1]! - a.edges[i + 1]! * b.edges[j]!;
      const length = Math.sqrt(x * x + y * y + z * z);
      if (length > 1e-9) greatest = Math.max(greatest, gapAlong(a, b, x / length, y / length, z / length));
    }
  }
  return greatest;
}

function apart(a: Body, b: Body): number {
  let least = Math.min(cornersToFaces(a, b), cornersToFaces(b, a));
  for (const [i, j] of ENDS) {
    for (let k = 0; k < 24; k += 3) {
      least = Math.min(least, pointToEdge(b.corners, k, a.corners, 3 * i, 3 * j));
      least = Math.min(least, pointToEdge(a.corners, k, b.corners, 3 * i, 3 * j));
    }
    for (const [k, l] of ENDS) {
      least = Math.min(least, edgeToEdge(a.corners, 3 * i, 3 * j, b.corners, 3 * k, 3 * l));
    }
  }
  return least;
}

/** Least distance of a corner of one from a face of the other it stands outside of, its foot within the face. */
function cornersToFaces(from: Body, to: Body): number {
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < 24; c += 3) {
    for (let face = 0; face < 6; face++) {
      const at = 3 * RINGS[face]![0];
      const n = 3 * face;
      const height =
        to.normals[n]! * (from.corners[c]! - to.corners[at]!) +
        to.normals[n + 1]! * (from.corners[c + 1]! - to.corners[at + 1]!) +
        to.normals[n + 2]! * (from.corners[c + 2]! - to.corners[at + 2]!);
      if (height >= 0 && height < least && isOver(from.corners, c, to, face)) least = height;
    }
  }
  return least;
}

/** The corner's foot falls within the face: it lies on the same side of all four edges of the ring. */
function isOver(corners: Float64Array, c: number, to: Body, face: number): boolean {
  const [nx, ny, nz] = [to.normals[3 * face]!, to.normals[3 * face + 1]!, to.normals[3 * face + 2]!];
  let left = 0;
  let right = 0;
  for (let k = 0; k < 4; k++) {
    const i = 3 * RINGS[face]![k]!;
    const j = 3 * RINGS[face]![(k + 1) % 4]!;
    const [ex, ey, ez] = [
      to.corners[j]! - to.corners[i]!,
      to.corners[j + 1]! - to.corners[i + 1]!,
      to.corners[j + 2]! - to.corners[i + 2]!,
    ];
    const [px, py, pz] = [
      corners[c]! - to.corners[i]!,
      corners[c + 1]! - to.corners[i + 1]!,
      corners[c + 2]! - to.corners[i + 2]!,
    ];
    const side = nx * (ey * pz - ez * py) + ny * (ez * px - ex * pz) + nz * (ex * py - ey * px);
    if (side > 0) left++;
    if (side < 0) right++;
  }
  return left === 0 || right === 0;
}

/** Distance of the lines of two segments p + t d and q + u e where both feet fall within; infinite elsewhere (an end is nearer then). */
function edgeToEdge(a: Float64Array, i: number, j: number, b: Float64Array, k: number, l: number): number {
  const [dx, dy, dz] = [a[j]! - a[i]!, a[j + 1]! - a[i + 1]!, a[j + 2]! - a[i + 2]!];
  const [ex, ey, ez] = [b[l]! - b[k]!, b[l + 1]! - b[k + 1]!, b[l + 2]! - b[k + 2]!];
  const [rx, ry, rz] = [a[i]! - b[k]!, a[i + 1]! - b[k + 1]!, a[i + 2]! - b[k + 2]!];
  const [nx, ny, nz] = [dy * ez - dz * ey, dz * ex - dx * ez, dx * ey - dy * ex];
  const square = nx * nx + ny * ny + nz * nz;
  if (square > 0) {
    const t = nx * (ey * rz - ez * ry) + ny * (ez * rx - ex * rz) + nz * (ex * ry - ey * rx);
    const u = nx * (dy * rz - dz * ry) + ny * (dz * rx - dx * rz) + nz * (dx * ry - dy * rx);
    if (t >= 0 && t <= square && u >= 0 && u <= square)
      return Math.abs(nx * rx + ny * ry + nz * rz) / Math.sqrt(square);
  }
  return Number.POSITIVE_INFINITY;
}

function pointToEdge(a: Float64Array, i: number, b: Float64Array, k: number, l: number): number {
  const [ex, ey, ez] = [b[l]! - b[k]!, b[l + 1]! - b[k + 1]!, b[l + 2]! - b[k + 2]!];
  const [px, py, pz] = [a[i]! - b[k]!, a[i + 1]! - b[k + 1]!, a[i + 2]! - b[k + 2]!];
  const t = Math.min(1, Math.max(0, (px * ex + py * ey + pz * ez) / (ex * ex + ey * ey + ez * ez)));
  return Math.sqrt((px - t * ex) ** 2 + (py - t * ey) ** 2 + (pz - t * ez) ** 2);
}
