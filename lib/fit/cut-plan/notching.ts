/**
 * Notches in a panel round what stands in its way: a stern post, a frame. A box is cut by the panel's
 * face in a four-sided figure; what lies within it is taken out of the outline.
 */
import type { Place, Spot } from "#lib/fit/cut-plan/place.ts";
import { cross, dot, meeting, type Plane, plus, scaled, type Vector } from "#lib/fit/cut-plan/planes.ts";
import type { Obstruction } from "#lib/rig/stern.ts";

/** Something a panel is notched round. */
export interface Blocked {
  readonly label: string;
  /** Its section on the face `belowMm` under the marked one, four corners in order. */
  cornersOn(place: Place, belowMm: number): Spot[];
}

/** Low and high corner of a box. */
export const boxEnds = ({ fromMm, toMm }: Pick<Obstruction, "fromMm" | "toMm">): [Vector, Vector] => [
  [0, 1, 2].map((k) => Math.min(fromMm[k]!, toMm[k]!)) as unknown as Vector,
  [0, 1, 2].map((k) => Math.max(fromMm[k]!, toMm[k]!)) as unknown as Vector,
];

/** A post or frame (a box of the bracket frame standing up) from low to high corner, as something to notch round. */
export function blockedBy(label: string, low: Vector, high: Vector): Blocked {
  const side = (axis: 0 | 1, at: number): Plane => ({ normal: axis === 0 ? [1, 0, 0] : [0, 1, 0], at });
  const ring = [
    [low[0], low[1]],
    [high[0], low[1]],
    [high[0], high[1]],
    [low[0], high[1]],
  ] as const;
  return {
    label,
    cornersOn: (place, belowMm) => {
      const normal = cross(place.right, place.up);
      const origin = plus(place.originMm, scaled(normal, -belowMm));
      const face: Plane = { normal, at: dot(normal, origin) };
      return ring.map(([f, y]): Spot => {
        const corner = meeting(side(0, f), side(1, y), face);
        const from = plus(corner, scaled(origin, -1));
        return [dot(from, place.right), dot(from, place.up)];
      });
    },
  };
}

const area = (outline: readonly Spot[]): number =>
  outline.reduce((sum, [x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);

/** Whether a point lies within an outline of any shape. */
export function within(outline: readonly Spot[], [x, y]: Spot): boolean {
  return outline.reduce((inside, a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    if (a[1] > y === b[1] > y) return inside;
    return x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) ? !inside : inside;
  }, false);
}

type Piece = readonly [Spot, Spot];

/** The sides of one outline, split where they cross the other. */
function split(outline: readonly Spot[], other: readonly Spot[]): Piece[] {
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const shares = other
      .flatMap((c, j) => crossing(a, b, c, other[(j + 1) % other.length]!))
      .sort((one, two) => one - two);
    const stops = [0, ...shares, 1].map(
      (share): Spot => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])],
    );
    return stops.slice(1).flatMap((to, k): Piece[] => (apart(stops[k]!, to) ? [[stops[k]!, to]] : []));
  });
}

/** Where the run from a to b crosses the run from c to d, as a share of the first. */
function crossing(a: Spot, b: Spot, c: Spot, d: Spot): number[] {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const whole = ux * vy - uy * vx;
  if (Math.abs(whole) < 1e-12) return [];
  const share = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / whole;
  const other = ((c[0] - a[0]) * uy - (c[1] - a[1]) * ux) / whole;
  return share > 0 && share < 1 && other >= 0 && other <= 1 ? [share] : [];
}

const apart = (a: Spot, b: Spot): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) > 1e-6;
const middle = ([a, b]: Piece): Spot => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

/**
 * The outline less a convex figure that reaches over its border. Where the figure misses it the outline
 * stays; where it lies wholly inside, or cuts the outline in two, it throws a RangeError: that is no
 * notch.
 */
export function without(outline: readonly Spot[], figure: readonly Spot[]): Spot[] {
  const taken = area(figure) < 0 ? figure.toReversed() : figure;
  const kept = split(outline, taken).filter((piece) => !within(taken, middle(piece)));
  const added = split(taken, outline)
    .filter((piece) => within(outline, middle(piece)))
    .map(([a, b]): Piece => [b, a]);
  if (added.length === 0) return [...outline];
  const pieces = [...kept, ...added];
  const ring: Piece[] = [pieces.shift()!];
  while (apart(ring.at(-1)![1], ring[0]![0])) {
    const next = pieces.findIndex(([from]) => !apart(from, ring.at(-1)![1]));
    if (next < 0) throw new RangeError("What stands in the way does not leave a part in one piece.");
    ring.push(...pieces.splice(next, 1));
  }
  if (pieces.length > 0) throw new RangeError("What stands in the way does not reach the part's edge.");
  return ring.map(([from]) => from);
}
