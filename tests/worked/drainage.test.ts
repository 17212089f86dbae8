/**
 * Draining of a motor well: Torricelli's time for a straight-sided tank, coefficients of discharge from
 * the Encyclopaedia Britannica of 1911 (Hydraulics; public domain), the freeing area of 46 CFR 178.450 and
 * 171.150 (public domain), and volumes worked by hand.
 */
import { describe, expect, test } from "vitest";
import { cos, tan } from "#lib/quantity/angle.ts";
import { inches, MM_PER_FOOT } from "#lib/quantity/length.ts";
import { drainS } from "#lib/rig/afloat/draining.ts";
import type { Well } from "#lib/rig/afloat/well-section.ts";
import { brimLitres, brimMm, soleRiseDeg, staysLitres, waterLitres } from "#lib/rig/afloat/well-water.ts";
import { freeingAreaMm2, portAreaPerLength } from "#lib/standards/cfr-46-178-450.ts";
import { DISCHARGE, GRAVITY_MM_S2, straightDrainS, unwinCoefficient } from "#lib/standards/hydraulics.ts";

/** 0.60 m athwart and 0.40 m fore and aft, walls square to the sole. */
const BOX: Well = {
  soleDropMm: 200,
  soleAngleDeg: 90,
  wellDepthMm: 400,
  wellFrontHeightMm: 150,
  wellWidthAftMm: 600,
  wellWidthFrontMm: 600,
  sideFlareDeg: 0,
};
const TWO = { drainDiameterMm: 25, drainCount: 2, coefficient: 0.6 };

describe("time to drain", () => {
  test("0.60 x 0.40 m, 100 mm of water, two 25 mm holes, C 0.6: 58.2 s; C 0.62: 56.3 s; one hole: 116.4 s", () => {
    // t = (A / C a) sqrt(2 H / g) (Torricelli; powderprocess.net has C 0.6): 0.24 / (0.6 x 9.8175e-4) x 0.14281.
    expect(drainS(BOX, 0, 100, TWO)).toBeCloseTo(58.2, 1);
    expect(drainS(BOX, 0, 100, { ...TWO, coefficient: 0.62 })).toBeCloseTo(56.3, 1);
    expect(drainS(BOX, 0, 100, { ...TWO, drainCount: 1 })).toBeCloseTo(116.4, 1);
  });

  test("tank of 2.5 m radius, hole of 10 mm radius, 2 m of water, C 1: 39 909 s (inputs of the Wolfram demonstration Time to Drain a Tank)", () => {
    // Worked with g = 9.81; standard gravity makes it longer by the root of 9.81 / 9.80665, 7 s.
    const found = straightDrainS(Math.PI * 2500 ** 2, 2000, Math.PI * 10 ** 2, 1);
    expect(found * Math.sqrt(GRAVITY_MM_S2 / 9810)).toBeCloseTo(39_909, 0);
  });

  test("goes as the root of the depth and the inverse square of the diameter; no drain, never", () => {
    expect(drainS(BOX, 0, 400, TWO) / drainS(BOX, 0, 100, TWO)).toBeCloseTo(2, 9);
    expect(drainS(BOX, 0, 100, { ...TWO, drainDiameterMm: 50 })).toBeCloseTo(drainS(BOX, 0, 100, TWO) / 4, 9);
    expect(drainS(BOX, 0, 100, { ...TWO, drainCount: 0 })).toBe(Infinity);
    expect(drainS(BOX, 0, 0, TWO)).toBe(0);
  });

  test("with the water outside 36 mm above the drains, 100 mm fall to 36 as a head of 64 mm does", () => {
    // The head is the difference of levels: sqrt(64) against sqrt(100).
    expect(drainS(BOX, 0, 100, TWO, 36)).toBeCloseTo(0.8 * drainS(BOX, 0, 100, TWO), 9);
  });

  test("a trough whose sides meet on the sole: (2/3) 2 D tan f H^1.5 / (C a sqrt(2 g)), by integration", () => {
    const trough: Well = { ...BOX, wellWidthAftMm: 0, wellWidthFrontMm: 0, sideFlareDeg: 30 };
    const holes = 0.6 * 2 * Math.PI * 12.5 ** 2;
    const byHand = ((2 / 3) * 2 * 400 * tan(30) * 100 ** 1.5) / (holes * Math.sqrt(2 * GRAVITY_MM_S2));
    expect(drainS(trough, 0, 100, TWO)).toBeCloseTo(byHand, 9);
  });

  test("sole rising 20 degrees forward, a wedge of water: (2/3) b H^1.5 / (tan C a sqrt(2 g cos)), by integration", () => {
    const holes = 0.6 * 2 * Math.PI * 12.5 ** 2;
    const byHand = ((2 / 3) * 600 * 100 ** 1.5) / (tan(20) * holes * Math.sqrt(2 * GRAVITY_MM_S2 * cos(20)));
    expect(drainS(BOX, 20, 100, TWO)).toBeCloseTo(byHand, 9);
  });
});

