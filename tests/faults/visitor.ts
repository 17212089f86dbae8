/** A program of its own that reads the store of DATABASE_URL, tries to write, reads again, and says how it went. */
import { Connection } from "#lib/db/connection.ts";
import { place } from "#lib/db/place.ts";
import { creation } from "#lib/db/statements.ts";
import { isStoreError } from "#lib/db/store-error.ts";
import { aMotor } from "#tests/lib/db/samples.ts";

const connection = new Connection(place().file);
const count = async () => (await connection.read("SELECT count(*) FROM motor")).rows[0]?.[0];
const write = connection.write(creation("motor", aMotor("m"), "2026-01-01T00:00:00.000Z"));
const before = await count();
const wrote = await write.then(
  () => "stored",
  (error) => (isStoreError(error) ? error.trouble : String(error)),
);
console.log(`read ${before}, write ${wrote}, read ${await count()}`);
