import type { ZodError } from "zod";
import { rowsOf } from "#app/_parts/form/box-rows.ts";
import { type Reading, readAmount, readField, readList } from "#app/_parts/form/read-field.ts";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { HOWS, usualHow } from "#app/_parts/form/words.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { type LengthUnit, readLength } from "#lib/entry/length-text.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { readCount } from "#lib/entry/quantity-text.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import type { Field } from "#lib/rig/field.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** A form read: the record, where nothing stands in its way, and everything that does. */
export interface FormReading<K extends Kind> {
  readonly record?: RecordOf<K>;
  readonly troubles: readonly Trouble[];
}

/** What a reader of the boxes collects. */
interface Tray {
  readonly texts: Texts;
  readonly usual: LengthUnit | undefined;
  readonly record: Record<string, unknown>;
  readonly troubles: Trouble[];
}

/** Reads a form's texts into a record called `id`. The words of every trouble stand at the box they name; none is thrown. */
export function readForm<K extends Kind>(kind: K, id: string, texts: Texts): FormReading<K> {
  const tray: Tray = { texts, usual: usualUnit(kind, texts), record: { id }, troubles: [] };
  takePlain(kind, tray);
  for (const [key, field] of Object.entries(fieldsOf(kind))) takeNumber(key, field, tray);
  takeBoxes(kind === "motor" ? "extraSolids" : "obstacles", tray);
  if (kind === "stern") takeLimits(tray);
  const schema = kind === "motor" ? motorSchema : sternSchema;
  const parsed = schema.safeParse(tray.record);
  if (!parsed.success) addIssues(kind, parsed.error, tray);
  return tray.troubles.length === 0 && parsed.success
    ? { record: parsed.data as RecordOf<K>, troubles: [] }
    : { troubles: tray.troubles };
}

/** The unit most lengths of the form are written in: its reading is offered first where a text can be read two ways. */
export function usualUnit(kind: Kind, texts: Texts): LengthUnit | undefined {
  const counts = new Map<LengthUnit, number>();
  for (const [key, { unit }] of Object.entries(fieldsOf(kind))) {
    const read =
      unit === "mm" && texts[key] ? readLength(texts[key], undefined, { signed: true }) : undefined;
    if (read?.kind === "length") counts.set(read.unit, (counts.get(read.unit) ?? 0) + 1);
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}

const YES_NO: Readonly<Record<string, boolean>> = { yes: true, no: false };

function takePlain(kind: Kind, { texts, record, troubles }: Tray): void {
  const texted = kind === "motor" ? ["shaftClass", "steering", "fixing"] : ["hullForm"];
  record.label = texts.label ?? "";
  for (const key of [...texted, "notes"]) if (texts[key]?.trim()) record[key] = texts[key];
  for (const key of ["tillerFolds", "hardChine"]) {
    const answer = YES_NO[texts[key] ?? ""];
    if (answer !== undefined) record[key] = answer;
  }
  for (const [key, label] of kind === "motor" ? MOTOR_COUNTS : STERN_COUNTS) {
    const text = texts[key]?.trim();
    if (!text) continue;
    const read = readCount(text);
    if (read.kind === "quantity") record[key] = read.value;
    else troubles.push({ name: key, label, says: read.kind === "refused" ? read.says : "Type digits only." });
  }
}

const MOTOR_COUNTS = [
  ["strokes", "Strokes"],
  ["year", "Year built"],
] as const;
const STERN_COUNTS = [["drainCount", "Number of drains"]] as const;

function takeNumber(key: string, field: Field, { texts, usual, record, troubles }: Tray): void {
  const text = texts[key] ?? "";
  const read = key === "pinAnglesDeg" ? readList(field, text) : readField(field, text, usual);
  const refusal = refusalOf(read);
  if (refusal) troubles.push({ name: key, label: field.name, says: refusal });
  if (read.kind !== "value") return;
  const how = HOWS.find((each) => each === texts[`${key}.how`]) ?? usualHow(field.unit, texts.how);
  record[key] = { value: read.value, how };
  const spreadText = texts[`${key}.plusMinus`]?.trim();
  if (!spreadText) return;
  const spread = readAmount(field.unit, spreadText);
  if (spread.kind === "value") record[key] = { value: read.value, plusMinus: spread.value, how };
  else
    troubles.push({
      name: `${key}.plusMinus`,
      label: `${field.name}, plus or minus`,
      says: refusalOf(spread) ?? "Leave it empty for the usual.",
    });
}

function refusalOf(read: Reading): string | undefined {
  if (read.kind === "refused") return read.says;
  if (read.kind !== "ask") return undefined;
  const ways = read.readings.map(({ says }) => says);
  return ways.length === 1
    ? `Is it ${ways[0]}? Choose it, or write the unit.`
    : `It can be read ${ways.length} ways: ${ways.join("; ")}. Choose one, or write the unit.`;
}

function takeBoxes(list: "extraSolids" | "obstacles", { texts, record, troubles }: Tray): void {
  const rows = rowsOf(texts, list);
  if (rows.length === 0) return;
  const corner = (row: number, end: string) =>
    [0, 1, 2].map((axis) => {
      const name = `${list}.${row}.${end}.${axis}`;
      const read = readAmount("mm", texts[name] ?? "", { signed: true });
      if (read.kind !== "value")
        troubles.push({ name, label: "A corner", says: refusalOf(read) ?? "Type a length, or 0." });
      return read.kind === "value" ? read.value : 0;
    });
  record[list] = rows.map((row) => ({
    label: texts[`${list}.${row}.label`] ?? "",
    ...(list === "extraSolids" && { group: texts[`${list}.${row}.group`] || "tilting" }),
    fromMm: corner(row, "fromMm"),
    toMm: corner(row, "toMm"),
  }));
}

function takeLimits({ texts, record, troubles }: Tray): void {
  const limits: Record<string, number> = {};
  for (const [key, { unit, what }] of Object.entries<Standard>(practiceLimits)) {
    const text = texts[`limits.${key}`]?.trim();
    if (!text) continue;
    const read = readAmount(unit === "deg" ? "deg" : "mm", text, { signed: true });
    if (read.kind === "value") limits[key] = read.value;
    else troubles.push({ name: `limits.${key}`, label: what, says: refusalOf(read) ?? "Leave it empty." });
  }
  if (Object.keys(limits).length > 0) record.limits = limits;
}

/** What the whole record cannot be, at the box of the number it is shown at; a box that has its trouble keeps that one. */
function addIssues(kind: Kind, error: ZodError, { troubles }: Tray): void {
  for (const { path, message } of error.issues) {
    const name = path.filter((step) => step !== "value").join(".");
    if (troubles.some((trouble) => trouble.name === name)) continue;
    const field = fieldsOf(kind)[String(path[0])];
    troubles.push({ name, label: field?.name ?? PLAIN_NAMES[name] ?? "An entry", says: message });
  }
}

const PLAIN_NAMES: Readonly<Record<string, string>> = {
  label: "Label",
  notes: "Notes",
  year: "Year built",
  drainCount: "Number of drains",
};
