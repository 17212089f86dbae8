/** Where two solids overlap, for the drawing: the corners of what they have in common. */
import type { Solid, Triple } from "#lib/geometry/solid.ts";

/** Corners at the two ends of each edge, and the four corners of each face, by the bits of `Solid`. */
const EDGES = [1, 2, 4].flatMap((bit) =>
  [0, 1, 2, 3, 4, 5, 6, 7].filter((i) => (i & bit) === 0).map((i) => [i, i | bit] as const),
);
const FACES = [1, 2, 4].flatMap((bit) =>
  [0, bit].map((end) => [0, 1, 2, 3, 4, 5, 6, 7].filter((i) => (i & bit) === end)),
);

/** The corners of a solid as points. */
export const cornersOf = ({ corners }: Pick<Solid, "corners">): Triple[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((i): Triple => [corners[3 * i]!, corners[3 * i + 1]!, corners[3 * i + 2]!]);

const less = (a: Triple, b: Triple): Triple => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const across = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** How far outside each face of a solid a point lies; minus or 0 for all six = inside. */
function faces(corners: readonly Triple[]): ((point: Triple) => number)[] {
  const middle = [0, 1, 2].map((k) => corners.reduce((sum, c) => sum + c[k]! / 8, 0)) as unknown as Triple;
  return FACES.map(([a, b, c]) => {
    const corner = corners[a!]!;
    const normal = across(less(corners[b!]!, corner), less(corners[c!]!, corner));
    const outward = Math.sign(dot(normal, less(corner, middle)));
    return (point) => outward * dot(normal, less(point, corner));
  });
}

/** The part of a segment that lies inside all faces, by its two ends; nothing where it passes by. */
function inside(a: Triple, b: Triple, outsideness: readonly ((point: Triple) => number)[]): Triple[] {
  let [from, to] = [0, 1];
  for (const out of outsideness) {
    const [here, there] = [out(a), out(b)];
    if (here > 0 && there > 0) return [];
    const t = here / (here - there);
    if (here > 0) from = Math.max(from, t);
    else if (there > 0) to = Math.min(to, t);
  }
  const at = (t: number): Triple => [
    a[0] + t * (b[0] - a[0]),
    a[1] + t * (b[1] - a[1]),
    a[2] + t * (b[2] - a[2]),
  ];
  return from <= to ? [at(from), at(to)] : [];
}

/** Points whose convex hull is what two box-like solids have in common; empty where they do not touch. Corners in the order of `Solid`. */
export function commonVolume(first: readonly Triple[], second: readonly Triple[]): Triple[] {
  const cut = (edges: readonly Triple[], by: readonly Triple[]) => {
    const outsideness = faces(by);
    return EDGES.flatMap(([i, j]) => inside(edges[i]!, edges[j]!, outsideness));
  };
  return [...cut(first, second), ...cut(second, first)];
}
