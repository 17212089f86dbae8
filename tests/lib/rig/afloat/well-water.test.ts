/** Laws of water in a well, whatever its shape. */
import { describe, expect, test } from "vitest";
import { drainS } from "#lib/rig/afloat/draining.ts";
import type { Well } from "#lib/rig/afloat/well-section.ts";
import { brimMm, surfaceMm2, waterLitres } from "#lib/rig/afloat/well-water.ts";

const WELL: Well = {
  soleDropMm: 230,
  soleAngleDeg: 99,
  wellDepthMm: 520,
  wellFrontHeightMm: 240,
  wellWidthAftMm: 700,
  wellWidthFrontMm: 560,
  sideFlareDeg: 9,
};
const DRAINS = { drainDiameterMm: 30, drainCount: 2, coefficient: 0.62 };
const rises = [-8, -2, 0, 3, 11];

describe.each(rises)("sole rising %d degrees forward", (rise) => {
  const brim = brimMm(WELL, rise);

  test("a millimetre more of surface adds its area: two ways of working it agree", () => {
    for (const at of [5, 40, 0.5 * brim, brim - 1]) {
      const added = (waterLitres(WELL, rise, at + 0.01) - waterLitres(WELL, rise, at - 0.01)) * 1e6;
      // A step of a fiftieth of a millimetre across a corner of the section is off by under a part in 1000.
      expect(Math.abs(added / 0.02 / surfaceMm2(WELL, rise, at) - 1)).toBeLessThan(1e-3);
    }
  });

  test("draining in two goes takes as long as in one, and longer from higher", () => {
    // Down to 50 mm, then on: the time from the top less the time from 50, by fine steps of the law itself.
    const steps = 4000;
    const through = 0.62 * 2 * Math.PI * 15 ** 2;
    let sum = 0;
    for (let i = 0; i < steps; i += 1) {
      const at = 50 + ((brim - 50) * (i + 0.5)) / steps;
      const speed = Math.sqrt(2 * 9806.65 * at * Math.cos((rise * Math.PI) / 180));
      sum += (surfaceMm2(WELL, rise, at) / (through * speed)) * ((brim - 50) / steps);
    }
    const difference = drainS(WELL, rise, brim, DRAINS) - drainS(WELL, rise, 50, DRAINS);
    expect(Math.abs(sum / difference - 1)).toBeLessThan(1e-5);
  });
});

test("sides that lean in until they meet close the well: no water above, and the volume stops growing", () => {
  // Breadth 200 - 2 z at 45 degrees: shut at 100 mm; a triangle 200 wide and 100 high, 400 long: 4 litres.
  const shut: Well = {
    ...WELL,
    soleAngleDeg: 90,
    wellDepthMm: 400,
    wellWidthAftMm: 200,
    wellWidthFrontMm: 200,
  };
  const leaning = { ...shut, sideFlareDeg: -45 };
  expect(waterLitres(leaning, 0, 100)).toBeCloseTo(4, 9);
  expect(waterLitres(leaning, 0, 150)).toBeCloseTo(4, 9);
  expect(surfaceMm2(leaning, 0, 150)).toBe(0);
});
