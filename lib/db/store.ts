import "server-only";
import { Connection } from "#lib/db/connection.ts";
import { takeLock } from "#lib/db/lock.ts";
import { type Place, place } from "#lib/db/place.ts";
import { assertOurs, assertSound, refusal } from "#lib/db/soundness.ts";

interface Open {
  readonly connection: Connection;
  readonly release: () => void;
}

/** One per process, whatever a bundler does: it may load this file more than once. */
const KEY = Symbol.for("sternwright.store");
const shared = globalThis as { [KEY]?: Promise<Open> };

/**
 * The process's one connection to the store, opened on first use and kept. Throws `refused`, with a line
 * for the person who started it, where the file is missing, unusable, or in use by another server.
 */
export async function store(): Promise<Connection> {
  shared[KEY] ??= open(place()).catch((error) => {
    delete shared[KEY];
    throw error;
  });
  return (await shared[KEY]).connection;
}

/** Closes the store and gives its lock back; for tests and orderly ends. */
export async function closeStore(): Promise<void> {
  const opened = await shared[KEY];
  delete shared[KEY];
  await opened?.connection.close();
  opened?.release();
}

async function open(where: Place): Promise<Open> {
  if (process.env.NEXT_PHASE === "phase-production-build") {
    throw new Error("The store is not read while building: a page that reads it must be dynamic.");
  }
  assertOurs(where);
  const unlock = takeLock(where.lock);
  process.once("exit", unlock);
  const release = () => {
    process.removeListener("exit", unlock);
    unlock();
  };
  try {
    return { connection: await openSound(where), release };
  } catch (error) {
    release();
    throw error;
  }
}

async function openSound(where: Place): Promise<Connection> {
  const connection = new Connection(where.file);
  try {
    const pending = await assertSound(where, connection);
    if (pending.length > 0) {
      throw refusal(
        where,
        "It is from an older version.",
        'Start with "npm start", which brings it up to date.',
      );
    }
    const mode = (await connection.read("PRAGMA journal_mode")).rows[0]?.[0];
    if (mode !== "delete") await connection.alone((client) => client.execute("PRAGMA journal_mode=DELETE"));
    return connection;
  } catch (error) {
    await connection.close();
    throw error;
  }
}
