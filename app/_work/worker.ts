/** The worker's side: takes a stretch of pairings, gives back their rows. Started with tsx, straight from the sources. */
import { parentPort } from "node:worker_threads";
import { type Listed, rowsOf, type Stretch } from "#app/_work/pairings.ts";

/** What a worker says: that it is up, the rows of a stretch, or why it has none. */
export type Said = "ready" | { readonly rows: Listed[] } | { readonly failed: unknown };

const say = (said: Said) => parentPort?.postMessage(said);

parentPort?.on("message", (stretch: Stretch) => {
  try {
    say({ rows: rowsOf(stretch) });
  } catch (failed) {
    say({ failed });
  }
});
say("ready");
