/**
 * `npm run bench:web`: the list of motors, as page and as data, against a bare node:http server that does the
 * same read; one run, taken in turns, on loopback. Prints what was measured and how it stands to the targets.
 * Client and servers share the machine: the ratios tell, not the absolute figures. About two minutes.
 */

import { loadavg } from "node:os";
import { isDeepStrictEqual } from "node:util";
import autocannon, { type Result } from "autocannon";
import { assertBuild, MOTORS, type Servers, startServers } from "#tests/bench/web-servers.ts";
import { type Door, figures, targets } from "#tests/bench/web-table.ts";

const ROUNDS = 3;
const RUN_S = 5;
const WARM_S = 2;
const CONNECTIONS = 10;
/** The whole is given up after this long, ms. */
const LIMIT_MS = 240_000;

const [PAGE, REACT, STRING, DATA, BARE_DATA] = [
  "app: /motors, page",
  "bare: renderToString",
  "bare: HTML string",
  "app: /api/motors?limit=50",
  "bare: JSON",
] as const;

async function main(servers: Servers): Promise<void> {
  const doors = await opened(servers);
  const before = loadavg()[0]!;
  for (const { url } of doors) await load(url, WARM_S);
  for (let round = 0; round < ROUNDS; round++) {
    for (const door of doors) door.runs.push(await load(door.url, RUN_S));
  }
  console.log(`${ROUNDS} rounds of ${RUN_S} s, ${CONNECTIONS} connections, medians; ${MOTORS} motors.`);
  console.log(`Load of the machine before: ${before.toFixed(2)}. Node ${process.version}.`);
  const of = (name: string): Door => doors.find((door) => door.name === name)!;
  console.table(Object.fromEntries(doors.map((door) => [door.name, figures(door, of(door.against))])));
  console.table(targets(of(PAGE), of(REACT), of(DATA), of(BARE_DATA)));
}

/** Looks at every door once: it must answer, with all of the motors, and data the same from both servers. */
async function opened({ app, bare }: Servers): Promise<Door[]> {
  const door = async (name: string, url: string, against: string) => ({
    name,
    against,
    url,
    ...(await seen(url)),
  });
  const doors = await Promise.all([
    door(PAGE, `${app}/motors`, REACT),
    door(REACT, `${bare}/react`, REACT),
    door(STRING, `${bare}/string`, REACT),
    door(DATA, `${app}/api/motors?limit=${MOTORS}`, BARE_DATA),
    door(BARE_DATA, `${bare}/json`, BARE_DATA),
  ]);
  for (const { text: html } of doors.slice(0, 3)) {
    const ids = new Set(html.match(/(?<=<a [^>]*href="\/motors\/)(?!new"|exchange")[^"?]+/g));
    if (ids.size !== MOTORS) throw new Error(`A page shows ${ids.size} motors, not ${MOTORS}.`);
  }
  const [data, bareData] = doors.slice(3).map(({ text }) => JSON.parse(text) as unknown);
  if (!isDeepStrictEqual(data, bareData)) throw new Error("The data differ.");
  return doors.map(({ text: _, ...rest }) => ({ ...rest, runs: [] }));
}

/** The answer without compression, as the load generator gets it. */
async function seen(url: string): Promise<{ text: string; bytes: number }> {
  const answer = await fetch(url, { headers: { "Accept-Encoding": "identity" } });
  const text = await answer.text();
  if (answer.status !== 200) throw new Error(`${url} answers ${answer.status}: ${text.slice(0, 200)}`);
  return { text, bytes: Buffer.byteLength(text) };
}

async function load(url: string, duration: number): Promise<Result> {
  const result = await autocannon({ url, duration, connections: CONNECTIONS });
  const bad = result.errors + result.timeouts + result.non2xx;
  if (bad > 0 || result.requests.total === 0) throw new Error(`${url}: ${bad} bad answers.`);
  return result;
}

for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => process.exit(130));
setTimeout(() => {
  console.error(`Not done within ${LIMIT_MS / 1000} s.`);
  process.exit(1);
}, LIMIT_MS).unref();
assertBuild();
const servers = await startServers();
await main(servers).finally(servers.end);
