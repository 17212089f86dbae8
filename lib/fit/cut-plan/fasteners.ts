/**
 * Screws: the longest that stays inside the wood it holds, the pilot to drill, how many and where.
 */
import { type Marked, marked } from "#lib/fit/cut-plan/marked.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import { GAUGES, type Gauge, joinery, SCREW_LENGTHS } from "#lib/standards/joinery.ts";

/** Thickness of all the layers a screw goes through and into, mm. */
export const stackMm = (layersMm: readonly number[]): number =>
  layersMm.reduce((sum, layer) => sum + layer, 0);

/** Whether a screw of a length comes out of the far side of a stack. */
export const pierces = (layersMm: readonly number[], screwMm: number): boolean =>
  screwMm >= stackMm(layersMm);

/** The longest screw sold that leaves `coverMm` of wood over its point; undefined where even the shortest leaves less. */
export const longestScrewMm = (
  layersMm: readonly number[],
  coverMm: number,
  system: LengthSystem,
): number | undefined =>
  SCREW_LENGTHS[system].findLast((length) => length <= stackMm(layersMm) - coverMm + 1e-9);

/** Where screws go along a length: the first and last from its ends, the rest evenly and no farther apart than `spacingMm`. One in the middle of a piece too short for two. */
export function screwPositions(lengthMm: number, spacingMm: number, endMm: number): number[] {
  const between = lengthMm - 2 * endMm;
  if (between <= 0) return [lengthMm / 2];
  const gaps = Math.max(1, Math.ceil(between / spacingMm - 1e-9));
  return Array.from({ length: gaps + 1 }, (_, k) => endMm + (between * k) / gaps);
}

/** A second row midway between the screws of a first, so that the two never meet inside a cleat; the first row again where it has one screw only. */
export const between = (row: readonly number[]): number[] =>
  row.length < 2 ? [...row] : row.slice(1).map((at, k) => (row[k]! + at) / 2);

/** The screws of one joint. */
export interface ScrewJoint {
  readonly id: string;
  readonly says: string;
  /** Layers from the screw's head to the far side, mm. */
  readonly layersMm: readonly number[];
  readonly stackMm: number;
  readonly screw?: Marked;
  /** Wood left over the point, mm. */
  readonly coverMm?: number;
  readonly gauge: string;
  /** Drill for the shank through the upper layers, and for the point; how deep the bit is stopped, mm. */
  readonly pilot: { readonly shankMm: number; readonly pointMm: number; readonly stopMm: number };
  readonly count: number;
  /** From the left end of the cleat as it is drawn, mm. */
  readonly positionsMm: readonly number[];
}

/** What a joint is screwed with. */
export interface Screwing {
  readonly coverMm: number;
  readonly spacingMm: number;
  readonly wood: "soft" | "hard";
  readonly lengths: LengthSystem;
}

const gaugeFor = (stack: number): Gauge => GAUGES.find(({ upToMm }) => stack <= upToMm)!.gauge;

/** Screws for a joint along `lengthMm` through `layersMm`; `second` where another row already stands in the same wood. */
export function screwJoint(
  id: string,
  says: string,
  layersMm: readonly number[],
  lengthMm: number,
  { coverMm, spacingMm, wood, lengths }: Screwing,
  second = false,
): ScrewJoint {
  const stack = stackMm(layersMm);
  const length = longestScrewMm(layersMm, coverMm, lengths);
  const gauge = gaugeFor(stack);
  const row = screwPositions(lengthMm, spacingMm, joinery.screwEndMm.value);
  const positionsMm = second ? between(row) : row;
  return {
    id,
    says,
    layersMm,
    stackMm: stack,
    ...(length !== undefined && {
      screw: { ...marked(length, "down", lengths), markMm: length },
      coverMm: stack - length,
    }),
    gauge: gauge.name,
    pilot: {
      shankMm: gauge.shankMm,
      pointMm: wood === "soft" ? gauge.pilotSoftMm : gauge.pilotHardMm,
      stopMm: length ?? Math.max(0, stack - coverMm),
    },
    count: positionsMm.length,
    positionsMm,
  };
}
