import type { Kind } from "#lib/db/kind.ts";
import { type FormGroup, motorGroups, sternGroups } from "#lib/entry/groups.ts";

/** The groups of a kind's form, in the order of asking. */
export const groupsOf = (kind: Kind): readonly FormGroup<string>[] =>
  kind === "motor" ? motorGroups : sternGroups;
