import { existsSync, mkdirSync, renameSync, rmSync } from "node:fs";
import { dirname } from "node:path";
import type { InStatement } from "@libsql/client";
import { drizzle } from "drizzle-orm/libsql";
import { migrate } from "drizzle-orm/libsql/migrator";
import { APPLICATION_ID, Connection } from "#lib/db/connection.ts";
import { copyAside, copyAtStart, putBack, sameBytes, syncToDisk } from "#lib/db/copies.ts";
import { takeLock } from "#lib/db/lock.ts";
import type { Migration } from "#lib/db/migrations.ts";
import type { Place } from "#lib/db/place.ts";
import { assertOurs, assertSound, refusal } from "#lib/db/soundness.ts";
import { StoreError } from "#lib/db/store-error.ts";

/** What set-up did: made a new store, changed an old one to this version's schema, or found nothing to do (`uncopied` says why the copy of a start could not be made). */
export type SetUp =
  | { did: "made" }
  | { did: "changed"; changes: string[]; copy: string }
  | { did: "kept"; uncopied?: string };

/**
 * The one place where a store is made or its schema changed, before any server runs. A new store is made
 * under another name with `first` in it and then named, so that a half-made one is never found. An unusable
 * one is refused (see soundness.ts) and left as it is.
 */
export async function setUp(place: Place, first: readonly InStatement[] = []): Promise<SetUp> {
  mkdirSync(dirname(place.file), { recursive: true });
  const release = takeLock(place.lock);
  try {
    if (existsSync(place.file)) return await keepOrChange(place);
    await make(place, first);
    return { did: "made" };
  } finally {
    release();
  }
}

async function make(place: Place, first: readonly InStatement[]): Promise<void> {
  const draft = `${place.file}.making`;
  for (const left of [draft, `${draft}-journal`]) rmSync(left, { force: true });
  const connection = new Connection(draft);
  try {
    await connection.alone((client) => client.execute(`PRAGMA application_id=${APPLICATION_ID}`));
    await applyMigrations(connection, place.migrations);
    if (first.length > 0) await connection.write([...first]);
  } finally {
    await connection.close();
  }
  syncToDisk(draft);
  renameSync(draft, place.file);
  syncToDisk(dirname(place.file));
}

async function keepOrChange(place: Place): Promise<SetUp> {
  assertOurs(place);
  const connection = new Connection(place.file);
  try {
    const pending = await assertSound(place, connection);
    if (pending.length > 0) return await change(place, connection, pending);
    const uncopied = await whileNobodyWrites(connection, () => copyAtStart(place)).then(noTrouble, said);
    return uncopied ? { did: "kept", uncopied } : { did: "kept" };
  } finally {
    await connection.close();
  }
}

/** Changes the schema after copying the file; where that fails the file is the copy again, byte for byte. */
async function change(place: Place, connection: Connection, pending: readonly Migration[]): Promise<SetUp> {
  const changes = pending.map(({ name }) => name);
  const copy = await whileNobodyWrites(connection, () => copyAside(place, `before-${changes.at(-1)}`)).catch(
    (error) => {
      throw refusal(place, `It must be brought up to date, and no copy can be made first (${said(error)}).`);
    },
  );
  try {
    await applyMigrations(connection, place.migrations);
    const left = await assertSound(place, connection);
    if (left.length > 0) throw new StoreError("refused", `The change "${left[0]?.name}" was not applied.`);
  } catch (error) {
    await connection.close();
    if (!sameBytes(copy, place.file)) putBack(place, copy);
    throw refusal(place, `Bringing it up to date failed and was undone (${said(error)}).`);
  }
  return { did: "changed", changes, copy };
}

/**
 * Puts an earlier copy in the store's place after reading it through. Gives where the store as it was is
 * kept, if there was one. Throws `refused` where the copy is unusable or a server is running.
 */
export async function restoreCopy(place: Place, copy: string): Promise<string | undefined> {
  const release = takeLock(place.lock);
  try {
    await readThrough({ ...place, file: copy });
    const kept = existsSync(place.file) ? copyAside(place, "replaced") : undefined;
    putBack(place, copy);
    return kept;
  } finally {
    release();
  }
}

async function readThrough(place: Place): Promise<void> {
  assertOurs(place);
  const connection = new Connection(place.file);
  try {
    await assertSound(place, connection);
  } finally {
    await connection.close();
  }
}

/** All pending changes in one transaction; once more if another program was in the way. */
async function applyMigrations(connection: Connection, migrationsFolder: string): Promise<void> {
  const once = () => connection.alone((client) => migrate(drizzle(client), { migrationsFolder }));
  await once().catch(once);
}

/** A read transaction keeps every other program from writing while the file is copied. */
function whileNobodyWrites<T>(connection: Connection, work: () => T): Promise<T> {
  return connection.alone(async (client) => {
    const reading = await client.transaction("read");
    try {
      await reading.execute("SELECT count(*) FROM sqlite_schema");
      return work();
    } finally {
      reading.close();
    }
  });
}

const noTrouble = (): undefined => undefined;

/** The first line of what went wrong. */
const said = (error: unknown): string =>
  (error instanceof Error ? error.message : String(error)).split("\n")[0] ?? "";
