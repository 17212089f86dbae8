/** Why the store could not do what was asked, in terms a person can act on. */
export type StoreTrouble =
  | "busy"
  | "full"
  | "read-only"
  | "damaged"
  | "refused"
  | "duplicate id"
  | "bad cursor"
  | "constraint";

/** Anything the store throws. Told apart by `trouble`, since a bundler may give two parts of one server their own copy of this class. */
export class StoreError extends Error {
  override readonly name = "StoreError";
  readonly trouble: StoreTrouble;
  constructor(trouble: StoreTrouble, message: string, cause?: unknown) {
    super(message, { cause });
    this.trouble = trouble;
  }
}

/** The id stands for another record, or stood for one that was removed: ids are never used twice. */
export class DuplicateId extends StoreError {
  readonly id: string;
  constructor(id: string) {
    super("duplicate id", `The id "${id}" is taken, or was used by a record that has been removed.`);
    this.id = id;
  }
}

/** Whether something caught came from the store. */
export const isStoreError = (caught: unknown): caught is StoreError =>
  caught instanceof Error && caught.name === "StoreError" && "trouble" in caught;

/** SQLite's own code of an error, wherever in the chain of causes it stands; undefined where there is none. */
export function sqliteCode(caught: unknown): string | undefined {
  for (let error = caught; error instanceof Error; error = error.cause) {
    const code: unknown = Reflect.get(error, "code");
    if (typeof code === "string" && code.startsWith("SQLITE_")) return code;
  }
  return undefined;
}

const TROUBLES: readonly [prefix: string, trouble: StoreTrouble, says: string][] = [
  ["SQLITE_BUSY", "busy", "The store is busy. Nothing was changed; try again in a moment."],
  ["SQLITE_LOCKED", "busy", "The store is busy. Nothing was changed; try again in a moment."],
  ["SQLITE_FULL", "full", "The disk is full. Nothing was changed; what is stored can still be read."],
  ["SQLITE_READONLY", "read-only", "The disk cannot be written. What is stored can still be read."],
  ["SQLITE_CANTOPEN", "read-only", "The disk cannot be written. What is stored can still be read."],
  ["SQLITE_IOERR", "read-only", "The disk cannot be read or written just now. Nothing was changed."],
  ["SQLITE_CORRUPT", "damaged", "The store is damaged."],
  ["SQLITE_NOTADB", "damaged", "The store is damaged."],
  ["SQLITE_CONSTRAINT", "constraint", "The store's own rules refuse this change."],
];

/** The driver's error as a StoreError; anything else unchanged. */
export function asStoreError(caught: unknown): unknown {
  const code = sqliteCode(caught);
  const row = TROUBLES.find(([prefix]) => code?.startsWith(prefix));
  return row ? new StoreError(row[1], row[2], caught) : caught;
}