describe("coefficients of discharge", () => {
  test("sharp edge: 0.97 x 0.64 = 0.62; rounded 0.98, short tube 0.80, re-entrant 0.51 (cecalc.com)", () => {
    expect(DISCHARGE.sharp.value).toBeCloseTo(0.62, 2);
    expect(DISCHARGE.plain.value).toBe(0.6);
    // The page's 7.9, 6.4 and 4.1 over 8.02 are 0.985, 0.798, 0.511: two figures each way.
    expect(Math.abs(DISCHARGE.rounded.value - 0.98)).toBeLessThan(0.006);
    expect(DISCHARGE.tube.value).toBeCloseTo(0.8, 2);
    expect(DISCHARGE.reentrant.value).toBeCloseTo(0.51, 2);
  });

  test("Unwin's fit: 0.6136 at 1 ft on 1 in, 0.6087 at 4 ft; the measured table within 0.01 (1911, p. 55)", () => {
    expect(unwinCoefficient(1, 1)).toBeCloseTo(0.6136, 4);
    expect(unwinCoefficient(4, 1)).toBeCloseTo(0.6087, 4);
    // Circular, 0.196 sq in, so half an inch: two sets of experiments that differ by up to 0.005.
    const measured = [
      [1, 0.62],
      [2, 0.613],
      [4, 0.608],
      [10, 0.605],
      [20, 0.603],
    ] as const;
    for (const [head, c] of measured) expect(Math.abs(unwinCoefficient(head, 0.5) - c)).toBeLessThan(0.01);
  });
});

