/**
 * Time for a motor well to empty through its drains, holes on the sole at the transom: dt = A dh / (C a
 * sqrt(2 g h)), C the coefficient of discharge. Straight-sided it is (A / C a) sqrt(2 H / g). Leaves out
 * the motor's bulk, waves, flaps and grids over the holes, and that a hole no longer runs full once the
 * water is down to its own height.
 */
import { cos } from "#lib/quantity/angle.ts";
import type { Well } from "#lib/rig/afloat/well-section.ts";
import { corners, surfaceMm2 } from "#lib/rig/afloat/well-water.ts";
import { GRAVITY_MM_S2, holesArea } from "#lib/standards/hydraulics.ts";

/** Drains of one size, and the coefficient of discharge of their edges. */
export interface Drains {
  readonly drainDiameterMm: number;
  readonly drainCount: number;
  readonly coefficient: number;
}

/** Gauss and Legendre's three places and weights on -1 to 1: exact up to the fifth power. */
const PLACES = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const;

/**
 * Seconds from a surface `fromMm` (height on the sole's plane at the transom) down to the drains, or to the
 * water outside where that stands `outsideMm` above them. Infinite with no drain. With h = u^2 the integral
 * is (2 / C a sqrt(2 g)) of A du, and A is a quartic of u between corners of the section: exact.
 */
export function drainS(well: Well, riseDeg: number, fromMm: number, drains: Drains, outsideMm = 0): number {
  const end = Math.max(0, outsideMm);
  if (fromMm <= end) return 0;
  const through = drains.coefficient * holesArea(drains.drainDiameterMm, drains.drainCount);
  const breaks = corners(well, riseDeg).filter((at) => at > end && at < fromMm);
  const stops = [end, ...breaks.sort((a, b) => a - b), fromMm].map((at) => Math.sqrt(at - end));
  const area = (u: number) => surfaceMm2(well, riseDeg, end + u * u);
  const sum = stops.slice(1).reduce((total, to, i) => total + quadrature(area, stops[i]!, to), 0);
  // Heights here are square to the sole; plumb they are cos(rise) of that.
  return through > 0 ? (2 * sum) / (through * Math.sqrt(2 * GRAVITY_MM_S2 * cos(riseDeg))) : Infinity;
}

function quadrature(f: (u: number) => number, from: number, to: number): number {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  return half * PLACES.reduce((sum, [place, weight]) => sum + weight * f(middle + half * place), 0);
}
