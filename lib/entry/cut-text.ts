/** The form of a cut plan as people fill it in: lengths as they write them, every fault and question at its field. */
import type { z } from "zod";
import {
  AS_BUILT_KEYS,
  asBuiltSchema,
  type CutChoicesSent,
  cutChoicesSchema,
} from "#lib/entry/cut-choices.ts";
import { cutFields, cutWords } from "#lib/entry/cut-fields.ts";
import { readFacts } from "#lib/entry/form-fact.ts";
import { type FieldAsk, type FieldError, readText } from "#lib/entry/form-field.ts";
import type { LengthUnit } from "#lib/entry/length-text.ts";
import { problems } from "#lib/entry/problem.ts";
import { sternFields } from "#lib/rig/stern.ts";

/** What stands in the boxes of a form, by name: `soleThicknessMm`, `posts.0.label`, `posts.0.fromMm.2`. */
export type CutTexts = Readonly<Record<string, string>>;

/** A form read: what it says, or everything that stands in the way. */
export type CutReading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly errors: readonly FieldError[]; readonly asks: readonly FieldAsk[] };

/** How texts are read: the unit lengths are usually typed in, and whether a bare number counts in the key's own unit. */
export interface CutTyping {
  readonly usual: LengthUnit;
  /** For programs: the key says the unit. A person is asked. */
  readonly bare?: boolean;
}

const LISTS = ["posts", "frames"] as const;
const MOST_ROWS = 20;
const BARE = /^[-+−]?\d+(\.\d+)?$/;

interface Tray {
  readonly found: Record<string, unknown>;
  readonly errors: FieldError[];
  readonly asks: FieldAsk[];
}

function takeNumber(
  key: string,
  { unit, min }: { readonly unit: "mm" | "deg"; readonly min: number },
  text: string,
  { usual, bare }: CutTyping,
  tray: Tray,
): void {
  const typed = text.trim();
  if (typed === "") return;
  if (bare && BARE.test(typed)) {
    tray.found[key] = Number(typed.replace("−", "-"));
    return;
  }
  const read = readText(key, unit, typed, usual, min < 0);
  if (read.kind === "value") tray.found[key] = read.value;
  else if (read.kind === "error") tray.errors.push({ field: key, says: read.says });
  else tray.asks.push({ field: key, readings: read.readings });
}

/** Rows of a list that have anything typed in them, by their number. */
function rowsOf(texts: CutTexts, list: string): number[] {
  const rows = Object.entries(texts)
    .filter(([name, text]) => name.startsWith(`${list}.`) && text.trim() !== "")
    .map(([name]) => Number(name.split(".")[1]))
    .filter((row) => Number.isInteger(row) && row >= 0 && row < MOST_ROWS);
  return [...new Set(rows)].sort((a, b) => a - b);
}

/** Boxes of a list, read as a stern's are; faults are called by the row they stand in. */
function takeBoxes(
  list: (typeof LISTS)[number],
  texts: CutTexts,
  { usual, bare }: CutTyping,
  tray: Tray,
): void {
  const rows = rowsOf(texts, list);
  if (rows.length === 0) return;
  const typed = (name: string) => {
    const text = (texts[name] ?? "").trim();
    return bare && BARE.test(text) ? `${text} mm` : text;
  };
  const boxes = rows.map((row) => ({
    label: texts[`${list}.${row}.label`] ?? "",
    ...Object.fromEntries(
      ["fromMm", "toMm"].map((end) => [end, [0, 1, 2].map((axis) => typed(`${list}.${row}.${end}.${axis}`))]),
    ),
  }));
  const read = readFacts({ obstacles: boxes }, usual);
  const here = (field: string) =>
    field.replace(/^obstacles\.(\d+)/, (_, at) => `${list}.${rows[Number(at)]}`);
  tray.errors.push(...read.errors.map(({ field, says }) => ({ field: here(field), says })));
  tray.asks.push(...read.asks.map(({ field, readings }) => ({ field: here(field), readings })));
  tray.found[list] = read.facts.obstacles;
}

/** The field a problem's pointer stands for, rows numbered as they were typed. */
function fieldAt(pointer: string, texts: CutTexts): string {
  const [key = "", at, ...rest] = pointer.slice(1).split("/");
  const list = LISTS.find((one) => one === key);
  if (!list || at === undefined) return key;
  return [list, rowsOf(texts, list)[Number(at)] ?? at, ...rest].join(".");
}

function settled<T>(schema: z.ZodType<T>, tray: Tray, texts: CutTexts): CutReading<T> {
  const parsed = schema.safeParse(tray.found);
  if (parsed.success && tray.errors.length + tray.asks.length === 0) return { ok: true, value: parsed.data };
  const told = [...tray.errors, ...tray.asks].map(({ field }) => field);
  const more = parsed.success
    ? []
    : problems(parsed.error)
        .map(({ pointer, detail }) => ({ field: fieldAt(pointer, texts), says: detail }))
        .filter(({ field }) => !told.some((one) => one === field || one.startsWith(`${field}.`)));
  return { ok: false, errors: [...tray.errors, ...more], asks: tray.asks };
}

/** Reads the choices of a cut plan. `lengths` is the system marks are made in. Names that are no choice are passed over. */
export function readCutChoices(
  texts: CutTexts,
  lengths: "mm" | "in",
  typing: CutTyping,
): CutReading<CutChoicesSent> {
  const tray: Tray = { found: { lengths }, errors: [], asks: [] };
  for (const key of Object.keys(cutWords)) if (texts[key]?.trim()) tray.found[key] = texts[key].trim();
  for (const [key, field] of Object.entries(cutFields))
    takeNumber(key, field, texts[key] ?? "", typing, tray);
  for (const list of LISTS) takeBoxes(list, texts, typing, tray);
  return settled(cutChoicesSchema, tray, texts);
}

/** Reads what was measured after the saw. */
export function readAsBuilt(texts: CutTexts, typing: CutTyping) {
  const tray: Tray = { found: {}, errors: [], asks: [] };
  for (const key of AS_BUILT_KEYS) takeNumber(key, sternFields[key], texts[key] ?? "", typing, tray);
  return settled(asBuiltSchema, tray, texts);
}

/** Whether a name of a query is a choice of a cut plan. */
export const isCutName = (name: string): boolean =>
  Object.hasOwn(cutFields, name) ||
  Object.hasOwn(cutWords, name) ||
  /^(posts|frames)\.1?\d\.(label|(fromMm|toMm)\.[0-2])$/.test(name);
