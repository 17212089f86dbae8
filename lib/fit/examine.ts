/**
 * Hangs one motor on one stern and asks every question: the answers, with their margins and spread, and
 * the one that governs. What the report, the remedies and the shortlist draw on.
 */
import { type Check, limitOf, type NeededKey, type Study } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import { filledIn, type LikeEstimate } from "#lib/fit/like-motors.ts";
import type { Outcome, Verdict } from "#lib/fit/report.ts";
import { type Assessed, assessEdge, byGravity } from "#lib/fit/verdict.ts";
import { COVERAGE_FACTOR, type Tape } from "#lib/quantity/uncertainty.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Aboard } from "#lib/rig/afloat/aboard.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { type Handling, type Mounting, mount, type Rig, type RigKey } from "#lib/rig/mounting.ts";
import { seatNow } from "#lib/rig/plate.ts";
import { fieldOf, motorValues, sternValues, type Taken, takenOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** One question answered: its finding, what it rests on and what it lacks. */
export interface Answer {
  readonly check: Check;
  readonly outcome: Outcome;
  /** The edge that rules, with its spread; absent where nothing could be worked out. */
  readonly ruling?: Assessed;
  readonly missing: readonly NeededKey[];
  readonly says: string;
}

/** A pairing assessed, before it is set down: what the report, the remedies and the shortlist draw on. */
export interface Assessment {
  readonly mounting: Mounting;
  readonly answers: readonly Answer[];
  readonly governing: Answer;
  readonly taken: (key: RigKey) => Taken | undefined;
}

/** How a pairing is to be looked at. */
export interface Options {
  /** Limits that overrule the stern's own. */
  readonly limits?: Readonly<Record<string, number>>;
  /** The system lengths are written in. */
  readonly lengths?: LengthSystem;
  readonly handling?: Handling;
  readonly tape?: Tape;
  /** Numbers of the motor that nobody took and that come from like motors; one that was taken stands. */
  readonly estimates?: readonly LikeEstimate[];
  /** Work the spread of every margin out anew, far ones too: what a report does and a long list need not. */
  readonly thorough?: boolean;
  /** Persons and fuel aboard, for the questions afloat; two persons and a portable tank where absent. */
  readonly aboard?: Aboard;
  /** Ask only these questions. */
  readonly only?: readonly string[];
}

/** A motor and a stern as plain numbers, the stern's limits overruled by those given. */
export function rigOf(motor: Motor, stern: Stern, { limits, handling }: Options): Rig {
  const own = sternValues(stern);
  return {
    motor: motorValues(motor),
    stern: limits && Object.keys(limits).length > 0 ? { ...own, limits: { ...own.limits, ...limits } } : own,
    ...(handling && { handling }),
  };
}

/** Hangs the motor on the stern and asks every question. */
export function examine(recorded: Motor, stern: Stern, options: Options = {}): Assessment {
  const estimates = options.estimates?.filter(({ key }) => recorded[key] === undefined) ?? [];
  const motor = filledIn(recorded, estimates);
  const rig = rigOf(motor, stern, options);
  const mounting = mount(rig);
  const taken = takenOf(motor, stern, options.tape, new Set(estimates.map(({ key }) => key)));
  const study: Study = {
    mounting,
    limit: (key) => limitOf(rig, key),
    write: lengthWriter(options.lengths ?? "mm"),
  };
  const wanted = options.only ? checks.filter(({ id }) => options.only!.includes(id)) : checks;
  const first = wanted.map((check) => answer(check, study, taken, options.thorough));
  const answers = first.map((one) => overruled(one, first));
  const asked = answers.filter((one) => one.outcome !== "not asked" && !answeredBetter(one, answers));
  const [governing] = asked.sort((a, b) => byGravity(ranked(a), ranked(b)));
  return { mounting, answers, governing: governing!, taken };
}

const ranked = ({ check, outcome, ruling }: Answer) => ({
  unit: check.unit,
  verdict: outcome === "not asked" ? ("fits" as const) : outcome,
  ...(ruling && outcome !== "cannot tell" && { margin: ruling.margin, u: ruling.u }),
  ...(ruling && ruling.verdict === "cannot tell" && { margin: ruling.margin, u: ruling.u }),
});

function answer(
  check: Check,
  study: Study,
  taken: (key: RigKey) => Taken | undefined,
  thorough?: boolean,
): Answer {
  const { rig } = study.mounting;
  const asked = check.asked(rig);
  if (asked !== true) return { check, outcome: "not asked", missing: [], says: asked };
  const needs = check.needs(rig);
  const missing = needs.filter((key) => !isKnown(rig, key));
  const keys = [...needs, ...(check.also ?? [])];
  const ruling = check
    .edges(study)
    .map((edge) => assessEdge(edge, rig, keys, taken, thorough))
    .sort(byGravity)[0];
  if (ruling && (missing.length === 0 || ruling.verdict === "fouls")) {
    return { check, outcome: ruling.verdict, ruling, missing, says: finding(ruling, check, study) };
  }
  return { check, outcome: "cannot tell", missing, says: `Not known: ${missing.map(nameOf).join(", ")}.` };
}

/** Whether a rig holds what a key names; a seat counts as known where the uncut top is. */
export const isKnown = ({ motor, stern }: Rig, key: NeededKey): boolean =>
  (key === "seatMm"
    ? seatNow(stern)
    : ((motor as Record<string, unknown>)[key] ?? (stern as Record<string, unknown>)[key])) !== undefined;

/** What a needed key is called within a sentence. */
export const nameOf = (key: NeededKey): string => {
  if (key === "steering") return "whether it has a tiller";
  if (key === "shaftClass") return "shaft class";
  const { name } = fieldOf(key);
  return name.charAt(0).toLowerCase() + name.slice(1);
};

/** "…: 14 mm to spare, give or take 4 mm." */
function finding({ margin, u, edge, verdict, jumps }: Assessed, check: Check, { write }: Study): string {
  const figure = check.unit === "mm" ? write : inDegrees;
  const room = margin < 0 ? `${figure(-margin)} short` : `${figure(margin)} to spare`;
  const spread = u > 0 ? `, give or take ${figure(COVERAGE_FACTOR * u)}` : "";
  const rough = jumps ? " (rough: the tightest place jumps within the spread)" : "";
  const doubt = verdict === "cannot tell" ? ": too close to tell" : "";
  return `${edge.says.charAt(0).toUpperCase()}${edge.says.slice(1)}: ${room}${spread}${rough}${doubt}.`;
}

/** A rough question never governs beside the better one, once that is answered. */
const answeredBetter = (one: Answer, all: readonly Answer[]): boolean =>
  all.some(({ check, ruling }) => check.id === one.check.overruledBy?.check && ruling !== undefined);

/** A rough question that does not fit gives way to the better one that was answered. */
function overruled(one: Answer, all: readonly Answer[]): Answer {
  const better = all.find(({ check }) => check.id === one.check.overruledBy?.check);
  const yields = better?.ruling && better.outcome !== "fouls" && one.ruling && one.outcome !== "fits";
  return yields
    ? { ...one, outcome: "not asked", ruling: undefined, says: one.check.overruledBy!.says }
    : one;
}

/** The verdict a governing answer stands for. */
export const verdictOfAnswer = ({ outcome }: Answer): Verdict =>
  outcome === "not asked" ? "cannot tell" : outcome;