describe("volume of a well", () => {
  test("box: 600 x 400 x 100 mm is 24 litres", () => {
    expect(waterLitres(BOX, 0, 100)).toBeCloseTo(24, 9);
  });

  test("transom raked 14 degrees over a level sole: the wedge behind adds 0.5 x 100 x 100 tan 14 x 600 mm3", () => {
    // 24 + 0.748 litres (tan 14 = 0.249328).
    expect(waterLitres({ ...BOX, soleAngleDeg: 104 }, 0, 100)).toBeCloseTo(24.748, 3);
  });

  test("tapering and flaring: the prismoid's rule h/6 (A0 + 4 Am + A1) is exact for it", () => {
    const well: Well = { ...BOX, wellWidthFrontMm: 450, sideFlareDeg: 12, soleAngleDeg: 102 };
    // Plan area at height z: a trapezium from the raked face to the front, breadths worked at both ends.
    const plan = (z: number) => {
      const [back, flare] = [-z * tan(12), 2 * z * tan(12)];
      const aft = 600 + (-150 / 400) * back + flare;
      return ((aft + 450 + flare) / 2) * (400 - back);
    };
    const byRule = ((100 / 6) * (plan(0) + 4 * plan(50) + plan(100))) / 1e6;
    expect(waterLitres(well, 0, 100)).toBeCloseTo(byRule, 9);
  });

  test("the brim is the lowest of seat, front and sides", () => {
    expect(brimMm(BOX, 0)).toBe(150);
    expect(brimLitres(BOX, 0)).toBeCloseTo(36, 9);
    expect(brimMm({ ...BOX, wellSideHeightMm: 120 }, 0)).toBeCloseTo(120, 9);
    expect(brimMm({ ...BOX, soleDropMm: 90 }, 0)).toBeCloseTo(90, 9);
  });

  test("bow up 5 degrees on a sole square to an upright transom: it runs over the front before the seat", () => {
    // A surface at the seat, 200 mm, would stand at 200 - 400 tan 5 = 165.00 mm in front, over its 150.
    // There it stands at 150 + 400 tan 5 = 185.00 mm aft; mean depth 167.50 mm: 0.6 x 0.4 x 0.1675 m3.
    const rise = soleRiseDeg(90, 0, 5);
    expect(brimMm(BOX, rise)).toBeCloseTo(184.995, 2);
    expect(brimLitres(BOX, rise)).toBeCloseTo(40.2, 1);
  });
});

describe("what stays", () => {
  test("a sole falling 5 degrees forward keeps a pool: 0.5 x 400^2 tan 5 x 600 mm3 = 4.199 litres", () => {
    expect(staysLitres(BOX, -5)).toBeCloseTo(4.199, 3);
    expect(staysLitres(BOX, 5)).toBe(0);
  });

  test("water standing 30 mm over the drains outside stands 30 mm in the well", () => {
    expect(staysLitres(BOX, 0, 30)).toBeCloseTo(7.2, 9);
  });

  test("a sole square to a transom raked 12 degrees rises 12 forward; level at 90 + rake; the boat's trim adds", () => {
    expect(soleRiseDeg(90, 12)).toBe(12);
    expect(soleRiseDeg(102, 12)).toBe(0);
    expect(soleRiseDeg(102, 12, 3)).toBe(3);
  });
});

describe("freeing area, 46 CFR 178.450 (61 FR 966, 10 January 1996), in its inch form", () => {
  test("bulwark 2 ft by 40 ft2, recess 8 ft in 24 ft: 80 ft3 x 8/16 = 40 in2; 20 and 4 on easier waters", () => {
    const recess = {
      volumeMm3: 80 * MM_PER_FOOT ** 3,
      recessLengthMm: 8 * MM_PER_FOOT,
      lengthOverDeckMm: 24 * MM_PER_FOOT,
    };
    const squareInches = (waters: Parameters<typeof freeingAreaMm2>[1]) =>
      freeingAreaMm2(recess, waters) / inches(1) ** 2;
    expect(squareInches("exposed")).toBeCloseTo(40, 9);
    expect(squareInches("partially protected")).toBeCloseTo(20, 9);
    expect(squareInches("protected")).toBeCloseTo(4, 9);
  });

  // 171.150 prints the same rows in cm2 per m; a square centimetre a metre is 0.1 mm2 a mm.
  test.each([
    [6, 42.3],
    [12, 84.7],
    [18, 169.3],
    [24, 253.9],
    [30, 338.6],
    [36, 423.2],
  ])("171.150: a bulwark of %d in wants %d cm2 of port for each metre", (height, cm2PerM) => {
    expect(Math.abs(portAreaPerLength(inches(height))! * 10 - cm2PerM)).toBeLessThan(0.2);
  });

  test("171.150 is straight between its rows and silent outside them", () => {
    expect((portAreaPerLength(inches(15))! * MM_PER_FOOT) / inches(1) ** 2).toBeCloseTo(6, 9);
    expect(portAreaPerLength(inches(5))).toBeUndefined();
    expect(portAreaPerLength(inches(37))).toBeUndefined();
  });
});
