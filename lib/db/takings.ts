import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

const KEYS: { [K in Kind]: readonly string[] } = {
  motor: Object.keys(motorFields),
  stern: Object.keys(sternFields),
};

/** One number of a record, with its key. */
export type Taken = readonly [key: string, taken: Measured | MeasuredList];

/** The numbers of a record that differ from an earlier version of it: each is a new taking. A number taken away is none. */
export function newTakings<K extends Kind>(kind: K, record: RecordOf<K>, before?: RecordOf<K>): Taken[] {
  return numbersOf(kind, record).filter(([key, taken]) => !same(taken, before && numberOf(before, key)));
}

function numbersOf<K extends Kind>(kind: K, record: RecordOf<K>): Taken[] {
  return KEYS[kind].flatMap((key) => {
    const taken = numberOf(record, key);
    return taken ? [[key, taken] as const] : [];
  });
}

const numberOf = (record: object, key: string): Measured | MeasuredList | undefined =>
  Reflect.get(record, key);

function same(a: Measured | MeasuredList, b: Measured | MeasuredList | undefined): boolean {
  if (!b || a.how !== b.how || a.plusMinus !== b.plusMinus) return false;
  return JSON.stringify(a.value) === JSON.stringify(b.value);
}
