/** Persons and fuel aboard, as sent and as typed in a small form. */
import { z } from "zod";
import { readText } from "#lib/entry/form-field.ts";
import type { LengthUnit } from "#lib/entry/length-text.ts";
import { numberSchema } from "#lib/entry/measured.ts";
import { notThat } from "#lib/entry/words.ts";
import { ABOARD_KEYS, type Aboard, type AboardKey, USUAL_ABOARD } from "#lib/rig/afloat/aboard.ts";

/** What the form asks for, with the sane range of each. */
export const ABOARD_FIELDS = {
  persons: { unit: "count", min: 0, max: 30, name: "Persons aboard" },
  personKg: { unit: "kg", min: 10, max: 250, name: "Mass of one person" },
  personsForwardMm: { unit: "mm", min: -500, max: 15_000, name: "Persons forward of the transom" },
  fuelKg: { unit: "kg", min: 0, max: 1000, name: "Fuel aboard" },
  fuelForwardMm: { unit: "mm", min: -500, max: 15_000, name: "Fuel forward of the transom" },
} as const satisfies Record<AboardKey, object>;

const shape = {
  persons: numberSchema(ABOARD_FIELDS.persons).refine(Number.isInteger, {
    error: "The number of persons must be a whole number.",
  }),
  personKg: numberSchema(ABOARD_FIELDS.personKg),
  personsForwardMm: numberSchema(ABOARD_FIELDS.personsForwardMm),
  fuelKg: numberSchema(ABOARD_FIELDS.fuelKg),
  fuelForwardMm: numberSchema(ABOARD_FIELDS.fuelForwardMm),
};

/** Persons and fuel as sent; what is left out is as usual: two persons of 75 kg amidships, a portable tank. */
export const aboardSchema = z
  .strictObject(
    {
      persons: shape.persons.default(USUAL_ABOARD.persons),
      personKg: shape.personKg.default(USUAL_ABOARD.personKg),
      personsForwardMm: shape.personsForwardMm.optional(),
      fuelKg: shape.fuelKg.default(USUAL_ABOARD.fuelKg),
      fuelForwardMm: shape.fuelForwardMm.default(USUAL_ABOARD.fuelForwardMm),
    },
    { error: ({ input }) => notThat("What is aboard", "a record of persons and fuel", input) },
  )
  .meta({ description: "Persons and fuel put aboard on top of the level measured without the motor." });

aboardSchema satisfies z.ZodType<Aboard>;

/** What became of a typed load: the load, with the usual in place of what could not be read, and what is wrong by field. */
export interface TypedAboard {
  readonly aboard: Aboard;
  readonly texts: Readonly<Partial<Record<AboardKey, string>>>;
  readonly errors: Readonly<Partial<Record<AboardKey, string>>>;
}

/** Reads the texts of the form; an empty one is as usual. */
export function readAboard(
  texts: Readonly<Partial<Record<AboardKey, string>>>,
  usual: LengthUnit,
): TypedAboard {
  const values: Partial<Record<AboardKey, number>> = {};
  const errors: Partial<Record<AboardKey, string>> = {};
  for (const key of ABOARD_KEYS) {
    const text = texts[key]?.trim();
    if (!text) continue;
    const read = readOne(key, text, usual);
    if (typeof read === "number") values[key] = read;
    else errors[key] = read.says;
  }
  return { aboard: { ...USUAL_ABOARD, ...values }, texts, errors };
}

function readOne(key: AboardKey, text: string, usual: LengthUnit): number | { readonly says: string } {
  const { unit, min } = ABOARD_FIELDS[key];
  const result = readText(key, unit, text, usual, min < 0);
  // A bare number of kilograms or millimetres is what it says.
  const sure = result.kind === "ask" ? readText(key, unit, `${text} ${unit}`, usual, min < 0) : result;
  if (sure.kind === "error") return { says: sure.says };
  if (sure.kind === "ask")
    return { says: `Say the unit: ${sure.readings.map(({ says }) => says).join(", or ")}.` };
  const parsed = shape[key].safeParse(sure.value);
  return parsed.success ? parsed.data : { says: parsed.error.issues[0]?.message ?? "This is not possible." };
}
