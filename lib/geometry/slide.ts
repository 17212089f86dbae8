import type { Clearance, ClearanceOptions } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part, Range } from "#lib/geometry/mechanism.ts";

/** Where an obstacle has to stand. */
export interface Slide {
  /** Least position that keeps the limit; undefined when not even the end of the range does. */
  readonly position: number | undefined;
  /** Clearance at that position (at the end of the range when there is none). */
  readonly clearance: Clearance;
  /** The need jumps near here: a small change of the limit moves it by much. */
  readonly jumps: boolean;
}

export function leastSlide(
  _mechanism: Mechanism,
  _parts: readonly Part[],
  _obstacleAt: (position: number) => Obstacle,
  _limitMm: number,
  _range: Range,
  _options: ClearanceOptions = {},
): Slide {
  throw new Error("to come");
}
