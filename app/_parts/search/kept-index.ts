import "server-only";
import { listFacts } from "#app/_parts/record/facts.ts";
import { changesSince, lastChange } from "#lib/db/changes.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { allRecords } from "#lib/db/records.ts";
import { store } from "#lib/db/store.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { type SearchIndex, searchIndex } from "#lib/search/search-index.ts";

/** What is kept of a record to find it and to show it in a line. */
export interface Findable {
  readonly kind: Kind;
  /** The record cut down to what is searched. */
  readonly record: Motor | Stern;
  readonly facts: readonly string[];
}

interface Kept {
  /** Number of the last change the index knows. */
  readonly last: number;
  readonly items: Map<string, Findable>;
  readonly index: SearchIndex<Findable>;
}

/** One for each open store. Searches ask one after another, so that none builds what another is building. */
const kept = new WeakMap<object, Promise<Kept>>();

/**
 * The index over all motors and sterns as they stand now. Every search asks the store for the changes since the
 * last one (there are hardly ever any); only those records are read again, and the index is built anew.
 */
export async function currentIndex(): Promise<SearchIndex<Findable>> {
  const connection = await store();
  const before = kept.get(connection);
  const now = before ? before.then(broughtUpToDate) : firstRead();
  kept.set(connection, now);
  try {
    return (await now).index;
  } catch (error) {
    if (kept.get(connection) === now) kept.delete(connection);
    throw error;
  }
}

/** The number is read before the records: a change that comes between is read twice and does no harm. */
async function firstRead(): Promise<Kept> {
  const last = await lastChange();
  const items = new Map<string, Findable>();
  for (const { record } of await allRecords("motor")) put(items, "motor", record);
  for (const { record } of await allRecords("stern")) put(items, "stern", record);
  return { last, items, index: searchIndex([...items.values()]) };
}

async function broughtUpToDate(old: Kept): Promise<Kept> {
  const { last, changes } = await changesSince(old.last);
  if (changes.length === 0) return old;
  for (const { kind, id, action, record } of changes) {
    if (action === "remove") old.items.delete(`${kind} ${id}`);
    else put(old.items, kind, record);
  }
  return { last, items: old.items, index: searchIndex([...old.items.values()]) };
}

const SEARCHED: readonly string[] = [
  ...["id", "label", "notes", "year", "powerKw", "massKg"],
  ...["shaftClass", "steering", "strokes", "shaftLengthMm"],
  ...["hullForm", "hardChine", "lengthOverallMm", "seatMm", "transomTopMm"],
];

function put<K extends Kind>(items: Map<string, Findable>, kind: K, record: RecordOf<K>): void {
  const searched = Object.entries(record).filter(([key]) => SEARCHED.includes(key));
  items.set(`${kind} ${record.id}`, {
    kind,
    record: Object.fromEntries(searched) as unknown as Motor | Stern,
    facts: listFacts(kind, record),
  });
}
