import { type Reading, readField } from "#app/_parts/form/read-field.ts";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { HOWS, usualHow } from "#app/_parts/form/words.ts";
import { TAKING } from "#app/_parts/takings/taking-state.ts";
import type { Kind } from "#lib/db/kind.ts";
import { type ReadKey, readKey } from "#lib/entry/form-field.ts";
import { type TakingSent, takingSchema } from "#lib/entry/taking.ts";
import type { Field } from "#lib/rig/field.ts";

/** One taking read: the taking where nothing stands in its way, what its box comes to, and everything that does not. */
export interface TakingRead {
  readonly taking?: TakingSent;
  readonly reading: Reading;
  readonly troubles: readonly Trouble[];
}

/** Reads the texts of the form for one number. The words of every trouble stand at the box they name. */
export function readTaking(kind: Kind, key: string, texts: Texts): TakingRead {
  const field = Object.hasOwn(fieldsOf(kind), key) ? fieldsOf(kind)[key] : undefined;
  if (!field) {
    return {
      reading: { kind: "empty" },
      troubles: [{ name: "key", label: "Number", says: "Choose the number." }],
    };
  }
  const text = texts[TAKING] ?? "";
  const how = HOWS.find((each) => each === texts[`${TAKING}.how`]) ?? usualHow(field.unit, undefined);
  const typed = { text, how, plusMinus: texts[`${TAKING}.plusMinus`] ?? "" };
  const read = likely(readKey(TAKING, field, typed, "mm", key === "pinAnglesDeg"), field);
  const troubles = read.number ? [] : troublesOf(read, field);
  const parsed = takingSchema(fieldsOf(kind)).safeParse({
    key,
    ...(read.number ?? { value: undefined, how }),
    raw: text.trim().slice(0, 200),
    comment: texts.comment ?? "",
  });
  if (parsed.success) return { taking: parsed.data, reading: readingOf(read, field, text), troubles };
  const more = parsed.error.issues.map(({ path, message }) => at(path, message, field));
  const all = read.number ? more : [...troubles, ...more.filter(({ name }) => name === "comment")];
  const beyond = all.find(({ name }) => name === TAKING)?.says;
  const reading = readingOf(read, field, text);
  return {
    reading: beyond && reading.kind === "value" ? { kind: "refused", says: beyond } : reading,
    troubles: all,
  };
}

/** Of the ways a text can be read, those this very number could have; all of them where it could have none. */
function likely(read: ReadKey, { min, max }: Field): ReadKey {
  const asks = read.asks.map((ask) => {
    const left = ask.readings.filter((one) => {
      const value = "mm" in one ? one.mm : one.value;
      return value >= min && value <= max;
    });
    return ask.field === TAKING && left.length > 0 ? { ...ask, readings: left } : ask;
  });
  return { ...read, asks };
}

function at(path: readonly PropertyKey[], says: string, { name }: Field): Trouble {
  if (path[0] === "plusMinus") return { name: `${TAKING}.plusMinus`, label: `${name}, plus or minus`, says };
  return path[0] === "comment"
    ? { name: "comment", label: "Comment", says }
    : { name: TAKING, label: name, says };
}

function troublesOf({ errors, asks }: ReadKey, { name }: Field): Trouble[] {
  const label = (box: string) => (box === TAKING ? name : `${name}, plus or minus`);
  return [
    ...errors.map(({ field, says }) => ({ name: field, label: label(field), says })),
    ...asks.map(({ field, readings }) => ({
      name: field,
      label: label(field),
      says: `Is it ${readings.map(({ says }) => says).join(", or ")}? Choose one, or write the unit.`,
    })),
  ];
}

/** What the box of the number comes to, whatever stands in its other boxes. */
function readingOf({ number, errors, asks }: ReadKey, field: Field, text: string): Reading {
  if (text.trim() === "") return { kind: "empty" };
  const error = errors.find((each) => each.field === TAKING);
  if (error) return { kind: "refused", says: error.says };
  const ask = asks.find((each) => each.field === TAKING);
  if (ask) {
    const readings = ask.readings.map((one) => ({ ...one, value: "mm" in one ? one.mm : one.value }));
    return { kind: "ask", readings };
  }
  if (number && typeof number.value !== "number") {
    const angles = number.value.map((angle) => `${angle}°`).join(", ");
    return { kind: "value", value: number.value, echo: `${number.value.length} holes: ${angles}` };
  }
  return readField(field, text, "mm");
}
