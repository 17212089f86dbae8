/** One cell of a table of records: how each kind of value is written, and how it is read back. */
import type { Cell } from "#lib/share/table.ts";

/** What a column holds: `number` and `angles` of the vocabulary, a plain `count`, `yes-no`, `json` (boxes, limits) or `text`. */
export type ColumnKind = "number" | "angles" | "count" | "yes-no" | "json" | "text";

/** Facts that are not plain text. */
const FACTS: Readonly<Record<string, ColumnKind>> = {
  strokes: "count",
  year: "count",
  drainCount: "count",
  tillerFolds: "yes-no",
  hardChine: "yes-no",
  extraSolids: "json",
  obstacles: "json",
  limits: "json",
};

/** What the column of a fact holds. */
export const factKind = (key: string): ColumnKind => (Object.hasOwn(FACTS, key) ? FACTS[key]! : "text");

/** Most characters of a cell; notes, and boxes and limits (twenty boxes with long labels take some 9,000), may have more. */
export const MOST_IN_CELL = 500;
export const MOST_IN_NOTES = 4000;
export const MOST_IN_JSON = 12_000;

/** Most characters of a cell of this column. */
export function mostCharacters(key: string, kind: ColumnKind): number {
  if (kind === "json") return MOST_IN_JSON;
  return key === "notes" ? MOST_IN_NOTES : MOST_IN_CELL;
}

/** A value as a cell; undefined is an empty one. */
export function writeCell(kind: ColumnKind, value: unknown): Cell {
  if (value === undefined) return undefined;
  if (kind === "number" || kind === "count") return Number(value);
  if (kind === "angles") return (value as readonly number[]).join(" ");
  return kind === "json" ? JSON.stringify(value) : String(value);
}

/** A cell read, or why it cannot be. */
export type ReadCell = { readonly value: unknown } | { readonly says: string };

const YES: readonly string[] = ["true", "yes"];
const NO: readonly string[] = ["false", "no"];

/** A number as files write it: digits and a point; in a file with decimal commas, a comma. */
function readNumber(text: string, commas: boolean): ReadCell {
  const plain = text.trim().replace(/^−/, "-");
  if (/^-?\d+(\.\d+)?$/.test(plain) && !(commas && plain.includes("."))) return { value: Number(plain) };
  if (/^-?\d+,\d+$/.test(plain) && commas) return { value: Number(plain.replace(",", ".")) };
  if (/^-?\d+,\d+$/.test(plain))
    return {
      says: "Decimals are written with a point here, for instance 393.7, unless semicolons divide the columns.",
    };
  if (/^-?\d+\.\d+$/.test(plain))
    return {
      says: "This file writes decimals with a comma, so a point in a number could mean thousands. Type for instance 393,7.",
    };
  return {
    says: "This must be a plain number in the unit of the heading, for instance 393.7, without a unit.",
  };
}

function readAngles(text: string, commas: boolean): ReadCell {
  const read = text
    .trim()
    .split(/\s+/)
    .map((piece) => readNumber(piece, commas));
  const wrong = read.find((one) => "says" in one);
  return wrong ?? { value: read.map((one) => ("value" in one ? one.value : undefined)) };
}

function readYesNo(text: string): ReadCell {
  const word = text.trim().toLowerCase();
  if (YES.includes(word)) return { value: true };
  return NO.includes(word) ? { value: false } : { says: "This must be true or false." };
}

function readJsonCell(text: string): ReadCell {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return { says: "This cell must hold JSON, as an exported file shows it." };
  }
}

/** Reads a cell that is not empty. `commas`: the file writes decimals with a comma. */
export function readCell(kind: ColumnKind, text: string, commas: boolean): ReadCell {
  if (kind === "number" || kind === "count") return readNumber(text, commas);
  if (kind === "angles") return readAngles(text, commas);
  if (kind === "yes-no") return readYesNo(text);
  return kind === "json" ? readJsonCell(text) : { value: text };
}
