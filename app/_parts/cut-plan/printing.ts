import type { Query } from "#app/_parts/report/asked.ts";
import type { PaperSize } from "#lib/draw/paper/paper.ts";
import { labelSchema } from "#lib/entry/text.ts";

/** How the paper is to be printed, as the address has it. */
export interface Printing {
  readonly paper: PaperSize;
  /** What the rule showed on the 100 mm bar, as typed. */
  readonly shown: string;
  /** As typed. */
  readonly owner: string;
  /** Why the owner's name cannot stand in the title block. */
  readonly ownerSays?: string | undefined;
}

const one = (value: string | string[] | undefined): string =>
  typeof value === "string" ? value.slice(0, 200) : "";

/** What an address asks of the paper. */
export function printingFrom(query: Query): Printing {
  const owner = one(query.owner).trim();
  const named = owner === "" ? undefined : labelSchema("The owner").safeParse(owner);
  return {
    paper: query.paper === "letter" ? "letter" : "a4",
    shown: one(query.shown).trim(),
    owner,
    ...(named && !named.success && { ownerSays: named.error.issues[0]?.message }),
  };
}
