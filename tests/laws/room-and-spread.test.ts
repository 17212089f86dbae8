/** More room never hurts; more spread never makes sure; no spread leaves nothing in doubt. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Answer, examine } from "#lib/fit/examine.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { Stern, SternKey } from "#lib/rig/stern.ts";
import { exact, type Pair, pair, spreadBy } from "#tests/laws/pair.ts";

const RUNS = { seed: 72, numRuns: 120 };
const anyPair = fc.integer({ min: 0, max: 100_000 }).map(pair);
const answersOf = ({ motor, stern }: Pair): readonly Answer[] => examine(motor, stern).answers;

/** Ways to make room, by the numbers that grow together. The trial wells close in forward and lean outward, so a longer or a lower one is also no narrower. */
const WAYS: readonly (readonly SternKey[])[] = [
  ["notchWidthMm"],
  ["wellDepthMm"],
  ["soleDropMm"],
  ["wellWidthAftMm", "wellWidthFrontMm"],
];

const enlarged = (stern: Stern, keys: readonly SternKey[], by: number): Stern => ({
  ...stern,
  ...Object.fromEntries(
    keys.flatMap((key) => {
      const entry: Measured | undefined = stern[key];
      return entry ? [[key, { ...entry, value: entry.value + by }]] : [];
    }),
  ),
});

/** Each figure is certified to 0.01 mm, 1 mm where they overlap. */
const slack = ({ ruling }: Answer): number =>
  ruling && ruling.edge.have < 0 && ruling.edge.anew ? 1.01 : 0.011;

describe("More room", () => {
  test("never turns fits into fouls", () => {
    fc.assert(
      fc.property(anyPair, fc.constantFrom(...WAYS), fc.constantFrom(1, 20, 150), (one, keys, by) => {
        const before = answersOf(one);
        answersOf({ ...one, stern: enlarged(one.stern, keys, by) }).forEach((after, number) => {
          if (before[number]!.outcome === "fits") expect(after.outcome, after.check.id).not.toBe("fouls");
        });
      }),
      RUNS,
    );
  });

  test("never takes from a margin", () => {
    let grown = 0;
    fc.assert(
      fc.property(anyPair, fc.constantFrom(...WAYS), fc.constantFrom(1, 20, 150), (spread, keys, by) => {
        // Without spread the smallest margin of each question rules, before and after.
        const one = exact(spread);
        const before = answersOf(one);
        answersOf({ ...one, stern: enlarged(one.stern, keys, by) }).forEach((after, number) => {
          const was = before[number]!;
          if (!was.ruling || !after.ruling) return;
          expect(after.ruling.margin, `${was.check.id}, ${keys} ${by} more`).toBeGreaterThan(
            was.ruling.margin - slack(was),
          );
          if (after.ruling.margin > was.ruling.margin + 0.5) grown += 1;
        });
      }),
      RUNS,
    );
    // The law is not kept by numbers that do nothing.
    expect(grown).toBeGreaterThan(40);
  });
});

describe("More spread", () => {
  test("never turns cannot tell into a verdict, nor a foul into a fit, and leaves the margins as they are", () => {
    let doubtful = 0;
    fc.assert(
      fc.property(anyPair, fc.constantFrom(1.0001, 1.5, 3, 10), (one, factor) => {
        const more = { motor: spreadBy(one.motor, factor), stern: spreadBy(one.stern, factor) };
        const before = examine(one.motor, one.stern);
        examine(more.motor, more.stern).answers.forEach((after, number) => {
          const was = before.answers[number]!;
          if (was.outcome === "cannot tell") {
            doubtful += 1;
            expect(after.outcome, was.check.id).toBe("cannot tell");
          }
          if (after.outcome !== "cannot tell" && was.check.id !== "shaft-class")
            expect(after.outcome, was.check.id).toBe(was.outcome);
          if (was.ruling && after.ruling?.edge.says === was.ruling.edge.says)
            expect(after.ruling.edge.room).toBe(was.ruling.edge.room);
        });
      }),
      { ...RUNS, numRuns: 200 },
    );
    expect(doubtful).toBeGreaterThan(50);
  });

  test("not even when each number's grows by its own measure, where a margin is a plain formula", () => {
    const growing = fc.array(fc.double({ min: 1, max: 8, noNaN: true }), { minLength: 90, maxLength: 90 });
    fc.assert(
      fc.property(anyPair, growing, (one, factors) => {
        let next = 0;
        const factor = () => factors[next++ % factors.length]!;
        const more = { motor: spreadBy(one.motor, factor), stern: spreadBy(one.stern, factor) };
        const before = answersOf(one);
        answersOf(more).forEach((after, number) => {
          const was = before[number]!;
          if (was.outcome !== "cannot tell" || was.ruling?.edge.anew) return;
          expect(after.outcome, was.check.id).toBe("cannot tell");
        });
      }),
      RUNS,
    );
  });
});

describe("No spread", () => {
  test("leaves nothing in doubt: every question that arises fits or fouls by its margin's sign", () => {
    fc.assert(
      fc.property(anyPair, (one) => {
        for (const { check, outcome, ruling } of answersOf(exact(one))) {
          expect(outcome, check.id).not.toBe("cannot tell");
          if (outcome === "not asked") continue;
          expect(ruling?.u).toBe(0);
          expect(outcome, check.id).toBe(ruling!.margin >= -1e-9 ? "fits" : "fouls");
        }
      }),
      { ...RUNS, numRuns: 300 },
    );
  });
});
