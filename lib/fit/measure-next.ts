/**
 * The one measurement that would settle most: a number nobody took, or the one with the largest part in
 * the governing margin's spread; and how well it would have to be taken.
 */

import type { NeededKey } from "#lib/checks/check.ts";
import type { Answer } from "#lib/fit/examine.ts";
import { COVERAGE_FACTOR, standardUncertainty } from "#lib/quantity/uncertainty.ts";

export interface MeasureNext {
  readonly key: NeededKey;
  /** Half-width that would settle the question, in the number's unit; absent where even a perfect taking of this one would not, or where the number is simply missing. */
  readonly goodEnough?: number;
}

/** Steps people can take a number to, in millimetres or degrees. */
const STEPS = [25, 10, 5, 3, 2, 1, 0.5];

/** What to measure next for a question that cannot be told; undefined for one that can. */
export function measureNext({ outcome, missing, ruling }: Answer): MeasureNext | undefined {
  if (outcome !== "cannot tell") return undefined;
  const [key] = missing;
  if (key) return { key };
  const largest = ruling?.budget[0];
  if (!ruling || !largest) return undefined;
  // Settled when 2 u' <= |margin|, with u'^2 = u^2 less this number's part, plus its part at the new half-width.
  const rest = ruling.u ** 2 * (1 - largest.share);
  const left = (ruling.margin / COVERAGE_FACTOR) ** 2 - rest;
  // Numbers from like motors must hold at the far end of their intervals, which this does not count on.
  const other = ruling.budget.some(({ key, taken }) => taken.fromLike && key !== largest.key);
  if (left <= 0 || other) return { key: largest.key };
  const enough = Math.sqrt(left) / (Math.abs(largest.sensitivity) * standardUncertainty(1));
  const goodEnough = STEPS.find((step) => step <= enough);
  return goodEnough === undefined ? { key: largest.key } : { key: largest.key, goodEnough };
}
