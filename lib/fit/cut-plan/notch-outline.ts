/** The line of a notch with rounded inside corners, as points. */
import type { Spot } from "#lib/fit/cut-plan/place.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Chords of 3 degrees stand off a corner of 25 mm by less than 0.01 mm. */
const CHORDS = 30;

/**
 * From the port top corner down, round, along the seat and up to the starboard top, seen from aft with
 * port to the left. Up is counted from the seat, right from the centreline.
 */
export function roundedNotch(halfMm: number, highMm: number, radiusMm: number): Spot[] {
  const radius = Math.min(radiusMm, halfMm, highMm);
  const corner = (middle: number, fromDeg: number): Spot[] =>
    Array.from({ length: CHORDS + 1 }, (_, k) => {
      const angle = fromDeg + (90 * k) / CHORDS;
      return [middle + radius * cos(angle), radius + radius * sin(angle)];
    });
  return [
    [-halfMm, highMm],
    ...corner(radius - halfMm, 180),
    ...corner(halfMm - radius, 270),
    [halfMm, highMm],
  ];
}
