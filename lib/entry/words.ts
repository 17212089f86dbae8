/** Words shared by the messages shown beside a field. */
import type { Unit } from "#lib/quantity/measured.ts";

const UNIT_NAMES: Readonly<Record<Unit, string>> = {
  mm: "mm",
  deg: "degrees",
  kg: "kg",
  kW: "kW",
  count: "",
};

/** A number with its unit for a sentence: `20 mm`, `4 degrees`, `3`. */
export const withUnit = (value: number, unit: Unit): string => `${value} ${UNIT_NAMES[unit]}`.trim();

/** What was given, short enough to be shown back: text in quotation marks, a list or a record by name only. */
export function shown(given: unknown): string {
  if (typeof given === "string")
    return given.length > 40 ? `“${[...given.slice(0, 40)].slice(0, 38).join("")}…”` : `“${given}”`;
  if (typeof given === "number" || typeof given === "boolean") return String(given);
  if (Array.isArray(given)) return `a list of ${given.length}`;
  return typeof given === "object" && given !== null ? "a record" : String(given);
}

/** Why something that is not there, or is not the right kind of thing, was not taken. `wanted` completes "must be …". */
export function notThat(name: string, wanted: string, given: unknown): string {
  if (given === undefined) return `${name} is needed.`;
  if (given === null) return `${name} must be ${wanted}, not null. What is not known is left out altogether.`;
  return `${name} must be ${wanted}; you gave ${shown(given)}.`;
}
