import { pathToFileURL } from "node:url";
import { type Client, createClient, type InStatement, type ResultSet } from "@libsql/client";
import { asStoreError, StoreError } from "#lib/db/store-error.ts";

/** Written into the head of every file Sternwright makes: "StRn". A file with another number is another program's. */
export const APPLICATION_ID = 0x5374526e;

/** Writes that may wait at once; one more is turned away at once rather than kept waiting. */
const MAX_WAITING = 200;
/** How long, in ms, one read or write is tried again while another program holds the file. */
const PATIENCE_MS = 3000;
/** How long, in ms, SQLite itself waits for a lock. It stops every other request meanwhile, so: hardly. */
const NATIVE_WAIT_MS = 20;

/**
 * What holds on a connection only. There is one connection (`concurrency: 1`, and no transaction that spans
 * an await), so set here they hold, and before every write that is asserted. EXTRA syncs the folder too,
 * so that a commit outlives a power cut; synchronous reads back as 3.
 */
const SETTINGS = `PRAGMA synchronous=EXTRA; PRAGMA foreign_keys=ON; PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON;`;
const ASSERTED = { synchronous: 3, foreign_keys: 1, trusted_schema: 0, cell_size_check: 1 };

/**
 * The one way to the file. One attempt at a time touches it; writes queue for each other, reads go between
 * the attempts of a write that has to wait.
 *
 * After a SQLITE_BUSY the driver leaves the failed statement open on its connection, and later writes there
 * are acknowledged and lost (libsql-client-ts issue 352). So every failed attempt throws the connection
 * away before anything else happens.
 */
export class Connection {
  readonly #client: Client;
  #settled = false;
  #attempts: Promise<unknown> = Promise.resolve();
  #lane: Promise<unknown> = Promise.resolve();
  #waiting = 0;

  /** Opens the file, which must exist: the driver would make an empty one. */
  constructor(path: string) {
    this.#client = createClient({ url: pathToFileURL(path).href, concurrency: 1, timeout: NATIVE_WAIT_MS });
  }

  /** Reads. Tries for at most 3 s while another program holds the file, then throws `busy`. */
  read(statement: InStatement): Promise<ResultSet> {
    return this.#persist(() => this.#client.execute(statement), performance.now() + PATIENCE_MS);
  }

  /**
   * Writes all of the statements or none; they are stored when the promise resolves. Throws `busy` when 200
   * writes wait already or the file stays locked for 3 s, `full`, `read-only` or `constraint`; in every case
   * nothing was changed.
   */
  write(statements: InStatement[]): Promise<ResultSet[]> {
    return this.#inLane(async () => {
      await this.#assertDurable();
      return this.#client.batch(statements, "write");
    });
  }

  /** Lets the caller work on the driver itself, alone (set-up: migrations, copies). */
  alone<T>(work: (client: Client) => Promise<T>): Promise<T> {
    return this.#inLane(() => work(this.#client));
  }

  /** The settings as they stand on the connection; every one of them differs from SQLite's default except foreign_keys. */
  async settings(): Promise<Record<string, unknown>> {
    const found: Record<string, unknown> = {};
    for (const name of [...Object.keys(ASSERTED), "journal_mode", "busy_timeout"]) {
      found[name] = (await this.read(`PRAGMA ${name}`)).rows[0]?.[0];
    }
    return found;
  }

  /** Waits for writes under way and closes the file. */
  async close(): Promise<void> {
    await this.#lane;
    await this.#attempts;
    this.#client.close();
  }

  #inLane<T>(work: () => Promise<T>): Promise<T> {
    if (this.#waiting >= MAX_WAITING) {
      return Promise.reject(new StoreError("busy", "Too many changes are waiting. Nothing was changed."));
    }
    this.#waiting++;
    const deadline = performance.now() + PATIENCE_MS;
    const run = this.#lane.then(() => this.#persist(work, deadline));
    this.#lane = run.then(
      () => this.#waiting--,
      () => this.#waiting--,
    );
    return run;
  }

  async #persist<T>(work: () => Promise<T>, deadline: number): Promise<T> {
    for (;;) {
      try {
        return await this.#attempt(work);
      } catch (caught) {
        const error = asStoreError(caught);
        const busy = error instanceof StoreError && error.trouble === "busy";
        if (!busy || performance.now() > deadline) throw error;
        await new Promise((resolve) => setTimeout(resolve, 5 + 15 * Math.random()));
      }
    }
  }

  #attempt<T>(work: () => Promise<T>): Promise<T> {
    const run = this.#attempts.then(async () => {
      try {
        if (!this.#settled) await this.#settle();
        return await work();
      } catch (error) {
        this.#settled = false;
        await this.#client.reconnect();
        throw error;
      }
    });
    this.#attempts = run.catch(() => {});
    return run;
  }

  async #settle(): Promise<void> {
    await this.#client.executeMultiple(SETTINGS);
    for (const [name, wanted] of Object.entries(ASSERTED)) {
      const found = (await this.#client.execute(`PRAGMA ${name}`)).rows[0]?.[0];
      if (found !== wanted) throw new Error(`PRAGMA ${name} is ${found}, not ${wanted}`);
    }
    this.#settled = true;
  }

  /** The driver may have dropped the connection unseen; a fresh one has SQLite's defaults. */
  async #assertDurable(): Promise<void> {
    const found = (await this.#client.execute("PRAGMA synchronous")).rows[0]?.[0];
    if (found !== ASSERTED.synchronous) await this.#settle();
  }
}
