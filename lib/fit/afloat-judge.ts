/**
 * The spread of a margin afloat, by the same law as every other: slopes over the numbers it rests on,
 * each with its half-width, and the fullness of the waterplane, which nobody measured.
 */
import type { AfloatEdge, AfloatShare, Judged } from "#lib/checks/afloat-check.ts";
import { slopesOf, verdictOf } from "#lib/fit/verdict.ts";
import { COVERAGE_FACTOR, combined, standardUncertainty } from "#lib/quantity/uncertainty.ts";
import type { Afloat } from "#lib/rig/afloat/lying.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import type { Taken } from "#lib/rig/record.ts";
import { FULLNESS_HALF_WIDTH } from "#lib/standards/waterplane-fullness.ts";

/** Figures of a label are limits and no measurements of anything. */
const OF_A_LABEL: readonly string[] = ["ratedPowerKw", "ratedMotorMassKg", "ratedTotalMassKg"];

/** Half-width in force. A rated power is what rules compare, so the rating as declared is exact; a spread that somebody gave counts everywhere. */
function halfWidthOf(key: RigKey, { halfWidth, byDefault, how }: Taken): number {
  const isRating = OF_A_LABEL.includes(key) || (key === "powerKw" && how === "declared");
  return isRating && byDefault ? 0 : halfWidth;
}

interface Part extends Omit<AfloatShare, "share"> {
  readonly fromLike: boolean;
}

const STEP = 1e-3;

/** A margin judged: the edge's room on the pairing, with its spread. */
export function judgeAfloat(
  edge: AfloatEdge,
  afloat: Afloat,
  taken: (key: RigKey) => Taken | undefined,
): Judged {
  const margin = edge.room(afloat);
  const slopeOf = slopesOf((rig) => edge.room({ ...afloat, rig }), afloat.rig);
  const parts = [...new Set(edge.keys)].flatMap((key): Part[] => {
    const entry = taken(key);
    const halfWidth = entry ? halfWidthOf(key, entry) : 0;
    const sensitivity = halfWidth > 0 ? slopeOf(key) : 0;
    return Math.abs(sensitivity) < 1e-9
      ? []
      : [{ key, halfWidth, sensitivity, fromLike: entry?.fromLike ?? false }];
  });
  return settled(edge, margin, edge.onFullness ? [...parts, fullnessPart(edge, afloat)] : parts);
}

function fullnessPart(edge: AfloatEdge, afloat: Afloat): Part {
  const shifted = (by: number) => edge.room({ ...afloat, fullnessShift: (afloat.fullnessShift ?? 0) + by });
  const sensitivity = (shifted(STEP) - shifted(-STEP)) / (2 * STEP);
  return { key: "fullness", halfWidth: FULLNESS_HALF_WIDTH, sensitivity, fromLike: false };
}

const spreadOf = (parts: readonly Part[]): number =>
  combined(parts.map(({ halfWidth, sensitivity }) => sensitivity * standardUncertainty(halfWidth)));
const farthest = (parts: readonly Part[]): number =>
  parts.reduce((sum, { halfWidth, sensitivity }) => sum + Math.abs(sensitivity) * halfWidth, 0);

function settled({ rounding = 0 }: AfloatEdge, margin: number, parts: readonly Part[]): Judged {
  const u = spreadOf(parts);
  const like = parts.filter(({ fromLike }) => fromLike);
  const own = parts.filter(({ fromLike }) => !fromLike);
  const compared = margin < 0 && margin >= -rounding ? 0 : margin;
  return {
    margin: compared,
    u,
    worstCase: compared - farthest(parts),
    verdict: verdictOf(compared, u, farthest(like), spreadOf(own)),
    budget: parts
      .map(({ fromLike: _, ...part }) => ({
        ...part,
        share: (part.sensitivity * standardUncertainty(part.halfWidth)) ** 2 / u ** 2,
      }))
      .sort((a, b) => b.share - a.share),
  };
}

/** The give-or-take of a judged margin. */
export const expanded = ({ u }: Judged): number => COVERAGE_FACTOR * u;
