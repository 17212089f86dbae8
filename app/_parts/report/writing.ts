import type { ReportCheck } from "#lib/fit/report.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** Writes a number of a check in its own unit: lengths as the reader likes them, or degrees. */
export const writerFor = (
  check: Pick<ReportCheck, "limit">,
  lengths: LengthSystem,
): ((value: number) => string) => (check.limit?.unit === "deg" ? inDegrees : lengthWriter(lengths));

/** A check's room to spare, its give-or-take and its worst case, whichever unit they are in. */
export const marginOf = (check: ReportCheck) => ({
  margin: check.marginMm ?? check.marginDeg,
  spread: check.expandedUncertaintyMm ?? check.expandedUncertaintyDeg,
  worst: check.worstCaseMm ?? check.worstCaseDeg,
});

/** The lengths asked for in an address: `?units=in`, else millimetres. */
export const lengthsFrom = (units: string | string[] | undefined): LengthSystem =>
  units === "in" ? "in" : "mm";

/** A figure held together with its fraction and its unit: "1 11/16 in" is never broken over two lines. */
export const unbroken = (text: string): string =>
  text.replace(/(?<=\d) (?=\d+\/\d|mm\b|in\b|kg\b)/g, "\u00a0");

/** The query that reopens a report as it stands: lengths, and whether gaps are filled from like motors. */
export const queryFor = (lengths: LengthSystem, like: boolean): string =>
  `?units=${lengths}${like ? "&like=1" : ""}`;
