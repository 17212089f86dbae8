/**
 * A measured number as it is sent: bare, or with its half-width and how it was taken. Parsed, it is
 * always the full record.
 */
import { z } from "zod";
import { notThat, withUnit } from "#lib/entry/words.ts";
import type { How, Measured, MeasuredList } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";

/** How a number may have been taken, in order of trust. */
export const HOWS = ["measured", "declared", "estimated"] as const satisfies readonly How[];
/** Widest half-width taken as meant, in the number's own unit. */
export const PLUS_MINUS_MOST = 500;
/** Below a millionth of its unit a number is nothing; so is minus nought. */
const NOTHING = 1e-6;
const MOST_HOLES = 12;

const settle = (value: number): number => (Math.abs(value) < NOTHING ? 0 : value);

/** A finite number from `min` to `max`; the messages call it `name`. */
export function numberSchema({ name, unit, min, max }: Pick<Field, "name" | "unit" | "min" | "max">) {
  const range = ({ input }: { readonly input?: unknown }) =>
    `${name} must lie between ${min} and ${withUnit(max, unit)}; you gave ${Number(input)}.`;
  return z
    .number({ error: ({ input }) => notThat(name, "a number", input) })
    .overwrite(settle)
    .min(min, { error: range })
    .max(max, { error: range });
}

const howSchema = z.enum(HOWS, {
  error: ({ input }) => notThat("How it was taken", "measured, declared or estimated", input),
});
const plusMinusSchema = numberSchema({ name: "The plus-minus", unit: "count", min: 0, max: PLUS_MINUS_MOST });

const taken = <V extends z.ZodType>(value: V) =>
  z.strictObject({ value, plusMinus: plusMinusSchema.optional(), how: howSchema });

const wanted = (name: string, kind: string) => ({
  error: ({ input }: { readonly input?: unknown }) =>
    notThat(name, `${kind}, or { "value", "plusMinus", "how" }`, input),
});

/** One number of the vocabulary; bare, it counts as measured. */
export function measuredSchema(field: Field) {
  const value = numberSchema(field);
  return z
    .union([value, taken(value)], wanted(field.name, "a number"))
    .meta({ title: field.name, description: field.take })
    .transform((given): Measured => (typeof given === "number" ? { value: given, how: "measured" } : given));
}

/** Angles of the trim-pin holes, lowest hole first, one to twelve; bare, they count as measured. */
export function measuredListSchema(field: Field) {
  const list = z
    .array(numberSchema(field), { error: ({ input }) => notThat(field.name, "a list of numbers", input) })
    .min(1, { error: `${field.name}: give at least one, or leave it out.` })
    .max(MOST_HOLES, { error: `${field.name}: ${MOST_HOLES} holes at most.` })
    .refine((angles) => angles.every((angle, hole) => hole === 0 || angle > angles[hole - 1]!), {
      error: `${field.name}: lowest hole first, every angle greater than the one before.`,
    });
  return z
    .union([list, taken(list)], wanted(field.name, "a list of numbers"))
    .meta({ title: field.name, description: field.take })
    .transform((given): MeasuredList => (Array.isArray(given) ? { value: given, how: "measured" } : given));
}

/** What a table of fields makes of an object's shape: one optional measured number a key. */
export type MeasuredShape<Key extends string> = {
  readonly [K in Key]: z.ZodOptional<ReturnType<typeof measuredSchema>>;
};

/** The optional measured numbers of a table of fields. */
export function measuredShape<Key extends string>(fields: Readonly<Record<Key, Field>>): MeasuredShape<Key> {
  const entries = Object.entries<Field>(fields).map(([key, field]) => [
    key,
    measuredSchema(field).optional(),
  ]);
  return Object.fromEntries(entries) as MeasuredShape<Key>;
}
