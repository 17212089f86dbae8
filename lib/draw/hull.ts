import type { Flat } from "#lib/draw/drawing.ts";

/** Twice the signed area of the triangle a, b, c: plus when it turns anticlockwise. */
const turn = (a: Flat, b: Flat, c: Flat): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function chain(points: readonly Flat[]): Flat[] {
  const kept: Flat[] = [];
  for (const point of points) {
    while (kept.length >= 2 && turn(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
    kept.push(point);
  }
  return kept.slice(0, -1);
}

/**
 * Convex outline around points, anticlockwise: the silhouette of a convex body whose corners were thrown
 * onto the drawing plane. Lower chain left to right, then upper chain back.
 */
export function silhouette(points: readonly Flat[]): Flat[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/**
 * What two convex outlines (anticlockwise) have in common, anticlockwise; empty when they do not overlap.
 * The first is cut by each edge of the second in turn.
 */
export function overlap(first: readonly Flat[], second: readonly Flat[]): Flat[] {
  let rest: Flat[] = [...first];
  second.forEach((a, i) => {
    rest = leftOf(rest, a, second[(i + 1) % second.length]!);
  });
  return rest;
}

function leftOf(points: readonly Flat[], a: Flat, b: Flat): Flat[] {
  return points.flatMap((point, i) => {
    const next = points[(i + 1) % points.length]!;
    const [here, there] = [turn(a, b, point), turn(a, b, next)];
    const kept = here >= 0 ? [point] : [];
    if (here >= 0 === there >= 0) return kept;
    const t = here / (here - there);
    return [...kept, [point[0] + t * (next[0] - point[0]), point[1] + t * (next[1] - point[1])] as Flat];
  });
}
