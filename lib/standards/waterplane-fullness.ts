/**
 * How much of the rectangle round it a waterplane fills: 1 for a box, 0.5 for a wedge. Wanted for the
 * weight that sinks a boat a centimetre; better taken off the boat's own lines where they exist.
 */
import type { Standard } from "#lib/standards/standard.ts";

const fullness = (value: number, what: string): Standard => ({
  value,
  unit: "ratio",
  what,
  source: "common practice, no source",
  status: "common practice",
});

/** Waterplane coefficient of a small outboard boat by the form of its bottom. */
export const FULLNESS_BY_FORM = {
  flat: fullness(0.85, "waterplane fullness, flat bottom"),
  vee: fullness(0.8, "waterplane fullness, V bottom"),
  round: fullness(0.72, "waterplane fullness, round bilge"),
} as const satisfies Record<string, Standard>;

/** Half-width within which a boat of its form is believed to lie (common practice, no source). */
export const FULLNESS_HALF_WIDTH = 0.08;
