import { closeSync, openSync, readSync, statSync } from "node:fs";
import type { Client } from "@libsql/client";
import { APPLICATION_ID, type Connection } from "#lib/db/connection.ts";
import { lastGoodCopy } from "#lib/db/copies.ts";
import { appliedMigrations, knownMigrations, type Migration, pendingMigrations } from "#lib/db/migrations.ts";
import type { Place } from "#lib/db/place.ts";
import { isStoreError, StoreError, sqliteCode } from "#lib/db/store-error.ts";

/** The first 16 bytes of every SQLite file, and where the head keeps the application's number (sqlite.org/fileformat2.html, 1.3). */
const MAGIC = "SQLite format 3\0";
const APPLICATION_ID_AT = 68;
const HEAD_BYTES = 100;

/** Looks at the file without opening it as a database. Throws `refused` where it is missing, empty, no database, or another program's. */
export function assertOurs(place: Place): void {
  const size = statSync(place.file, { throwIfNoEntry: false })?.size;
  if (size === undefined) throw refusal(place, "There is none.", 'Make one with "npm start".');
  if (size === 0) throw refusal(place, "It is empty (0 bytes).");
  const head = headOf(place.file);
  if (size < HEAD_BYTES || head.toString("latin1", 0, MAGIC.length) !== MAGIC) {
    throw refusal(place, "It is not a database.");
  }
  if (head.readUInt32BE(APPLICATION_ID_AT) !== APPLICATION_ID) {
    throw refusal(place, "It belongs to another program.");
  }
}

/** Reads the whole file once. Throws `refused` where it is damaged or its schema is not this version's past; gives the changes it still needs. */
export async function assertSound(place: Place, connection: Connection): Promise<Migration[]> {
  try {
    return await connection.alone(async (client) => {
      await assertIntegrity(client);
      return pendingMigrations(knownMigrations(place.migrations), await appliedMigrations(client));
    });
  } catch (error) {
    if (isStoreError(error) && error.trouble === "refused") throw refusal(place, error.message);
    if (isStoreError(error) && error.trouble === "damaged") throw damaged(place, sqliteCode(error));
    throw error;
  }
}

async function assertIntegrity(client: Client): Promise<void> {
  const found = (await client.execute("PRAGMA integrity_check(3)")).rows[0]?.[0];
  if (found !== "ok") throw new StoreError("refused", `It is damaged (${String(found).split("\n")[0]}).`);
  const orphans = (await client.execute("PRAGMA foreign_key_check")).rows.length;
  if (orphans > 0) throw new StoreError("refused", `It is damaged (${orphans} rows without their parent).`);
}

const damaged = (place: Place, code = "unreadable"): StoreError => refusal(place, `It is damaged (${code}).`);

/** One line that says what is wrong with the store and what to do. */
export function refusal(place: Place, what: string, todo?: string): StoreError {
  const copy = lastGoodCopy(place);
  const help = copy
    ? `The last good copy is ${copy}; put it back with: npx tsx app/_command/restore.ts ${copy}`
    : "There is no earlier copy.";
  return new StoreError(
    "refused",
    `The store ${place.file} cannot be used. ${what} ${todo ?? ""} ${help}`.replace(/ {2,}/g, " "),
  );
}

function headOf(file: string): Buffer {
  const head = Buffer.alloc(HEAD_BYTES);
  const handle = openSync(file, "r");
  try {
    readSync(handle, head, 0, HEAD_BYTES, 0);
  } finally {
    closeSync(handle);
  }
  return head;
}
