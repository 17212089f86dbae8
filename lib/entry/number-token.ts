/**
 * Typed text cut into numbers, fractions, words and marks, before anyone asks what they measure.
 */
import { numericQuantity } from "numeric-quantity";
import { readDigits } from "#lib/entry/number-text.ts";
import type { RefusalCode } from "#lib/entry/refusal.ts";

/** A piece of text: `number` 15, `fraction` 1/2, `word` mm, `mark` for everything else. */
export interface Token {
  readonly kind: "number" | "fraction" | "word" | "mark";
  readonly text: string;
}

const PIECE =
  /(?<fraction>\d+ ?\/ ?\d+)|(?<number>\d{1,3}(?: \d{3})+(?:[.,]\d+)?(?! ?[\d/.,])|[\d.,]*\d[\d.,]*)|(?<word>[\p{L}µ]+\.?)|(?<mark>[^ ])/gu;

/** The pieces of tidied text in their order; `1 234` with a blank between threes is one number. */
export function tokens(tidy: string): readonly Token[] {
  return [...tidy.matchAll(PIECE)].map(({ groups = {} }) => {
    const kind =
      (["fraction", "number", "word"] as const).find((name) => groups[name] !== undefined) ?? "mark";
    const text = groups[kind] ?? "";
    return { kind, text: kind === "number" ? text.replaceAll(" ", "") : text };
  });
}

/** An amount: its readings, likeliest first, and whether a fraction was typed (fractions go with inches and feet). */
export interface Amount {
  readonly values: readonly number[];
  readonly fractional: boolean;
  /** What to type so that only the reading of the same place is left. */
  readonly texts?: readonly string[];
}

const isTapeDivision = (below: number): boolean => [2, 4, 8, 16, 32, 64].includes(below);

/** `151/2` may be 75 1/2, or 15 1/2 with the blank forgotten: both readings are given. */
function improper(above: string, below: string, value: number): Amount {
  const split = [...above.slice(1)]
    .map((_, at) => [above.slice(0, at + 1), above.slice(at + 1)] as const)
    .find(([, rest]) => Number(rest) > 0 && Number(rest) < Number(below) && !rest.startsWith("0"));
  const [units = "", rest = ""] = split ?? [];
  const mixed = `${Math.floor(value)} ${Number(above) % Number(below)}/${below}`;
  if (!split) return { values: [value], fractional: true };
  const other = `${units} ${rest}/${below}`;
  return {
    values: [value, numericQuantity(other, { round: false })],
    fractional: true,
    texts: [mixed, other],
  };
}

function fraction(before: Token | undefined, text: string): Amount | RefusalCode {
  const [above = "", below = ""] = text.replaceAll(" ", "").split("/");
  if (Number(below) === 0) return "zero-below";
  if (!isTapeDivision(Number(below))) return "denominator";
  if (before !== undefined && !/^\d+$/.test(before.text)) return "fraction-decimal";
  const part = Number(above) / Number(below);
  if (before === undefined) {
    return part > 1 ? improper(above, below, part) : { values: [part], fractional: true };
  }
  if (part >= 1) return "fraction-above-one";
  return {
    values: [numericQuantity(`${before.text} ${above}/${below}`, { round: false })],
    fractional: true,
  };
}

/**
 * Reads the amount at the head of `list`: a number, a fraction, or a number and a fraction with a blank
 * or a dash between. Gives the amount and how many pieces it took, or why it cannot be read.
 */
export function takeAmount(
  list: readonly Token[],
): { readonly amount: Amount; readonly took: number } | RefusalCode {
  const [first, second, third] = list;
  if (first?.kind === "fraction") return taken(fraction(undefined, first.text), 1);
  if (first?.kind !== "number") return "unreadable";
  if (second?.kind === "fraction") return taken(fraction(first, second.text), 2);
  if (second?.text === "-" && third?.kind === "fraction") return taken(fraction(first, third.text), 3);
  const values = readDigits(first.text);
  return values === null ? "number-shape" : { amount: { values, fractional: false }, took: 1 };
}

const taken = (amount: Amount | RefusalCode, took: number) =>
  typeof amount === "string" ? amount : { amount, took };
