import { integer, text } from "drizzle-orm/sqlite-core";

/**
 * The columns every kept record has. The record itself is one JSON text and is the truth; columns beside it
 * repeat what lists are filtered by. Times are ISO 8601 in UTC and are for people: order comes from versions
 * and sequence numbers, never from a clock. A removed record keeps its row, so its id is never used again.
 */
export const recordColumns = () => ({
  id: text("id").primaryKey(),
  label: text("label").notNull(),
  /** 1 when made, one more with every edit, removal and restoring. */
  version: integer("version").notNull(),
  /** True for the invented records the first start brings along. */
  demo: integer("demo", { mode: "boolean" }).notNull().default(false),
  createdAt: text("created_at").notNull(),
  updatedAt: text("updated_at").notNull(),
  deletedAt: text("deleted_at"),
});
