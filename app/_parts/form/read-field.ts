import { written } from "#app/_parts/record/written.ts";
import { bothSystems, formatLength } from "#lib/entry/length-format.ts";
import { type LengthUnit, readLength } from "#lib/entry/length-text.ts";
import { numberSchema } from "#lib/entry/measured.ts";
import { type QuantityResult, readAngle, readCount, readMass, readPower } from "#lib/entry/quantity-text.ts";
import type { How, Unit } from "#lib/quantity/measured.ts";
import { defaultHalfWidth } from "#lib/quantity/uncertainty.ts";
import type { Field } from "#lib/rig/field.ts";

/** One way a text can be read: the value in the vocabulary's unit, its words, and a text that can be read this way only. */
export interface Offer {
  readonly value: number;
  readonly says: string;
  readonly text: string;
}

/** What became of the text in one box: nothing typed, a number (or a list of them), a question with its readings, or words of refusal. */
export type Reading<V = number | readonly number[]> =
  | { readonly kind: "empty" }
  | { readonly kind: "value"; readonly value: V; readonly echo: string }
  | { readonly kind: "ask"; readonly readings: readonly Offer[] }
  | { readonly kind: "refused"; readonly says: string };

/** Reads the box of a field, and refuses what lies beyond what a boat or a motor of this size has. */
export function readField(field: Field, text: string, usual?: LengthUnit): Reading<number> {
  if (text.trim() === "") return { kind: "empty" };
  const signed = field.min < 0;
  const reading =
    field.unit === "mm" ? lengthReading(text, usual, signed) : otherReading(field.unit, text, signed);
  if (reading.kind === "ask") return { kind: "ask", readings: likely(field, reading.readings) };
  return reading.kind === "value" ? inRange(field, reading) : reading;
}

/** The readings this very number could have; all of them where it could have none. */
function likely(field: Field, readings: readonly Offer[]): readonly Offer[] {
  const left = readings.filter(({ value }) => value >= field.min && value <= field.max);
  return left.length > 0 ? left : readings;
}

/** Reads the angles of the trim-pin holes: numbers divided by commas, semicolons or blanks, lowest hole first. */
export function readList(field: Field, text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  const divider = text.includes(";") ? /;/ : /\s*,\s+|\s+|,/;
  const read = text
    .trim()
    .split(divider)
    .filter((part) => part.trim() !== "")
    .map((part) => readField(field, part));
  const odd = read.find(({ kind }) => kind !== "value");
  if (odd?.kind === "refused") return odd;
  const value = read.flatMap((each) => (each.kind === "value" ? [each.value] : []));
  const falling = value.some((angle, hole) => hole > 0 && angle <= value[hole - 1]!);
  if (falling)
    return { kind: "refused", says: "Lowest hole first, every angle greater than the one before." };
  const holes = value.length === 1 ? "1 hole" : `${value.length} holes`;
  return { kind: "value", value, echo: `${holes}: ${value.map((angle) => `${angle}°`).join(", ")}` };
}

/** Reads a ± or a corner, whose box says its unit: a bare number is in that unit. */
export function readAmount(unit: Unit, text: string, { signed = false } = {}): Reading<number> {
  if (text.trim() === "") return { kind: "empty" };
  const bare = /^[-+−]?\d+([.,]\d+)?$/.test(text.trim()) && unit === "mm";
  return unit === "mm"
    ? lengthReading(bare ? `${text} mm` : text, "mm", signed)
    : otherReading(unit, text, signed);
}

/** The ± taken where none is written, for the box's hint; undefined where there is none to speak of. */
export function usualSpread(unit: Unit, reading: Reading, how: How): string | undefined {
  if (reading.kind !== "value") return undefined;
  const value = typeof reading.value === "number" ? reading.value : reading.value[0]!;
  const spread = defaultHalfWidth(value, unit, how);
  if (unit === "mm") return `usual ${formatLength(spread, "mm")}`;
  return unit === "deg" ? `usual ${spread}°` : `usual ${Number(spread.toPrecision(2))} ${unit}`;
}

function lengthReading(text: string, usual: LengthUnit | undefined, signed: boolean): Reading<number> {
  const result = readLength(text, usual, { signed });
  if (result.kind === "length") return { kind: "value", value: result.mm, echo: bothSystems(result.mm) };
  return result.kind === "ask"
    ? {
        kind: "ask",
        readings: result.readings.map(({ mm, says, text: again }) => ({ value: mm, says, text: again })),
      }
    : { kind: "refused", says: result.says };
}

function otherReading(unit: Exclude<Unit, "mm">, text: string, signed: boolean): Reading<number> {
  const result = reader(unit, text, signed);
  if (result.kind === "quantity")
    return { kind: "value", value: result.value, echo: echoOf(unit, result.value) };
  return result.kind === "ask"
    ? { kind: "ask", readings: result.readings }
    : { kind: "refused", says: result.says };
}

function reader(unit: Exclude<Unit, "mm">, text: string, signed: boolean): QuantityResult {
  if (unit === "deg") return readAngle(text, { signed });
  if (unit === "kg") return readMass(text);
  return unit === "kW" ? readPower(text) : readCount(text);
}

/** The number in both systems where there are two. */
function echoOf(unit: Unit, value: number): string {
  const { main, beside } = written(value, unit);
  return beside ? `${main} = ${beside}` : main;
}

function inRange(field: Field, reading: Extract<Reading<number>, { kind: "value" }>): Reading<number> {
  const fault = numberSchema(field).safeParse(reading.value).error?.issues[0]?.message;
  return fault ? { kind: "refused", says: fault } : reading;
}
