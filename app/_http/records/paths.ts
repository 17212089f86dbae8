import type { ZodType } from "zod";
import { Refused } from "#app/_http/problem.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { motorPatchSchema, motorSchema } from "#lib/entry/motor.ts";
import type { Patch } from "#lib/entry/patch.ts";
import { sternPatchSchema, sternSchema } from "#lib/entry/stern.ts";

interface Entry<K extends Kind> {
  readonly whole: ZodType<RecordOf<K>>;
  readonly patch: ZodType<Patch<RecordOf<K>>>;
}

/** What is sent for a record of each kind, and for a change to one. */
export const entryOf: { readonly [K in Kind]: Entry<K> } = {
  motor: { whole: motorSchema, patch: motorPatchSchema },
  stern: { whole: sternSchema, patch: sternPatchSchema },
};

/** Where a record is read. */
export const pathOf = (kind: Kind, id: string): string => `/api/${kind}s/${id}`;

/** The answer where no record of that id stands. */
export const noSuch = (kind: Kind): Refused => new Refused(404, `There is no ${kind} of that id.`);

/** The value, or the refusal that there is none. */
export function found<T>(value: T | null, kind: Kind): T {
  if (value === null) throw noSuch(kind);
  return value;
}
