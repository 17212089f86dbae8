import { sql } from "drizzle-orm";
import { check, index, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { recordColumns } from "#lib/db/table/record-columns.ts";
import type { HullForm, Stern } from "#lib/rig/stern.ts";

/** Sterns as they stand now. */
export const stern = sqliteTable(
  "stern",
  {
    ...recordColumns(),
    record: text("record", { mode: "json" }).$type<Stern>().notNull(),
    hullForm: text("hull_form").$type<HullForm>(),
  },
  (table) => [
    index("stern_by_label").on(sql`${table.label} collate nocase`, table.id),
    check("stern_record_is_json", sql`json_valid(${table.record})`),
    check("stern_version_counts", sql`${table.version} >= 1`),
  ],
);
