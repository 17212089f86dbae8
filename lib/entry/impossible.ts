/**
 * What no motor and no stern can be, whatever else is true of it. Only true impossibilities: odd
 * records are taken as they come, incomplete ones too.
 */
import type { Measured } from "#lib/quantity/measured.ts";

/** An impossibility: the field it is shown at and the words. */
export interface Impossible {
  readonly at: string;
  readonly says: string;
}

/** The plain value of a key, or undefined where it is not known. */
export type Value<Key extends string> = (key: Key) => number | undefined;

/** Reads plain values off a record. */
export const valuesOf =
  <Key extends string>(record: { readonly [K in Key]?: Measured }): Value<Key> =>
  (key) =>
    record[key]?.value;

/** A rule between two numbers: where both are known and `broken`, `says` is shown at the first. */
export function between<Key extends string>(
  value: Value<Key>,
  [first, second]: readonly [Key, Key],
  broken: (a: number, b: number) => boolean,
  says: (a: number, b: number) => string,
): Impossible[] {
  const a = value(first);
  const b = value(second);
  return a !== undefined && b !== undefined && broken(a, b) ? [{ at: first, says: says(a, b) }] : [];
}

interface Issues {
  readonly addIssue: (issue: {
    code: "custom";
    path: (string | number)[];
    message: string;
    params: object;
  }) => void;
}

/** Adds an impossibility at a place of what is being parsed. */
export const addImpossible = (issues: Issues, path: (string | number)[], message: string): void =>
  issues.addIssue({ code: "custom", path, message, params: { kind: "impossible" } });

/** The record without keys that say nothing: undefined ones, and empty notes. */
const settled = <T extends { readonly notes?: string | undefined }>(record: T): T =>
  Object.fromEntries(
    Object.entries(record).filter(
      ([key, value]) => value !== undefined && !(key === "notes" && value === ""),
    ),
  ) as T;

/**
 * The last step of parsing a record, taken only when every field stands by itself: shows the
 * impossibilities found by `find`, each at its field, and drops keys that say nothing.
 */
export const asAWhole =
  <R>(find: (record: R) => readonly Impossible[]) =>
  <T extends R & { readonly notes?: string | undefined }>(record: T, issues: Issues): T => {
    for (const { at, says } of find(record)) addImpossible(issues, [at], says);
    return settled(record);
  };
