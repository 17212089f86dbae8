/** Rounded shapes that never reach outside what they were made from. */
import type { Flat } from "#lib/draw/drawing.ts";
import { cos, sin } from "#lib/quantity/angle.ts";
import type { Corner } from "#lib/rig/motor.ts";

/** Corners cut off twice: rounder, and never outside what it was. */
export function rounded(points: readonly Flat[], times = 2): Flat[] {
  let round = [...points];
  for (let i = 0; i < times; i++) {
    round = round.flatMap((a, k) => {
      const b = round[(k + 1) % round.length]!;
      return [0.25, 0.75].map((t): Flat => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
    });
  }
  return round;
}

/** Slices from the middle outward: half-width as a part of the whole, and how much of the side's outline is left there (a superellipse of the fifth degree). */
const SLICES = [0, 0.6, 0.8, 0.9, 0.96, 1].map(
  (wide) => [wide, wide === 1 ? 0.5 : (1 - wide ** 5) ** 0.2] as const,
);

/** A side outline made into a solid of `halfWidth` with rounded flanks, about y = 0. */
export function swollen(side: readonly Flat[], halfWidth: number): Corner[] {
  const middle = [0, 1].map(
    (i) => (Math.min(...side.map((p) => p[i]!)) + Math.max(...side.map((p) => p[i]!))) / 2,
  );
  const [mx, mh] = [middle[0]!, middle[1]!];
  return SLICES.flatMap(([wide, left]) =>
    side.flatMap(([x, h]) =>
      [-1, 1].map((hand): Corner => [mx + (x - mx) * left, hand * wide * halfWidth, mh + (h - mh) * left]),
    ),
  );
}

/** A ring of points round the propeller shaft's line at `x`, `radius` out. */
export const ring = (x: number, radius: number, height: number): Corner[] =>
  Array.from({ length: 24 }, (_, k): Corner => [x, radius * cos(k * 15), height + radius * sin(k * 15)]);

/** An eight-sided ring that touches a square of half-width r. */
export const octagon = (r: number): Flat[] =>
  [-1, 1].flatMap((a) =>
    [-1, 1].flatMap((b): Flat[] => [
      [a * r, b * 0.45 * r],
      [a * 0.45 * r, b * r],
    ]),
  );

/** A flat four-sided piece between two side outlines `half` to port and to starboard. */
export const slab = (a: Flat, b: Flat, c: Flat, d: Flat, half: number): Corner[] =>
  [a, b, c, d].flatMap(([x, h]) => [-half, half].map((y): Corner => [x, y, h]));
