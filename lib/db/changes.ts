import "server-only";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { store } from "#lib/db/store.ts";
import type { Action } from "#lib/db/table/revision.ts";

/** One change of one record: what it became, or that it was removed. */
export interface Change<K extends Kind = Kind> {
  readonly kind: K;
  readonly id: string;
  readonly action: Action;
  readonly record: RecordOf<K>;
}

/** The number of the last change of any record, 0 where there was none yet. Changes are only ever added, so nothing has changed while it stands. */
export async function lastChange(): Promise<number> {
  const { rows } = await (await store()).read("SELECT max(rowid) FROM revision");
  return Number(rows[0]?.[0] ?? 0);
}

/** All changes after the one of this number, oldest first, and the number of the last of them. Where nothing has changed this reads one page of the file. */
export async function changesSince(number: number): Promise<{ last: number; changes: Change[] }> {
  const sql =
    "SELECT rowid, object_kind, object_id, action, record FROM revision WHERE rowid > ? ORDER BY rowid";
  const { rows } = await (await store()).read({ sql, args: [number] });
  const changes = rows.map((row) => ({
    kind: row.object_kind as Kind,
    id: String(row.object_id),
    action: row.action as Action,
    record: JSON.parse(String(row.record)),
  }));
  return { last: Number(rows.at(-1)?.rowid ?? number), changes };
}
