/**
 * Where a rule stands and how far it can be relied on here: the document, its clause and edition, whether
 * the text itself was read, and whom it binds. Most rules about boats afloat are written for boats other
 * than the one in hand; a report that shows one says so.
 */
import type { Standard } from "#lib/standards/standard.ts";

export interface Citation {
  readonly document: string;
  readonly clause: string;
  readonly edition: string;
  readonly status: Standard["status"];
  /** How it was read: the document itself (or a faithful copy), or a later work that gives its figures. */
  readonly read: "in the text itself" | "in a secondary text";
  /** Which boats it was written for. */
  readonly binds: string;
  /** Where it can be looked up. */
  readonly url?: string;
}

/** The source in one line: "33 CFR, 183.53 (51 FR 37574, 23 October 1986)"; a secondary reading is said. */
export function sourceOf({ document, clause, edition, read, status }: Citation): string {
  if (status === "common practice") return "common practice, no source";
  const place = `${document}, ${clause} (${edition})`;
  return read === "in the text itself" ? place : `${place}, read in a secondary text`;
}

/** The id a citation is listed and linked under: "33-cfr-183-53-a-and-table-183-53". */
export const citationId = ({ document, clause, status }: Citation): string =>
  status === "common practice"
    ? COMMON_PRACTICE_ID
    : `${document} ${clause}`
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, "-")
        .replace(/^-|-$/g, "");

/** Where everything that is common practice and has no source is listed. */
export const COMMON_PRACTICE_ID = "common-practice";

/** One number of a cited rule as a Standard. */
export const numberOf = (
  citation: Citation,
  value: number,
  unit: Standard["unit"],
  what: string,
): Standard => ({ value, unit, what, source: sourceOf(citation), status: citation.status });

/** A remark that goes with an answer: an ambiguity of the text, or what was taken and why. */
export interface Note<Id extends string = string> {
  readonly id: Id;
  readonly says: string;
}
