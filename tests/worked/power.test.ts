/**
 * Power by a boat's size, 33 CFR 183.53 (51 FR 37574, 23 October 1986; public domain), against worked
 * examples in print. Where an example leaves something unsaid, the line says what was taken.
 */
import { describe, expect, test } from "vitest";
import { inches, MM_PER_FOOT } from "#lib/quantity/length.ts";
import {
  LINES_183_53,
  type PowerTerms,
  powerCapacity,
  reasonsLeftOut,
} from "#lib/standards/cfr-33-183-53.ts";
import { along, factor } from "#lib/standards/factor.ts";

const feet = (value: number): number => value * MM_PER_FOOT;
const TILLER: PowerTerms = { flatBottomHardChine: false, remoteSteering: false, transomHeightMm: inches(15) };
const REMOTE: PowerTerms = { flatBottomHardChine: false, remoteSteering: true, transomHeightMm: inches(20) };
const FLAT: PowerTerms = { ...TILLER, flatBottomHardChine: true };

const capacity = (lengthFt: number, widthIn: number, terms: PowerTerms) =>
  powerCapacity(factor(feet(lengthFt), inches(widthIn)), terms);

describe("examples in print", () => {
  test("19 ft 6 in x 84 in, remote, 20 in transom: 273 - 90 = 183, 185 hp, 138 kW (newboatbuilders.com, hp_print)", () => {
    const found = capacity(19.5, 84, REMOTE);
    expect(found.factor).toBeCloseTo(136.5, 9);
    expect(found.raw).toBeCloseTo(183, 9);
    expect(found.hp).toBe(185);
    expect(found.kW).toBeCloseTo(138, 0);
  });

  test("12 ft x 46 in, tiller, 15 in transom: 15 hp by the rule, not the 10 hp printed there", () => {
    // The page rounds 46 in to 3.83 ft and finds 45.96; even that is 46 to the nearest whole number.
    const found = capacity(12, 46, TILLER);
    expect(found.factor).toBeCloseTo(46, 9);
    expect(found.hp).toBe(15);
    expect(found.hp).not.toBe(10);
    expect(powerCapacity(factor(feet(12), feet(3.83)), TILLER).hp).toBe(15);
  });

  test("16 ft x 4 ft, flat bottom, no remote: 64/2 - 15 = 17, 20 hp (boatdesign.net, thread 12608)", () => {
    expect(capacity(16, 48, FLAT)).toMatchObject({ branch: "flat bottom", raw: 17, hp: 20 });
  });

  test("the same boat, remote steering and 20 in: 2 x 64 - 90 = 38, 40 hp (same thread)", () => {
    const found = capacity(16, 48, { ...FLAT, remoteSteering: true, transomHeightMm: inches(20) });
    expect(found).toMatchObject({ branch: "remote steering and tall transom", raw: 38, hp: 40 });
  });

  test("22 ft x 8.5 ft, remote: 374 - 90 = 284 (a kit builders' forum; arithmetic only, the boat is too long for the rule)", () => {
    expect(capacity(22, 102, REMOTE)).toMatchObject({ raw: 284, hp: 285 });
    expect(reasonsLeftOut(feet(22))).toEqual(["the rule is for boats under 20 ft"]);
  });

  test("15 ft x 3 ft: factor 45, 10 hp (a boating forum); one step down for a flat bottom, 7.5 hp", () => {
    expect(capacity(15, 36, TILLER)).toMatchObject({ factor: 45, branch: "table", hp: 10 });
    expect(capacity(15, 36, FLAT).hp).toBe(7.5);
  });

  test("16 ft x 6.5 ft: factor 104 (anglerspecs.com); by hand 118, 58.2 and 37, raised to 120, 60 and 40", () => {
    expect(capacity(16, 78, REMOTE)).toMatchObject({ factor: 104, raw: 118, hp: 120 });
    const other = capacity(16, 78, TILLER);
    expect(other.raw).toBeCloseTo(58.2, 9);
    expect(other.hp).toBe(60);
    expect(capacity(16, 78, FLAT)).toMatchObject({ raw: 37, hp: 40 });
  });
});

describe("the formulas, worked by hand", () => {
  test.each([
    [60, 30, 23, 15],
    [80, 70, 39, 25],
    [100, 110, 55, 35],
    [120, 150, 71, 45],
  ])("factor %d: %d, %d and %d hp before raising", (size, remote, other, flat) => {
    const found = factor(feet(size / 10), feet(10));
    expect(along(found, LINES_183_53["remote steering and tall transom"])).toBeCloseTo(remote, 9);
    expect(along(found, LINES_183_53.other)).toBeCloseTo(other, 9);
    expect(along(found, LINES_183_53["flat bottom"])).toBeCloseTo(flat, 9);
  });

  test("an exact multiple of 5 stays: factor 60 gives 30 and 15 hp, and 23 becomes 25", () => {
    expect(capacity(15, 48, REMOTE)).toMatchObject({ raw: 30, hp: 30 });
    expect(capacity(15, 48, FLAT)).toMatchObject({ raw: 15, hp: 15 });
    expect(capacity(15, 48, TILLER)).toMatchObject({ raw: 23, hp: 25 });
  });
});

describe("raised always up (Wisconsin NR 5.12: 21 to 24 become 25, 26 to 29 become 30, a 5 or 0 stays)", () => {
  // 2 F - 90 = hp, so F = (hp + 90) / 2; 10 ft by a tenth of that.
  test.each([
    [21, 25],
    [22, 25],
    [23, 25],
    [24, 25],
    [25, 25],
    [26, 30],
    [27, 30],
    [28, 30],
    [29, 30],
    [30, 30],
  ])("%d hp becomes %d", (raw, hp) => {
    const size = factor(feet(10), inches(((raw + 90) / 2 / 10) * 12));
    expect(powerCapacity(size, REMOTE).hp).toBe(hp);
  });
});
