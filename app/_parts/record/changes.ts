import { fieldsOf, type Texts, textsOf } from "#app/_parts/form/texts.ts";
import { choices, howWords } from "#app/_parts/form/words.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { How } from "#lib/quantity/measured.ts";

/** One entry that differs between two versions, in words. */
export interface Change {
  readonly name: string;
  readonly was: string;
  readonly now: string;
}

/** What differs between two versions of a record, entry by entry, in the order of the form. */
export function changesBetween<K extends Kind>(
  kind: K,
  before: RecordOf<K> | undefined,
  after: RecordOf<K>,
): readonly Change[] {
  const [was, now] = [before ? textsOf(kind, before) : {}, textsOf(kind, after)];
  const names = [...new Set([...Object.keys(was), ...Object.keys(now)])];
  const entries = [...new Set(names.map((name) => name.replace(/\.(how|plusMinus)$/, "")))];
  return entries
    .map((name) => ({ name: nameOf(kind, name), was: shown(was, name), now: shown(now, name) }))
    .filter((change) => change.was !== change.now);
}

/** An entry with its spread and source, as one text. */
function shown(texts: Texts, name: string): string {
  const text = texts[name];
  if (text === undefined) return "not known";
  const [spread, how] = [texts[`${name}.plusMinus`], texts[`${name}.how`] as How | undefined];
  const chosen = choices[name]?.choices.find(([value]) => value === text)?.[1];
  return [chosen ?? text, spread && `± ${spread}`, how && `(${howWords[how].short.toLowerCase()})`]
    .filter(Boolean)
    .join(" ");
}

const PLAIN: Readonly<Record<string, string>> = {
  label: "Label",
  notes: "Notes",
  year: "Year built",
  drainCount: "Number of drains",
};

function nameOf(kind: Kind, name: string): string {
  const field = fieldsOf(kind)[name]?.name ?? choices[name]?.label ?? PLAIN[name];
  if (field) return field;
  const [list, row = "", ...rest] = name.split(".");
  return list === "limits" ? `Own limit: ${row}` : `Thing ${Number(row) + 1}, ${rest.join(" ")}`;
}
