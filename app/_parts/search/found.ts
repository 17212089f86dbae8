import type { Kind } from "#lib/db/kind.ts";

/** One line of what a search found, as the API gives it. */
export interface Found {
  readonly kind: Kind;
  readonly id: string;
  readonly label: string;
  /** A few facts in words, most telling first. */
  readonly facts: readonly string[];
}
