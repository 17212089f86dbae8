/**
 * Long lists (npm run bench): what one pairing costs by each way, and 10,000 motors against one stern in
 * worker threads, cold and kept. Read the ratios; the machine decides the rest.
 */

import { bench, describe } from "vitest";
import { letGo } from "#app/_work/kept-rows.ts";
import { listing } from "#app/_work/listing.ts";
import sterns from "#data/demo/sterns.json" with { type: "json" };
import { foulsStanding } from "#lib/fit/settled.ts";
import { rowInShort, rowOf } from "#lib/fit/shortlist.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { manyMotors, manySterns } from "#tests/bench/many-motors.ts";

const all = sterns as unknown as Stern[];
const plain = all.find(({ id }) => id === "flat-skiff-short")!;
const well = all.find(({ id }) => id === "vee-runabout-long-well")!;
const ONCE = { time: 0, iterations: 3, warmupTime: 0, warmupIterations: 1 };

for (const stern of [plain, well]) {
  describe(`500 motors on ${stern.id}, one thread`, () => {
    const motors = manyMotors(500);
    bench(
      "whether a standing part fouls",
      () => void motors.map((motor) => foulsStanding(motor, stern)),
      ONCE,
    );
    bench("rows in short", () => void motors.map((motor) => rowInShort(motor, stern)), ONCE);
    bench("whole rows", () => void motors.map((motor) => rowOf(motor, stern)), ONCE);
  });
}

describe("10,000 motors on one stern, worker threads", () => {
  const motors = manyMotors(10_000);
  for (const stern of [plain, well]) {
    bench(
      `${stern.id}, cold`,
      async () => {
        letGo(0);
        await listing({ name: "cold", motors, sterns: [stern] }).rows;
      },
      ONCE,
    );
    bench(
      `${stern.id}, kept`,
      async () => void (await listing({ name: "kept", motors, sterns: [stern] }).rows),
      ONCE,
    );
  }
});

describe("1,000 motors on 100 sterns, worker threads", () => {
  const [motors, hundred] = [manyMotors(1000), manySterns(100)];
  bench(
    "cold",
    async () => {
      letGo(0);
      await listing({ name: "square", motors, sterns: hundred }).rows;
    },
    { ...ONCE, iterations: 1, warmupIterations: 0 },
  );
});
