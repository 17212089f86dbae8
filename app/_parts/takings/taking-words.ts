import { howShort, writtenAll } from "#app/_parts/record/written.ts";
import type { Agreement } from "#lib/db/agreement.ts";
import type { Unit } from "#lib/quantity/measured.ts";

const twoFigures = (value: number): number => Number(value.toPrecision(2));
const spread = (value: number, unit: Unit): string => writtenAll(twoFigures(value), unit).main;

/** "Consensus of 3 takings: 430 mm ± 1.2 mm, measured." */
export function agreed({ number, counted }: Agreement, unit: Unit): string {
  const { main, beside } = writtenAll(number.value, unit);
  const halfWidth = number.plusMinus === undefined ? "usual ±" : `± ${spread(number.plusMinus, unit)}`;
  const what = `${main}${beside ? ` (${beside})` : ""} ${halfWidth}, ${howShort[number.how]}.`;
  return counted === 1 ? `One taking counts: ${what}` : `Consensus of ${counted} takings: ${what}`;
}

/** What lies between takings beyond what each claims for itself, in plain words; nothing to say of one taking. */
export function beyondClaims({ between, counted }: Agreement, unit: Unit): string {
  if (counted === 1) return "";
  if (between === 0) return "They agree within what each claims for itself.";
  return `They differ by more than each claims for itself: about ${spread(between, unit)} more from taking to taking, which the ± takes in.`;
}
