import "server-only";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { addTaking, type Conflict, getRecord, type Stored, takingsOf } from "#lib/db/records.ts";
import type { Beside } from "#lib/db/statements.ts";
import { agreementOf, sinceCorrected } from "#lib/db/takings.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { type Problem, problems } from "#lib/entry/problem.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";

/** The number would make the record impossible as a whole. Nothing was changed. */
export interface Impossible {
  readonly impossible: readonly Problem[];
}

/**
 * Takes one number of a record once more. The taking is added to the earlier ones, and the record's number
 * becomes what all takings since its last correction come to (agreement.ts), in one write with the revision.
 * Where the record has no such number, this taking begins it. Null where there is no such record; a conflict
 * where it is no longer at `expectedVersion`. The version guards the takings too: each makes one.
 */
export async function takeAgain<K extends Kind>(
  kind: K,
  id: string,
  expectedVersion: number,
  taking: Omit<Beside, "again">,
): Promise<Stored<RecordOf<K>> | Conflict<K> | Impossible | null> {
  const current = await getRecord(kind, id);
  if (!current) return null;
  if (current.version !== expectedVersion) return { conflict: true, current };
  const { key, taken } = taking;
  const again = Object.hasOwn(current.record, key);
  const earlier = again ? (await takingsOf(kind, id)).filter((each) => each.key === key) : [];
  const { number } = agreementOf(kind, key, [...sinceCorrected(earlier), taken]);
  const whole = wholeWith(kind, current.record, key, number);
  if ("impossible" in whole) return whole;
  return addTaking(kind, expectedVersion, whole, { ...taking, again });
}

function wholeWith<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  key: string,
  number: Measured | MeasuredList,
): RecordOf<K> | Impossible {
  const schema = kind === "motor" ? motorSchema : sternSchema;
  const parsed = schema.safeParse({ ...record, [key]: number });
  return parsed.success ? (parsed.data as RecordOf<K>) : { impossible: problems(parsed.error) };
}
