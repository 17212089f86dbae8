import { type Agreement, agreement, type Part, type Taken as Taking } from "#lib/db/agreement.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { Observation } from "#lib/db/records.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

const FIELDS: { [K in Kind]: Readonly<Record<string, Field>> } = { motor: motorFields, stern: sternFields };

/** One number of a record, with its key. */
export type Taken = readonly [key: string, taken: Measured | MeasuredList];

/** The numbers of a record that differ from an earlier version of it: each is a new taking. A number taken away is none. */
export function newTakings<K extends Kind>(kind: K, record: RecordOf<K>, before?: RecordOf<K>): Taken[] {
  return numbersOf(kind, record).filter(([key, taken]) => !same(taken, before && numberOf(before, key)));
}

function numbersOf<K extends Kind>(kind: K, record: RecordOf<K>): Taken[] {
  return Object.keys(FIELDS[kind]).flatMap((key) => {
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

/** One number of a record with everything ever taken of it. */
export interface NumberTaken {
  readonly key: string;
  /** In the order of taking, each with the part it has in the number as it stands. */
  readonly takings: readonly (Observation & { readonly part: Part })[];
  /** Absent where the record has no such number any more. */
  readonly agreement?: Agreement;
}

/** Takings since the number was last corrected by an edit, which begins afresh. */
export const sinceCorrected = <T extends Pick<Observation, "again">>(takings: readonly T[]): readonly T[] =>
  takings.slice(
    Math.max(
      0,
      takings.findLastIndex(({ again }) => !again),
    ),
  );

/** Every number that was ever taken of a record, in the trade's order of measuring. */
export function numbersTaken<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  observations: readonly Observation[],
): NumberTaken[] {
  return Object.keys(FIELDS[kind]).flatMap((key) => {
    const takings = observations.filter((each) => each.key === key);
    return takings.length > 0 ? [numberTaken(kind, key, takings, numberOf(record, key) !== undefined)] : [];
  });
}

function numberTaken(
  kind: Kind,
  key: string,
  takings: readonly Observation[],
  standing: boolean,
): NumberTaken {
  const current = standing ? sinceCorrected(takings) : [];
  const before = takings.length - current.length;
  const agreed = standing ? agreementOf(kind, key, current) : undefined;
  const partOf = (at: number): Part => agreed?.parts[at - before] ?? "corrected";
  const takingsWithPart = takings.map((taking, at) => ({ ...taking, part: partOf(at) }));
  return { key, takings: takingsWithPart, ...(agreed && { agreement: agreed }) };
}

/** What takings of one number of a kind of record come to. */
export const agreementOf = (kind: Kind, key: string, takings: readonly Taking[]): Agreement =>
  agreement(FIELDS[kind][key]!.unit, takings);
