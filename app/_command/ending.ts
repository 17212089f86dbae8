import { isStoreError } from "#lib/db/store-error.ts";

/** Runs a command; what a person can mend ends it with one line and exit code 1, anything else with its trace. */
export async function endingWell(work: () => Promise<unknown>): Promise<void> {
  try {
    await work();
  } catch (error) {
    console.error(isStoreError(error) ? error.message : error);
    process.exitCode = 1;
  }
}
