/** One measured number of a form: what was typed for it, and what becomes of that. */
import { type LengthReading, type LengthUnit, readLength } from "#lib/entry/length-text.ts";
import {
  type QuantityReading,
  type QuantityResult,
  readAngle,
  readCount,
  readMass,
  readPower,
} from "#lib/entry/quantity-text.ts";
import type { How, Unit } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";

/** What was typed for one number. An empty text means the number is not known. */
export interface TypedNumber {
  readonly text: string;
  readonly how?: How;
  readonly plusMinus?: string;
}

/** What is wrong with a field, in words. `field` is a key of the vocabulary, or a place under it: `seatMm.plusMinus`, `obstacles.0.label`. */
export interface FieldError {
  readonly field: string;
  readonly says: string;
}

/** A field that can be read more than one way. */
export interface FieldAsk {
  readonly field: string;
  readonly readings: readonly (LengthReading | QuantityReading)[];
}

/** The unit a text was typed in, or usually is. */
export type TypedUnit = LengthUnit | QuantityReading["unit"];

/** One text read: a value in the vocabulary's unit, an error, or a question. */
export type FieldResult =
  | { readonly kind: "value"; readonly value: number; readonly unit: TypedUnit }
  | ({ readonly kind: "error" } & FieldError)
  | ({ readonly kind: "ask" } & FieldAsk);

const USUAL_IN_INCHES = { mm: "in", kg: "lb", kW: "hp" } as const;

function readAs(
  unit: Unit,
  text: string,
  usual: LengthUnit,
  signed: boolean,
): QuantityResult | ReturnType<typeof readLength> {
  const inches = usual === "in" || usual === "ft";
  if (unit === "mm") return readLength(text, usual, { signed });
  if (unit === "deg") return readAngle(text, { signed });
  if (unit === "kg") return readMass(text, inches ? USUAL_IN_INCHES.kg : "kg");
  return unit === "kW" ? readPower(text, inches ? USUAL_IN_INCHES.kW : "kW") : readCount(text);
}

/** Reads one text as a number in `unit` for the place `field`; `usual` is the unit the person usually types lengths in. */
export function readText(
  field: string,
  unit: Unit,
  text: string,
  usual: LengthUnit,
  signed: boolean,
): FieldResult {
  const result = readAs(unit, text, usual, signed);
  if (result.kind === "refused") return { kind: "error", field, says: result.says };
  if (result.kind === "ask") return { kind: "ask", field, readings: result.readings };
  return { kind: "value", value: result.kind === "length" ? result.mm : result.value, unit: result.unit };
}

/** Units of which a plus-minus may be typed alone: 394 mm, give or take 2. After metres or feet it is asked. */
const CARRIES_ON: readonly TypedUnit[] = ["mm", "in", "kg", "lb", "kW", "hp", "PS"];

/** Reads a plus-minus; a number alone is in the unit the number before it was typed in. */
function readPlusMinus(
  field: string,
  unit: Unit,
  text: string,
  before: TypedUnit,
  usual: LengthUnit,
): FieldResult {
  const result = readText(`${field}.plusMinus`, unit, text, usual, false);
  if (result.kind !== "ask" || !CARRIES_ON.includes(before)) return result;
  return readText(`${field}.plusMinus`, unit, `${text} ${before}`, usual, false);
}

/** A number as a form hands it to the schema. */
export interface ReadNumber {
  readonly value: number | readonly number[];
  readonly plusMinus?: number;
  readonly how: How;
}

/** What became of one key: the number, or errors and questions. */
export interface ReadKey {
  readonly number?: ReadNumber;
  readonly errors: readonly FieldError[];
  readonly asks: readonly FieldAsk[];
}

const sorted = (results: readonly FieldResult[]): Pick<ReadKey, "errors" | "asks"> => ({
  errors: results.filter((result) => result.kind === "error").map(({ field, says }) => ({ field, says })),
  asks: results.filter((result) => result.kind === "ask").map(({ field, readings }) => ({ field, readings })),
});

/** Reads the angles of a list with blanks or semicolons between; a comma inside one could be either and is refused. */
function readAngles(key: string, text: string): FieldResult[] {
  const texts = text
    .trim()
    .split(/[\s;]+|,\s+/)
    .filter((piece) => piece !== "");
  const joined = texts.some((piece) => /\d,\d/.test(piece));
  const says =
    "Put blanks between the angles and a point before decimals, lowest hole first. Type for instance 4 8 12.5.";
  if (joined || texts.length > 100) return [{ kind: "error", field: key, says }];
  return texts.map((piece) => readText(key, "deg", piece, "mm", true));
}

/** Reads what was typed for one key of the vocabulary, several angles where `list` is true. */
export function readKey(
  key: string,
  field: Field,
  typed: TypedNumber,
  usual: LengthUnit,
  list = false,
): ReadKey {
  const values = list
    ? readAngles(key, typed.text)
    : [readText(key, field.unit, typed.text, usual, field.min < 0)];
  const before = values[0]?.kind === "value" ? values[0].unit : field.unit;
  const spread = typed.plusMinus?.trim()
    ? [readPlusMinus(key, field.unit, typed.plusMinus, before, usual)]
    : [];
  const { errors, asks } = sorted([...values, ...spread]);
  if (errors.length + asks.length > 0) return { errors, asks };
  const numbers = values.flatMap((result) => (result.kind === "value" ? [result.value] : []));
  const plusMinus = spread[0]?.kind === "value" ? { plusMinus: spread[0].value } : {};
  const value = list ? numbers : numbers[0]!;
  return { number: { value, ...plusMinus, how: typed.how || "measured" }, errors, asks };
}
