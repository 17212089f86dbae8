/** The table's edges and the places the text of 33 CFR 183.53 leaves open. */
import { describe, expect, test } from "vitest";
import { inches, MM_PER_FOOT } from "#lib/quantity/length.ts";
import { factorWidth, isTall } from "#lib/standards/cfr-33-183-3.ts";
import { type PowerTerms, powerCapacity, reasonsLeftOut } from "#lib/standards/cfr-33-183-53.ts";
import { barsToTest } from "#lib/standards/cfr-33-183-53-driving-test.ts";
import { factor } from "#lib/standards/factor.ts";

const feet = (value: number): number => value * MM_PER_FOOT;
const TILLER: PowerTerms = { flatBottomHardChine: false, remoteSteering: false, transomHeightMm: inches(15) };
const REMOTE: PowerTerms = { ...TILLER, remoteSteering: true, transomHeightMm: inches(20) };
const FLAT: PowerTerms = { ...TILLER, flatBottomHardChine: true };
/** A hull 10 ft long whose factor is `size`. */
const sized = (size: number) => factor(feet(10), feet(size / 10));
const ids = (size: number, terms: PowerTerms) => powerCapacity(sized(size), terms).notes.map(({ id }) => id);

describe("Table 183.53", () => {
  test.each([
    [1, 3, undefined],
    [35, 3, undefined],
    [35.4, 3, undefined],
    [35.5, 5, 3],
    [39.4, 5, 3],
    [39.5, 7.5, 5],
    [42.4, 7.5, 5],
    [42.5, 10, 7.5],
    [45.4, 10, 7.5],
    [45.5, 15, 10],
    [52, 15, 10],
  ])("factor %d: %d hp, flat bottom %s", (size, hp, flat) => {
    expect(powerCapacity(sized(size), TILLER).hp).toBe(hp);
    expect(powerCapacity(sized(size), REMOTE).hp).toBe(hp);
    expect(powerCapacity(sized(size), FLAT).hp).toBe(flat);
  });
});

describe("places the text leaves open", () => {
  test("a flat bottom of factor 34.3 has no step to go down to: no figure, and said", () => {
    expect(powerCapacity(factor(feet(9.8), feet(3.5)), FLAT)).toMatchObject({ hp: undefined, kW: undefined });
    expect(ids(34.3, FLAT)).toEqual(["below-three"]);
    expect(ids(34.3, TILLER)).toEqual([]);
  });

  test("factor 52.5 exactly (15 ft x 42 in) is in neither: 15 hp taken, and said", () => {
    const found = powerCapacity(factor(feet(15), inches(42)), TILLER);
    expect(found).toMatchObject({ factor: 52.5, branch: "table", hp: 15 });
    expect(found.notes.map(({ id }) => id)).toEqual(["seam"]);
    expect(powerCapacity(factor(feet(15), inches(42)), FLAT).hp).toBe(10);
  });

  test("over 52 the seam is named; at 52 it is not; just over 52.5 the formulas begin", () => {
    expect(ids(52.3, TILLER)).toEqual(["seam"]);
    expect(ids(52, TILLER)).toEqual([]);
    expect(ids(52.6, TILLER)).not.toContain("seam");
  });

  test("the seam is not smooth: 52.6 gives 20, 20 and 15 hp, by hand from 15.2, 17.08 and 11.3", () => {
    const raws = [REMOTE, TILLER, FLAT].map((terms) => powerCapacity(sized(52.6), terms));
    expect(raws.map(({ hp }) => hp)).toEqual([20, 20, 15]);
    [15.2, 17.08, 11.3].forEach((raw, i) => {
      expect(raws[i]!.raw).toBeCloseTo(raw, 9);
    });
  });

  test("below the crossing at 54.17 the remote line lies under the other, as the rule has it", () => {
    const lines = (size: number) => [REMOTE, TILLER].map((terms) => powerCapacity(sized(size), terms).raw!);
    const [remoteBelow, otherBelow] = lines(54.1);
    const [remoteAbove, otherAbove] = lines(54.2);
    expect(remoteBelow).toBeLessThan(otherBelow!);
    expect(remoteAbove).toBeGreaterThan(otherAbove!);
  });

  test("on a tall transom without remote steering, what a power-assisted tiller counts as is named", () => {
    expect(ids(80, { ...TILLER, transomHeightMm: inches(20) })).toContain("power-assisted-tiller");
    expect(ids(80, TILLER)).not.toContain("power-assisted-tiller");
    expect(ids(80, REMOTE)).not.toContain("power-assisted-tiller");
  });

  test("a 15 in cutout before a 20 in well takes the lower formula, and is said", () => {
    const terms = { ...REMOTE, transomHeightMm: inches(15), motorwellHeightMm: inches(20) };
    expect(powerCapacity(sized(80), terms)).toMatchObject({ branch: "other", raw: 39, hp: 40 });
    expect(ids(80, terms)).toContain("cutout-behind-well");
    expect(ids(80, { ...terms, motorwellHeightMm: inches(19) })).not.toContain("cutout-behind-well");
  });
});

