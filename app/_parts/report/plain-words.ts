/** A margin and its doubt in sentences for somebody who never heard of uncertainty. */
import { type MarginUnit, marginOf, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import type { ReportBudgetLine, ReportCheck, ReportRemedy } from "#lib/fit/report.ts";
import { inDegrees, inInches, inMillimetres, type LengthSystem } from "#lib/quantity/words.ts";
import type { Field } from "#lib/rig/field.ts";

/** Doubt of this many mm or more is told in whole ones: the tenths mean nothing beside it. */
const COARSE = 3;

/**
 * "14 mm to spare, give or take 4", "3 mm short, give or take 4"; inches keep their unit. Beside a doubt
 * of 3 mm and more tenths are left out, unless that would make margin and doubt look equal, or nothing.
 */
export function spareWords(margin: number, spread: number, unit: MarginUnit, lengths: LengthSystem): string {
  const size = Math.abs(margin);
  const [room, doubt] = [Math.round(size), Math.round(spread)];
  const whole = spread >= COARSE && room !== doubt && room > 0;
  const write = writerIn(unit, lengths);
  const figures = whole && unit === "mm" && lengths === "mm" ? [room, doubt] : [size, spread];
  const side = margin < 0 ? "short" : "to spare";
  return `${write(figures[0]!)} ${side}${spread > 0 ? `, give or take ${doubtWords(figures[1]!, unit, lengths)}` : ""}`;
}

/** A give-or-take: the bare figure in mm, since the unit was just said; never a nought. */
export function doubtWords(spread: number, unit: MarginUnit, lengths: LengthSystem): string {
  if (unit === "deg") return spread < 0.05 ? "less than 0.1°" : inDegrees(spread);
  if (lengths === "in") return spread < 25.4 / 32 ? "less than 1/16 in" : inInches(spread);
  return spread < 0.05 ? "less than 0.1" : inMillimetres(spread).replace(" mm", "");
}

/** The finding without its margin at the end, which the page says in its own words. */
export function clauseOf(check: ReportCheck, lengths: LengthSystem): string {
  const { margin } = marginOf(check);
  if (margin === undefined) return check.says;
  const write = writerIn(unitOf(check), lengths);
  const tail = `: ${write(Math.abs(margin))} ${margin < 0 ? "short" : "to spare"}`;
  const at = check.says.lastIndexOf(tail);
  return at > 0 ? `${check.says.slice(0, at)}.` : check.says;
}

/** Whether a check rests on a number that comes from like motors. */
export const restsOnLike = ({ restsOn = [] }: Pick<ReportCheck, "restsOn">): boolean =>
  restsOn.some(({ fromLike }) => fromLike);

/** The margin of a check as one sentence, with what it comes to; undefined where nothing could be worked out. */
export function marginSentence(check: ReportCheck, lengths: LengthSystem): string | undefined {
  const { margin, spread } = marginOf(check);
  if (margin === undefined || spread === undefined) return undefined;
  const words = spareWords(margin, spread, unitOf(check), lengths);
  return `${words}${check.outcome === "cannot tell" ? `: ${why(check, margin, spread)}` : ""}.`;
}

/** Why a margin that was worked out still settles nothing. */
function why(check: ReportCheck, margin: number, spread: number): string {
  if (Math.abs(margin) >= spread && restsOnLike(check)) {
    return "it rests on numbers from like motors, and at the far end of those it would come out the other way";
  }
  return "too close to tell";
}

/** What one unit more of a number does to the margin: "1 mm more of this is 0.8 mm less room". */
export function effectWords(
  sensitivity: number,
  unit: Field["unit"],
  marginUnit: MarginUnit,
  lengths: LengthSystem,
): string {
  const inch = lengths === "in";
  const [step, perStep] =
    unit === "mm" ? (inch ? ["1 in", 25.4] : ["1 mm", 1]) : unit === "deg" ? ["1°", 1] : [`1 ${unit}`, 1];
  const moved = Math.abs(sensitivity) * perStep;
  const size =
    marginUnit === "deg"
      ? `${decimal(moved)}°`
      : inch
        ? `${decimal(moved / 25.4)} in`
        : `${decimal(moved)} mm`;
  if (decimal(moved / (inch && marginUnit === "mm" ? 25.4 : 1)) === "0") {
    return `${step} more of this hardly changes the room`;
  }
  return `${step} more of this is ${size} ${sensitivity > 0 ? "more" : "less"} room`;
}

/** Two figures at most, and no more than two decimals. */
const decimal = (value: number): string => String(Number(Number(value.toPrecision(2)).toFixed(2)));

/** A number's part of the doubt: "62 %", "under 1 %". */
export const shareWords = (share: number): string =>
  share < 0.01 ? "under 1 %" : `${Math.round(share * 100)} %`;

/** Where a half-width comes from. */
export function howWords({ how, byDefault, fromLike }: ReportBudgetLine): string {
  if (fromLike) return "not taken on this motor; from like motors";
  if (!byDefault) return `${TAKEN[how]}; the ± as entered`;
  return `${TAKEN[how]}; the ± as usual for that`;
}

const TAKEN: Record<ReportBudgetLine["how"], string> = {
  measured: "measured",
  declared: "from papers or the seller",
  estimated: "estimated by eye",
};

/** What a remedy comes to: "fits, with 4 mm to spare, give or take 3 (tightest: steering room)". */
export function afterWords(remedy: ReportRemedy, lengths: LengthSystem): string {
  const margin = remedy.marginAfterMm ?? remedy.marginAfterDeg;
  const spread = remedy.expandedUncertaintyAfterMm ?? remedy.expandedUncertaintyAfterDeg ?? 0;
  const question = remedy.governsAfter.replaceAll("-", "\u00a0");
  if (margin === undefined) {
    return `no longer fouls as far as can be told, but a number is missing (${question})`;
  }
  const unit = remedy.marginAfterDeg === undefined ? "mm" : "deg";
  const spare = `${spareWords(margin, spread, unit, lengths)} (tightest: ${question})`;
  return {
    fits: `fits, with ${spare}`,
    fouls: `still fouls: ${spare}`,
    "cannot tell": `no longer surely fouls, but is too close to tell: ${spare}`,
  }[remedy.verdictAfter];
}

/** Said where the place of the least room jumps within the doubt. */
export const JUMPS =
  "Within the doubt the motor can come nearest at another place than the one worked out here. The give or take was widened for that; take it as a rough figure.";
