/**
 * Rows worked before, in memory only. The key is the content of both records, the engine's version and how
 * the pairing was looked at: a change of any number asks for another key, so nothing here can be out of date.
 */
import type { Listed } from "#app/_work/pairings.ts";
import { ENGINE_VERSION } from "#lib/fit/report.ts";

/** Most rows kept, over all lists; the list longest unused goes first. */
const MOST_ROWS = 250_000;

/** Rows of one record against others, by the other's content. */
export type KeptRows = Map<string, Listed>;

const KEY = Symbol.for("sternwright.rows");
const shared = globalThis as { [KEY]?: Map<string, KeptRows> };

/** The rows kept for one record looked at in one way; an empty map the first time. */
export function keptRows(contentOfOne: string, way: string): KeptRows {
  shared[KEY] ??= new Map();
  const lists = shared[KEY];
  const key = `${ENGINE_VERSION} ${contentOfOne} ${way}`;
  const rows = lists.get(key) ?? new Map();
  // Taken out and put back: a map keeps the order, so the first is the one longest unused.
  lists.delete(key);
  lists.set(key, rows);
  return rows;
}

/** Lets go of the lists longest unused until few enough rows are kept. */
export function letGo(most = MOST_ROWS): void {
  const lists = shared[KEY] ?? new Map<string, KeptRows>();
  let total = [...lists.values()].reduce((sum, rows) => sum + rows.size, 0);
  for (const [key, rows] of lists) {
    if (total <= most) return;
    lists.delete(key);
    total -= rows.size;
  }
}
