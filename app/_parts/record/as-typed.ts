import "server-only";
import { readField } from "#app/_parts/form/read-field.ts";
import { fieldsOf, type Texts, textsOf } from "#app/_parts/form/texts.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { takingsOf } from "#lib/db/records.ts";
import type { Measured } from "#lib/quantity/measured.ts";

/** A record as the texts of its form; a number that was typed by a person comes back as that person wrote it. */
export async function asTyped<K extends Kind>(kind: K, record: RecordOf<K>): Promise<Texts> {
  const typed = (await takingsOf(kind, record.id)).flatMap(({ key, raw }) =>
    raw !== undefined && stillSays(kind, record, key, raw) ? [[key, raw] as const] : [],
  );
  return { ...textsOf(kind, record), ...Object.fromEntries(typed) };
}

/** Whether a text, read by itself, is the number the record has. */
function stillSays<K extends Kind>(kind: K, record: RecordOf<K>, key: string, raw: string): boolean {
  const field = fieldsOf(kind)[key];
  const now = (record as unknown as Readonly<Record<string, Measured | undefined>>)[key]?.value;
  if (!field || typeof now !== "number") return false;
  const read = readField(field, raw);
  return read.kind === "value" && read.value === now;
}
