import type { InStatement } from "@libsql/client";
import { and, eq, isNull, type SQL } from "drizzle-orm";
import { drizzle } from "drizzle-orm/libsql";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { motor } from "#lib/db/table/motor.ts";
import { observation } from "#lib/db/table/observation.ts";
import { type Action, revision } from "#lib/db/table/revision.ts";
import { stern } from "#lib/db/table/stern.ts";
import { newTakings } from "#lib/db/takings.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Writes SQL and never runs it: every statement goes through the one connection. */
export const sqlWriter = drizzle.mock();

/** How a write came about. */
export interface Taking {
  /** The numbers as they were typed, by key. */
  readonly raw?: Readonly<Record<string, string>>;
  /** Who took them, where that is known. */
  readonly by?: string;
  /** True for the invented records of the first start. */
  readonly demo?: boolean;
}

/** One taking of one number, as it is written down. */
export interface Beside {
  readonly key: string;
  readonly taken: Measured | MeasuredList;
  /** As it was typed, where a person typed it. */
  readonly raw?: string;
  readonly comment?: string;
  readonly by?: string;
  /** False where the record had no such number: this one begins it. */
  readonly again: boolean;
}

/** The version a record is to become, and what is done to it. */
interface Step {
  readonly version: number;
  readonly action: Action;
  readonly at: string;
}

/** A record's first version with all its numbers. Run as one batch; fails whole where the id was ever used. */
export function creation<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  at: string,
  taking: Taking = {},
): InStatement[] {
  const row = { id: record.id, version: 1, createdAt: at, updatedAt: at, demo: taking.demo ?? false };
  const insert =
    kind === "motor"
      ? sqlWriter.insert(motor).values({ ...row, ...motorColumns(record as Motor) })
      : sqlWriter.insert(stern).values({ ...row, ...sternColumns(record as Stern) });
  const step: Step = { version: 1, action: "create", at };
  return [revised(kind, record, step), ready(insert), ...observed(kind, record, at, taking)];
}

/**
 * A record's next version. Run as one batch: the revision comes first, and its key fails the whole batch
 * where somebody else has made that version already.
 */
export function nextVersion<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  step: Step,
  taken: { before?: RecordOf<K>; taking?: Taking; beside?: Beside } = {},
): InStatement[] {
  const row = {
    version: step.version,
    updatedAt: step.at,
    deletedAt: step.action === "remove" ? step.at : null,
  };
  const update =
    kind === "motor"
      ? sqlWriter
          .update(motor)
          .set({ ...row, ...motorColumns(record as Motor) })
          .where(eq(motor.id, record.id))
      : sqlWriter
          .update(stern)
          .set({ ...row, ...sternColumns(record as Stern) })
          .where(eq(stern.id, record.id));
  return [revised(kind, record, step), ready(update), ...takingsOfStep(kind, record, step, taken)];
}

/** One taking beside the earlier ones is all that was taken, though the record's number moves; an edit takes every number that differs. */
function takingsOfStep<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  { action, at }: Step,
  { before, taking = {}, beside }: { before?: RecordOf<K>; taking?: Taking; beside?: Beside },
): InStatement[] {
  if (action !== "edit") return [];
  if (!beside) return observed(kind, record, at, taking, before);
  return [insertion(kind, record.id, at, beside)];
}

/** Narrows a list of motors or sterns; a record whose number is not known passes no bound on it. */
export const standing = (table: typeof motor | typeof stern, ...more: (SQL | undefined)[]): SQL | undefined =>
  and(isNull(table.deletedAt), ...more);

/** A statement of drizzle's as the driver takes it. */
export function ready(statement: { toSQL(): { sql: string; params: unknown[] } }): InStatement {
  const { sql, params } = statement.toSQL();
  return { sql, args: params as (string | number | null)[] };
}

const motorColumns = (record: Motor) => ({
  record,
  label: record.label,
  shaftClass: record.shaftClass ?? null,
  steering: record.steering ?? null,
  strokes: record.strokes ?? null,
  powerKw: record.powerKw?.value ?? null,
  massKg: record.massKg?.value ?? null,
});

const sternColumns = (record: Stern) => ({
  record,
  label: record.label,
  hullForm: record.hullForm ?? null,
});

const revised = <K extends Kind>(kind: K, record: RecordOf<K>, step: Step): InStatement =>
  ready(sqlWriter.insert(revision).values({ objectKind: kind, objectId: record.id, record, ...step }));

function observed<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  takenAt: string,
  { raw = {}, by }: Taking,
  before?: RecordOf<K>,
): InStatement[] {
  return newTakings(kind, record, before).map(([key, taken]) =>
    insertion(kind, record.id, takenAt, {
      key,
      taken,
      raw: Object.hasOwn(raw, key) ? raw[key] : undefined,
      by,
      again: false,
    }),
  );
}

const insertion = (kind: Kind, objectId: string, takenAt: string, beside: Beside): InStatement =>
  ready(
    sqlWriter.insert(observation).values({
      id: crypto.randomUUID(),
      objectKind: kind,
      objectId,
      key: beside.key,
      value: beside.taken.value,
      plusMinus: beside.taken.plusMinus ?? null,
      how: beside.taken.how,
      raw: beside.raw ?? null,
      takenAt,
      by: beside.by ?? null,
      again: beside.again,
      comment: beside.comment ?? null,
    }),
  );
