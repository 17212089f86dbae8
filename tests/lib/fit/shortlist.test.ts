/**
 * Long lists: the order of rows, what is settled in short, and the measurement that settles most. Rows of
 * the order tests are written by hand; those of the short ways are held against the whole row of the same
 * pairing, since a short way must never say anything else.
 */

import { describe, expect, test } from "vitest";
import demoMotors from "#data/demo/motors.json" with { type: "json" };
import demoSterns from "#data/demo/sterns.json" with { type: "json" };
import { foulsStanding } from "#lib/fit/settled.ts";
import { bestFirst, type Row, rowInShort, rowOf, settlesMost } from "#lib/fit/shortlist.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { manyMotors, manySterns } from "#tests/bench/many-motors.ts";

const row = (motor: string, verdict: Row["verdict"], margin?: number, expandedUncertainty?: number): Row => ({
  motor,
  stern: "s",
  verdict,
  governs: "plate-height",
  unit: "mm",
  ...(margin !== undefined && { margin }),
  ...(expandedUncertainty !== undefined && { expandedUncertainty }),
  missing: [],
  answers: {},
});

describe("Best first", () => {
  test("fits before cannot tell before fouls, whatever the margins", () => {
    const rows = [row("a", "fouls", -1, 1), row("b", "cannot tell", 5, 9), row("c", "fits", 2, 1)];
    expect(rows.sort(bestFirst).map(({ motor }) => motor)).toEqual(["c", "b", "a"]);
  });

  test("among fits the surest: 6 give or take 1 before 20 give or take 10", () => {
    const rows = [row("wide", "fits", 20, 10), row("sure", "fits", 6, 1)];
    expect(rows.sort(bestFirst).map(({ motor }) => motor)).toEqual(["sure", "wide"]);
  });

  test("a pairing without a margin after those with one, and equals by their ids", () => {
    const rows = [row("z", "cannot tell"), row("b", "cannot tell", -1, 2), row("a", "cannot tell", -1, 2)];
    expect(rows.sort(bestFirst).map(({ motor }) => motor)).toEqual(["a", "b", "z"]);
  });
});

describe("The measurement that settles most", () => {
  test("is the one the most pairings name, and none where none does", () => {
    const naming = (motor: string, measureNext?: string): Row => ({
      ...row(motor, "cannot tell"),
      ...(measureNext && { measureNext }),
    });
    const rows = [naming("a", "rakeDeg"), naming("b", "shaftLengthMm"), naming("c", "rakeDeg"), naming("d")];
    expect(settlesMost(rows)).toEqual([
      { key: "rakeDeg", pairings: 2 },
      { key: "shaftLengthMm", pairings: 1 },
    ]);
    expect(settlesMost([naming("a")])).toEqual([]);
  });
});

describe("A row", () => {
  const measured = (value: number) => ({ value, plusMinus: 0, how: "measured" as const });
  const stern: Stern = {
    id: "s",
    label: "s",
    rakeDeg: measured(14),
    transomTopMm: measured(600),
    transomThicknessMm: measured(40),
  };
  const leg: Motor = {
    id: "m",
    label: "m",
    shaftLengthMm: measured(500),
    measuredAtDeg: measured(14),
    tiltAxisForwardMm: measured(20),
    tiltAxisAboveMm: measured(60),
    steerAxisAftMm: measured(40),
    pinAnglesDeg: { value: [14], plusMinus: 0, how: "measured" },
  };

  test("is settled by a plate that stands too high: seat less shaft, 100 mm over a window that ends at the datum", () => {
    const found = rowOf(leg, stern);
    expect(found).toMatchObject({ verdict: "fouls", governs: "plate-height", unit: "mm" });
    expect(found.margin).toBeCloseTo(-100, 6);
    expect(found.answers["steering-room"]).toBeUndefined();
    expect(rowInShort(leg, stern)).toBeUndefined();
  });

  test("is settled by a transom too thick for the clamps", () => {
    const thin = {
      ...leg,
      shaftLengthMm: measured(610),
      clampOpeningMinMm: measured(20),
      clampOpeningMaxMm: measured(35),
    };
    expect(rowOf(thin, stern)).toMatchObject({ verdict: "fouls", governs: "clamp-opening" });
    expect(foulsStanding(thin, stern)).toBe(true);
    // With no clamps there is nothing to go over.
    expect(foulsStanding({ ...thin, fixing: "bolted" }, stern)).toBe(false);
  });

  test("is not settled by a label that does not match where the leg was measured", () => {
    // Plate 10 mm below the datum: within the window, though a short shaft is nominally 381 mm.
    const mislabelled: Motor = { ...leg, shaftLengthMm: measured(610), shaftClass: "short" };
    expect(foulsStanding(mislabelled, stern)).toBe(false);
    expect(foulsStanding({ id: "l", label: "l", shaftClass: "short" }, stern)).toBe(true);
  });

  test("names what is wanting where nothing fouls", () => {
    const found = rowOf({ ...leg, shaftLengthMm: measured(610) }, stern);
    expect(found.verdict).toBe("cannot tell");
    expect(found.missing).toContain("clampOpeningMinMm");
  });
});

describe("A row in short", () => {
  const core = ({ verdict, governs, unit, margin, expandedUncertainty, missing, measureNext }: Row) => ({
    verdict,
    governs,
    unit,
    margin,
    expandedUncertainty,
    missing,
    measureNext,
  });
  const motors = [...(demoMotors as unknown as Motor[]), ...manyMotors(25)];
  const sterns = [...(demoSterns as unknown as Stern[]), ...manySterns(5)];

  test("says what the whole row says, for every invented pairing and some generated ones", () => {
    const seen = { settled: 0, gist: 0, whole: 0 };
    for (const stern of sterns) {
      for (const motor of motors) {
        const [short, whole] = [rowInShort(motor, stern), rowOf(motor, stern)];
        if (!short) expect(whole.verdict).toBe("fouls");
        else expect(core(short)).toEqual(core(whole));
        seen[!short ? "settled" : Object.keys(short.answers).length === 0 ? "gist" : "whole"] += 1;
      }
    }
    // Each of the three ways is taken often enough to be tried.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(100);
  });
});
