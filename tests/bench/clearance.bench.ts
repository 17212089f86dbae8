/**
 * The engine against general tools on the same invented pairs in the same run (npm run bench). Ratios are
 * what counts; the machine decides the rest. A pair is one motor on one stern: 7 parts, 6 obstacles.
 */
import { bench, describe } from "vitest";
import { leastClearance } from "#lib/geometry/clearance.ts";
import type { Obstacle } from "#lib/geometry/mechanism.ts";
import { leastSlide } from "#lib/geometry/slide.ts";
import { box } from "#lib/geometry/solid.ts";
import { bvhOnGrid, manifoldOnGrid, ownOnGrid } from "#tests/bench/clearance-peers.ts";
import { type Rig, rig } from "#tests/oracle/rigs.ts";

const each = (rigs: readonly Rig[], options: Parameters<typeof leastClearance>[3] = {}) => {
  for (const { mechanism, parts, obstacles } of rigs) {
    for (const obstacle of obstacles) leastClearance(mechanism, parts, obstacle, options);
  }
};
const all = (rigs: readonly Rig[], ask: (one: Rig) => number[]) => {
  for (const one of rigs) ask(one);
};
/** Slow ones: once to warm up, twice to measure. */
const SLOW = { time: 0, iterations: 2, warmupTime: 0, warmupIterations: 1 };

describe("3 pairs, all six least clearances", () => {
  const pairs = [100, 101, 102].map(rig);
  bench("engine, certified within 0.1 mm", () => each(pairs));
  bench("own distance on a 5 degree grid", () => all(pairs, (pair) => ownOnGrid(pair, 5)), SLOW);
  bench("own distance on a 1 degree grid", () => all(pairs, (pair) => ownOnGrid(pair, 1)), SLOW);
  bench("manifold-3d minGap on a 5 degree grid", () => all(pairs, (pair) => manifoldOnGrid(pair, 5)), SLOW);
  bench("three-mesh-bvh on a 5 degree grid", () => all(pairs, (pair) => bvhOnGrid(pair, 5)), SLOW);
});

describe("50 pairs, how much is asked", () => {
  const pairs = Array.from({ length: 50 }, (_, k) => rig(100 + k));
  bench("within 0.001 mm", () => each(pairs, { within: 0.001, withinOverlap: 0.001 }));
  bench("within 0.1 mm", () => each(pairs));
  bench("within 1 mm", () => each(pairs, { within: 1 }));
  bench("no more than 50 mm matters", () => each(pairs, { stopAbove: 50 }));
  bench("verdict only: is there 10 mm?", () => each(pairs, { within: 1, stopAbove: 10, stopBelow: 10 }));
});

/** A cheek moved sideways until it stands at the given clearance from its motor: 46 motors, port side. */
const contact = Array.from({ length: 46 }, (_, k) => rig(200 + k)).flatMap((pair) => {
  const cheek = (half: number): Obstacle => ({
    id: "cheek-port",
    solid: box([0, half, -20_000], [38, 20_000, 150]),
  });
  const first = leastSlide(pair.mechanism, pair.parts, cheek, 0, { from: 0, to: 2000 }).position;
  return first === undefined ? [] : [{ pair, at: (offset: number) => cheek(first + offset) }];
});

describe("46 cheeks by distance from first contact", () => {
  for (const offset of [80, 20, 5, 0, -1, -20]) {
    const cheeks = contact.map(({ pair, at }) => ({ ...pair, obstacles: [at(offset)] }));
    bench(`${offset} mm`, () => each(cheeks));
    if (offset <= 0)
      bench(`${offset} mm, within 0.1 mm either way`, () => each(cheeks, { withinOverlap: 0.1 }));
  }
});
