/**
 * Finds motors and sterns by what people remember of them: words of the label, the class, the power, the
 * notes, in any order and with a slip of the finger.
 */
import Fuse from "fuse.js";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { type Searchable, searchable } from "#lib/search/words.ts";

/** A longer query is cut: fuse.js took 55.7 s over one of 10,000 characters and 5,000 records. */
export const QUERY_MOST = 64;
const WORDS_MOST = 8;

/** What a word found in each record by its place in the list: 0 is exactly, 1 is hardly. */
type Scores = ReadonlyMap<number, number>;

/** The records every word of the query is found in, best first. A query without words finds everything, as it came. */
export function searchRecords<T extends { readonly record: Motor | Stern }>(
  items: readonly T[],
  query: string,
): T[] {
  const words = wordsOf(query);
  if (words.length === 0) return [...items];
  const texts = items.map(({ record }) => plainTexts(searchable(record)));
  const fuse = fuzzily(texts);
  const [first, ...more] = words.map((word) => scoresOf(word, texts, fuse));
  return [...first!.keys()]
    .filter((i) => more.every((scores) => scores.has(i)))
    .map((i) => ({ item: items[i]!, score: [first!, ...more].reduce((sum, each) => sum + each.get(i)!, 0) }))
    .sort((a, b) => a.score - b.score)
    .map(({ item }) => item);
}

/** The words of a query, as they are compared: without accents and capitals, the first 64 characters of it. */
export function wordsOf(query: string): string[] {
  const cut = [...query.slice(0, 2 * QUERY_MOST)].slice(0, QUERY_MOST).join("");
  return plain(cut)
    .split(/\s+/)
    .filter((word) => word !== "")
    .slice(0, WORDS_MOST);
}

const plain = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

const plainTexts = ({ label, facts, notes }: Searchable): Searchable => ({
  label: plain(label),
  facts: plain(facts),
  notes: plain(notes),
});

const fuzzily = (texts: readonly Searchable[]): Fuse<Searchable> =>
  new Fuse(texts, {
    keys: [
      { name: "label", weight: 3 },
      { name: "facts", weight: 2 },
      { name: "notes", weight: 1 },
    ],
    includeScore: true,
    ignoreLocation: true,
    threshold: 0.35,
  });

/** A number or a scrap of a word is meant as it stands; a longer word may have a slip in it. */
function scoresOf(word: string, texts: readonly Searchable[], fuse: Fuse<Searchable>): Scores {
  if (word.length < 3 || /\d/.test(word)) return beginning(word, texts);
  return new Map(fuse.search(word).map(({ refIndex, score = 1 }) => [refIndex, score]));
}

function beginning(word: string, texts: readonly Searchable[]): Scores {
  const found = (text: string) =>
    text.split(/[\s,;()/-]+/).some((other) => other.startsWith(word)) || text.includes(` ${word}`);
  const scores = new Map<number, number>();
  texts.forEach(({ label, facts, notes }, i) => {
    const place = [label, facts, notes].findIndex(found);
    if (place >= 0) scores.set(i, place / 10);
  });
  return scores;
}
