import "server-only";
import { createHash } from "node:crypto";
import { standingRecords, versionsMade } from "#lib/db/drawer.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { Stored } from "#lib/db/records.ts";

/** Every record of a kind as it stands, kept in memory until one of them changes. */
export interface Drawer<K extends Kind> {
  /** How many versions were ever made: the same figure, the same records. */
  readonly made: number;
  readonly stored: ReadonlyMap<string, Stored<RecordOf<K>>>;
}

type Kept = { [K in Kind]?: Promise<Drawer<K>> };

/** One per process, whatever a bundler does: it may load this file more than once. */
const KEY = Symbol.for("sternwright.drawer");
const shared = globalThis as { [KEY]?: Kept };

/** The records of a kind: from memory where nothing has changed since they were read. */
export async function drawer<K extends Kind>(kind: K): Promise<Drawer<K>> {
  shared[KEY] ??= {};
  const kept: Kept = shared[KEY];
  const made = await versionsMade(kind);
  const before = await (kept[kind] as Promise<Drawer<K>> | undefined);
  if (before?.made === made) return before;
  const read = standingRecords(kind, before?.stored).then((stored) => ({ made, stored }));
  (kept as Record<string, unknown>)[kind] = read;
  read.catch(() => {
    delete kept[kind];
  });
  return read;
}

const hashes = new WeakMap<object, string>();

/** A record's content as a short text: the same for the same numbers, whatever they are kept under. Records in memory never change. */
export function contentHash(record: object): string {
  const known = hashes.get(record);
  if (known) return known;
  const hash = createHash("sha1").update(JSON.stringify(record)).digest("base64");
  hashes.set(record, hash);
  return hash;
}
