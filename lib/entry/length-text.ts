/**
 * Lengths as people type them, in any unit of the tape. Nothing is guessed: a number without a unit, or
 * one that can be read two ways, comes back as a question with its readings.
 */
import {
  believable,
  isMetric,
  type LengthReading,
  type LengthUnit,
  reading,
  readingsIn,
  toMm,
  unitOf,
} from "#lib/entry/length-unit.ts";
import { plainNumber } from "#lib/entry/number-text.ts";
import { type Amount, type Token, takeAmount, tokens } from "#lib/entry/number-token.ts";
import { earlyFault, type RefusalCode, type Refused, refuse, tooLong } from "#lib/entry/refusal.ts";
import { tidyText } from "#lib/entry/tidy-text.ts";

export type { LengthReading, LengthUnit };

/** What became of typed text: a length (`value` in `unit`, as typed), a question, or a refusal. `text` is as typed. */
export type LengthResult =
  | {
      readonly kind: "length";
      readonly mm: number;
      readonly value: number;
      readonly unit: LengthUnit;
      readonly text: string;
    }
  | { readonly kind: "ask"; readonly text: string; readonly readings: readonly LengthReading[] }
  | Refused;

/** Beyond this, mm, no field could take the length. */
const REFUSED_FROM_MM = 1_000_000;

/** Fractions and decimals typed with a unit: one reading is a length, two that both could be are a question. */
function withUnit(
  text: string,
  amount: Amount,
  unit: LengthUnit,
  sign: number,
  commaTyped: boolean,
): LengthResult {
  if (amount.fractional && isMetric(unit)) return refuse(text, "fraction-metric");
  const all = readingsIn(unit, amount, sign);
  const readings = commaTyped || amount.fractional ? all : believable(all);
  if (readings.length > 1) return { kind: "ask", text, readings };
  const value = sign * (amount.values[all.indexOf(readings[0]!)] ?? 0);
  const mm = toMm(value, unit);
  if (Math.abs(mm) > REFUSED_FROM_MM) return refuse(text, "too-large");
  return { kind: "length", mm: mm + 0, value: value + 0, unit, text };
}

/** Nought is nought in every unit: the one number that needs none. */
const nothing = (text: string, unit: LengthUnit = "mm"): LengthResult => ({
  kind: "length",
  mm: 0,
  value: 0,
  unit,
  text,
});

/** A number without a unit: asked in every unit it could be in. */
function bare(text: string, amount: Amount, sign: number, usual: LengthUnit | undefined): LengthResult {
  const units = (["mm", "cm", "in", "ft", "m"] as const).filter(
    (unit) => !amount.fractional || !isMetric(unit),
  );
  const inOrder = [...units].sort((a, b) => Number(b === usual) - Number(a === usual));
  if (amount.values.every((value) => value === 0)) return nothing(text, usual);
  return {
    kind: "ask",
    text,
    readings: believable(inOrder.flatMap((unit) => readingsIn(unit, amount, sign))),
  };
}

const isWhole = ({ values, fractional }: Amount): boolean =>
  !fractional && values.length === 1 && Number.isInteger(values[0]);

/** Feet and inches: `1' 3 1/2"`; without the inch mark it is asked. */
function feetAndInches(text: string, feet: Amount, rest: readonly Token[], sign: number): LengthResult {
  const next = takeAmount(rest);
  if (typeof next === "string") return refuse(text, next === "unreadable" ? "two-lengths" : next);
  const after = rest.slice(next.took);
  if (after.length > 1 || (after.length === 1 && unitOf(after[0]) !== "in"))
    return refuse(text, leftOver(after));
  if (!isWhole(feet)) return refuse(text, "feet-whole");
  const [inches = 0, second] = next.amount.values;
  if (inches >= 12 || second !== undefined) return refuse(text, "inches-after-feet");
  const value = sign * ((feet.values[0] ?? 0) * 12 + inches);
  if (after.length === 0) return { kind: "ask", text, readings: [reading(value, "in")] };
  const mm = toMm(value, "in");
  return Math.abs(mm) > REFUSED_FROM_MM
    ? refuse(text, "too-large")
    : { kind: "length", mm, value, unit: "in", text };
}

/** Two numbers side by side without a mark between: feet and inches, or one number with a stray blank. */
function sideBySide(
  text: string,
  first: Amount,
  rest: readonly Token[],
  sign: number,
  usual?: LengthUnit,
): LengthResult {
  const second = takeAmount(rest);
  if (typeof second === "string") return refuse(text, second);
  const after = rest.slice(second.took);
  const unit = unitOf(after[0]);
  if (after.length > 1 || (after.length === 1 && unit !== "in")) return refuse(text, leftOver(after));
  const [a = 0] = first.values;
  const [b = 0] = second.amount.values;
  if (!isWhole(first) || second.amount.values.length > 1) return refuse(text, "two-lengths");
  const feet = b < 12 ? [reading(sign * (a * 12 + b), "in")] : [];
  const joined: Amount = { values: [Number(`${a}${plainNumber(b)}`)], fractional: second.amount.fractional };
  const asOne = unit === null ? bare(text, joined, sign, usual) : null;
  const readings = [...feet, ...(asOne?.kind === "ask" ? asOne.readings : readingsIn("in", joined, sign))];
  return { kind: "ask", text, readings: believable(readings) };
}

/** The fault of pieces left over after a length was read. */
function leftOver(rest: readonly Token[]): RefusalCode {
  const [first, second] = rest;
  if (first?.kind === "fraction") return "two-fractions";
  if (rest.some(({ kind }) => kind === "number" || kind === "fraction")) return "two-lengths";
  if (first?.kind === "word" && second === undefined) return "unknown-unit";
  return "unreadable";
}

interface Options {
  /** True for the few numbers that may lie on either side of their mark and so may be negative. */
  readonly signed?: boolean;
}

function readTokens(
  text: string,
  list: readonly Token[],
  usual: LengthUnit | undefined,
  signed: boolean,
): LengthResult {
  const signTyped = list[0]?.text === "-" || list[0]?.text === "+";
  const sign = list[0]?.text === "-" ? -1 : 1;
  const pieces = signTyped ? list.slice(1) : list;
  const head = takeAmount(pieces);
  if (typeof head === "string") return refuse(text, head);
  if (sign < 0 && !signed) return refuse(text, "negative");
  const rest = pieces.slice(head.took);
  if (rest.length === 0) return bare(text, head.amount, sign, usual);
  if (rest[0]?.kind === "number") return sideBySide(text, head.amount, rest, sign, usual);
  const unit = unitOf(rest[0]);
  if (unit === null) return refuse(text, leftOver(rest));
  if (rest.length === 1) return withUnit(text, head.amount, unit, sign, pieces[0]!.text.includes(","));
  if (unit !== "ft") return refuse(text, "two-lengths");
  return feetAndInches(text, head.amount, rest.slice(rest[1]?.text === "-" ? 2 : 1), sign);
}

/**
 * Reads a length as typed. `usual` is the unit the record is usually typed in: its reading comes first
 * when a question has to be asked. Any string may be handed in; none makes it throw.
 */
export function readLength(text: string, usual?: LengthUnit, options: Options = {}): LengthResult {
  const long = tooLong(text);
  if (long !== null) return refuse(text, long);
  const tidy = tidyText(text);
  const early = earlyFault(text, tidy);
  if (early !== null) return refuse(text, early);
  return readTokens(text, tokens(tidy), usual, options.signed ?? false);
}
