import type { Motor, Strokes } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What of a record is searched, weightiest first. */
export interface Searchable {
  readonly label: string;
  /** What the record is, in the words people type: "long shaft", "four-stroke", "7.5 kW", "vee". */
  readonly facts: string;
  readonly notes: string;
}

const STROKES_SAID: Readonly<Record<Strokes, string>> = {
  0: "electric",
  2: "2-stroke two-stroke",
  4: "4-stroke four-stroke",
};

/** The searchable words of a motor or a stern. */
export function searchable(record: Motor | Stern): Searchable {
  const motor: Partial<Motor> = record;
  const stern: Partial<Stern> = record;
  const facts = [
    motor.shaftClass && `${motor.shaftClass} shaft`,
    motor.steering,
    motor.strokes !== undefined && STROKES_SAID[motor.strokes],
    motor.year,
    motor.powerKw && `${motor.powerKw.value} kW`,
    motor.massKg && `${motor.massKg.value} kg`,
    stern.hullForm,
    stern.hardChine && "hard chine",
    stern.lengthOverallMm && `${stern.lengthOverallMm.value / 1000} m`,
  ];
  return { label: record.label, facts: facts.filter(Boolean).join(" "), notes: record.notes ?? "" };
}
