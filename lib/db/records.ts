import "server-only";
import { and, asc, eq } from "drizzle-orm";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import {
  asStored,
  cursorBehind,
  type Filter,
  PAGE,
  type Stored,
  selectOne,
  selectStanding,
} from "#lib/db/reading.ts";
import { sameRecord } from "#lib/db/same.ts";
import { type Beside, creation, nextVersion, ready, sqlWriter, type Taking } from "#lib/db/statements.ts";
import { store } from "#lib/db/store.ts";
import { DuplicateId, isStoreError } from "#lib/db/store-error.ts";
import { observation } from "#lib/db/table/observation.ts";
import { type Action, revision } from "#lib/db/table/revision.ts";
import type { How } from "#lib/quantity/measured.ts";

export type { Kind, RecordOf } from "#lib/db/kind.ts";
export type { Filter, Stored } from "#lib/db/reading.ts";

/** Somebody else changed the record first: how it stands now. Nothing was changed. */
export interface Conflict<K extends Kind> {
  readonly conflict: true;
  readonly current: Stored<RecordOf<K>>;
}

/** One version of a record, whole, and what made it. */
export interface Revision<K extends Kind> {
  readonly version: number;
  readonly action: Action;
  readonly at: string;
  readonly record: RecordOf<K>;
}

/** One number of one object, taken once. */
export interface Observation {
  readonly sequence: number;
  readonly key: string;
  readonly value: number | readonly number[];
  readonly plusMinus?: number;
  readonly how: How;
  /** As it was typed, where a person typed it. */
  readonly raw?: string;
  readonly takenAt: string;
  readonly by?: string;
  /** True where it was taken beside the earlier ones, which go on counting; an edit begins afresh. */
  readonly again?: true;
  readonly comment?: string;
}

/** One page of records in the order of their labels; `next` is there while there is more. Throws `bad cursor`. */
export async function listRecords<K extends Kind>(
  kind: K,
  filter: Filter = {},
): Promise<{ items: Stored<RecordOf<K>>[]; next?: string }> {
  const limit = Math.min(Math.max(filter.limit ?? PAGE.usual, 1), PAGE.most);
  const rows = await read(selectStanding(kind, filter, limit + 1));
  const items = rows.slice(0, limit).map((row) => asStored<K>(row));
  return rows.length > limit ? { items, next: cursorBehind(items.at(-1)!) } : { items };
}

/** Every record that passes the filter, in one read: for searching and for shortlists. */
export async function allRecords<K extends Kind>(
  kind: K,
  filter: Omit<Filter, "limit" | "cursor"> = {},
): Promise<Stored<RecordOf<K>>[]> {
  return (await read(selectStanding(kind, filter))).map((row) => asStored<K>(row));
}

/** One record; null where there is none, or where it has been removed. */
export async function getRecord<K extends Kind>(kind: K, id: string): Promise<Stored<RecordOf<K>> | null> {
  const found = await find(kind, id);
  return found && !found.removed ? found.stored : null;
}

/** Stores a new record. Throws DuplicateId where its id is taken or ever was. */
export async function createRecord<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  raw?: Taking["raw"],
  more: Omit<Taking, "raw"> = {},
): Promise<Stored<RecordOf<K>>> {
  const [made] = await createRecords([{ kind, record, raw }], more);
  return made as Stored<RecordOf<K>>;
}

/** A record that is to be made. */
export interface Draft<K extends Kind = Kind> {
  readonly kind: K;
  readonly record: RecordOf<K>;
  readonly raw?: Taking["raw"];
}

/** Ids that would stand in the way of an address: /api/motors/export is no record. */
const RESERVED: ReadonlySet<string> = new Set("export import new".split(" "));

/** Stores many new records, all of them or none. Throws DuplicateId for the first whose id is taken or ever was. */
export async function createRecords(
  drafts: readonly Draft[],
  more: Omit<Taking, "raw"> = {},
): Promise<Stored<RecordOf<Kind>>[]> {
  const reserved = drafts.find(({ record }) => RESERVED.has(record.id));
  if (reserved) throw new DuplicateId(reserved.record.id);
  const at = new Date().toISOString();
  const batch = drafts.flatMap(({ kind, record, raw }) => creation(kind, record, at, { raw, ...more }));
  try {
    if (batch.length > 0) await (await store()).write(batch);
  } catch (error) {
    throw isConstraint(error) ? ((await firstTaken(drafts)) ?? error) : error;
  }
  return drafts.map(({ record }) => ({ record, version: 1, updatedAt: at, demo: more.demo ?? false }));
}

/**
 * Stores a record's next version. Only numbers that differ become new takings; a record equal to the one
 * stored makes no version. Null where there is none; a conflict where it is no longer at `expectedVersion`.
 */
export function updateRecord<K extends Kind>(
  kind: K,
  id: string,
  expectedVersion: number,
  record: RecordOf<K>,
  raw?: Taking["raw"],
  more: Pick<Taking, "by"> = {},
): Promise<Stored<RecordOf<K>> | Conflict<K> | null> {
  if (record.id !== id) throw new Error("a record keeps its id");
  return step(kind, id, expectedVersion, "edit", { record, taking: { raw, ...more } });
}

