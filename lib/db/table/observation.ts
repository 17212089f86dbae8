import { sql } from "drizzle-orm";
import { check, index, integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import type { Kind } from "#lib/db/kind.ts";
import type { How } from "#lib/quantity/measured.ts";

/**
 * One number of one object, taken once. Rows are only ever added (triggers see to it): a later taking
 * stands beside the earlier one, and what was believed when can always be read back.
 */
export const observation = sqliteTable(
  "observation",
  {
    /** The order of takings, whatever the clock said. */
    sequence: integer("sequence").primaryKey({ autoIncrement: true }),
    id: text("id").notNull().unique(),
    objectKind: text("object_kind").$type<Kind>().notNull(),
    objectId: text("object_id").notNull(),
    /** Key of the vocabulary in lib/rig, such as `shaftLengthMm`. */
    key: text("key").notNull(),
    /** In the key's unit; a list for the trim-pin holes. */
    value: text("value", { mode: "json" }).$type<number | readonly number[]>().notNull(),
    /** Half-width given with the number, in its unit; absent where none was given. */
    plusMinus: real("plus_minus"),
    how: text("how").$type<How>().notNull(),
    /** The text as it was typed, where a person typed it. */
    raw: text("raw"),
    takenAt: text("taken_at").notNull(),
    /** Who took it, where that is known. */
    by: text("by"),
    /** True where it was taken beside the earlier ones; false where it begins afresh: the record was made, or the number corrected by an edit. */
    again: integer("again", { mode: "boolean" }).notNull().default(false),
    /** What its taker had to say about it. */
    comment: text("comment"),
  },
  (table) => [
    index("observation_by_object").on(table.objectKind, table.objectId, table.sequence),
    check("observation_kind", sql`${table.objectKind} in ('motor', 'stern')`),
    check("observation_value_is_json", sql`json_valid(${table.value})`),
    check("observation_how", sql`${table.how} in ('measured', 'declared', 'estimated')`),
  ],
);
