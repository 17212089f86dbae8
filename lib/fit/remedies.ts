/**
 * What to cut or change where a pairing does not fit. Each remedy is one change, solved from the same
 * functions as the needs so that the questions it answers surely fit (margin at least U) where that can
 * be had, put in place, and the whole pairing assessed again: it is offered only when nothing fouls any
 * more, or when it turns "cannot tell" into a fit. Where no single one serves, pairs of them are tried.
 */

import { checks } from "#lib/checks/index.ts";
import { type Answer, type Assessment, examine, type Options, verdictOfAnswer } from "#lib/fit/examine.ts";
import { type Change, MEANS, type Means, MOVING, type Proposal, type Variant } from "#lib/fit/means.ts";
import type { Verdict } from "#lib/fit/report.ts";
import { COVERAGE_FACTOR } from "#lib/quantity/uncertainty.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** A remedy worked out, put in place and assessed. */
export interface Remedy {
  readonly changes: readonly Change[];
  readonly says: string;
  /** How much is changed: millimetres sawn or packed; handling costs nothing, another motor most. */
  readonly effort: number;
  readonly after: Assessment;
  readonly verdictAfter: Verdict;
}

interface Step {
  readonly means: Means;
  readonly variant: Variant;
  readonly changes: readonly Change[];
  readonly says: string;
  readonly effort: number;
  /** A question it was to answer fouls all the same: alone it cannot serve. */
  readonly falls: boolean;
  /** The whole pairing assessed with the changes in place; worked out when first asked for. */
  readonly after: () => Assessment;
}

/** Questions about parts that do not move. */
const STANDING = checks.filter(({ id }) => !MOVING.includes(id)).map(({ id }) => id);

/** Tries to reach a sure fit before settling for less. */
const TRIES = 4;

/** All remedies of a pairing that does not fit, least change first. */
export function remediesOf(motor: Motor, stern: Stern, before: Assessment, options: Options = {}): Remedy[] {
  const verdict = verdictOfAnswer(before.governing);
  if (verdict === "fits") return [];
  const start: Variant = { motor, stern, handling: options.handling ?? {} };
  const singles = MEANS.flatMap((means) => applied(means, start, before, options) ?? []);
  const serving = singles.filter((step) => serves(step, verdict, options));
  const found = serving.length > 0 ? serving.map((step) => [step]) : pairs(singles, verdict, options);
  return found.map(remedy).sort((a, b) => a.effort - b.effort);
}

/**
 * No longer fouls; or fits, where it could not be told. The questions of standing parts come first: they
 * cost little, and a foul there settles it.
 */
function serves(step: Step, before: Verdict, options: Options): boolean {
  if (step.falls && before === "fouls") return false;
  const standing = looked(step.variant, { ...options, only: STANDING, thorough: false });
  if (standing.answers.some(({ outcome }) => outcome === "fouls")) return false;
  const now = verdictOfAnswer(step.after().governing);
  return before === "fouls" ? now !== "fouls" : now === "fits";
}

function remedy(steps: readonly Step[]): Remedy {
  const after = steps.at(-1)!.after();
  return {
    changes: merged(steps.flatMap(({ changes }) => changes)),
    says: `${steps.map(({ says }) => says).join(", and ")}.`.replace(/^./, (first) => first.toUpperCase()),
    effort: effort(steps),
    after,
    verdictAfter: verdictOfAnswer(after.governing),
  };
}

/** A key changed twice is one change from first to last. */
function merged(changes: readonly Change[]): Change[] {
  const byKey = new Map<string, Change>();
  for (const change of changes) {
    const earlier = byKey.get(change.change);
    byKey.set(change.change, earlier ? { ...earlier, to: change.to } : change);
  }
  return [...byKey.values()];
}

/** Two changes one after the other: the second answers every question that is still amiss after the first. One pair for each two kinds, the one that changes less. */
function pairs(singles: readonly Step[], verdict: Verdict, options: Options): Step[][] {
  const best = new Map<string, Step[]>();
  for (const first of singles) {
    const after = first.after();
    const amiss = after.answers.filter(({ outcome }) => outcome === verdict).map(({ check }) => check.id);
    for (const means of MEANS) {
      if (means.kind === first.means.kind || !amiss.every((id) => means.answers.includes(id))) continue;
      const second = applied(means, first.variant, after, options);
      if (!second || !serves(second, verdict, options)) continue;
      const kinds = [first.means.kind, means.kind].sort().join();
      const known = best.get(kinds);
      if (!known || effort([first, second]) < effort(known)) best.set(kinds, [first, second]);
    }
  }
  return [...best.values()];
}

const effort = (steps: readonly Step[]): number => steps.reduce((sum, step) => sum + step.effort, 0);

/** Applies one means: proposes, assesses, and asks for more room while a question it answers is not surely met. */
function applied(means: Means, variant: Variant, before: Assessment, options: Options): Step | undefined {
  if (!concerns(means, before).some(({ outcome }) => outcome === "fouls" || outcome === "cannot tell"))
    return undefined;
  let beyond = Math.max(0, ...concerns(means, before).map(expanded));
  let proposal: Proposal | undefined;
  let falls = false;
  for (let attempt = 0; attempt < TRIES; attempt += 1) {
    const next = means.propose(variant, before.mounting, beyond, lengthWriter(options.lengths ?? "mm"));
    // Handling is the same however much room is asked for: once is enough.
    if (!next || JSON.stringify(next.changes) === JSON.stringify(proposal?.changes)) break;
    proposal = next;
    const answers = looked(next.variant, { ...options, only: means.answers, thorough: false }).answers;
    falls = answers.some(({ outcome }) => outcome === "fouls");
    const short = Math.max(0, ...answers.map(shortfall));
    if (short === 0) break;
    beyond += short + 0.05;
  }
  const { variant: changed } = proposal ?? {};
  return proposal && changed && { ...proposal, means, falls, after: once(() => looked(changed, options)) };
}

/** Work done at most once, when first asked for. */
function once<T>(work: () => T): () => T {
  const done: T[] = [];
  return () => {
    if (done.length === 0) done.push(work());
    return done[0]!;
  };
}

const looked = ({ motor, stern, handling }: Variant, options: Options): Assessment =>
  examine(motor, stern, { ...options, handling });

const concerns = (means: Means, { answers }: Assessment): Answer[] =>
  answers.filter(({ check }) => means.answers.includes(check.id));

const expanded = ({ ruling }: Answer): number => COVERAGE_FACTOR * (ruling?.u ?? 0);

/** What a question lacks for a sure fit; 0 where it fits or cannot be worked out. */
const shortfall = (answer: Answer): number =>
  answer.ruling && answer.outcome !== "fits" && answer.outcome !== "not asked"
    ? Math.max(0, expanded(answer) - answer.ruling.margin)
    : 0;
