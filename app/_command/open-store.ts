import { store } from "#lib/db/store.ts";
import { isStoreError } from "#lib/db/store-error.ts";

/** Requests under way when the server is told to end have this long, in ms. */
const LAST_ANSWERS_MS = 8000;

/**
 * Opens the store for the server, or ends the process with one line for the person who started it: an
 * unusable store must never look like an empty list. Nothing is made or changed here; that is set-up's.
 */
export async function openStoreOrEnd(): Promise<void> {
  for (const [signal, code] of [
    ["SIGTERM", 143],
    ["SIGINT", 130],
  ] as const) {
    process.once(signal, () => setTimeout(() => process.exit(code), LAST_ANSWERS_MS).unref());
  }
  try {
    await store();
  } catch (error) {
    console.error(isStoreError(error) ? error.message : error);
    process.exit(1);
  }
}
