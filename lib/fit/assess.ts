/**
 * Assesses one motor on one stern: asks every question, weighs the answers, and sets down the report.
 */
import { type Check, limitOf, type NeededKey, type Study } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import { plateAboveDatum, runningHoleNumber } from "#lib/checks/plate-height.ts";
import { needsOf } from "#lib/fit/needs.ts";
import {
  ENGINE_VERSION,
  type Outcome,
  type Report,
  type ReportCheck,
  type ReportClearance,
  type ReportPlate,
  type Verdict,
} from "#lib/fit/report.ts";
import { type Assessed, assessEdge, byGravity } from "#lib/fit/verdict.ts";
import { COVERAGE_FACTOR, type Tape } from "#lib/quantity/uncertainty.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
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
}

/** Hangs the motor on the stern and asks every question. */
export function examine(motor: Motor, stern: Stern, options: Options = {}): Assessment {
  const rig: Rig = {
    motor: motorValues(motor),
    stern: { ...sternValues(stern), limits: { ...stern.limits, ...options.limits } },
    ...(options.handling && { handling: options.handling }),
  };
  const mounting = mount(rig);
  const taken = takenOf(motor, stern, options.tape);
  const study: Study = {
    mounting,
    limit: (key) => limitOf(rig, key),
    write: lengthWriter(options.lengths ?? "mm"),
  };
  const first = checks.map((check) => answer(check, study, taken));
  const answers = first.map((one) => overruled(one, first));
  const asked = answers.filter(({ outcome }) => outcome !== "not asked");
  const [governing] = asked.sort((a, b) => byGravity(ranked(a), ranked(b)));
  return { mounting, answers, governing: governing!, taken };
}

const ranked = ({ outcome, ruling }: Answer) => ({
  verdict: outcome === "not asked" ? ("fits" as const) : outcome,
  ...(ruling && outcome !== "cannot tell" && { margin: ruling.margin, u: ruling.u }),
  ...(ruling && ruling.verdict === "cannot tell" && { margin: ruling.margin, u: ruling.u }),
});

function answer(check: Check, study: Study, taken: (key: RigKey) => Taken | undefined): Answer {
  const { rig } = study.mounting;
  const asked = check.asked(rig);
  if (asked !== true) return { check, outcome: "not asked", missing: [], says: asked };
  const needs = check.needs(rig);
  const missing = needs.filter((key) => !isKnown(rig, key));
  const keys = [...needs, ...(check.also ?? [])];
  const ruling = check
    .edges(study)
    .map((edge) => assessEdge(edge, rig, keys, taken))
    .sort(byGravity)[0];
  if (ruling && (missing.length === 0 || ruling.verdict === "fouls")) {
    return { check, outcome: ruling.verdict, ruling, missing, says: finding(ruling, check, study) };
  }
  return { check, outcome: "cannot tell", missing, says: `Not known: ${missing.map(nameOf).join(", ")}.` };
}

/** Whether a rig holds what a key names; a seat counts as known where the uncut top is. */
const isKnown = ({ motor, stern }: Rig, key: NeededKey): boolean =>
  (key === "seatMm"
    ? seatNow(stern)
    : ((motor as Record<string, unknown>)[key] ?? (stern as Record<string, unknown>)[key])) !== undefined;

const nameOf = (key: NeededKey): string => {
  if (key === "steering") return "whether it has a tiller";
  if (key === "shaftClass") return "shaft class";
  const { name } = fieldOf(key);
  return name.charAt(0).toLowerCase() + name.slice(1);
};

/** "…: 14 mm to spare, give or take 4 mm." */
function finding({ margin, u, edge, verdict }: Assessed, check: Check, { write }: Study): string {
  const figure = check.unit === "mm" ? write : inDegrees;
  const room = margin < 0 ? `${figure(-margin)} short` : `${figure(margin)} to spare`;
  const spread = u > 0 ? `, give or take ${figure(COVERAGE_FACTOR * u)}` : "";
  const doubt = verdict === "cannot tell" ? ": too close to tell" : "";
  return `${edge.says.charAt(0).toUpperCase()}${edge.says.slice(1)}: ${room}${spread}${doubt}.`;
}

