import { existsSync, readFileSync } from "node:fs";
import type { ZodType } from "zod";
import { type Place, place } from "#lib/db/place.ts";
import { type SetUp, setUp } from "#lib/db/set-up.ts";
import { creation } from "#lib/db/statements.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternSchema } from "#lib/entry/stern.ts";

/** The invented records a new store begins with; a file that is not there brings none. */
const DEMO = { motor: "data/demo/motors.json", stern: "data/demo/sterns.json" };

/**
 * Makes the store on the first start, with the demo records in it, and brings an old one up to date. Gives
 * one line that says what was done; throws `refused` where the store cannot be used.
 */
export async function setUpStore(where: Place = place()): Promise<string> {
  const demo = existsSync(where.file) ? [] : demoStatements();
  return said(await setUp(where, demo), where);
}

function demoStatements() {
  const at = new Date().toISOString();
  const motors = recordsIn(DEMO.motor, motorSchema);
  const sterns = recordsIn(DEMO.stern, sternSchema);
  return [
    ...motors.flatMap((record) => creation("motor", record, at, { demo: true })),
    ...sterns.flatMap((record) => creation("stern", record, at, { demo: true })),
  ];
}

function recordsIn<T>(path: string, schema: ZodType<T>): T[] {
  if (!existsSync(path)) return [];
  const read: unknown = JSON.parse(readFileSync(path, "utf8"));
  const records: unknown[] = Array.isArray(read) ? read : [];
  return records.map((record, i) => {
    const parsed = schema.safeParse(record);
    if (parsed.success) return parsed.data;
    const [first] = problems(parsed.error);
    throw new Error(`${path}, record ${i + 1}: ${first?.pointer} ${first?.detail}`);
  });
}

function said(done: SetUp, { file }: Place): string {
  if (done.did === "made") return `Made a new store, ${file}.`;
  if (done.did === "kept") {
    const warning = done.uncopied ? ` WARNING: no copy of it could be made (${done.uncopied}).` : "";
    return `The store is ${file}.${warning}`;
  }
  return `Brought the store ${file} up to date (${done.changes.join(", ")}); as it was before: ${done.copy}.`;
}
