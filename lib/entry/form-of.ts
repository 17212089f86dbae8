/** The texts of a form that make a record: reading them again gives the same record, to the last bit. */
import type { TypedForm, TypedKinds } from "#lib/entry/form.ts";
import { readText, type TypedNumber } from "#lib/entry/form-field.ts";
import { formatLength, type LengthSystem } from "#lib/entry/length-format.ts";
import { plainNumber } from "#lib/entry/number-text.ts";
import type { Measured, MeasuredList, Unit } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** The texts of numbers as people typed them, by key and `key.plusMinus`. */
export type Raw = Readonly<Record<string, string>>;

const SUFFIX: Readonly<Record<Unit, string>> = { mm: " mm", deg: "°", kg: " kg", kW: " kW", count: "" };
const FIELDS: Readonly<Record<string, Field>> = { ...motorFields, ...sternFields };
const LIMITS: Readonly<Record<string, Standard>> = practiceLimits;

const reads = (text: string, unit: Unit, value: number, system: LengthSystem): boolean => {
  const result = readText("", unit, text, system, true);
  return result.kind === "value" && result.value === value;
};

/** A text that reads as exactly this value: as typed where that still says the value, else inches where they are exact, else in full. */
export function exactText(value: number, unit: Unit, system: LengthSystem, typed?: string): string {
  if (typed !== undefined && reads(typed, unit, value, system)) return typed;
  const inches = unit === "mm" && system === "in" ? formatLength(value, "in", { division: 64 }) : "";
  if (inches !== "" && reads(inches, unit, value, system)) return inches;
  return `${plainNumber(value)}${SUFFIX[unit]}`.replace(/^-/, "−");
}

const anglesText = (angles: readonly number[]): string =>
  angles.map((angle) => plainNumber(angle).replace(/^-/, "−")).join(" ");

function typedNumber(
  key: string,
  taken: Measured | MeasuredList,
  system: LengthSystem,
  raw: Raw,
): TypedNumber {
  const unit = FIELDS[key]!.unit;
  const { value, how, plusMinus } = taken;
  const text = typeof value === "number" ? exactText(value, unit, system, raw[key]) : anglesText(value);
  if (plusMinus === undefined) return { text, how };
  return { text, how, plusMinus: exactText(plusMinus, unit, system, raw[`${key}.plusMinus`]) };
}

const lengthText = (value: number, system: LengthSystem) => exactText(value, "mm", system);

function factText(key: string, fact: unknown, system: LengthSystem): unknown {
  if (Array.isArray(fact))
    return fact.map((box) => ({
      ...box,
      fromMm: box.fromMm.map((value: number) => lengthText(value, system)),
      toMm: box.toMm.map((value: number) => lengthText(value, system)),
    }));
  if (key === "limits")
    return Object.fromEntries(
      Object.entries(fact as Readonly<Record<string, number>>).map(([limit, value]) => [
        limit,
        exactText(value, LIMITS[limit]?.unit === "deg" ? "deg" : "mm", system),
      ]),
    );
  return String(fact);
}

/**
 * The form that makes a record: `typed` for its numbers, `kinds` for the rest, lengths in millimetres or
 * (where that is exact) inches. `raw` are the texts kept with the record; each is used while it still
 * reads as the record's value.
 */
export function formOf(
  record: Motor | Stern,
  system: LengthSystem,
  raw: Raw = {},
): { readonly typed: TypedForm; readonly kinds: TypedKinds } {
  const entries = Object.entries(record);
  const isNumber = (key: string): boolean => Object.hasOwn(FIELDS, key);
  return {
    typed: Object.fromEntries(
      entries
        .filter(([key]) => isNumber(key))
        .map(([key, taken]) => [key, typedNumber(key, taken, system, raw)]),
    ),
    kinds: Object.fromEntries(
      entries.filter(([key]) => !isNumber(key)).map(([key, fact]) => [key, factText(key, fact, system)]),
    ),
  };
}
