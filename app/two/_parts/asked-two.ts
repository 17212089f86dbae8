import { readText } from "#lib/entry/form-field.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { OFFSET } from "#lib/entry/two.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

export type TwoQuery = Readonly<Record<string, string | string[] | undefined>>;

/** One of the two as the address has it: which motor, and where it sits as it was typed. */
export interface AskedMotor {
  readonly id: string;
  readonly text: string;
  /** Where it sits, plus = to port, mm; absent where that cannot be read. */
  readonly offsetMm?: number;
  readonly error?: string;
}

export interface AskedTwo {
  readonly lengths: LengthSystem;
  readonly motors: readonly [AskedMotor, AskedMotor];
}

const one = (value: string | string[] | undefined): string =>
  typeof value === "string" ? value.slice(0, 200) : "";

/** Two motors and their places, from `motors=a,b&offsets=-300,300` or from the form's own fields. */
export function askedTwo(query: TwoQuery): AskedTwo {
  const lengths = query.units === "in" ? "in" : "mm";
  const ids = one(query.motors).split(",");
  const places = one(query.offsets).split(",");
  const motor = (i: 0 | 1, name: string): AskedMotor => {
    const id = one(query[name]) || (ids[i] ?? "").trim();
    return { id, ...placeOf(one(query[`${name}At`]) || (places[i] ?? "").trim(), lengths) };
  };
  return { lengths, motors: [motor(0, "first"), motor(1, "second")] };
}

/** Reads a place: a bare number is in millimetres or, for readers of inches, in inches. */
function placeOf(text: string, lengths: LengthSystem): Omit<AskedMotor, "id"> {
  if (text.trim() === "") return { text };
  const read = readText("place", "mm", text, lengths, true);
  const sure = read.kind === "ask" ? readText("place", "mm", `${text} ${lengths}`, lengths, true) : read;
  if (sure.kind === "error") return { text, error: sure.says };
  if (sure.kind === "ask") return { text, error: "Say the unit: mm or in." };
  if (sure.value < OFFSET.min || sure.value > OFFSET.max) {
    return {
      text,
      error: `No boat is so wide: from ${formatLength(OFFSET.min, lengths)} to ${formatLength(OFFSET.max, lengths)}.`,
    };
  }
  return { text, offsetMm: sure.value };
}
