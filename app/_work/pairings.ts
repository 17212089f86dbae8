/** A stretch of a long list as plain data, worked the same on the page's thread and on a worker's. */
import type { LikeEstimate } from "#lib/fit/like-motors.ts";
import { foulRowOf, type Row, rowInShort, rowOf } from "#lib/fit/shortlist.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/**
 * What becomes of a pairing: `short`, those that foul on a standing part are only told so (null), and those
 * that want a number have their answers left out, since few of them are ever looked at; `whole`, every row in full; `fouls`, rows of those known to foul so.
 */
export type Depth = "short" | "whole" | "fouls";

/** Some pairings to be worked: motor and stern of each by their place in the lists. */
export interface Stretch {
  readonly motors: readonly { readonly motor: Motor; readonly estimates?: readonly LikeEstimate[] }[];
  readonly sterns: readonly Stern[];
  readonly pairs: readonly (readonly [motor: number, stern: number])[];
  readonly depth: Depth;
  /** The tape the measured lengths were read from. */
  readonly tape?: Tape;
}

/** A row, or null for one that a standing part settles as fouling. */
export type Listed = Row | null;

const WORK = { short: rowInShort, whole: rowOf, fouls: foulRowOf };

/** The rows of a stretch, in the order of its pairs. */
export function rowsOf({ motors, sterns, pairs, depth, tape }: Stretch): Listed[] {
  return pairs.map(([i, j]) => {
    const { motor, estimates } = motors[i]!;
    return WORK[depth](motor, sterns[j]!, { ...(tape && { tape }), ...(estimates && { estimates }) }) ?? null;
  });
}
