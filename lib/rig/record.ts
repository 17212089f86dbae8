/**
 * From a record of measured numbers to the plain values the engine works with, and to the spread of each.
 */
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import { defaultHalfWidth, type Tape, USUAL_TAPE } from "#lib/quantity/uncertainty.ts";
import type { Field } from "#lib/rig/field.ts";
import { type Motor, type MotorValues, motorFields } from "#lib/rig/motor.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { type Stern, type SternValues, sternFields } from "#lib/rig/stern.ts";

type Entry = Measured | MeasuredList;
const fields: Readonly<Record<string, Field>> = { ...motorFields, ...sternFields };

/** What a key of either record is called and how it is taken. */
export const fieldOf = (key: RigKey): Field => fields[key]!;

/** Kept beside each record, which never changes once read: a long list asks for the same ones again and again. */
const bared = new WeakMap<Motor | Stern, Record<string, unknown>>();

function bare(record: Motor | Stern): Record<string, unknown> {
  let values = bared.get(record);
  if (!values) {
    values = {};
    for (const [key, entry] of Object.entries(record)) {
      values[key] = key in fields ? (entry as Entry).value : entry;
    }
    bared.set(record, values);
  }
  return values;
}

/** A motor's values without their spread. */
export const motorValues = (motor: Motor): MotorValues => bare(motor) as MotorValues;
/** A stern's values without their spread. */
export const sternValues = (stern: Stern): SternValues => bare(stern) as SternValues;

/** A number of a pairing as it was taken: value (a list for the pin angles), half-width in force, and how. */
export interface Taken {
  readonly value: number | readonly number[];
  readonly halfWidth: number;
  readonly how: Entry["how"];
  /** True where the half-width follows from `how` because nobody gave one. */
  readonly byDefault: boolean;
  /** True where nobody took it on this motor at all: it comes from like motors. */
  readonly fromLike: boolean;
}

/** Looks a key up in both records; undefined where nobody took it. One half-width serves the whole list of pin angles. */
export function takenOf(
  motor: Motor,
  stern: Stern,
  tape: Tape = USUAL_TAPE,
  fromLike: ReadonlySet<string> = new Set(),
): (key: RigKey) => Taken | undefined {
  type Entries = Readonly<Record<string, Entry | undefined>>;
  const [its, hers] = [motor as unknown as Entries, stern as unknown as Entries];
  return (key) => {
    const entry = its[key] ?? hers[key];
    if (!entry) return undefined;
    const { value, how, plusMinus } = entry;
    const size = Array.isArray(value) ? Math.max(...value.map(Math.abs)) : (value as number);
    return {
      value,
      how,
      halfWidth: plusMinus ?? defaultHalfWidth(size, fieldOf(key).unit, how, tape),
      byDefault: plusMinus === undefined,
      fromLike: fromLike.has(key),
    };
  };
}
