/** What a query asks for: words, and amounts with a unit. */
import { readLength } from "#lib/entry/length-text.ts";
import { readMass, readPower } from "#lib/entry/quantity-text.ts";
import { tidyText } from "#lib/entry/tidy-text.ts";
import { isNumber, joined, plain, tokens } from "#lib/search/tokens.ts";
import type { Sized } from "#lib/search/words.ts";

/** A longer query is cut: nobody types more, and every letter costs. */
export const QUERY_MOST = 64;
const WORDS_MOST = 8;

/** An amount asked for, and how far from it is still meant. */
export interface Wish {
  readonly of: Sized;
  readonly value: number;
  readonly tolerance: number;
}

/** One thing every record found should have: a word, or an amount that may also stand written as that word. */
export interface Term {
  readonly word: string;
  readonly wish?: Wish;
}

/** Words that join others and find nothing of their own. */
const JOINING: ReadonlySet<string> = new Set("a an and at by for from in my of on or the to with".split(" "));

/** The first 64 characters of a query. */
export const cut = (query: string): string =>
  [...query.slice(0, 2 * QUERY_MOST)].slice(0, QUERY_MOST).join("");

/** The words of a query, as they are compared: without accents and capitals, the first 64 characters of it, eight words at most. */
export const wordsOf = (query: string): string[] =>
  plain(cut(query))
    .split(/\s+/)
    .filter((word) => word !== "")
    .slice(0, WORDS_MOST);

/** The terms of a query, eight at most. */
export function termsOf(query: string): Term[] {
  const words = tokens(spelled(cut(query)));
  const terms: Term[] = [];
  for (let at = 0; at < words.length; at++) {
    const [first, second] = [words[at]!, words[at + 1]];
    const both = second === undefined ? undefined : joined(first, second);
    if (both) at++;
    const wish = both && isNumber(both) ? wishOf(first, both.slice(first.length)) : undefined;
    terms.push({ word: both ?? first, ...(wish && { wish }) });
  }
  const telling = terms.filter(({ word }) => !JOINING.has(word));
  return (telling.length > 0 ? telling : terms).slice(0, WORDS_MOST);
}

/** Foot and inch marks as words, fractions and decimal commas as decimals: `20 1/2"` is 20.5 in. */
const spelled = (query: string): string =>
  tidyText(query)
    .replace(/(\d+) (\d+)\/(\d+)/g, (_, whole, over, under) => String(Number(whole) + over / under))
    .replace(/(\d),(\d)/g, "$1.$2")
    .replace(/(\d)\s*"/g, "$1 in ")
    .replace(/(\d)\s*'/g, "$1 ft ");

/** Makers round powers to a tenth of a kilowatt, and call metric horsepower hp, 1.4 % less: 3 % covers both (common practice, no source). */
const SHARE = { kW: 0.03, kg: 0.03, mm: 0.01 };
const LEAST = { kW: 0.05, kg: 0.5, mm: 1 };

function wishOf(amount: string, unit: string): Wish | undefined {
  const text = `${amount} ${unit}`;
  const power = readPower(text);
  if (power.kind === "quantity") return wish("kW", power.value);
  const mass = readMass(text);
  if (mass.kind === "quantity") return wish("kg", mass.value);
  const length = readLength(text, "mm");
  if (length.kind !== "length") return undefined;
  // A length is meant as finely as it was typed: 20 in from 19.5 to 20.5, 4.2 m from 4.15 to 4.25.
  const decimals = amount.split(".")[1]?.length ?? 0;
  return wish("mm", length.mm, (0.5 * 10 ** -decimals * length.mm) / Math.max(Number(amount), 1e-9));
}

const wish = (of: Sized, value: number, tolerance = 0): Wish => ({
  of,
  value,
  tolerance: Math.max(LEAST[of], SHARE[of] * value, tolerance),
});