test("the factor is exact: a nanometre under a half rounds down, the half itself up", () => {
  expect(factor(feet(10), feet(4.55)).nearest).toBe(46);
  expect(factor(feet(10), feet(4.55) - 1e-6).nearest).toBe(45);
  expect(() => factor(0, 1)).toThrow(RangeError);
});

describe("20 in of transom", () => {
  test("is met at exactly 20, and cannot be told within its uncertainty", () => {
    expect(isTall(inches(20))).toBe("yes");
    expect(isTall(inches(20) - 0.01)).toBe("no");
    expect(isTall(inches(20), 1)).toBe("cannot tell");
    expect(isTall(509, 1)).toBe("yes");
    expect(isTall(506.9, 1)).toBe("no");
  });
});

describe("which breadth", () => {
  test("a transom of exactly half the beam is not full: the aftermost quarter's beam is taken", () => {
    const hull = { transomWidthMm: 800, beamMm: 1600, aftQuarterBeamMm: 1300 };
    expect(factorWidth(hull).widthMm).toBe(1300);
    expect(factorWidth({ ...hull, transomWidthMm: 801 }).widthMm).toBe(801);
    expect(factorWidth({ transomWidthMm: 800, beamMm: 1600 }).widthMm).toBeUndefined();
    expect(factorWidth({ transomWidthMm: 800 }).widthMm).toBe(800);
    expect(factorWidth({ beamMm: 1600 }).widthMm).toBeUndefined();
  });
});

describe("which craft", () => {
  test("under 20 ft only, and not the five kinds left out", () => {
    expect(reasonsLeftOut(feet(19.99))).toEqual([]);
    expect(reasonsLeftOut(feet(20))).toHaveLength(1);
    for (const craft of ["sailboat", "canoe", "kayak", "inflatable", "multihull"] as const) {
      expect(reasonsLeftOut(feet(12), craft)).toHaveLength(1);
    }
  });

  test("the performance test is open to 13 ft, a wheel, 19 in (or 15 before a 19 in well) and two persons", () => {
    const boat = { lengthMm: feet(13), remoteWheel: true, transomHeightMm: inches(19), persons: 2 };
    expect(barsToTest(boat)).toEqual([]);
    expect(barsToTest({ ...boat, lengthMm: feet(13.1) })).toHaveLength(1);
    expect(barsToTest({ ...boat, remoteWheel: false })).toHaveLength(1);
    expect(barsToTest({ ...boat, persons: 3 })).toHaveLength(1);
    expect(barsToTest({ ...boat, transomHeightMm: inches(15) })).toHaveLength(1);
    expect(barsToTest({ ...boat, transomHeightMm: inches(15), motorwellHeightMm: inches(19) })).toEqual([]);
  });
});
