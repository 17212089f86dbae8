/** Draining by hand: Torricelli's time for a straight well, the inch form of 46 CFR 178.450 (61 FR 966), the drains over the water. */
import { describe, expect, test } from "vitest";
import { taken } from "../bench.ts";
import { afloat, figureOf, noteIds } from "./bench.ts";

const WELL = {
  soleDropMm: 200,
  soleAngleDeg: 90,
  wellDepthMm: 400,
  wellFrontHeightMm: 100,
  wellWidthAftMm: 600,
  wellWidthFrontMm: 600,
  sideFlareDeg: 0,
  drainDiameterMm: 25,
  drainCount: 2,
};

describe("Well drainage", () => {
  test("0.60 x 0.40 m with 100 mm of water through two holes of 25 mm: 24 L in 58.2 s; through one 116.4", () => {
    const found = afloat("well-drainage", WELL);
    expect(figureOf(found, "Well holds, with the boat level")).toBeCloseTo(24, 6);
    expect(figureOf(found, "Drains in, with the boat level")).toBeCloseTo(58.2, 1);
    expect(
      figureOf(afloat("well-drainage", { ...WELL, drainCount: 1 }), "Drains in, with the boat level"),
    ).toBeCloseTo(116.4, 1);
    expect(figureOf(found, "Area of the drains")).toBeCloseTo(9.82, 2);
  });

  test("a recess of 80 cubic feet, 8 ft of 24: 40, 20 and 4 square inches", () => {
    const FT = 304.8;
    const recess = {
      ...WELL,
      soleDropMm: 700,
      seatMm: 900,
      transomTopMm: 950,
      wellDepthMm: 8 * FT,
      wellFrontHeightMm: 2 * FT,
      wellWidthAftMm: 5 * FT,
      wellWidthFrontMm: 5 * FT,
      lengthOverallMm: 24 * FT,
    };
    const found = afloat("well-drainage", recess);
    const asked = (waters: string) =>
      figureOf(found, `Freeing area inspected vessels must have, ${waters} waters`);
    for (const [waters, in2] of [
      ["exposed", 40],
      ["partially protected", 20],
      ["protected", 4],
    ] as const)
      expect(asked(waters)).toBeCloseTo(in2 * 6.4516, 1);
    expect(noteIds(found)).toContain("inspected");
  });

  test("drains at 45 forward and 308 high over water at 187.68: 120.3 to spare", () => {
    // 188.4185 - 45 x 65.8135/4000 = 187.678; (308 - 187.678) x 0.999865 = 120.31.
    expect(afloat("well-drainage", WELL).marginMm).toBeCloseTo(120.3, 1);
    expect(afloat("well-drainage", { ...WELL, waterlineMm: 280 })).toMatchObject({ outcome: "fouls" });
    expect(afloat("well-drainage", { ...WELL, waterlineMm: taken(268, 20) }).outcome).toBe("cannot tell");
  });

  test("below the water outside the well fills: what lies under that level stays", () => {
    // Water at the drains some 10 mm over them: 0.6 x 0.4 m of it and the wedge of the trim.
    const found = afloat("well-drainage", { ...WELL, waterlineMm: 280 });
    expect(figureOf(found, "Stays in the well, at rest with everything aboard")).toBeGreaterThan(0);
    expect(noteIds(found)).toContain("stands");
  });

  test("no well, nothing asked; missing numbers are named", () => {
    expect(afloat("well-drainage").outcome).toBe("not asked");
    for (const key of ["drainDiameterMm", "drainCount", "wellWidthFrontMm", "waterlineMm"])
      expect(afloat("well-drainage", { ...WELL, [key]: undefined })).toMatchObject({
        outcome: "cannot tell",
        missing: [key],
      });
  });
});
