import "server-only";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords, getRecord } from "#lib/db/records.ts";

/** Every record of a kind by name, for choosing from. */
export async function named(kind: Kind): Promise<{ readonly id: string; readonly label: string }[]> {
  return (await allRecords(kind)).map(({ record }) => ({ id: record.id, label: record.label }));
}

/** A record's label for the page's title; a plain word where there is no such record. */
export async function titled(kind: Kind, params: Promise<{ id: string }>): Promise<string> {
  return (await getRecord(kind, (await params).id))?.record.label ?? `No such ${kind}`;
}
