import { readJson, readQuery } from "#app/_http/body.ts";
import { entryOf, pathOf } from "#app/_http/records/paths.ts";
import { querySchemas } from "#app/_http/records/query.ts";
import { route } from "#app/_http/route.ts";
import { etagOf } from "#app/_http/version.ts";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords, createRecord, type Filter, listRecords, type Stored } from "#lib/db/records.ts";
import { StoreError } from "#lib/db/store-error.ts";
import { searchRecords } from "#lib/search/records.ts";

/** `GET` lists or searches, `POST` makes a new record. */
export function collection<K extends Kind>(kind: K) {
  return route({
    async GET(request) {
      const { query, ...filter } = readQuery(request, querySchemas[kind]) as Filter & { query?: string };
      const { items, next } = query?.trim()
        ? await searched(kind, query, filter)
        : await listRecords(kind, filter);
      return Response.json({ items: items.map(({ record }) => record), ...(next && { next }) });
    },
    async POST(request) {
      const record = await readJson(request, entryOf[kind].whole);
      const made = await createRecord(kind, record);
      const headers = { Location: pathOf(kind, record.id), ETag: etagOf(made.version) };
      return Response.json(made.record, { status: 201, headers });
    },
  });
}

/** Best first; the cursor of a search is the place in that order. */
async function searched<K extends Kind>(
  kind: K,
  query: string,
  { cursor = "0", limit = 50, ...filter }: Filter,
): Promise<{ items: Stored<{ id: string }>[]; next?: string }> {
  if (!/^\d{1,6}$/.test(cursor))
    throw new StoreError("bad cursor", "This cursor is not one this search gave out.");
  const from = Number(cursor);
  const best = searchRecords(await allRecords(kind, filter), query);
  const items = best.slice(from, from + limit);
  return from + limit < best.length ? { items, next: String(from + limit) } : { items };
}
