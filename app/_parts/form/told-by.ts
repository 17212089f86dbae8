import { fieldsOf } from "#app/_parts/form/texts.ts";
import { keyOwner } from "#app/_parts/key-name.ts";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Group } from "#lib/rig/field.ts";

const ORDER: readonly Group[] = ["hang", "notch", "well", "rest"];

/** The numbers of one half of the pairing that a check can need; the plain facts (steering, shaft class) count as the motor's. */
export function ownNeeds(kind: Kind, id: string): readonly string[] {
  const check = checks.find((each) => each.id === id);
  return check ? check.needs({ motor: {}, stern: {} }).filter((key) => keyOwner(key) === kind) : [];
}

const groupOf = (kind: Kind, key: string): number => ORDER.indexOf(fieldsOf(kind)[key]?.group ?? "hang");

/** Ids of the checks whose last number of this half stands in `group`: once the group is filled in, they can be answered. */
export function checksClosedBy(kind: Kind, group: Group): readonly string[] {
  return checks
    .filter(({ id }) => {
      const needs = ownNeeds(kind, id);
      return needs.length > 0 && Math.max(...needs.map((key) => groupOf(kind, key))) === ORDER.indexOf(group);
    })
    .map(({ id }) => id);
}
