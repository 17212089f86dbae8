/** Finds motors and sterns in a list by what people remember of them, in any order and with a slip of the finger. */
import { termsOf } from "#lib/search/query.ts";
import { type Item, SearchIndex } from "#lib/search/search-index.ts";

/** The index of the list searched last, kept by its first record: people type letter by letter before one list. */
const kept = new WeakMap<Item, SearchIndex<Item>>();

/** The records everything in the query is found in, best first. A query without words finds everything, as it came. */
export function searchRecords<T extends Item>(items: readonly T[], query: string): T[] {
  const [first] = items;
  if (!first || termsOf(query).length === 0) return [...items];
  let index = kept.get(first) as SearchIndex<T> | undefined;
  if (!index || !sameItems(index.items, items)) {
    index = new SearchIndex([...items]);
    kept.set(first, index);
  }
  return index.searchEvery(query);
}

const sameItems = (a: readonly Item[], b: readonly Item[]): boolean =>
  a.length === b.length && a.every((item, at) => item === b[at]);
