/**
 * Check values of the joiner's trade. Common practice, no source, but for the areas and lines, which are
 * worked by hand beside each.
 */
import { describe, expect, test } from "vitest";
import { longestScrewMm, pierces, stackMm } from "#lib/fit/cut-plan/fasteners.ts";
import { filletAreaMm2 } from "#lib/fit/cut-plan/fillet.ts";
import { inches } from "#lib/quantity/length.ts";
import { holeForTubeMm, standsProudMm } from "#lib/standards/joinery.ts";
import { cutOf, partOf, wellOf } from "#tests/lib/fit/cut-plan/boat.ts";

describe("bevels", () => {
  test("sides flared 8 degrees from square to the sole, not tapering: the sole's edges are bevelled 8 degrees, the top face the long one", () => {
    const sole = partOf(wellOf({}, { sideFlareDeg: 8 }), "sole");
    for (const id of ["port edge", "starboard edge"]) {
      const { tiltDeg, tableDeg, longFace } = cutOf(sole, id);
      expect(tiltDeg).toBeCloseTo(8, 3);
      expect(Math.abs(tableDeg)).toBeLessThan(1e-3);
      expect(longFace).toBe("marked");
    }
    // 12 mm thick: the underside is 2 x 12 tan 8 = 3.373 mm narrower than 1400.
    expect(sole.bottomMm).toBeCloseTo(1400, 2);
    const back = sole.back.map(([right]) => right);
    // Corners are given to 0.01 mm each.
    expect(Math.abs(Math.max(...back) - Math.min(...back) - (1400 - 3.373))).toBeLessThan(0.011);
  });

  test("with a taper as well the bevel is a little less: sin b = sin 8 / sqrt(1 + (cos 8 x 50/800)^2)", () => {
    // n = (-1/16, 1, -tan 8) before it is made a unit; n . up / |n| = tan 8 / sqrt(1 + 1/256 + tan^2 8).
    const sole = partOf(wellOf({}, { sideFlareDeg: 8, wellWidthFrontMm: 1300 }), "sole");
    const tan8 = 0.1405408;
    const bevel = (Math.asin(tan8 / Math.sqrt(1 + 1 / 256 + tan8 ** 2)) * 180) / Math.PI;
    expect(cutOf(sole, "port edge").tiltDeg).toBeCloseTo(bevel, 3);
    expect(bevel).toBeLessThan(8);
  });

  test("sides that lean in leave the underside the long face", () => {
    expect(cutOf(partOf(wellOf({}, { sideFlareDeg: -5 }), "sole"), "port edge").longFace).toBe("back");
  });

  test("a level sole on a transom raked 14 degrees is bevelled 14 at its after edge, and so is the cleat's top", () => {
    const well = wellOf({ rakeDeg: 14 }, { soleLies: "level" });
    expect(cutOf(partOf(well, "sole"), "aft edge").tiltDeg).toBeCloseTo(14, 3);
    expect(cutOf(partOf(well, "sole"), "aft edge").longFace).toBe("marked");
    const top = cutOf(partOf(well, "aft-cleat"), "upper edge");
    expect(top.tiltDeg).toBeCloseTo(14, 3);
    // The sole falls away from the face: the cleat is higher against the transom than on its forward face.
    expect(top.longFace).toBe("back");
    // Rise over run: tan 14 = 0.24933.
    expect(top.tiltPer100Mm).toBeCloseTo(24.933, 2);
  });
});

describe("boards, screws and tubes", () => {
  test("a 5 1/2 in board set down 5 in stands 1/2 in proud", () => {
    expect(standsProudMm(inches(5.5), inches(5))).toBeCloseTo(inches(0.5), 9);
  });

  test("a front beam of a wider board is planed off by what stands above its finished edge", () => {
    // Sole 12, cleat 38.1 deep, front 100 high: set down 150.1; a board of 160 stands 9.9 proud.
    const { front } = wellOf({}, { wellFrontHeightMm: 100, frontBoardMm: 160 });
    expect(front.planeOffMm.aftMm).toBeCloseTo(9.9, 3);
  });

  test("two 3/4 in layers and a 1 1/2 in cleat make a 3 in stack that a 2 1/2 in screw does not pierce", () => {
    const layers = [inches(0.75), inches(0.75), inches(1.5)];
    expect(stackMm(layers)).toBeCloseTo(inches(3), 9);
    expect(pierces(layers, inches(2.5))).toBe(false);
    expect(pierces(layers, inches(3))).toBe(true);
    expect(longestScrewMm(layers, inches(0.25), "in")).toBeCloseTo(inches(2.5), 9);
    expect(longestScrewMm([inches(0.25)], inches(0.25), "in")).toBeUndefined();
  });

  test("a 1 in tube takes a 1 1/8 in hole", () => {
    expect(holeForTubeMm(inches(1))).toBeCloseTo(inches(1.125), 9);
  });
});

describe("fillets", () => {
  test("in a square corner r2 (1 - pi/4): a radius of 10 mm fills 21.46 mm2", () => {
    expect(filletAreaMm2(10, 90)).toBeCloseTo(21.4602, 4);
  });

  test("in a corner of 60 degrees r2 (sqrt 3 - pi/3): 68.485 mm2; 120 degrees takes less than a square one", () => {
    expect(filletAreaMm2(10, 60)).toBeCloseTo(68.4853, 3);
    expect(filletAreaMm2(10, 120)).toBeLessThan(filletAreaMm2(10, 90));
  });
});

describe("the support line", () => {
  test("square to the transom: drop and sole thickness, 200 + 12", () => {
    expect(wellOf().supportLine.mm).toBeCloseTo(212, 6);
  });

  test("level on 14 degrees of rake: 12/cos 14 = 12.367 under the sole's top, 212.367", () => {
    expect(wellOf({ rakeDeg: 14 }, { soleLies: "level" }).supportLine.mm).toBeCloseTo(212.367, 3);
  });
});
