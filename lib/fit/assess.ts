/**
 * Assesses one motor on one stern and sets down the report: the one JSON that page, drawing, API and
 * command give.
 */
import { limitOf } from "#lib/checks/check.ts";
import { plateAboveDatum, runningHoleNumber } from "#lib/checks/plate-height.ts";
import { afloatOf } from "#lib/fit/afloat.ts";
import { type Answer, examine, nameOf, type Options, verdictOfAnswer } from "#lib/fit/examine.ts";
import { measureNext } from "#lib/fit/measure-next.ts";
import { needsOf } from "#lib/fit/needs.ts";
import { type Remedy, remediesOf } from "#lib/fit/remedies.ts";
import {
  ENGINE_VERSION,
  type Report,
  type ReportBudgetLine,
  type ReportCheck,
  type ReportClearance,
  type ReportMeasureNext,
  type ReportPlate,
  type ReportRemedy,
} from "#lib/fit/report.ts";
import { rounded } from "#lib/fit/rounded.ts";
import type { Assessed } from "#lib/fit/verdict.ts";
import { COVERAGE_FACTOR } from "#lib/quantity/uncertainty.ts";
import { inDegrees, lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Mounting, Rig } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Assesses and sets down the report: the one JSON that page, API and command give. */
export function assess(
  motor: Motor,
  stern: Stern,
  limits: Readonly<Record<string, number>> = {},
  options: Omit<Options, "limits"> = {},
): Report {
  const asked = { ...options, limits, thorough: true };
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
    afloat: afloatOf(mounting.rig, assessment.taken, options),
    ...(options.estimates && options.estimates.length > 0 && { estimated: options.estimates }),
    measureNext: nextOf(governing, options),
    remedies: remediesOf(motor, stern, assessment, asked).map(remedyDown),
  });
}

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
      ({ ruling }) =>
        ruling?.verdict === "fouls" &&
        [mounting.clearance(id)?.mm, mounting.insideClearance(id)?.mm].includes(ruling.edge.have),
    );
  return mounting.obstacleIds.flatMap((id) => {
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
        ...(screened(mounting, id) && { throughTransom: true as const }),
        nearest: { partMm: found.partPoint, obstacleMm: found.obstaclePoint },
      },
    ];
  });
}

/** The sole's nearest is the leg outside the transom. */
const screened = (mounting: Mounting, id: string): boolean =>
  id === "sole" && mounting.insideClearance(id) !== mounting.clearance(id);

function setDown({ check, outcome, ruling, missing, says }: Answer): ReportCheck {
  const next = measureNext({ check, outcome, ruling, missing, says });
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
    ...(ruling?.jumps && { jumps: true as const }),
    ...(ruling && { restsOn: budgetOf(ruling) }),
    ...(missing.length > 0 && { missing }),
    ...(next && { measureNext: next.key }),
  };
}

/** What a margin rests on, largest part first. */
const budgetOf = ({ budget }: Assessed): ReportBudgetLine[] =>
  budget.map(({ key, taken, sensitivity, share }) => ({
    key,
    value: taken.value,
    plusMinus: taken.halfWidth,
    how: taken.how,
    byDefault: taken.byDefault,
    ...(taken.fromLike && { fromLike: true as const }),
    sensitivity,
    share,
  }));

/** The one measurement that would settle the governing question, with how to take it and how well. */
function nextOf(governing: Answer, options: Options): ReportMeasureNext | undefined {
  const next = measureNext(governing);
  if (!next) return undefined;
  const { key, goodEnough } = next;
  if (key === "steering" || key === "shaftClass") {
    return { key, says: `Find out ${nameOf(key)}.` };
  }
  const { name, take, unit } = fieldOf(key);
  const write = unit === "deg" ? inDegrees : lengthWriter(options.lengths ?? "mm");
  const untaken =
    governing.missing.length > 0 ||
    governing.ruling?.budget.some((line) => line.key === key && line.taken.fromLike);
  const well = goodEnough
    ? ` To within ${write(goodEnough)} would do.`
    : governing.missing.length > 0
      ? ""
      : " It weighs most, though it would not settle the question alone.";
  const says = `${untaken ? "Measure" : "Measure again, with care"}: ${name.charAt(0).toLowerCase()}${name.slice(1)}. ${take}${well}`;
  return { key, ...(goodEnough && { goodEnough }), says };
}

function remedyDown({ changes: [first, ...also], says, after, verdictAfter }: Remedy): ReportRemedy {
  const { check, ruling } = after.governing;
  const unit = check.unit === "mm" ? "Mm" : "Deg";
  return {
    ...first!,
    ...(also.length > 0 && { also }),
    verdictAfter,
    governsAfter: check.id,
    ...(ruling && {
      [`marginAfter${unit}`]: ruling.margin,
      [`expandedUncertaintyAfter${unit}`]: COVERAGE_FACTOR * ruling.u,
    }),
    says,
  };
}
