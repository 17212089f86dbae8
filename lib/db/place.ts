import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { StoreError } from "#lib/db/store-error.ts";

const DEFAULT_URL = "file:store/sternwright.db";

/** Where the store and what belongs to it lie; absolute paths. */
export interface Place {
  readonly file: string;
  /** Holds the process id of the one program that may use the file. */
  readonly lock: string;
  /** Earlier copies of the file. */
  readonly copies: string;
  /** The changes of the schema, made by drizzle-kit. */
  readonly migrations: string;
}

/** The place named by DATABASE_URL (`file:` and a path, relative to the project); `file:store/sternwright.db` where it is not set. Throws `refused` for any other kind of address. */
export function place(url = process.env.DATABASE_URL || DEFAULT_URL): Place {
  if (!url.startsWith("file:") || url.includes(":memory:") || url.length < 6) {
    throw new StoreError("refused", `DATABASE_URL must be file: and the path of a file, not "${url}".`);
  }
  const file = url.startsWith("file://")
    ? fileURLToPath(url)
    : resolve(/* turbopackIgnore: true */ process.cwd(), url.slice("file:".length));
  return {
    file,
    lock: `${file}.lock`,
    copies: join(/* turbopackIgnore: true */ dirname(file), "copies"),
    migrations: join(/* turbopackIgnore: true */ process.cwd(), "drizzle"),
  };
}
