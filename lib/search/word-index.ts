import { type Packed, Pairs } from "#lib/search/columns.ts";
import { slips } from "#lib/search/slips.ts";
import { isNumber } from "#lib/search/tokens.ts";

/** A word of the index that a typed word may mean, and how likely: 1 is the word itself. */
export interface Like {
  readonly word: number;
  readonly likeness: number;
}

/** Most words one typed word is taken to mean: two letters begin thousands. */
const MOST_LIKE = 1000;
/** A slip is less likely where what was typed begins some word as it stands: such a word in the notes goes before a slip in a label. */
const SLIP_BESIDE_BEGINNING = 0.6;
const END = 36;

/**
 * The distinct words of all records, found again by the runs of three letters they share with what was
 * typed. A word begins with two marks and ends with one, so that its first letter is a run of its own and
 * its ending is told from its middle.
 */
export class WordIndex {
  readonly words: readonly string[];
  readonly #runs: ReadonlyMap<number, number>;
  readonly #wordsOf: Packed;
  readonly #shared: Uint8Array;
  readonly #touched: Int32Array;

  constructor(words: readonly string[]) {
    const runs = new Map<number, number>();
    const pairs = new Pairs();
    words.forEach((word, id) => {
      eachRun(word, true, (code) => {
        let run = runs.get(code);
        if (run === undefined) {
          run = runs.size;
          runs.set(code, run);
        }
        pairs.add(run, id);
      });
    });
    this.words = words;
    this.#runs = runs;
    this.#wordsOf = pairs.packed(runs.size);
    this.#shared = new Uint8Array(words.length);
    this.#touched = new Int32Array(words.length);
  }

  /** The words that `typed` may mean, likeliest first: itself, words it begins, and words a slip or two away where it is long enough and no number. */
  like(typed: string): Like[] {
    const touched = this.#count(typed);
    const found = this.#beginning(typed, touched);
    const most = found.some(({ likeness }) => likeness === 1) ? 0 : slipsMeant(typed, found.length > 0);
    if (most > 0) this.#slipped(typed, touched, most, found);
    for (let at = 0; at < touched; at++) this.#shared[this.#touched[at]!] = 0;
    return found.sort((a, b) => b.likeness - a.likeness || a.word - b.word).slice(0, MOST_LIKE);
  }

  /** Counts, for every word, the runs it shares with what was typed; gives how many words share any. */
  #count(typed: string): number {
    let count = 0;
    const { starts, values } = this.#wordsOf;
    const [shared, touched] = [this.#shared, this.#touched];
    eachRun(typed, true, (code) => {
      const run = this.#runs.get(code);
      if (run === undefined) return;
      for (let at = starts[run]!; at < starts[run + 1]!; at++) {
        const word = values[at]!;
        if (shared[word] === 0) touched[count++] = word;
        if (shared[word]! < 255) shared[word]!++;
      }
    });
    return count;
  }

  /** A word that begins with what was typed shares all its runs but the one with the end. */
  #beginning(typed: string, touched: number): Like[] {
    const found: Like[] = [];
    const needed = Math.min(distinctRuns(typed), 255);
    for (let at = 0; at < touched; at++) {
      const word = this.#touched[at]!;
      if (this.#shared[word]! < needed || !this.words[word]!.startsWith(typed)) continue;
      found.push({ word, likeness: beginningLikeness(typed, this.words[word]!) });
    }
    return found;
  }

  #slipped(typed: string, touched: number, most: number, found: Like[]): void {
    // A slip spoils up to four runs; short words are let through with one that is left.
    const needed = Math.max(typed.length + 1 - 4 * most, typed.length > 4 ? 2 : 1);
    const known = new Set(found.map(({ word }) => word));
    const less = found.length > 0 ? SLIP_BESIDE_BEGINNING : 1;
    for (let at = 0; at < touched; at++) {
      const word = this.#touched[at]!;
      const text = this.words[word]!;
      if (this.#shared[word]! < needed || text.length < typed.length - most || known.has(word)) continue;
      const both = slips(typed, text, most);
      const [whole, beginning] = [both >> 4, both & 15];
      const likeness = Math.max(
        whole <= most ? 0.85 - 0.2 * whole : 0,
        beginning <= most ? 0.7 - 0.2 * beginning : 0,
      );
      if (likeness > 0 && !isNumber(text)) found.push({ word, likeness: likeness * less });
    }
  }
}

/** 1 for the word itself, towards 0.75 the more of it is still to be typed; a number's beginning is hardly the number. */
const beginningLikeness = (typed: string, word: string): number => {
  if (typed.length === word.length) return 1;
  return isNumber(typed) ? 0.5 : 0.75 + (0.2 * typed.length) / word.length;
};

/** Slips taken as meant: none in numbers and scraps, one in a word, two in a long one; one where the word may just not be typed to its end. */
function slipsMeant(typed: string, begins: boolean): number {
  if (typed.length < 3 || isNumber(typed)) return 0;
  return typed.length < 6 || begins ? 1 : 2;
}

const distinctRuns = (typed: string): number => {
  const runs = new Set<number>();
  eachRun(typed, false, (code) => runs.add(code));
  return runs.size;
};

/** Every run of three letters of `^^word$` once each time it occurs, as a number; without its end where `whole` is false. */
function eachRun(word: string, whole: boolean, visit: (code: number) => void): void {
  let [a, b] = [0, 0];
  for (let at = 0; at < word.length; at++) {
    const c = word.charCodeAt(at);
    visit((a * 65536 + b) * 65536 + c);
    [a, b] = [b, c];
  }
  if (whole) visit((a * 65536 + b) * 65536 + END);
}
