/**
 * Convex solids with eight corners. Everything that moves with a motor and everything it can strike is
 * described by boxes and wedges, so six flat faces meeting three at a corner are enough.
 */

/** Three coordinates in millimetres; which frame they belong to is said where they are used. */
export type Triple = readonly [number, number, number];

/**
 * A convex solid joined up like a box: corner i lies at the low (0) or high (1) end of the first, second
 * and third direction by the bits 1, 2 and 4 of i.
 */
export interface Solid {
  /** Corner i at [3 i], [3 i + 1], [3 i + 2], millimetres. */
  readonly corners: Float64Array;
  /** Outward unit normals of the six faces: low and high end of the first, second, third direction. */
  readonly normals: Float64Array;
  /** Unit normals without those parallel to an earlier one: three for a box, up to six. */
  readonly faceAxes: Float64Array;
  /** Unit directions of the edges without those parallel to an earlier one: three for a box, up to twelve. */
  readonly edgeAxes: Float64Array;
}

/** The corners of each face, in ring order, seen from no particular side. */
const FACES = [
  [0, 2, 6, 4],
  [1, 3, 7, 5],
  [0, 1, 5, 4],
  [2, 3, 7, 6],
  [0, 1, 3, 2],
  [4, 5, 7, 6],
] as const;

/** The corners at the two ends of each edge. */
const EDGES = [1, 2, 4].flatMap((bit) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((i) => (i & bit) === 0).map((i) => [i, i | bit] as const),
);

/** How far a corner may stand off the plane of its face and still pass for rounding, as a share of the solid's size. */
const FLATNESS = 1e-6;

/** What every box has in common: its faces look along the axes. */
const BOX_NORMALS = Float64Array.of(-1, 0, 0, 1, 0, 0, 0, -1, 0, 0, 1, 0, 0, 0, -1, 0, 0, 1);
const AXES = Float64Array.of(1, 0, 0, 0, 1, 0, 0, 0, 1);

/** The box between two opposite corners, given in any order. Throws as `hexahedron` does. */
export function box(from: Triple, to: Triple): Solid {
  const corners = new Float64Array(24);
  for (let k = 0; k < 3; k += 1) {
    const [low, high] = [Math.min(from[k]!, to[k]!), Math.max(from[k]!, to[k]!)];
    if (!Number.isFinite(low) || !Number.isFinite(high)) throw new RangeError(NOT_FINITE);
    if (low === high) throw new RangeError(NO_EXTENT);
    for (let i = 0; i < 8; i += 1) corners[3 * i + k] = i & (1 << k) ? high : low;
  }
  return { corners, normals: BOX_NORMALS, faceAxes: AXES, edgeAxes: AXES };
}

const NOT_FINITE = "Every coordinate of a solid must be a finite number of millimetres.";
const NO_EXTENT = "A solid needs length, breadth and height: two of its corners fall together.";

/**
 * The convex solid with these eight corners, in the order of `Solid`: 0 low low low, 1 high low low,
 * 2 low high low, 3 high high low, then 4 to 7 the same at the high end of the third direction. The three
 * directions need not be square to each other. Throws a RangeError when a coordinate is not a finite
 * number, an edge has no length, a face is not flat (within a millionth of the solid's size) or the solid
 * is not convex.
 */
export function hexahedron(corners: readonly Triple[]): Solid {
  if (corners.length !== 8) throw new RangeError(`A solid has 8 corners, not ${corners.length}.`);
  if (!corners.flat().every(Number.isFinite)) {
    throw new RangeError(NOT_FINITE);
  }
  const edges = EDGES.map(([from, to]) => unit(subtract(at(corners, to), at(corners, from))));
  if (edges.some((edge) => edge === undefined)) {
    throw new RangeError(NO_EXTENT);
  }
  const normals = FACES.map((face) => outwardNormal(corners, face));
  return {
    corners: Float64Array.from(corners.flat()),
    normals: Float64Array.from(normals.flat()),
    faceAxes: Float64Array.from(withoutParallels(normals).flat()),
    edgeAxes: Float64Array.from(withoutParallels(edges as Triple[]).flat()),
  };
}

/** Square to both diagonals of the face, turned away from the middle of the solid; checks flatness and convexity on the way. */
function outwardNormal(corners: readonly Triple[], face: readonly [number, number, number, number]): Triple {
  const [a, b, c, d] = face.map((i) => at(corners, i)) as [Triple, Triple, Triple, Triple];
  const normal = unit(cross(subtract(c, a), subtract(d, b)));
  if (normal === undefined) throw new RangeError("A face of the solid has no area.");
  const heights = corners.map((corner) => dot(normal, subtract(corner, a)));
  const allowed = FLATNESS * Math.max(...corners.map((corner) => Math.hypot(...subtract(corner, a))));
  if (face.some((i) => Math.abs(heights[i] as number) > allowed)) {
    throw new RangeError("A face of the solid is not flat.");
  }
  const others = heights.filter((_, i) => !face.includes(i));
  const inside = others.reduce((sum, height) => sum + height, 0);
  if (Math.max(...others.map(Math.abs)) <= allowed) throw new RangeError("The solid has no thickness.");
  if (others.some((height) => height * Math.sign(inside) < -allowed)) {
    throw new RangeError("The solid is not convex, or its corners are out of order.");
  }
  return inside > 0 ? [-normal[0], -normal[1], -normal[2]] : normal;
}

/** Keeps the first of every set of directions that differ by rounding or sense only. */
function withoutParallels(directions: readonly Triple[]): Triple[] {
  const kept: Triple[] = [];
  for (const direction of directions) {
    if (!kept.some((other) => Math.hypot(...cross(direction, other)) < 1e-12)) kept.push(direction);
  }
  return kept;
}

const at = (corners: readonly Triple[], i: number): Triple => corners[i] as Triple;
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const subtract = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
function unit(a: Triple): Triple | undefined {
  const length = Math.hypot(...a);
  return length > 0 ? [a[0] / length, a[1] / length, a[2] / length] : undefined;
}
