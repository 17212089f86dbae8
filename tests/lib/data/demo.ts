/** The invented records, read the way anybody's file is read: through the schemas. */
import { readFileSync } from "node:fs";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

const read = (name: string): unknown[] => JSON.parse(readFileSync(`data/demo/${name}.json`, "utf8"));

export const motors: readonly Motor[] = read("motors").map((record) => motorSchema.parse(record));
export const sterns: readonly Stern[] = read("sterns").map((record) => sternSchema.parse(record));

/** The demonstration motor of an id; throws where there is none. */
export const motorOf = (id: string): Motor => found(motors, id);
/** The demonstration stern of an id; throws where there is none. */
export const sternOf = (id: string): Stern => found(sterns, id);

function found<T extends { readonly id: string }>(records: readonly T[], id: string): T {
  const record = records.find((one) => one.id === id);
  if (!record) throw new Error(`no invented record is called ${id}`);
  return record;
}
