import type { Row } from "@libsql/client";
import { asc, eq, gte, lte, type SQL, sql } from "drizzle-orm";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { sqlWriter, standing } from "#lib/db/statements.ts";
import { StoreError } from "#lib/db/store-error.ts";
import { motor } from "#lib/db/table/motor.ts";
import { stern } from "#lib/db/table/stern.ts";
import type { ShaftClass, Steering, Strokes } from "#lib/rig/motor.ts";
import type { HullForm } from "#lib/rig/stern.ts";

/** A record as it stands, with what the store knows of it. */
export interface Stored<R> {
  readonly record: R;
  /** 1 when made, one more with every change; what a change must name to be accepted. */
  readonly version: number;
  /** ISO 8601, UTC. */
  readonly updatedAt: string;
  /** True for the invented records of the first start. */
  readonly demo: boolean;
}

/** What a list may be narrowed by, and how much of it is wanted. A record whose number is not known passes no bound on that number. */
export interface Filter {
  readonly shaftClass?: ShaftClass;
  readonly steering?: Steering;
  readonly strokes?: Strokes;
  readonly powerKwMin?: number;
  readonly powerKwMax?: number;
  readonly hullForm?: HullForm;
  /** 1 to 200; 50 where it is not said. */
  readonly limit?: number;
  /** The `next` of the page before. */
  readonly cursor?: string;
}

export const PAGE = { usual: 50, most: 200 };

const tables = { motor, stern };
const columns = (table: typeof motor | typeof stern) => ({
  record: table.record,
  version: table.version,
  updatedAt: table.updatedAt,
  demo: table.demo,
});

/** Records that have not been removed, in the order of their labels. */
export function selectStanding(kind: Kind, filter: Filter, rows?: number) {
  const table = tables[kind];
  const wanted = standing(
    table,
    ...(kind === "motor" ? motorBounds(filter) : sternBounds(filter)),
    after(table, filter),
  );
  const select = sqlWriter.select(columns(table)).from(table).where(wanted);
  const ordered = select.orderBy(sql`${table.label} collate nocase`, asc(table.id));
  return rows === undefined ? ordered : ordered.limit(rows);
}

/** One record by its id, removed or not; `removed` says which. */
export function selectOne(kind: Kind, id: string) {
  const table = tables[kind];
  return sqlWriter
    .select({ ...columns(table), removed: table.deletedAt })
    .from(table)
    .where(eq(table.id, id));
}

/** A row of the selections above. */
export const asStored = <K extends Kind>(row: Row): Stored<RecordOf<K>> => ({
  record: JSON.parse(String(row.record)),
  version: Number(row.version),
  updatedAt: String(row.updated_at),
  demo: row.demo === 1,
});

/** The cursor that continues a list behind this record. */
export const cursorBehind = ({ record }: Stored<{ label: string; id: string }>): string =>
  Buffer.from(JSON.stringify([record.label, record.id])).toString("base64url");

function after(table: typeof motor | typeof stern, { cursor }: Filter): SQL | undefined {
  if (cursor === undefined) return undefined;
  const [label, id] = readCursor(cursor);
  return sql`(${table.label} collate nocase, ${table.id}) > (${label}, ${id})`;
}

function readCursor(cursor: string): [label: string, id: string] {
  try {
    const [label, id]: unknown[] = JSON.parse(Buffer.from(cursor, "base64url").toString());
    if (typeof label === "string" && typeof id === "string") return [label, id];
  } catch {
    // not one of ours: said below
  }
  throw new StoreError("bad cursor", "This cursor is not one this list gave out.");
}

const motorBounds = (filter: Filter): (SQL | undefined)[] => [
  filter.shaftClass && eq(motor.shaftClass, filter.shaftClass),
  filter.steering && eq(motor.steering, filter.steering),
  filter.strokes === undefined ? undefined : eq(motor.strokes, filter.strokes),
  filter.powerKwMin === undefined ? undefined : gte(motor.powerKw, filter.powerKwMin),
  filter.powerKwMax === undefined ? undefined : lte(motor.powerKw, filter.powerKwMax),
];

const sternBounds = (filter: Filter): (SQL | undefined)[] => [
  filter.hullForm && eq(stern.hullForm, filter.hullForm),
];
