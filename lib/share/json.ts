/** Motors and sterns as JSON: one record as the API takes it, or all of them in one file. */
import { problems } from "#lib/entry/problem.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { fileText } from "#lib/share/file-text.ts";
import { type ImportError, type Imported, MOST_ERRORS, refusedFile } from "#lib/share/imported.ts";
import { type KindName, kinds, type Records } from "#lib/share/kinds.ts";
import { MOST_ROWS } from "#lib/share/table.ts";

/** All records of a house in one file. */
export interface Collection {
  readonly motors: readonly Motor[];
  readonly sterns: readonly Stern[];
}

/** One record as JSON, as `POST /api/motors` or the fit command takes it. */
export const writeRecord = (record: Motor | Stern): string => `${JSON.stringify(record, null, 2)}\n`;

/** All records as one JSON file. */
export const writeCollection = ({ motors, sterns }: Collection): string =>
  `${JSON.stringify({ motors, sterns }, null, 2)}\n`;

type Loose = Readonly<Record<string, unknown>>;
const isLoose = (given: unknown): given is Loose =>
  typeof given === "object" && given !== null && !Array.isArray(given);
const isCollection = (given: unknown): given is Loose =>
  isLoose(given) &&
  (Object.hasOwn(given, "motors") || Object.hasOwn(given, "sterns")) &&
  !Object.hasOwn(given, "id");

/** The value of a JSON file, or why it cannot be read. */
function parse(input: string | Uint8Array): { readonly value: unknown } | { readonly says: string } {
  const file = fileText(input);
  if ("says" in file) return file;
  try {
    return { value: JSON.parse(file.text) as unknown };
  } catch (error) {
    const where = /position (\d+)/.exec(String(error))?.[1];
    const line =
      where === undefined ? "" : ` near line ${file.text.slice(0, Number(where)).split("\n").length}`;
    return { says: `The file is not JSON: it cannot be read${line}.` };
  }
}

function readList<K extends KindName>(kind: K, list: readonly unknown[]): Imported<Records[K]> {
  if (list.length > MOST_ROWS) return refusedFile(`There are more than ${MOST_ROWS} records.`);
  const records: Records[K][] = [];
  const errors: ImportError[] = [];
  const seen = new Map<string, number>();
  list.forEach((given, at) => {
    const row = at + 1;
    const parsed = kinds[kind].schema.safeParse(given);
    if (!parsed.success)
      errors.push(
        ...problems(parsed.error).map(({ pointer, detail }) => ({ row, column: pointer, says: detail })),
      );
    else if (seen.has(parsed.data.id))
      errors.push({ row, column: "/id", says: `Record ${seen.get(parsed.data.id)} has the same id.` });
    else {
      seen.set(parsed.data.id, row);
      records.push(parsed.data);
    }
  });
  return { records, errors: errors.slice(0, MOST_ERRORS) };
}

/** The list of one kind in what was parsed: a collection's own, a bare list, or a single record. */
function listOf(kind: KindName, value: unknown): readonly unknown[] | null {
  const list = isCollection(value) ? (value[`${kind}s`] ?? []) : value;
  if (Array.isArray(list)) return list;
  return isCollection(value) || !isLoose(list) ? null : [list];
}

/** Strangers beside the two lists of a collection. */
const strangers = (value: unknown): string[] =>
  isCollection(value) ? Object.keys(value).filter((key) => key !== "motors" && key !== "sterns") : [];

/**
 * Reads the motors or the sterns of a JSON file: a single record, a list of them, or a whole collection.
 * A record with a fault is told, with its number and the place in it, and left out. Never throws.
 */
export function readJson<K extends KindName>(kind: K, input: string | Uint8Array): Imported<Records[K]> {
  const parsed = parse(input);
  if ("says" in parsed) return refusedFile(parsed.says);
  const [stranger] = strangers(parsed.value);
  if (stranger !== undefined)
    return refusedFile("A file of all records has two lists, motors and sterns, and nothing else.");
  const list = listOf(kind, parsed.value);
  return list === null
    ? refusedFile(`The file must hold a ${kind} or a list of ${kind}s.`)
    : readList(kind, list);
}

/** Reads both lists of a collection. Never throws. */
export const readCollection = (
  input: string | Uint8Array,
): { readonly motors: Imported<Motor>; readonly sterns: Imported<Stern> } => {
  const parsed = parse(input);
  if ("value" in parsed && !isCollection(parsed.value)) {
    const refused = refusedFile<never>("A file of all records has two lists, motors and sterns.");
    return { motors: refused, sterns: refused };
  }
  return { motors: readJson("motor", input), sterns: readJson("stern", input) };
};
