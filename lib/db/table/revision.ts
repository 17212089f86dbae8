import { sql } from "drizzle-orm";
import { check, integer, primaryKey, sqliteTable, text } from "drizzle-orm/sqlite-core";
import type { Kind } from "#lib/db/kind.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What was done to a record. */
export type Action = "create" | "edit" | "remove" | "restore";

/**
 * Every version of every record, whole. Rows are only ever added (triggers see to it). The key is what
 * keeps two people from both making version 5 of one record: the second one's whole batch is refused.
 */
export const revision = sqliteTable(
  "revision",
  {
    objectKind: text("object_kind").$type<Kind>().notNull(),
    objectId: text("object_id").notNull(),
    version: integer("version").notNull(),
    record: text("record", { mode: "json" }).$type<Motor | Stern>().notNull(),
    action: text("action").$type<Action>().notNull(),
    at: text("at").notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.objectKind, table.objectId, table.version] }),
    check("revision_kind", sql`${table.objectKind} in ('motor', 'stern')`),
    check("revision_action", sql`${table.action} in ('create', 'edit', 'remove', 'restore')`),
    check("revision_record_is_json", sql`json_valid(${table.record})`),
  ],
);
