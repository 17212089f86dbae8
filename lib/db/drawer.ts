import "server-only";
import { and, asc, eq, gt, isNull, sql } from "drizzle-orm";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { asStored, type Stored } from "#lib/db/reading.ts";
import { ready, sqlWriter } from "#lib/db/statements.ts";
import { store } from "#lib/db/store.ts";
import { motor } from "#lib/db/table/motor.ts";
import { revision } from "#lib/db/table/revision.ts";
import { stern } from "#lib/db/table/stern.ts";

/** Rows read at once: a few milliseconds, so that no other request waits long. */
const STRETCH = 500;

const tables = { motor, stern };

/** How many versions of a kind's records were ever made. It grows with every change and never falls: the same figure, the same records. */
export async function versionsMade(kind: Kind): Promise<number> {
  const counted = sqlWriter
    .select({ made: sql`count(*)`.as("made") })
    .from(revision)
    .where(eq(revision.objectKind, kind));
  const { rows } = await (await store()).read(ready(counted));
  return Number(rows[0]!.made);
}

/** Every record that stands, by id, read stretch by stretch. One that has not changed since `before` is the same object as there. */
export async function standingRecords<K extends Kind>(
  kind: K,
  before: ReadonlyMap<string, Stored<RecordOf<K>>> = new Map(),
): Promise<ReadonlyMap<string, Stored<RecordOf<K>>>> {
  const found = new Map<string, Stored<RecordOf<K>>>();
  for (let behind = ""; ; ) {
    const { rows } = await (await store()).read(ready(stretchOf(kind, behind)));
    for (const row of rows) {
      const id = String(row.id);
      const known = before.get(id);
      found.set(id, known?.version === Number(row.version) ? known : asStored<K>(row));
      behind = id;
    }
    if (rows.length < STRETCH) return found;
    await new Promise((resume) => setImmediate(resume));
  }
}

function stretchOf(kind: Kind, behind: string) {
  const table = tables[kind];
  return sqlWriter
    .select({
      id: table.id,
      version: table.version,
      record: table.record,
      updatedAt: table.updatedAt,
      demo: table.demo,
    })
    .from(table)
    .where(and(isNull(table.deletedAt), gt(table.id, behind)))
    .orderBy(asc(table.id))
    .limit(STRETCH);
}
