/** The units of lengths, and one way to read what was typed in them. */
import { plainNumber } from "#lib/entry/number-text.ts";
import type { Amount, Token } from "#lib/entry/number-token.ts";
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/quantity/length.ts";

/** The units lengths are typed in. */
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft";

/** One way to read what was typed. `says` shows it; `text`, typed instead, can be read this way only. */
export interface LengthReading {
  readonly mm: number;
  readonly unit: LengthUnit;
  readonly says: string;
  readonly text: string;
}

/** Millimetres in one of each unit, exactly. */
export const MM_PER_UNIT: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  ft: MM_PER_FOOT,
};
const UNIT_WORDS: readonly (readonly [LengthUnit, RegExp])[] = [
  ["mm", /^(mm|millimet(re|er)s?)\.?$/],
  ["cm", /^(cm|centimet(re|er)s?)\.?$/],
  ["m", /^(m|met(re|er)s?)\.?$/],
  ["in", /^("|(in|ins|inch|inches)\.?)$/],
  ["ft", /^('|(ft|foot|feet)\.?)$/],
];
/** The longest length of the vocabulary (length overall), mm: a second reading beyond it is not worth asking about. */
const LONGEST_MM = 15_000;
/** True for units of which no fractions are read. */
export const isMetric = (unit: LengthUnit): boolean => unit === "mm" || unit === "cm" || unit === "m";

/** The unit a word or mark stands for, null where it is none. */
export function unitOf(token: Token | undefined): LengthUnit | null {
  if (token === undefined) return null;
  return UNIT_WORDS.find(([, word]) => word.test(token.text))?.[0] ?? null;
}

/** A value in a unit as millimetres, to fourteen figures so that 39.4 cm is 394 mm and not a hair more. */
export function toMm(value: number, unit: LengthUnit): number {
  return unit === "mm" ? value : Number((value * MM_PER_UNIT[unit]).toPrecision(14));
}

/** A reading of a value in a unit; `valueText` where it is typed otherwise than in decimals. */
export function reading(value: number, unit: LengthUnit, valueText = plainNumber(value)): LengthReading {
  const mm = toMm(value, unit);
  const text = `${valueText} ${unit}`;
  return { mm, unit, text, says: unit === "mm" ? text : `${text}, which is ${Number(mm.toFixed(1))} mm` };
}

/** The readings of an amount in a unit. */
export const readingsIn = (unit: LengthUnit, { values, texts }: Amount, sign: number): LengthReading[] =>
  values.map((value, at) => {
    const typed = texts?.[at];
    return reading(sign * value, unit, typed === undefined ? undefined : `${sign < 0 ? "-" : ""}${typed}`);
  });

/** Readings a boat could have; all of them where none could. */
export function believable(readings: readonly LengthReading[]): readonly LengthReading[] {
  const left = readings.filter(({ mm }) => Math.abs(mm) <= LONGEST_MM);
  return left.length > 0 ? left : readings;
}
