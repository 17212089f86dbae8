import { defineConfig } from "drizzle-kit";

/**
 * Migrations are made, never written: `npm run migration -- --name what-changes`. Triggers have no place in
 * the schema files; they go into an empty migration (`-- --custom --name what-changes`) with
 * `--> statement-breakpoint` between every two statements: without it the second is silently left out.
 */
export default defineConfig({
  dialect: "sqlite",
  schema: "./lib/db/table/*.ts",
  out: "./drizzle",
});
