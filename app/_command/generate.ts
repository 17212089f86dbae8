/**
 * `npm run generate -- --motors 10000 --sterns 100 --seed 1 [--into FILE]`: puts generated records, marked as
 * invented, into a store for trials: store/generated.db, or FILE. The ordinary store is never touched unless
 * it is named. Says at the end how to serve it.
 */
import { existsSync } from "node:fs";
import { relative, resolve } from "node:path";
import { parseArgs } from "node:util";
import { endingWell } from "#app/_command/ending.ts";
import { generatedRecords, type Wanted } from "#app/_command/generated-records.ts";
import { setUpStore } from "#app/_command/set-up-store.ts";
import { Connection } from "#lib/db/connection.ts";
import { takeLock } from "#lib/db/lock.ts";
import { type Place, place } from "#lib/db/place.ts";
import { setUp } from "#lib/db/set-up.ts";
import { creation } from "#lib/db/statements.ts";
import { isStoreError, StoreError } from "#lib/db/store-error.ts";

/** Where they go when no file is named. */
const USUAL_FILE = "store/generated.db";
/** Records written at once. */
const AT_ONCE = 250;
const MOST = 1_000_000;
type Statements = ReturnType<typeof creation>;

await endingWell(async () => {
  const { into, ...wanted } = asked();
  const where = place(`file:${into}`);
  if (existsSync(where.file)) console.log(await setUpStore(where));
  else await setUp(where);
  await store(where, wanted);
  const near = relative(".", where.file);
  const file = near.startsWith("..") ? where.file : near;
  console.log(`Put ${wanted.motors} generated motors and ${wanted.sterns} generated sterns into ${file}.`);
  console.log(`Serve them with: DATABASE_URL=file:${file} npm start`);
});

/** What the command line asks for; throws `refused` with a line that says how to ask. */
function asked(): Wanted & { readonly into: string } {
  const usage = "npm run generate -- --motors 10000 --sterns 100 --seed 1 [--into FILE]";
  const text = { type: "string" } as const;
  let values: Partial<Record<"motors" | "sterns" | "seed" | "into", string>>;
  try {
    ({ values } = parseArgs({ options: { motors: text, sterns: text, seed: text, into: text } }));
  } catch {
    throw new StoreError("refused", `This is asked like so: ${usage}`);
  }
  const count = (name: "motors" | "sterns" | "seed", usual: number): number => {
    const given = values[name] ?? String(usual);
    if (/^\d{1,7}$/.test(given) && Number(given) <= MOST) return Number(given);
    throw new StoreError("refused", `--${name} is a whole number up to ${MOST}, not "${given}": ${usage}`);
  };
  const into = resolve(values.into ?? USUAL_FILE);
  return { motors: count("motors", 1000), sterns: count("sterns", 100), seed: count("seed", 1), into };
}

/** Stores them a few hundred at a time; a batch that meets its own ids there already ends it, and nothing of that batch is stored. */
async function store(where: Place, wanted: Wanted): Promise<void> {
  const release = takeLock(where.lock);
  const connection = new Connection(where.file);
  const at = new Date().toISOString();
  try {
    const waiting: Statements = [];
    let done = 0;
    for (const { kind, record } of generatedRecords(wanted)) {
      waiting.push(...creation(kind, record, at, { demo: true }));
      done++;
      if (done % AT_ONCE === 0) await connection.write(waiting.splice(0));
      if (done % 2500 === 0) console.log(`${done} stored.`);
    }
    if (waiting.length > 0) await connection.write(waiting);
  } catch (error) {
    if (!isStoreError(error) || error.trouble !== "constraint") throw error;
    throw new StoreError(
      "refused",
      "Records of this seed are there already; give another --seed or another --into.",
      error,
    );
  } finally {
    await connection.close();
    release();
  }
}
