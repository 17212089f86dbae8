/**
 * A program of its own that writes motors into the store of DATABASE_URL, for tests of what is left when it
 * is killed or has a rival. Says each id on a line as soon as it is acknowledged. Arguments: the beginning
 * of the ids, and how many (without end where there is no number).
 */
import { writeSync } from "node:fs";
import { Connection } from "#lib/db/connection.ts";
import { place } from "#lib/db/place.ts";
import { creation } from "#lib/db/statements.ts";
import { isStoreError } from "#lib/db/store-error.ts";
import { aMotor } from "#tests/lib/db/samples.ts";

const [prefix = "w", count] = process.argv.slice(2);
const most = count === undefined ? Number.POSITIVE_INFINITY : Number(count);
const connection = new Connection(place().file);
let next = 0;

async function write(): Promise<void> {
  while (next < most) {
    const id = `${prefix}-${next++}`;
    try {
      await connection.write(creation("motor", aMotor(id), "2026-01-01T00:00:00.000Z"));
      writeSync(1, `${id}\n`);
    } catch (error) {
      if (!isStoreError(error) || error.trouble !== "busy") throw error;
    }
  }
}

await Promise.all(Array.from({ length: 10 }, write));
await connection.close();
