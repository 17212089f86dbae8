/**
 * Water standing in a motor well, level or with the boat trimmed: how much it holds, how much stays when
 * the drains have done, and the surface at every height. A surface is given by its height on the sole's
 * plane at the transom, mm, square to the sole; the motor's own bulk in the well is left out.
 */
import { tan } from "#lib/quantity/angle.ts";
import {
  breadth,
  clipped,
  integral,
  type Linear,
  lips,
  openSection,
  valueAt,
  type Well,
  walls,
} from "#lib/rig/afloat/well-section.ts";

const MM3_PER_LITRE = 1e6;

/** How the sole lies afloat, degrees: plus = it rises forward, so that water runs aft to the drains. `bowUpDeg` is the boat's trim. */
export const soleRiseDeg = (soleAngleDeg: number, rakeDeg: number, bowUpDeg = 0): number =>
  90 + rakeDeg - soleAngleDeg + bowUpDeg;

/** Under the water where not below 0: the surface falls towards the bow as fast as the sole rises. */
const under = (surfaceMm: number, riseDeg: number): Linear => ({
  at0: surfaceMm,
  perS: -tan(riseDeg),
  perZ: -1,
});

/** Water in the well up to a surface, litres. */
export const waterLitres = (well: Well, riseDeg: number, surfaceMm: number): number =>
  integral(clipped(openSection(well), under(surfaceMm, riseDeg)), breadth(well)) / MM3_PER_LITRE;

/** The surface at which the well runs over its lowest edge. */
export const brimMm = (well: Well, riseDeg: number): number =>
  Math.min(...lips(well).map(([s, z]) => z + s * tan(riseDeg)));

/** What the well holds brimful, litres; 0 where it holds nothing. */
export const brimLitres = (well: Well, riseDeg: number): number =>
  waterLitres(well, riseDeg, brimMm(well, riseDeg));

/** What stays below drains on the sole at the transom, litres: the pool where the sole falls forward, and all that lies below the water outside (`outsideMm` above the drains). */
export const staysLitres = (well: Well, riseDeg: number, outsideMm = 0): number =>
  waterLitres(well, riseDeg, Math.min(Math.max(0, outsideMm), brimMm(well, riseDeg)));

/** Litres per mm of surface, as area: what one millimetre more of surface adds, mm2. Exact. */
export function surfaceMm2(well: Well, riseDeg: number, surfaceMm: number): number {
  const fall = tan(riseDeg);
  let [from, to] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const wall of walls(well)) {
    // Along the surface z = surface - fall s the wall's function is a straight line of s.
    const slope = wall.perS - wall.perZ * fall;
    const start = wall.at0 + wall.perZ * surfaceMm;
    if (slope > 0) from = Math.max(from, -start / slope);
    else if (slope < 0) to = Math.min(to, -start / slope);
    else if (start < 0) return 0;
  }
  const middle = (from + to) / 2;
  return Math.max(0, to - from) * Math.max(0, valueAt(breadth(well), [middle, surfaceMm - fall * middle]));
}

/** Surfaces at which the water passes a corner of the section; between two of them its area is a quadratic of its height. */
export const corners = (well: Well, riseDeg: number): number[] =>
  openSection(well).map(([s, z]) => z + s * tan(riseDeg));
