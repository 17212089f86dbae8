/** What the runs of the web figures come to: medians, ratios to the bare server, and the targets. */
import type { Result } from "autocannon";

/** One address and how it answered under load. */
export interface Door {
  readonly name: string;
  readonly url: string;
  /** Name of the door its figures are divided by. */
  readonly against: string;
  /** Of one answer's body, uncompressed. */
  readonly bytes: number;
  readonly runs: Result[];
}

type Figure = (run: Result) => number;
const rate: Figure = ({ requests }) => requests.average;
const p50: Figure = ({ latency }) => latency.p50;
const p99: Figure = ({ latency }) => latency.p99;
const median = (door: Door, figure: Figure): number =>
  door.runs.map(figure).sort((a, b) => a - b)[(door.runs.length - 1) / 2]!;

/** A row of the table of figures. */
export const figures = (door: Door, bare: Door) => ({
  "req/s": Math.round(median(door, rate)),
  "p50 ms": median(door, p50),
  "p99 ms": median(door, p99),
  bytes: door.bytes,
  "ratio to bare": (median(door, rate) / median(bare, rate)).toFixed(2),
});

/** The four targets and what was measured; `rounds` has the ratio in each round, which tells how far noise reaches. */
export function targets(page: Door, react: Door, data: Door, bareData: Door) {
  const row = (gate: string, target: string, of: Door, bare: Door, figure: Figure) => {
    const each = of.runs.map((run, i) => (figure(run) / figure(bare.runs[i]!)).toFixed(2));
    const measured = median(of, figure) / median(bare, figure);
    const bound = Number(target.slice(3));
    const met = target.startsWith(">=") ? measured >= bound : measured <= bound;
    return { gate, target, measured: measured.toFixed(2), met, rounds: each.join(" ") };
  };
  const bytes = page.bytes / react.bytes;
  return {
    C1: row("page / bare renderToString, req/s", ">= 0.25", page, react, rate),
    C2: row("page p99 / bare p99", "<= 3", page, react, p99),
    C3: row("JSON / bare JSON, req/s", ">= 0.5", data, bareData, rate),
    C4: { gate: "page bytes / bare bytes", target: "<= 3", measured: bytes.toFixed(2), met: bytes <= 3 },
  };
}
