import "server-only";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords, getRecord } from "#lib/db/records.ts";

/** 2 hp before 10 hp. */
const collator = new Intl.Collator("en-GB", { numeric: true });

/** Every record of a kind by name, for choosing from. */
export async function named(kind: Kind): Promise<{ readonly id: string; readonly label: string }[]> {
  const all = (await allRecords(kind)).map(({ record }) => ({ id: record.id, label: record.label }));
  return all.sort((a, b) => collator.compare(a.label, b.label));
}

/** A record's label for the page's title; a plain word where there is no such record. */
export async function titled(kind: Kind, params: Promise<{ id: string }>): Promise<string> {
  return (await getRecord(kind, (await params).id))?.record.label ?? `No such ${kind}`;
}
