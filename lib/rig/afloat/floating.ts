/**
 * How a boat comes to lie when weights go aboard, come off or move: bodily sinkage and change of trim. The
 * water is a plane in the hull's frame. Holds while the sides near the water stay about upright: some
 * centimetres and a few degrees, not a swamped boat.
 */
import { atan2, cos, tan } from "#lib/quantity/angle.ts";
import type { Hydrostatics } from "#lib/rig/afloat/waterplane.ts";
import type { HullPoint } from "#lib/rig/frame.ts";

/** The water as the hull sees it. */
export interface Level {
  /** Water above the datum at the transom (x = 0), mm. */
  readonly atTransomMm: number;
  /** Keel line against the water: plus = bow up, stern deep; degrees. */
  readonly bowUpDeg: number;
}

/** A weight put aboard, kg; minus where one comes off. `xMm`: forward of the transom; a motor hangs at a minus. */
export interface Mass {
  readonly label: string;
  readonly kg: number;
  readonly xMm: number;
}

/** Bodily sinkage, mm (plus = deeper), and change of trim over the length, mm (plus = by the stern). */
export interface Change {
  readonly sinkageMm: number;
  readonly trimMm: number;
}

/** Sinkage w / TPC and trim w d / MCT, d the lever aft of the centre of flotation. */
export function changeOf(water: Hydrostatics, masses: readonly Mass[]): Change {
  const kg = masses.reduce((sum, mass) => sum + mass.kg, 0);
  const kgM = masses.reduce((sum, { kg: w, xMm }) => sum + (w * (water.flotationMm - xMm)) / 1000, 0);
  return { sinkageMm: (10 * kg) / water.kgPerCm, trimMm: (10 * kgM) / water.kgMPerCm };
}

/** The level after the masses are aboard. */
export function loaded(before: Level, water: Hydrostatics, masses: readonly Mass[]): Level {
  const { sinkageMm, trimMm } = changeOf(water, masses);
  return {
    atTransomMm: before.atTransomMm + sinkageMm + (trimMm * water.flotationMm) / water.lengthMm,
    bowUpDeg: atan2(tan(before.bowUpDeg) + trimMm / water.lengthMm, 1),
  };
}

/** A weight that moves from one place to another: off here, on there. */
export const moved = (label: string, kg: number, fromMm: number, toMm: number): Mass[] => [
  { label: `${label}, from`, kg: -kg, xMm: fromMm },
  { label: `${label}, to`, kg, xMm: toMm },
];

/** Height of the water above the datum plane at x, mm, square to the keel line. */
export const waterAt = ({ atTransomMm, bowUpDeg }: Level, xMm: number): number =>
  atTransomMm - xMm * tan(bowUpDeg);

/** Plumb height of a point of the hull above the water, mm; minus = under it. */
export const aboveWater = (level: Level, [x, , z]: HullPoint): number =>
  (z - waterAt(level, x)) * cos(level.bowUpDeg);