/**
 * Stores one taking beside the earlier ones, and the record with what has become of that number, as its next
 * version. Null where there is none; a conflict where it is no longer at `expectedVersion`.
 */
export function addTaking<K extends Kind>(
  kind: K,
  expectedVersion: number,
  record: RecordOf<K>,
  beside: Beside,
): Promise<Stored<RecordOf<K>> | Conflict<K> | null> {
  return step(kind, record.id, expectedVersion, "edit", { record, beside });
}

/** Removes a record; it can be restored. Null where there is none; a conflict where it is no longer at `expectedVersion`. */
export function removeRecord<K extends Kind>(
  kind: K,
  id: string,
  expectedVersion: number,
): Promise<Stored<RecordOf<K>> | Conflict<K> | null> {
  return step(kind, id, expectedVersion, "remove");
}

/** Brings a removed record back as it was; one that stands is given back unchanged. Null where there never was one. */
export async function restoreRecord<K extends Kind>(
  kind: K,
  id: string,
): Promise<Stored<RecordOf<K>> | null> {
  const found = await find(kind, id);
  if (!found?.removed) return found?.stored ?? null;
  try {
    return await write(kind, found.stored, found.stored.record, "restore");
  } catch (error) {
    const now = await getRecord(kind, id);
    if (!isConstraint(error) || !now) throw error;
    return now;
  }
}

/** Every version of a record, oldest first, also of a removed one; empty where there never was one. */
export async function historyOf<K extends Kind>(kind: K, id: string): Promise<Revision<K>[]> {
  const whose = and(eq(revision.objectKind, kind), eq(revision.objectId, id));
  const rows = await read(sqlWriter.select().from(revision).where(whose).orderBy(asc(revision.version)));
  return rows.map((row) => ({
    version: Number(row.version),
    action: row.action as Action,
    at: String(row.at),
    record: JSON.parse(String(row.record)),
  }));
}

/** Every number ever taken of an object, in the order of taking. */
export async function takingsOf(kind: Kind, id: string): Promise<Observation[]> {
  const whose = and(eq(observation.objectKind, kind), eq(observation.objectId, id));
  const rows = await read(
    sqlWriter.select().from(observation).where(whose).orderBy(asc(observation.sequence)),
  );
  return rows.map((row) => ({
    sequence: Number(row.sequence),
    key: String(row.key),
    value: JSON.parse(String(row.value)),
    ...(row.plus_minus === null ? {} : { plusMinus: Number(row.plus_minus) }),
    how: row.how as How,
    ...(row.raw === null ? {} : { raw: String(row.raw) }),
    takenAt: String(row.taken_at),
    ...(row.by === null ? {} : { by: String(row.by) }),
    ...(row.again ? { again: true } : {}),
    ...(row.comment === null ? {} : { comment: String(row.comment) }),
  }));
}

/** A record as it is to be: the numbers that differ are taken anew, or one was taken beside its earlier takings. */
interface Edit<K extends Kind> {
  readonly record: RecordOf<K>;
  readonly taking?: Taking;
  readonly beside?: Beside;
}

/** One step of a record that stands at `expectedVersion`. Whoever comes second finds its version made, and is told how the record stands. */
async function step<K extends Kind>(
  kind: K,
  id: string,
  expectedVersion: number,
  action: Action,
  edit?: Edit<K>,
): Promise<Stored<RecordOf<K>> | Conflict<K> | null> {
  const current = await getRecord(kind, id);
  if (!current) return null;
  if (current.version !== expectedVersion) return { conflict: true, current };
  if (edit && !edit.beside && sameRecord(edit.record, current.record)) return current;
  try {
    return await write(kind, current, edit?.record ?? current.record, action, edit);
  } catch (error) {
    const now = await getRecord(kind, id);
    if (!isConstraint(error) || now?.version === expectedVersion) throw error;
    return now && { conflict: true, current: now };
  }
}

async function write<K extends Kind>(
  kind: K,
  current: Stored<RecordOf<K>>,
  record: RecordOf<K>,
  action: Action,
  taken: Omit<Edit<K>, "record"> = {},
): Promise<Stored<RecordOf<K>>> {
  const version = current.version + 1;
  const at = new Date().toISOString();
  const batch = nextVersion(
    kind,
    record,
    { version, action, at },
    {
      before: current.record,
      taking: taken.taking,
      beside: taken.beside,
    },
  );
  await (await store()).write(batch);
  return { record, version, updatedAt: at, demo: current.demo };
}

async function find<K extends Kind>(kind: K, id: string) {
  const [row] = await read(selectOne(kind, id));
  return row ? { stored: asStored<K>(row), removed: row.deleted_at !== null } : null;
}

async function firstTaken(drafts: readonly Draft[]): Promise<DuplicateId | undefined> {
  const seen = new Set<string>();
  for (const { kind, record } of drafts) {
    if (seen.has(`${kind} ${record.id}`) || (await find(kind, record.id))) return new DuplicateId(record.id);
    seen.add(`${kind} ${record.id}`);
  }
  return undefined;
}

const read = async (query: Parameters<typeof ready>[0]) => (await (await store()).read(ready(query))).rows;

const isConstraint = (error: unknown): boolean => isStoreError(error) && error.trouble === "constraint";
