import { listFacts } from "#app/_parts/record/facts.ts";
import { type HowWell, howWell } from "#app/_parts/record/how-well.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { Stored } from "#lib/db/records.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What a list knows of a record: enough to search, to sift and to show it, without its every number. */
export interface Row {
  /** The record cut down to what is searched. */
  readonly record: Motor | Stern;
  readonly facts: readonly string[];
  readonly howWell: HowWell;
  readonly demo: boolean;
}

const SEARCHED = [
  "id",
  "label",
  "notes",
  "shaftClass",
  "steering",
  "strokes",
  "year",
  "powerKw",
  "massKg",
  "hullForm",
  "hardChine",
  "lengthOverallMm",
];

/** A stored record as a row of its list. */
export function rowOf<K extends Kind>(kind: K, { record, demo }: Stored<RecordOf<K>>): Row {
  const kept = Object.entries(record).filter(([key]) => SEARCHED.includes(key));
  return {
    record: Object.fromEntries(kept) as unknown as Motor | Stern,
    facts: listFacts(kind, record),
    howWell: howWell(kind, record),
    demo,
  };
}
