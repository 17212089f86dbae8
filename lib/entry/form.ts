/**
 * A typed form made into a record, and a record made into the texts of a form. The same code answers in
 * the browser while a person types and on the server when the form is sent.
 */
import type { z } from "zod";
import { readFacts } from "#lib/entry/form-fact.ts";
import { type FieldAsk, type FieldError, readKey, type TypedNumber } from "#lib/entry/form-field.ts";
import type { LengthUnit } from "#lib/entry/length-text.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";

/** The numbers of a form by their key. */
export type TypedForm = Readonly<Record<string, TypedNumber>>;
/** Everything else of a form: id, label, notes and facts, mostly as texts; an empty text is a fact not known. */
export type TypedKinds = Readonly<Record<string, unknown>>;

/** The record a form makes, with the texts of its numbers as typed; or all that is wrong or must be asked. */
export type FormResult<Kept> =
  | { readonly ok: true; readonly record: Kept; readonly raw: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly asks: readonly FieldAsk[] };

interface Kind<Kept> {
  readonly fields: Readonly<Record<string, Field>>;
  readonly schema: z.ZodType<Kept>;
}

const filled = (typed: TypedForm): [string, TypedNumber][] =>
  Object.entries(typed).filter(([, one]) => typeof one?.text === "string" && one.text.trim() !== "");

/** The field of a form that a pointer of a problem belongs to: `/seatMm/value` is `seatMm`, `/obstacles/0/label` is `obstacles.0.label`. */
function fieldAt(pointer: string): string {
  const [key = "", ...rest] = pointer.slice(1).split("/");
  if (rest[0] === "value" || rest[0] === "how") return key;
  return [key, ...rest].join(".");
}

function readForm<Kept>(
  kind: Kind<Kept>,
  typed: TypedForm,
  kinds: TypedKinds,
  usual: LengthUnit,
): FormResult<Kept> {
  const known = filled(typed).filter(([key]) => Object.hasOwn(kind.fields, key));
  const strange = filled(typed).filter(([key]) => !Object.hasOwn(kind.fields, key));
  const numbers = known.map(
    ([key, one]) => [key, readKey(key, kind.fields[key]!, one, usual, key === "pinAnglesDeg")] as const,
  );
  const facts = readFacts(kinds, usual);
  const errors = [...numbers.flatMap(([, read]) => read.errors), ...facts.errors];
  const asks = [...numbers.flatMap(([, read]) => read.asks), ...facts.asks];
  const record = Object.fromEntries([
    ...Object.entries(facts.facts),
    ...numbers.flatMap(([key, { number }]) => (number === undefined ? [] : [[key, number] as const])),
    ...strange.map(([key, { text }]) => [key, text] as const),
  ]);
  const parsed = kind.schema.safeParse(record);
  if (parsed.success && errors.length + asks.length === 0)
    return { ok: true, record: parsed.data, raw: rawOf(known) };
  const told = new Set([...errors, ...asks].map(({ field }) => field));
  const more = parsed.success
    ? []
    : problems(parsed.error).map(({ pointer, detail }) => ({ field: fieldAt(pointer), says: detail }));
  return { ok: false, errors: [...errors, ...more.filter(({ field }) => !told.has(field))], asks };
}

const rawOf = (known: readonly (readonly [string, TypedNumber])[]): Record<string, string> =>
  Object.fromEntries(
    known.flatMap(([key, { text, plusMinus = "" }]) =>
      plusMinus.trim() === ""
        ? [[key, text]]
        : [
            [key, text],
            [`${key}.plusMinus`, plusMinus],
          ],
    ),
  );

/** Reads a motor's form. `usual` is the unit its lengths are usually typed in: questions put it first. */
export const readMotorForm = (
  typed: TypedForm,
  kinds: TypedKinds,
  usual: LengthUnit = "mm",
): FormResult<Motor> => readForm({ fields: motorFields, schema: motorSchema }, typed, kinds, usual);

/** Reads a stern's form. `usual` is the unit its lengths are usually typed in: questions put it first. */
export const readSternForm = (
  typed: TypedForm,
  kinds: TypedKinds,
  usual: LengthUnit = "mm",
): FormResult<Stern> => readForm({ fields: sternFields, schema: sternSchema }, typed, kinds, usual);
