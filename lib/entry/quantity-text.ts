/**
 * Angles, masses, powers and counts as people type them, under the same rule as lengths: what can be
 * meant two ways is asked, never guessed.
 */
import { plainNumber } from "#lib/entry/number-text.ts";
import { type Token, takeAmount, tokens } from "#lib/entry/number-token.ts";
import {
  ANGLE,
  COUNT,
  MASS,
  type MassUnit,
  POWER,
  type PowerUnit,
  type Quantity,
  type QuantityUnit,
  type QuantityUnitOf,
} from "#lib/entry/quantity-unit.ts";
import { earlyFault, type RefusalCode, type Refused, refuse, tooLong } from "#lib/entry/refusal.ts";
import { tidyText } from "#lib/entry/tidy-text.ts";

/** One way to read what was typed: `value` in the vocabulary's unit; `text`, typed instead, can be read this way only. */
export interface QuantityReading {
  readonly value: number;
  readonly unit: QuantityUnit;
  readonly says: string;
  readonly text: string;
}

/** What became of typed text: a quantity (`value` in degrees, kg, kW or one; `unit` as typed), a question, or a refusal. */
export type QuantityResult =
  | { readonly kind: "quantity"; readonly value: number; readonly unit: QuantityUnit; readonly text: string }
  | { readonly kind: "ask"; readonly text: string; readonly readings: readonly QuantityReading[] }
  | Refused;

/** In the vocabulary's unit, to fourteen figures, so that no hair of rounding is carried along. */
const inVocabulary = (value: number, { factor }: QuantityUnitOf): number =>
  factor === 1 ? value + 0 : Number((value * factor).toPrecision(14));

function reading(value: number, unit: QuantityUnitOf, base: string): QuantityReading {
  const result = inVocabulary(value, unit);
  const text = `${plainNumber(value)} ${unit.name}`;
  const says = unit.factor === 1 ? text : `${text}, which is ${Number(result.toFixed(2))} ${base}`;
  return { value: result, unit: unit.name, says, text };
}

const answer = (text: string, value: number, unit: QuantityUnit): QuantityResult => ({
  kind: "quantity",
  value: value + 0,
  unit,
  text,
});

const refused = (quantity: Quantity, text: string, code: RefusalCode): Refused =>
  refuse(
    text,
    code,
    `This cannot be read as ${quantity.noun}${REASONS[code] ?? ""}. Type for instance ${quantity.example}.`,
  );

/** What is added where the reason is worth saying. */
const REASONS: Readonly<Partial<Record<RefusalCode, string>>> = {
  empty: ": nothing was typed",
  "too-long": ": it is far too long",
  "too-many-digits": ": it has far too many digits",
  "too-large": ": it is more than anything on a boat",
  "not-a-number": ": NaN is no number",
  infinite: ": it would be endless",
  hexadecimal: ": numbers beginning with 0x are not read here",
  exponent: ": powers of ten such as 1e3 are not read here",
  negative: ": it cannot be less than nothing",
  "fraction-decimal": ": fractions are not read here, only decimals",
  "two-lengths": ": there are two numbers",
  "number-shape": ": its commas and points do not add up",
  "unknown-unit": ": the unit is not known here",
  "no-number": ": there is no number in it",
};

/** The readings of the digits that could be meant: the others are beyond anything on a boat. */
function possible(values: readonly number[], quantity: Quantity, factor: number): readonly number[] {
  const left = values.filter((value) => value * factor <= quantity.most);
  return left.length > 0 ? left : values.slice(0, 1);
}

/** Readings not too small to be meant; all of them where all are. */
function worthAsking(readings: readonly QuantityReading[], { least }: Quantity): readonly QuantityReading[] {
  const left = readings.filter(({ value }) => Math.abs(value) >= least);
  return left.length > 0 ? left : readings;
}

function leftOver([first, second]: readonly Token[]): RefusalCode {
  if (first?.kind === "number" || first?.kind === "fraction") return "two-lengths";
  return second === undefined || first?.kind === "word" ? "unknown-unit" : "unreadable";
}

function readTokens(
  text: string,
  list: readonly Token[],
  quantity: Quantity,
  sign: number,
  usual?: QuantityUnit,
): QuantityResult {
  const head = takeAmount(list);
  if (typeof head === "string") return refused(quantity, text, head);
  if (head.amount.fractional) return refused(quantity, text, "fraction-decimal");
  const [first, ...more] = list.slice(head.took);
  const unit = quantity.units.find(({ words }) => first !== undefined && words.test(first.text));
  if (first !== undefined && (unit === undefined || more.length > 0))
    return refused(quantity, text, leftOver(unit === undefined ? [first, ...more] : more));
  const units = unit
    ? [unit]
    : [...quantity.units].sort((a, b) => Number(b.name === usual) - Number(a.name === usual));
  const readings = units.flatMap((one) =>
    possible(head.amount.values, quantity, one.factor).map((value) =>
      reading(sign * value, one, quantity.units[0]!.name),
    ),
  );
  const only = unit !== undefined || quantity.plain;
  if (!only || readings.length > 1) return { kind: "ask", text, readings: worthAsking(readings, quantity) };
  const { value, unit: name } = readings[0]!;
  return Math.abs(value) > 1e6 ? refused(quantity, text, "too-large") : answer(text, value, name);
}

function read(text: string, quantity: Quantity, signed: boolean, usual?: QuantityUnit): QuantityResult {
  const long = tooLong(text);
  if (long !== null) return refused(quantity, text, long);
  const tidy = tidyText(text);
  const early = earlyFault(text, tidy);
  if (early !== null) return refused(quantity, text, early);
  const list = tokens(tidy);
  const minus = list[0]?.text === "-";
  if (minus && !signed) return refused(quantity, text, "negative");
  return readTokens(
    text,
    minus || list[0]?.text === "+" ? list.slice(1) : list,
    quantity,
    minus ? -1 : 1,
    usual,
  );
}

/** An angle in degrees; a number alone is degrees. Minus is read unless `signed` is false. */
export const readAngle = (text: string, options: { readonly signed?: boolean } = {}): QuantityResult =>
  read(text, ANGLE, options.signed ?? true);

/** A mass in kilograms, typed in kg or lb; a number alone is asked, the `usual` unit first. */
export const readMass = (text: string, usual?: MassUnit): QuantityResult => read(text, MASS, false, usual);

/** A power in kilowatts, typed in kW, W, hp (mechanical) or PS (metric); a number alone is asked, the `usual` unit first. */
export const readPower = (text: string, usual?: PowerUnit): QuantityResult => read(text, POWER, false, usual);

/** A whole number such as a year or a number of drains: digits only. */
export function readCount(text: string): QuantityResult {
  const long = tooLong(text);
  const tidy = long === null ? tidyText(text) : "";
  const fault = long ?? earlyFault(text, tidy);
  if (fault !== null) return refused(COUNT, text, fault);
  if (tidy.startsWith("-")) return refused(COUNT, text, "negative");
  if (!/^\d+$/.test(tidy)) return refused(COUNT, text, "unreadable");
  return Number(tidy) > COUNT.most ? refused(COUNT, text, "too-large") : answer(text, Number(tidy), "count");
}