/** A rough question that does not fit gives way to the better one that was answered. */
function overruled(one: Answer, all: readonly Answer[]): Answer {
  const better = all.find(({ check }) => check.id === one.check.overruledBy?.check);
  const yields = better?.ruling && better.outcome !== "fouls" && one.ruling && one.outcome !== "fits";
  return yields
    ? { ...one, outcome: "not asked", ruling: undefined, says: one.check.overruledBy!.says }
    : one;
}

/** Assesses and sets down the report: the one JSON that page, API and command give. */
export function assess(
  motor: Motor,
  stern: Stern,
  limits: Readonly<Record<string, number>> = {},
  options: Omit<Options, "limits"> = {},
): Report {
  const asked = { ...options, limits };
  const assessment = examine(motor, stern, asked);
  const { mounting, answers, governing } = assessment;
  return rounded({
    engine: ENGINE_VERSION,
    motor: motor.id,
    stern: stern.id,
    verdict: verdictOfAnswer(governing),
    governs: governing.check.id,
    plate: plateOf(mounting.rig),
    clearances: clearancesOf(mounting, answers),
    needs: needsOf(mounting),
    checks: answers.map(setDown),
    remedies: [],
  });
}

/** The verdict a governing answer stands for. */
export const verdictOfAnswer = ({ outcome }: Answer): Verdict =>
  outcome === "not asked" ? "cannot tell" : outcome;

function plateOf(rig: Rig): ReportPlate | undefined {
  const hole = runningHoleNumber(rig);
  if (hole === undefined) return undefined;
  const holes = rig.motor.pinAnglesDeg!.flatMap((pinDeg, number) => {
    const aboveDatumMm = plateAboveDatum(rig, number);
    return aboveDatumMm === undefined
      ? []
      : [{ pinDeg, attitudeDeg: pinDeg - rig.stern.rakeDeg!, aboveDatumMm }];
  });
  const running = holes[hole];
  const window = [limitOf(rig, "plateLowMm").value, limitOf(rig, "plateHighMm").value] as const;
  return running && { ...running, windowMm: window, holes };
}

/** Clearances are set down only where every moving part is known, or where a known one already fouls. */
function clearancesOf(mounting: Mounting, answers: readonly Answer[]): ReportClearance[] {
  const certain = (id: string) =>
    mounting.missing.length === 0 ||
    answers.some(
      ({ ruling }) => ruling?.verdict === "fouls" && ruling.edge.have === mounting.clearance(id)?.mm,
    );
  return mounting.obstacles.flatMap(({ id }) => {
    const found = certain(id) ? mounting.clearance(id) : undefined;
    if (!found) return [];
    return [
      {
        obstacle: id,
        mm: found.mm,
        part: found.partId,
        faceAngleDeg: found.pose.faceAngleDeg,
        steeringDeg: found.pose.steeringDeg,
        straightMm: mounting.straightClearance(id)!.mm,
        nearest: { partMm: found.partPoint, obstacleMm: found.obstaclePoint },
      },
    ];
  });
}

function setDown({ check, outcome, ruling, missing, says }: Answer): ReportCheck {
  const measureNext = outcome === "cannot tell" ? (missing[0] ?? ruling?.budget[0]?.key) : undefined;
  const unit = check.unit === "mm" ? "Mm" : "Deg";
  return {
    id: check.id,
    question: check.question,
    outcome,
    ...(ruling && {
      [`margin${unit}`]: ruling.margin,
      [`expandedUncertainty${unit}`]: COVERAGE_FACTOR * ruling.u,
      [`worstCase${unit}`]: ruling.worstCase,
      have: ruling.edge.have,
      need: ruling.edge.need,
      limit: {
        value: ruling.edge.limit.value,
        unit: check.unit,
        source: ruling.edge.limit.source,
        status: ruling.edge.limit.status,
      },
    }),
    says,
    ...(missing.length > 0 && { missing }),
    ...(measureNext && { measureNext }),
  };
}

/** Every number to 0.01, keys without a value left out, so that the same report reads the same everywhere. */
function rounded<T>(value: T): T {
  if (typeof value === "number") return (Math.round(value * 100) / 100 + 0) as T;
  if (Array.isArray(value)) return value.map(rounded) as T;
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, entry]) => (entry === undefined ? [] : [[key, rounded(entry)]])),
  ) as T;
}
