/**
 * Where an obstacle has to stand to keep its distance: the least notch, well or sole that will do.
 *
 * Moving an obstacle by d changes no clearance by more than d. So an obstacle that falls short of its
 * limit by e can be moved by e and still stand short of, or just at, the place sought: sliding by the
 * shortfall never passes it. Where the clearance grows as fast as the obstacle moves this arrives at
 * once; where it creeps (the obstacle leaves sideways, or another edge governs) the rest is bisected.
 */
import { type Clearance, type ClearanceOptions, leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part } from "#lib/geometry/mechanism.ts";

/** Where an obstacle has to stand. */
export interface Slide {
  /** Least position that keeps the limit; undefined when not even the end of the range does. */
  readonly position: number | undefined;
  /** Clearance at that position (at the end of the range when there is none). */
  readonly clearance: Clearance;
  /** The need jumps near here: a change of the limit by 1 mm moves it by more than 10 mm. */
  readonly jumps: boolean;
}

/** The places tried, from the closest to the farthest, in whatever unit of length `obstacleAt` takes. */
export interface Travel {
  readonly from: number;
  readonly to: number;
}

/** Width of each certificate, mm. */
const WITHIN = 0.01;
export interface SlideOptions extends Pick<ClearanceOptions, "straight"> {
  /** False leaves out the look at whether the need jumps near here, which costs as much as the slide. */
  readonly jumps?: boolean;
}

/** The clearance at the place returned lies between the limit and this much above it, mm, unless the range begins there or the need jumps. */
const SPARE = 0.015;
/** Slides before bisecting. */
const SLIDES = 12;
/** Bisection ends at this width of position. */
const CLOSE = 0.01;
/** The need jumps where a limit changed by the first, mm, moves it by more than the second. */
const LIMIT_CHANGE = 1;
const POSITION_CHANGE = 10;

/**
 * Least position in the range at which the clearance certainly keeps the limit, to 0.1 mm on the
 * clearance, on the safe side. `obstacleAt(position)` must move the obstacle away from the parts as the
 * position grows, by at most the change of position. Options as for `leastClearance`; the widths of the
 * certificate are chosen here.
 */
export function leastSlide(
  mechanism: Mechanism,
  parts: readonly Part[],
  obstacleAt: (position: number) => Obstacle,
  limitMm: number,
  range: Travel,
  { jumps = true, ...options }: SlideOptions = {},
): Slide {
  const at = (position: number, stopAbove?: number): Clearance =>
    leastClearance(mechanism, parts, obstacleAt(position), {
      ...options,
      ...(stopAbove !== undefined && { stopAbove }),
      within: WITHIN,
      // A rough figure slides as well, so long as it falls short of the limit.
      withinOverlap: limitMm >= 0 ? 1 : WITHIN,
    });
  // Where the beginning of the range already keeps the limit, by how much is nobody's question.
  const first = at(range.from, jumps ? undefined : limitMm);
  const slid = slide(at, limitMm, range, first);
  const reached = slid.clearance.lowerMm >= limitMm;
  const farthest = reached ? slid.clearance : at(range.to);
  if (farthest.lowerMm < limitMm) return { position: undefined, clearance: farthest, jumps: false };
  const found = reached ? slid : bisect(at, limitMm, slid, { position: range.to, clearance: farthest });
  if (!jumps) return { ...found, jumps: false };
  const shifted = (by: number): number => Math.min(range.to, Math.max(range.from, found.position + by));
  const before = shifted(-POSITION_CHANGE);
  const after = shifted(POSITION_CHANGE);
  const moved =
    (before === found.position - POSITION_CHANGE && at(before).mm >= limitMm - LIMIT_CHANGE) ||
    (after === found.position + POSITION_CHANGE && at(after).mm < limitMm + LIMIT_CHANGE);
  return { ...found, jumps: moved };
}

interface Stand {
  readonly position: number;
  readonly clearance: Clearance;
}

/** Slides by the shortfall; ends where the limit is kept, or short of it when it creeps. */
function slide(at: (position: number) => Clearance, limitMm: number, range: Travel, first: Clearance): Stand {
  let position = range.from;
  let clearance = first;
  for (let step = 0; step < SLIDES && clearance.lowerMm < limitMm; step++) {
    position = Math.min(range.to, position + (limitMm + SPARE - clearance.mm));
    clearance = at(position);
  }
  return { position, clearance };
}

/** Halves the way between a place that falls short and one that keeps the limit until clearance or place is close enough. */
function bisect(at: (position: number) => Clearance, limitMm: number, short: Stand, kept: Stand): Stand {
  let low = short.position;
  let best = kept;
  while (best.position - low > CLOSE && best.clearance.mm > limitMm + SPARE) {
    const position = (low + best.position) / 2;
    const clearance = at(position);
    if (clearance.lowerMm >= limitMm) best = { position, clearance };
    else low = position + Math.max(0, limitMm - clearance.mm);
  }
  return best;
}
