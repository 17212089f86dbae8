/**
 * A number the trade or a document lays down: what it is, where it stands, and how far that can be
 * relied on. A published one names its document, clause and edition.
 */
export interface Standard {
  readonly value: number;
  readonly unit: "mm" | "deg" | "kW" | "kg" | "ratio";
  /** What the number is, in the words of the trade. */
  readonly what: string;
  readonly source: string;
  readonly status: "published" | "common practice" | "from memory";
}

/** A standard of the trade that no document at hand lays down. */
export const commonPractice = (value: number, unit: "mm" | "deg", what: string): Standard => ({
  value,
  unit,
  what,
  source: "common practice, no source",
  status: "common practice",
});
