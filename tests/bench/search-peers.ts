/** The same search done by general tools, six keys or as near to them as the tool has it. */
import { createClient } from "@libsql/client";
import Fuse from "fuse.js";
import MiniSearch from "minisearch";
import type { Motor } from "#lib/rig/motor.ts";
import { searchIndex } from "#lib/search/search-index.ts";
import { searchable } from "#lib/search/words.ts";

/** Finds the ids of the best ten for a query. */
export type Search = (query: string) => string[] | Promise<string[]>;
/** Makes a search ready on these records. */
export type Maker = (motors: readonly Motor[]) => Search | Promise<Search>;

const flat = (motor: Motor) => ({
  id: motor.id,
  label: motor.label,
  notes: motor.notes ?? "",
  shaftClass: motor.shaftClass ?? "",
  steering: motor.steering ?? "",
  year: String(motor.year ?? ""),
  power: searchable({ ...motor, shaftClass: undefined, steering: undefined, year: undefined }).facts,
});
const KEYS = ["label", "notes", "shaftClass", "steering", "year", "power"];
const BEST = 10;

const fuse =
  (more: object): Maker =>
  (motors) => {
    const made = new Fuse(motors.map(flat), { keys: KEYS, ignoreLocation: true, threshold: 0.35, ...more });
    return (query) => made.search(query, { limit: BEST }).map(({ item }) => item.id);
  };

const minisearch: Maker = (motors) => {
  const made = new MiniSearch({
    fields: KEYS,
    searchOptions: { fuzzy: 0.2, prefix: true, combineWith: "AND", boost: { label: 3 } },
  });
  made.addAll(motors.map(flat));
  return (query) =>
    made
      .search(query)
      .slice(0, BEST)
      .map(({ id }) => id);
};

/** SQLite's trigram index, every run of three letters of the query ORed, best first by bm25. */
const fts5: Maker = async (motors) => {
  const client = createClient({ url: ":memory:" });
  await client.execute("CREATE VIRTUAL TABLE t USING fts5(id UNINDEXED, body, tokenize='trigram')");
  for (let at = 0; at < motors.length; at += 2000) {
    await client.batch(
      motors.slice(at, at + 2000).map((motor) => {
        const { id, ...rest } = flat(motor);
        return { sql: "INSERT INTO t VALUES (?, ?)", args: [id, Object.values(rest).join(" ")] };
      }),
      "write",
    );
  }
  return async (query) => {
    const runs = Array.from({ length: Math.max(query.length - 2, 0) }, (_, at) => query.slice(at, at + 3));
    const match = [...new Set(runs)].map((run) => `"${run.replaceAll('"', '""')}"`).join(" OR ");
    if (match === "") return [];
    const sql = "SELECT id FROM t WHERE t MATCH ? ORDER BY rank LIMIT ?";
    return (await client.execute({ sql, args: [match, BEST] })).rows.map((row) => String(row.id));
  };
};

const ours: Maker = (motors) => {
  const made = searchIndex(motors.map((record) => ({ record })));
  return (query) => made.search(query, BEST).map(({ record }) => record.id);
};

/** The searches by name; `slow` ones read every record for every query. */
export const searches: readonly { readonly name: string; readonly make: Maker; readonly slow?: true }[] = [
  { name: "this index, fuse.js on the best 50", make: ours },
  { name: "minisearch", make: minisearch },
  { name: "FTS5 trigrams", make: fts5 },
  { name: "fuse.js token search", make: fuse({ useTokenSearch: true }), slow: true },
  { name: "fuse.js", make: fuse({}), slow: true },
];
