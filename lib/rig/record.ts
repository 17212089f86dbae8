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

function bare(record: Motor | Stern): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(record).map(([key, entry]) => [key, key in fields ? (entry as Entry).value : entry]),
  );
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
  const entries = { ...stern, ...motor } as unknown as Readonly<Record<string, Entry | undefined>>;
  return (key) => {
    const entry = entries[key];
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
