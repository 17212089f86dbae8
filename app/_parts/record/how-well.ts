import { fieldsOf } from "#app/_parts/form/texts.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import type { How, Measured } from "#lib/quantity/measured.ts";

/** How well a record is measured: how many of its numbers were come by which way, and how many nobody knows. */
export type HowWell = Readonly<Record<How | "unknown", number>>;

/** Counts a record's numbers by how they were come by. */
export function howWell<K extends Kind>(kind: K, record: RecordOf<K>): HowWell {
  const counts = { measured: 0, declared: 0, estimated: 0, unknown: 0 };
  for (const key of Object.keys(fieldsOf(kind))) {
    const taken = (record as unknown as Readonly<Record<string, Measured | undefined>>)[key];
    counts[taken?.how ?? "unknown"] += 1;
  }
  return counts;
}

/** "12 measured, 2 from papers, 17 not known". */
export function howWellWords({ measured, declared, estimated, unknown }: HowWell): string {
  const parts = [
    [measured, "measured"],
    [declared, "from papers"],
    [estimated, "estimated"],
    [unknown, "not known"],
  ] as const;
  return parts
    .filter(([count]) => count > 0)
    .map(([count, words]) => `${count} ${words}`)
    .join(", ");
}
