import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Client } from "@libsql/client";
import { readMigrationFiles } from "drizzle-orm/migrator";
import { StoreError } from "#lib/db/store-error.ts";

/** One change of the schema this version knows: its name, when it was made, and the sum of its text. */
export interface Migration {
  readonly name: string;
  readonly madeAt: number;
  readonly hash: string;
}

/** What drizzle-kit writes down about its changes. */
interface Journal {
  readonly entries: readonly { readonly tag: string; readonly when: number }[];
}

/** The changes of the schema in the folder, oldest first. */
export function knownMigrations(folder: string): Migration[] {
  const journal: Journal = JSON.parse(readFileSync(join(folder, "meta/_journal.json"), "utf8"));
  const files = readMigrationFiles({ migrationsFolder: folder });
  return journal.entries.map(({ tag, when }, i) => ({ name: tag, madeAt: when, hash: files[i]!.hash }));
}

/** The changes a file has had, oldest first; none where it has no list of them. */
export async function appliedMigrations(client: Client): Promise<Omit<Migration, "name">[]> {
  const listed = await client.execute("SELECT 1 FROM sqlite_schema WHERE name = '__drizzle_migrations'");
  if (listed.rows.length === 0) return [];
  const rows = await client.execute("SELECT hash, created_at FROM __drizzle_migrations ORDER BY created_at");
  return rows.rows.map((row) => ({ hash: String(row.hash), madeAt: Number(row.created_at) }));
}

/**
 * The changes a file still needs. Throws `refused` where its history is not the beginning of the known one:
 * made by a newer version, or a change was edited or slipped in after it was applied (the migrator itself
 * passes over both in silence).
 */
export function pendingMigrations(
  known: readonly Migration[],
  applied: readonly Omit<Migration, "name">[],
): Migration[] {
  if (applied.length > known.length || applied.some(({ madeAt }) => madeAt > known.at(-1)!.madeAt)) {
    throw new StoreError("refused", "It was made by a newer version of Sternwright than this one.");
  }
  applied.forEach(({ madeAt, hash }, i) => {
    const { name, ...wanted } = known[i]!;
    if (wanted.madeAt !== madeAt) {
      throw new StoreError("refused", `The change "${name}" was put in before changes it has already had.`);
    }
    if (wanted.hash !== hash) {
      throw new StoreError("refused", `The change "${name}" was edited after it was applied to it.`);
    }
  });
  return known.slice(applied.length);
}
