import { z } from "zod";
import { readJson, readQuery } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { entryOf, pathOf } from "#app/_http/records/paths.ts";
import { route } from "#app/_http/route.ts";
import { etagOf } from "#app/_http/version.ts";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords, createRecord, type Filter, listRecords, type Stored } from "#lib/db/records.ts";
import { SHAFT_CLASSES, STEERINGS } from "#lib/rig/motor.ts";
import { HULL_FORMS } from "#lib/rig/stern.ts";
import { searchRecords } from "#lib/search/records.ts";

/** A number in an address: digits and one point, so that neither "0x10" nor "" nor "1e3" passes for one. */
const numberText = z
  .string()
  .regex(/^\d{1,6}(\.\d{1,6})?$/, { error: "Give a plain number, such as 7.5." })
  .transform(Number);

const page = {
  query: z.string().max(1000, { error: "A search has at most 1,000 characters." }).optional(),
  limit: numberText
    .refine((rows) => Number.isInteger(rows) && rows >= 1 && rows <= 200, {
      error: "Give a limit from 1 to 200.",
    })
    .optional(),
  cursor: z.string().max(1000, { error: "This cursor is not one this list gave out." }).optional(),
};

/** What each list may be asked for in its address. */
export const querySchemas = {
  motor: z.strictObject({
    ...page,
    shaftClass: z.enum(SHAFT_CLASSES, { error: `Give one of ${SHAFT_CLASSES.join(", ")}.` }).optional(),
    steering: z.enum(STEERINGS, { error: `Give one of ${STEERINGS.join(", ")}.` }).optional(),
    strokes: z
      .enum(["0", "2", "4"], { error: "Give 0, 2 or 4." })
      .transform((text) => Number(text) as 0 | 2 | 4)
      .optional(),
    powerKwMin: numberText.optional(),
    powerKwMax: numberText.optional(),
  }),
  stern: z.strictObject({
    ...page,
    hullForm: z.enum(HULL_FORMS, { error: `Give one of ${HULL_FORMS.join(", ")}.` }).optional(),
  }),
};

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
  if (!/^\d{1,6}$/.test(cursor)) throw new Refused(400, "This cursor is not one this search gave out.");
  const from = Number(cursor);
  const best = searchRecords(await allRecords(kind, filter), query);
  const items = best.slice(from, from + limit);
  return from + limit < best.length ? { items, next: String(from + limit) } : { items };
}
