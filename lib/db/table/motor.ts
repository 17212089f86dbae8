import { sql } from "drizzle-orm";
import { check, index, integer, real, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { recordColumns } from "#lib/db/table/record-columns.ts";
import type { Motor, ShaftClass, Steering, Strokes } from "#lib/rig/motor.ts";

/** Motors as they stand now. */
export const motor = sqliteTable(
  "motor",
  {
    ...recordColumns(),
    record: text("record", { mode: "json" }).$type<Motor>().notNull(),
    shaftClass: text("shaft_class").$type<ShaftClass>(),
    steering: text("steering").$type<Steering>(),
    strokes: integer("strokes").$type<Strokes>(),
    powerKw: real("power_kw"),
    massKg: real("mass_kg"),
  },
  (table) => [
    index("motor_by_label").on(sql`${table.label} collate nocase`, table.id),
    check("motor_record_is_json", sql`json_valid(${table.record})`),
    check("motor_version_counts", sql`${table.version} >= 1`),
  ],
);
