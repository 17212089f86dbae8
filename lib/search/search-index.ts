/**
 * Finds records among any number of them: every word and every amount of the query finds the records it may
 * mean, those found by most of the query are the candidates, and of the best fifty fuse.js says the order.
 */
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { longer, type Packed, Pairs } from "#lib/search/columns.ts";
import { type Term, termsOf } from "#lib/search/query.ts";
import { ranked } from "#lib/search/rank.ts";
import { Sizes } from "#lib/search/sizes.ts";
import { Tally } from "#lib/search/tally.ts";
import { indexed, isNumber } from "#lib/search/tokens.ts";
import { type Like, WordIndex } from "#lib/search/word-index.ts";
import { eachAmount, type Sized, searchable } from "#lib/search/words.ts";

/** Anything that carries a record. */
export interface Item {
  readonly record: Motor | Stern;
}

/** How much a word tells in the label, among the facts, in the notes. */
const PLACES = [1, 0.9, 0.6] as const;
/** A record's number and the place of the word in it share one number. */
const PLACE_BITS = 2;
/** How like a word two typed ones together must be: itself, a beginning of it, or one slip away. */
const TOGETHER_LIKE = 0.6;
/** How many of the best are put in order by fuse.js. */
const RANKED = 50;

/** The records of one moment, ready to be searched. Takes about a third of a second for 100,000. */
export class SearchIndex<T extends Item> {
  readonly items: readonly T[];
  readonly #words: WordIndex;
  readonly #recordsOf: Packed;
  readonly #sizes: { readonly [K in Sized]: Sizes };
  readonly #tally: Tally;

  constructor(items: readonly T[]) {
    const { words, recordsOf } = postings(items);
    this.items = items;
    this.#words = new WordIndex(words);
    this.#recordsOf = recordsOf;
    this.#sizes = sizesOf(items);
    this.#tally = new Tally(items.length);
  }

  /** The records found by as much of the query as any is, best first. A query without words finds nothing. */
  search(query: string, limit = RANKED): T[] {
    const terms = termsOf(query);
    this.#findAll(terms);
    return this.#best(terms, limit);
  }

  /** The records found by everything in the query, best first. */
  searchEvery(query: string, limit = this.items.length): T[] {
    const terms = termsOf(query);
    this.#findAll(terms);
    return this.#best(terms, limit, terms.length);
  }

  #best(terms: readonly Term[], limit: number, needed?: number): T[] {
    const best = this.#tally.best(Math.max(limit, RANKED), needed);
    const found = best.map(([record, total]) => ({ item: this.items[record]!, total }));
    const order = [...ranked(found.slice(0, RANKED), terms), ...found.slice(RANKED).map(({ item }) => item)];
    return order.slice(0, limit);
  }

  /** Neighbouring words are also tried as one: "work boat" may stand written workboat. That finds both. */
  #findAll(terms: readonly Term[]): void {
    const together = terms.map(({ word }, at) => {
      const next = terms[at + 1]?.word ?? "";
      if (next === "" || isNumber(word) || isNumber(next)) return [];
      return this.#words.like(word + next).filter(({ likeness }) => likeness >= TOGETHER_LIKE);
    });
    terms.forEach(({ word, wish }, at) => {
      for (const like of this.#words.like(word)) this.#find(like);
      for (const like of together[at]!) this.#find(like);
      for (const like of together[at - 1] ?? []) this.#find(like);
      if (wish) this.#sizes[wish.of].meet(wish, (record, how) => this.#tally.find(record, how));
      this.#tally.settle();
    });
  }

  #find({ word, likeness }: Like): void {
    const { starts, values } = this.#recordsOf;
    this.#tally.findAll(values, starts[word]!, starts[word + 1]!, PLACE_BITS, worths(likeness));
  }
}

/** What a word so like the typed one is worth at each place. */
const worths = (likeness: number): readonly number[] => PLACES.map((place) => place * likeness);

/** The index of these records. */
export const searchIndex = <T extends Item>(items: readonly T[]): SearchIndex<T> => new SearchIndex(items);

/** Every distinct word, and the records it is in, each once, at its weightiest place. */
function postings(items: readonly Item[]): { words: string[]; recordsOf: Packed } {
  const vocabulary = new Vocabulary();
  const pairs = new Pairs();
  let seen = new Int32Array(1024);
  items.forEach(({ record }, number) => {
    const { label, facts, notes } = searchable(record);
    const places = [vocabulary.idsOf(label), vocabulary.idsOfUsual(facts), vocabulary.idsOf(notes)];
    while (seen.length < vocabulary.words.length) seen = longer(seen);
    places.forEach((ids, place) => {
      for (const id of ids) {
        if (seen[id] === number + 1) continue;
        seen[id] = number + 1;
        pairs.add(id, (number << PLACE_BITS) | place);
      }
    });
  });
  return { words: vocabulary.words, recordsOf: pairs.packed(vocabulary.words.length) };
}

/** Words by number, in the order they came. */
class Vocabulary {
  readonly words: string[] = [];
  readonly #ids = new Map<string, number>();
  readonly #usual = new Map<string, readonly number[]>();

  idsOf(text: string): readonly number[] {
    return indexed(text).map((word) => {
      let id = this.#ids.get(word);
      if (id === undefined) {
        id = this.words.push(word) - 1;
        this.#ids.set(word, id);
      }
      return id;
    });
  }

  /** The same for a text that many records share. */
  idsOfUsual(text: string): readonly number[] {
    let ids = this.#usual.get(text);
    if (!ids) {
      ids = this.idsOf(text);
      this.#usual.set(text, ids);
    }
    return ids;
  }
}

function sizesOf(items: readonly Item[]): { readonly [K in Sized]: Sizes } {
  const sizes = { kW: new Sizes(), kg: new Sizes(), mm: new Sizes() };
  items.forEach(({ record }, number) => {
    eachAmount(record, (of, value) => sizes[of].add(value, number));
  });
  return sizes;
}
