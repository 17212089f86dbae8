import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { plainNumber } from "#lib/entry/number-text.ts";
import type { Unit } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Corner, motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

/**
 * What stands in a form's boxes, by name, exactly as typed. A number has three boxes: `shaftLengthMm`,
 * `shaftLengthMm.how` and `shaftLengthMm.plusMinus`; a row of a list is `obstacles.0.label`.
 */
export type Texts = Readonly<Record<string, string>>;

/** The fields of a kind of record, by key, in the trade's order of measuring. */
export const fieldsOf = (kind: Kind): Readonly<Record<string, Field>> =>
  kind === "motor" ? motorFields : sternFields;

const UNIT_AFTER: Readonly<Record<Unit, string>> = { mm: " mm", deg: "°", kg: " kg", kW: " kW", count: "" };

/** A number to the millionth, the finest inch fraction of the tape whole, so written that it is read back as itself. */
const written = (value: number): string => plainNumber(Number(value.toFixed(6)));

/** The same with its unit. */
export const withUnit = (value: number, unit: Unit): string => `${written(value)}${UNIT_AFTER[unit]}`;

interface Taken {
  readonly value: number | readonly number[];
  readonly plusMinus?: number;
  readonly how: string;
}

function takenTexts(key: string, { unit }: Field, { value, plusMinus, how }: Taken): [string, string][] {
  const shown = typeof value === "number" ? withUnit(value, unit) : value.map(written).join(", ");
  return [
    [key, shown],
    [`${key}.how`, how],
    ...(plusMinus === undefined ? [] : [[`${key}.plusMinus`, withUnit(plusMinus, unit)] as [string, string]]),
  ];
}

const PLAIN = [
  "label",
  "notes",
  "shaftClass",
  "steering",
  "fixing",
  "strokes",
  "year",
  "hullForm",
  "drainCount",
];
const YES_NO = ["tillerFolds", "hardChine"];

interface Box {
  readonly label: string;
  readonly group?: string;
  readonly fromMm: Corner;
  readonly toMm: Corner;
}

function boxTexts(list: string, boxes: readonly Box[]): [string, string][] {
  return boxes.flatMap((box, at) => [
    [`${list}.${at}.label`, box.label] as [string, string],
    ...(box.group ? [[`${list}.${at}.group`, box.group] as [string, string]] : []),
    ...(["fromMm", "toMm"] as const).flatMap((end) =>
      box[end].map((mm, axis): [string, string] => [`${list}.${at}.${end}.${axis}`, withUnit(mm, "mm")]),
    ),
  ]);
}

/** A record as the texts of its form, the numbers in millimetres as they are kept. */
export function textsOf<K extends Kind>(kind: K, record: RecordOf<K>): Texts {
  const all = record as unknown as Readonly<Record<string, unknown>>;
  const given = (keys: readonly string[]) => keys.filter((key) => all[key] !== undefined);
  const limits = (all.limits ?? {}) as Readonly<Record<string, number>>;
  return Object.fromEntries([
    ...given(PLAIN).map((key) => [key, String(all[key])]),
    ...given(YES_NO).map((key) => [key, all[key] ? "yes" : "no"]),
    ...given(Object.keys(fieldsOf(kind))).flatMap((key) =>
      takenTexts(key, fieldsOf(kind)[key]!, all[key] as Taken),
    ),
    ...["extraSolids", "obstacles"].flatMap((list) => boxTexts(list, (all[list] ?? []) as readonly Box[])),
    ...Object.entries(limits).map(([key, value]) => [
      `limits.${key}`,
      withUnit(value, key.endsWith("Deg") ? "deg" : "mm"),
    ]),
  ]);
}
