/**
 * Fillets of thickened epoxy along inside corners, and what they take to fill.
 */
import { cornerDeg, type Plane } from "#lib/fit/cut-plan/planes.ts";
import { tan } from "#lib/quantity/angle.ts";

/**
 * Area of a fillet of a radius tangent to both walls of a corner, mm2: the kite between the walls' tangent
 * points less the sector, r2 (cot(c/2) - (180 - c) pi/360). Square corner: r2 (1 - pi/4).
 */
export const filletAreaMm2 = (radiusMm: number, cornerOfDeg: number): number =>
  radiusMm ** 2 * (1 / tan(cornerOfDeg / 2) - ((180 - cornerOfDeg) * Math.PI) / 360);

/** One fillet: the corner it fills, its length and its volume. */
export interface Fillet {
  readonly along: string;
  readonly cornerDeg: number;
  readonly lengthMm: number;
  readonly millilitres: number;
}

/** A fillet between two walls along a length. */
export function fillet(along: string, a: Plane, b: Plane, lengthMm: number, radiusMm: number): Fillet {
  const corner = cornerDeg(a, b);
  return {
    along,
    cornerDeg: corner,
    lengthMm,
    millilitres: (filletAreaMm2(radiusMm, corner) * lengthMm) / 1000,
  };
}
