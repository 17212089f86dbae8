/**
 * Many motors against one stern (or many sterns for one motor), best first. A pairing that fouls on a
 * standing part is settled by that alone; only the others are swung through all their poses.
 */
import { type Answer, type Assessment, examine, type Options, verdictOfAnswer } from "#lib/fit/examine.ts";
import { gistOf } from "#lib/fit/gist.ts";
import { measureNext } from "#lib/fit/measure-next.ts";
import type { Outcome, Verdict } from "#lib/fit/report.ts";
import { foulsStanding, STANDING } from "#lib/fit/settled.ts";
import { COVERAGE_FACTOR } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** One question's part of a row: outcome, and room to spare with its give-or-take in the check's unit. */
export interface RowAnswer {
  readonly outcome: Outcome;
  readonly margin?: number;
  readonly expandedUncertainty?: number;
}

/** One pairing of a list. */
export interface Row {
  readonly motor: string;
  readonly stern: string;
  readonly verdict: Verdict;
  readonly governs: string;
  /** The governing question's unit, and its room to spare. */
  readonly unit: "mm" | "deg";
  readonly margin?: number;
  readonly expandedUncertainty?: number;
  /** Numbers nobody took, over all questions. */
  readonly missing: readonly string[];
  readonly measureNext?: string;
  /** By question; the moving ones are left out where a standing one already fouls, all of them in a row in short. */
  readonly answers: Readonly<Record<string, RowAnswer>>;
}

const standingOnly = STANDING.map(({ id }) => id);

/** One pairing as a row. */
export function rowOf(motor: Motor, stern: Stern, options: Options = {}): Row {
  return foulsStanding(motor, stern, options)
    ? foulRowOf(motor, stern, options)
    : setDown(motor.id, stern.id, examine(motor, stern, options));
}

/** The row of a pairing that is known to foul on a standing part. */
export const foulRowOf = (motor: Motor, stern: Stern, options: Options = {}): Row =>
  setDown(motor.id, stern.id, examine(motor, stern, { ...options, only: standingOnly }));

/**
 * What a long list asks first: nothing where a standing part settles that the pairing fouls; the gist, its
 * answers left out, where a number is wanting; else the whole row.
 */
export function rowInShort(motor: Motor, stern: Stern, options: Options = {}): Row | undefined {
  if (foulsStanding(motor, stern, options)) return undefined;
  const gist = gistOf(motor, stern, options);
  if (!gist) return setDown(motor.id, stern.id, examine(motor, stern, options));
  return {
    motor: motor.id,
    stern: stern.id,
    verdict: "cannot tell",
    governs: gist.governs.id,
    unit: gist.governs.unit,
    missing: gist.missing,
    measureNext: gist.first[0],
    answers: {},
  };
}

const expanded = ({ ruling }: Answer) => (ruling ? COVERAGE_FACTOR * ruling.u : undefined);

function setDown(motor: string, stern: string, { answers, governing }: Assessment): Row {
  const next = measureNext(governing);
  return {
    motor,
    stern,
    verdict: verdictOfAnswer(governing),
    governs: governing.check.id,
    unit: governing.check.unit,
    margin: governing.ruling?.margin,
    expandedUncertainty: expanded(governing),
    missing: [...new Set(answers.flatMap(({ missing }) => missing))],
    measureNext: next?.key,
    answers: Object.fromEntries(
      answers.map((one) => [
        one.check.id,
        { outcome: one.outcome, margin: one.ruling?.margin, expandedUncertainty: expanded(one) },
      ]),
    ),
  };
}

const ORDER: Record<Verdict, number> = { fits: 0, "cannot tell": 1, fouls: 2 };

/** The surest fit first: how many of its own give-or-takes a margin is worth; a missing number comes after every margin of its verdict. */
const worth = ({ margin, expandedUncertainty }: Row): number => {
  if (margin === undefined) return Number.NEGATIVE_INFINITY;
  return expandedUncertainty ? margin / expandedUncertainty : margin * 1e6;
};

/** Best first: fits, cannot tell, fouls; then the surer; then by id, so that the order is always the same. */
export function bestFirst(a: Row, b: Row): number {
  const [worthA, worthB] = [worth(a), worth(b)];
  return (
    ORDER[a.verdict] - ORDER[b.verdict] ||
    (worthA === worthB ? 0 : worthB - worthA) ||
    `${a.stern} ${a.motor}`.localeCompare(`${b.stern} ${b.motor}`)
  );
}

/** The measurement that would settle most of a list: how many pairings name it, the most named first. */
export function settlesMost(rows: readonly Row[]): { readonly key: string; readonly pairings: number }[] {
  const named = new Map<string, number>();
  for (const { measureNext: key } of rows) if (key) named.set(key, (named.get(key) ?? 0) + 1);
  return [...named]
    .map(([key, pairings]) => ({ key, pairings }))
    .sort((a, b) => b.pairings - a.pairings || a.key.localeCompare(b.key));
}
