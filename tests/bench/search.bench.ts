/**
 * The search against general tools on the same invented motors and queries in the same run (npm run bench): in
 * a line of each the share of queries answered within the first ten, by kind of query, and the time half and
 * nineteen in twenty of them took; below, the time of the whole list. Ratios are what counts; the machine
 * decides the rest. SEARCH_SIZES=1000,10000 leaves out the largest, where tools that read every record take
 * seconds a query.
 */
import { bench, describe } from "vitest";
import type { Motor } from "#lib/rig/motor.ts";
import { type Asked, inventedMotors, queriesOn } from "#tests/bench/generated-records.ts";
import { type Search, searches } from "#tests/bench/search-peers.ts";

const SIZES = (process.env.SEARCH_SIZES ?? "1000,10000,100000").split(",").map(Number);
const QUERIES = 200;
/** Tools that read every record get fewer queries the more records there are; all kinds are among them. */
const slowQueries = (size: number): number => (size > 50_000 ? 10 : size > 5_000 ? 40 : QUERIES);
const ONCE = { time: 0, iterations: 1, warmupTime: 0, warmupIterations: 0 };

const quantile = (times: readonly number[], share: number): string =>
  times.toSorted((a, b) => a - b)[Math.min(times.length - 1, Math.floor(times.length * share))]!.toFixed(2);

/** Whether the answer holds what was meant: the record, or five with a word that begins so, or all there are. */
function isHit({ kind, wanted }: Asked, ids: readonly string[], texts: ReadonlyMap<string, string>): boolean {
  if (kind !== "typeahead") return ids.includes(wanted);
  const begins = (text = "") => text.includes(` ${wanted}`);
  const there = [...texts.values()].filter(begins).length;
  return ids.filter((id) => begins(texts.get(id))).length >= Math.min(5, there);
}

/** One line on a search: how it answered, and how long it took. */
async function told(search: Search, queries: readonly Asked[], motors: readonly Motor[]): Promise<string> {
  const texts = new Map(motors.map(({ id, label, notes }) => [id, ` ${label} ${notes}`]));
  const hits = new Map<string, boolean[]>();
  const times: number[] = [];
  for (const asked of queries) {
    const begun = performance.now();
    const ids = await search(asked.query);
    times.push(performance.now() - begun);
    hits.set(asked.kind, [...(hits.get(asked.kind) ?? []), isHit(asked, ids, texts)]);
  }
  const shares = [...hits].map(
    ([kind, each]) => `${kind} ${(each.filter(Boolean).length / each.length).toFixed(2)}`,
  );
  return `hit@10 ${shares.join(", ")}; p50 ${quantile(times, 0.5)} ms, p95 ${quantile(times, 0.95)} ms`;
}

for (const size of SIZES) {
  const motors = inventedMotors(size);
  const lists = new Map([QUERIES, slowQueries(size)].map((count) => [count, queriesOn(motors, count)]));
  const rows: { name: string; run: () => Promise<void> }[] = [];
  for (const { name, make, slow } of searches) {
    const begun = performance.now();
    const search = await make(motors);
    const build = (performance.now() - begun).toFixed(0);
    const queries = lists.get(slow ? slowQueries(size) : QUERIES)!;
    const line = await told(search, queries, motors);
    console.log(`${size}: ${name}: built in ${build} ms; ${line} (${queries.length} queries)`);
    rows.push({
      name: `${name} (${queries.length} queries)`,
      run: async () => {
        for (const { query } of queries) await search(query);
      },
    });
  }
  describe(`${size} records`, () => {
    for (const { name, run } of rows) bench(name, run, ONCE);
  });
}
