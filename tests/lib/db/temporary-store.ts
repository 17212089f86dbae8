import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Place, place } from "#lib/db/place.ts";
import { setUp } from "#lib/db/set-up.ts";
import { closeStore } from "#lib/db/store.ts";

/** A folder of its own for one test, and the address of the store in it; `DATABASE_URL` points there until `remove`. */
export function temporaryPlace(): Place & { readonly folder: string; remove(): Promise<void> } {
  const folder = mkdtempSync(join(tmpdir(), "sternwright-"));
  const before = process.env.DATABASE_URL;
  process.env.DATABASE_URL = `file:${join(folder, "store.db")}`;
  return {
    ...place(),
    folder,
    async remove() {
      await closeStore();
      if (before === undefined) delete process.env.DATABASE_URL;
      else process.env.DATABASE_URL = before;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** The same with an empty store in it. */
export async function temporaryStore() {
  const there = temporaryPlace();
  await setUp(there);
  return there;
}
