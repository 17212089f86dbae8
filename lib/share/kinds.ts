/** The two kinds of record a file may hold, with what reading and writing them needs. */
import type { z } from "zod";
import { motorGroups, sternGroups } from "#lib/entry/groups.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";

/** Record types by the name of their kind. */
export interface Records {
  readonly motor: Motor;
  readonly stern: Stern;
}
export type KindName = keyof Records;

/** A kind: its fields, its schema, and all its keys in the order people are asked. */
export interface Kind<T> {
  readonly fields: Readonly<Record<string, Field>>;
  readonly schema: z.ZodType<T>;
  readonly keys: readonly string[];
}

const keysOf = (groups: readonly { readonly keys: readonly string[] }[]): readonly string[] => [
  "id",
  "label",
  ...groups.flatMap(({ keys }) => keys),
  "notes",
];

/** The kinds by name. */
export const kinds: { readonly [K in KindName]: Kind<Records[K]> } = {
  motor: { fields: motorFields, schema: motorSchema, keys: keysOf(motorGroups) },
  stern: { fields: sternFields, schema: sternSchema, keys: keysOf(sternGroups) },
};
