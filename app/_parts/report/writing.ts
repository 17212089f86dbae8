import { formatLength } from "#lib/entry/length-format.ts";
import type { ReportCheck } from "#lib/fit/report.ts";
import { MM_PER_INCH } from "#lib/quantity/length.ts";
import { figure, inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Field } from "#lib/rig/field.ts";

/** The unit of a check's margin. */
export type MarginUnit = "mm" | "deg";

/** Writes a number of a check in its own unit: lengths as the reader likes them, or degrees. */
export const writerIn = (unit: MarginUnit, lengths: LengthSystem): ((value: number) => string) =>
  unit === "deg" ? inDegrees : lengthWriter(lengths);

/** The unit of a check's margin; millimetres where there is none. */
export const unitOf = (check: Pick<ReportCheck, "limit">): MarginUnit => check.limit?.unit ?? "mm";

/** A check's room to spare, its give-or-take and its worst case, whichever unit they are in. */
export const marginOf = (check: ReportCheck) => ({
  margin: check.marginMm ?? check.marginDeg,
  spread: check.expandedUncertaintyMm ?? check.expandedUncertaintyDeg,
  worst: check.worstCaseMm ?? check.worstCaseDeg,
});

/** A figure held together with its fraction and its unit: "1 11/16 in", "± 2 mm" and "give or take 4" are never broken over two lines. */
export const unbroken = (text: string): string =>
  text
    .replace(/(?<=\d) (?=\d+\/\d|mm\b|in\b|kg\b|kW\b|%)|(?<=±) /g, "\u00a0")
    .replace(/give or take (?=\d)/g, "give\u00a0or\u00a0take\u00a0");

/** A number of a record as it was taken, in the reader's lengths: "520.7 mm", "20 1/2 in", "12°"; a list with commas. */
export function takenWords(
  value: number | readonly number[],
  unit: Field["unit"],
  lengths: LengthSystem,
): string {
  if (typeof value !== "number") return value.map((each) => takenWords(each, unit, lengths)).join(", ");
  if (unit === "mm") return formatLength(value, lengths);
  if (unit === "deg") return inDegrees(value);
  return unit === "count" ? figure(value) : `${figure(value)} ${unit}`;
}

/** A half-width, two figures at most: "± 2.2 mm"; inches as finely as they are worth telling. */
export function plusMinusWords(halfWidth: number, unit: Field["unit"], lengths: LengthSystem): string {
  if (unit !== "mm" || lengths === "mm") {
    return `± ${takenWords(Number(halfWidth.toPrecision(2)), unit, lengths)}`;
  }
  const division = FINE.find((each) => halfWidth >= (4 * MM_PER_INCH) / each) ?? 64;
  return `± ${formatLength(halfWidth, "in", { division })}`;
}

/** Divisions of the inch for half-widths: the coarsest in which one still counts four or more. */
const FINE = [16, 32] as const;
