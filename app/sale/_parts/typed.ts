/** What was typed of a motor at a sale, as it stands in the address: nothing of it is kept anywhere else. */
import { readForm } from "#app/_parts/form/read-form.ts";
import type { Texts } from "#app/_parts/form/texts.ts";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { motorFields } from "#lib/rig/motor.ts";

/** Plain facts that are asked at once. */
export const FACTS = ["shaftClass", "steering", "tillerFolds", "strokes"] as const;
/** Numbers that are asked at once: what is on the label, and what one tape tells in a minute. */
export const FIRST = ["powerKw", "shaftLengthMm"] as const;
/** Most characters of one box. */
const MOST = 60;

const NAMES = new Set<string>([
  ...FACTS,
  ...Object.keys(motorFields).flatMap((key) => [key, `${key}.how`, `${key}.plusMinus`]),
  "how",
]);

/** The texts of an address; what is no box of a motor is left out. */
export function textsFrom(query: Query): Texts {
  const entries = Object.entries(query).flatMap(([name, text]) =>
    NAMES.has(name) && typeof text === "string" && text.trim() !== "" ? [[name, text.slice(0, MOST)]] : [],
  );
  return Object.fromEntries(entries);
}

/** The query that asks with these texts and this stern. */
export function saleQuery(stern: string, texts: Texts): string {
  const query = new URLSearchParams(stern ? { stern } : {});
  for (const [name, text] of Object.entries(texts)) if (NAMES.has(name) && text.trim()) query.set(name, text);
  return query.size > 0 ? `?${query}` : "";
}

/** The motor of what can be read of the texts; boxes that cannot be read are left out, and said at the box. */
export function motorOf(texts: Texts): Motor {
  const label = { label: "As typed" };
  const whole = readForm("motor", "as-typed", { ...label, ...texts });
  if (whole.record) return whole.record;
  const bad = new Set(whole.troubles.map(({ name }) => name.split(".")[0]));
  const left = Object.entries(texts).filter(([name]) => !bad.has(name.split(".")[0]));
  const read = readForm("motor", "as-typed", { ...label, ...Object.fromEntries(left) });
  return read.record ?? { id: "as-typed", label: "As typed" };
}

/** Keys of the numbers that were typed, in the order of the vocabulary. */
export const typedKeys = (texts: Texts): string[] =>
  Object.keys(motorFields).filter((key) => texts[key]?.trim());
