/** Asks every question afloat of a pairing that was examined, and sets the answers down for the report. */
import { afloatChecks } from "#lib/checks/afloat.ts";
import type { AfloatCheck, AfloatFinding, AfloatStudy, Judged, RuleKept } from "#lib/checks/afloat-check.ts";
import { runningHoleNumber } from "#lib/checks/plate-height.ts";
import { expanded, judgeAfloat } from "#lib/fit/afloat-judge.ts";
import type { AfloatMargins, ReportAfloat, ReportAfloatShare, ReportRule } from "#lib/fit/afloat-report.ts";
import { figure, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import { type Aboard, USUAL_ABOARD } from "#lib/rig/afloat/aboard.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import type { Taken } from "#lib/rig/record.ts";

/** How the boat is to be looked at afloat. */
export interface AfloatOptions {
  /** Persons and fuel; two persons amidships and a portable tank where absent. */
  readonly aboard?: Aboard;
  readonly lengths?: LengthSystem;
}

type TakenOf = (key: RigKey) => Taken | undefined;

/** What the questions afloat are asked about. */
export const studyOf = (
  rig: Rig,
  taken: TakenOf,
  { aboard = USUAL_ABOARD, lengths = "mm" }: AfloatOptions = {},
): AfloatStudy => {
  const afloat = { rig: inItsHole(rig), aboard };
  return { afloat, write: lengthWriter(lengths), judge: (edge) => judgeAfloat(edge, afloat, taken) };
};

/** The motor held in the hole it runs in: a spread of the rake must not make it jump to another. */
function inItsHole(rig: Rig): Rig {
  const hole = runningHoleNumber(rig);
  return hole === undefined ? rig : { ...rig, handling: { ...rig.handling, hole } };
}

/** Every question afloat with its answer. */
export function afloatOf(rig: Rig, taken: TakenOf, options: AfloatOptions = {}): ReportAfloat[] {
  const study = studyOf(rig, taken, options);
  return afloatChecks.map((check) => setDown(check, check.answer(study), study, taken));
}

function setDown(check: AfloatCheck, found: AfloatFinding, study: AfloatStudy, taken: TakenOf): ReportAfloat {
  const { ruling, missing, rules, trim } = found;
  const next =
    found.outcome === "cannot tell"
      ? (missing[0] ?? ruling?.judged.budget.find(({ key }) => key !== "fullness")?.key)
      : undefined;
  return {
    id: check.id,
    question: check.question,
    standing: check.standing,
    is: check.is,
    outcome: found.outcome,
    ...(ruling && {
      ...marginsOf(ruling.judged, check.unit),
      have: ruling.have,
      need: ruling.need,
      limit: {
        unit: check.unit,
        value: ruling.limit.value,
        source: ruling.limit.source,
        status: ruling.limit.status,
        ...(ruling.limit.standard && { standard: ruling.limit.standard }),
      },
    }),
    says: ruling ? `${found.says} ${marginWords(check, ruling.judged, study)}` : found.says,
    ...(missing.length > 0 && { missing }),
    ...(next && { measureNext: next }),
    ...(ruling && { restsOn: sharesOf(ruling.judged, taken) }),
    figures: found.figures,
    ...(rules && { rules: rules.map((rule) => ruleDown(rule, check.unit)) }),
    notes: found.notes.map(({ id, says }) => ({ id, says })),
    ...(trim && { trim }),
  };
}

const SUFFIX = { mm: "Mm", kg: "Kg", kW: "Kw" } as const;

const marginsOf = (judged: Judged, unit: AfloatCheck["unit"]): AfloatMargins => ({
  [`margin${SUFFIX[unit]}`]: judged.margin,
  [`expandedUncertainty${SUFFIX[unit]}`]: expanded(judged),
  [`worstCase${SUFFIX[unit]}`]: judged.worstCase,
});

/** "14 mm to spare, give or take 4 mm." */
function marginWords({ unit }: AfloatCheck, judged: Judged, { write }: AfloatStudy): string {
  const words = unit === "mm" ? write : (value: number) => `${figure(value)} ${unit}`;
  const room = judged.margin < 0 ? `${words(-judged.margin)} short` : `${words(judged.margin)} to spare`;
  const spread = judged.u > 0 ? `, give or take ${words(expanded(judged))}` : "";
  return `${room.charAt(0).toUpperCase()}${room.slice(1)}${spread}${judged.verdict === "cannot tell" ? ": too close to tell" : ""}.`;
}

const ruleDown = (
  { id, rule, binds, least, judged, source, standard }: RuleKept,
  unit: AfloatCheck["unit"],
): ReportRule => ({
  id,
  rule,
  binds,
  least,
  outcome: judged.verdict,
  ...marginsOf(judged, unit),
  source,
  ...(standard && { standard }),
});

const sharesOf = ({ budget }: Judged, taken: TakenOf): ReportAfloatShare[] =>
  budget.map(({ key, halfWidth, sensitivity, share }) => {
    const entry = key === "fullness" ? undefined : taken(key);
    return {
      key,
      ...(entry && { value: entry.value, how: entry.how }),
      plusMinus: halfWidth,
      sensitivity,
      share,
    };
  });
