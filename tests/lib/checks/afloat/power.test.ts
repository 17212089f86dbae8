/**
 * Power by 33 CFR 183.53 (51 FR 37574) driven through the question: published answers where there are any,
 * the rest by hand from the rule. 1 hp is 0.745699872 kW (NIST SP 811, B.8).
 */
import { describe, expect, test } from "vitest";
import { taken } from "../bench.ts";
import { afloat, figureOf, noteIds } from "./bench.ts";

const FT = 304.8;
const IN = 25.4;
const HP = 0.745699872;
const hull = (feet: number, widthMm: number, rest: object = {}) => ({
  lengthOverallMm: feet * FT,
  transomWidthMm: widthMm,
  beamMm: widthMm * 1.2,
  hullForm: "round",
  hardChine: false,
  seatMm: 508,
  steering: "remote",
  ...rest,
});
const allowedHp = (changes: Record<string, unknown>) => figureOf(afloat("power", changes), "Allowed");

describe("what the rule allows", () => {
  test("19.5 ft by 84 in, remote, 20 in: 2 x 136.5 - 90 = 183, raised to 185 (newboatbuilders.com, hp)", () => {
    const found = afloat("power", hull(19.5, 84 * IN, { powerKw: 185 * HP }));
    expect(figureOf(found, "Length times breadth, the factor")).toBeCloseTo(136.5, 2);
    expect(figureOf(found, "Allowed, before raising to a multiple of 5")).toBeCloseTo(183, 6);
    expect(figureOf(found, "Allowed")).toBe(185);
    expect(found.outcome).toBe("fits");
    expect(afloat("power", hull(19.5, 84 * IN, { powerKw: 186 * HP })).outcome).toBe("fouls");
  });

  test("12 ft by 46 in, tiller, 15 in: a factor of exactly 46 allows 15 hp, not the 10 that is printed for it", () => {
    const small = hull(12, 46 * IN, { steering: "tiller", seatMm: 15 * IN });
    expect(allowedHp(small)).toBe(15);
    expect(afloat("power", { ...small, powerKw: 15 * HP }).outcome).toBe("fits");
    expect(afloat("power", { ...small, powerKw: 16 * HP }).outcome).toBe("fouls");
  });

  test.each([
    // boatdesign.net, maximum horsepower of a flat-bottomed boat: 16 x 4 ft is 17, raised to 20; 38 with remote and 20 in.
    [
      "16 x 4 ft flat, tiller",
      hull(16, 4 * FT, { hullForm: "flat", hardChine: true, steering: "tiller" }),
      20,
    ],
    ["16 x 4 ft flat, remote, 20 in", hull(16, 4 * FT, { hullForm: "flat", hardChine: true }), 40],
    ["15 x 3 ft", hull(15, 3 * FT), 10],
    ["15 x 3 ft flat with hard chines", hull(15, 3 * FT, { hullForm: "flat", hardChine: true }), 7.5],
    ["15 x 3 ft flat with soft chines", hull(15, 3 * FT, { hullForm: "flat" }), 10],
    // F 104: 0.8 x 104 - 25 = 58.2.
    ["16 x 6.5 ft round, 19.9 in", hull(16, 6.5 * FT, { seatMm: 19.9 * IN }), 60],
  ])("%s", (_, changes, hp) => expect(allowedHp(changes)).toBe(hp));

  test("a keel is left out of the transom's height: 508 over a keel of 30 is under 20 in", () => {
    expect(allowedHp(hull(16, 6.5 * FT, { keelDepthMm: 30 }))).toBe(60);
    expect(allowedHp(hull(16, 6.5 * FT, { keelDepthMm: 30, seatMm: 538, transomTopMm: 758 }))).toBe(120);
  });

  test("a raked transom of 20 in plumb stays 20 in", () => {
    expect(allowedHp(hull(16, 6.5 * FT, { rakeDeg: 14 }))).toBe(120);
  });

  test("a flat bottom below the table is said to be undefined: less than 3 hp", () => {
    // 3000 x 1062.2 mm: 9.8425 x 3.4849 = 34.30.
    const found = afloat("power", hull(3000 / FT, 1062.2, { hullForm: "flat", hardChine: true, powerKw: 1 }));
    expect(noteIds(found)).toContain("below-three");
    expect(found.outcome).toBe("cannot tell");
    expect(
      afloat("power", hull(3000 / FT, 1062.2, { hullForm: "flat", hardChine: true, powerKw: 3 })).outcome,
    ).toBe("fouls");
  });

  test("a factor of 52.5 is said to lie in the seam", () => {
    const found = afloat("power", hull(15, 3.5 * FT));
    expect(figureOf(found, "Length times breadth, the factor")).toBeCloseTo(52.5, 6);
    expect(noteIds(found)).toContain("seam");
    expect(figureOf(found, "Allowed")).toBe(15);
  });
});

describe("how surely", () => {
  const between = (seat: unknown, hp: number) =>
    afloat("power", hull(16, 6.5 * FT, { seatMm: seat, powerKw: hp * HP }));

  test("a transom of 20.0 in give or take 1 mm: 60 hp is sure, 61 to 120 cannot be told, 121 is too strong", () => {
    expect(between(taken(508, 1), 60).outcome).toBe("fits");
    const open = between(taken(508, 1), 100);
    expect(open.outcome).toBe("cannot tell");
    expect(open.says).toContain("whether a transom of 508 mm counts as 20 in cannot be told");
    expect(open.missing).toBeUndefined();
    expect(between(taken(508, 1), 121).outcome).toBe("fouls");
    // U = 2 x 1/sqrt 3 = 1.155: at 509.2 it is surely tall.
    expect(between(taken(509.2, 1), 100).outcome).toBe("fits");
    expect(between(508, 100).outcome).toBe("fits");
  });

  test("a factor whose spread reaches over a step takes both sides", () => {
    // 12 ft x 1156 mm: 45.512; +- 10 mm of width is 0.394 x 2/sqrt 3 = 0.455 either way: 10 or 15 hp.
    const at = (powerHp: number) =>
      afloat(
        "power",
        hull(12, 1000, { transomWidthMm: taken(1156, 10), steering: "tiller", powerKw: powerHp * HP }),
      ).outcome;
    expect([at(10), at(12), at(16)]).toEqual(["fits", "cannot tell", "fouls"]);
  });

  test("15 hp written as 11.2 kW is 15 hp; a measured power has its spread", () => {
    const small = hull(12, 46 * IN, { steering: "tiller" });
    const found = afloat("power", { ...small, powerKw: { value: 11.2, how: "declared" } });
    expect([found.outcome, found.marginKw]).toEqual(["fits", 0]);
    expect(afloat("power", { ...small, powerKw: { value: 11.2, how: "measured" } }).outcome).toBe(
      "cannot tell",
    );
  });

  test("the label governs where there is one", () => {
    const labelled = hull(12, 46 * IN, { ratedPowerKw: { value: 7.5, how: "declared" }, powerKw: 9 });
    const found = afloat("power", labelled);
    expect([found.outcome, found.marginKw, found.limit?.status]).toEqual(["fouls", -1.5, "capacity label"]);
    expect(afloat("power", { ...labelled, powerKw: 7.5 }).outcome).toBe("fits");
    expect(afloat("power", { ...labelled, lengthOverallMm: undefined }).outcome).toBe("fouls");
  });
});

describe("what is not known", () => {
  test("length, width and power are named", () => {
    for (const key of ["lengthOverallMm", "transomWidthMm", "powerKw"]) {
      expect(afloat("power", { [key]: undefined })).toMatchObject({
        outcome: "cannot tell",
        missing: [key],
        measureNext: key,
      });
    }
  });

  test("a fact is named only where the answer hangs on it", () => {
    const big = hull(16, 6.5 * FT);
    expect(afloat("power", { ...big, steering: undefined, powerKw: 80 * HP }).missing).toEqual(["steering"]);
    expect(afloat("power", { ...big, steering: undefined, powerKw: 50 * HP }).outcome).toBe("fits");
    expect(
      afloat("power", { ...big, hullForm: undefined, hardChine: true, steering: "tiller", powerKw: 50 * HP })
        .missing,
    ).toEqual(["hullForm"]);
    expect(afloat("power", { ...big, keelDepthMm: undefined, powerKw: 80 * HP }).missing).toEqual([
      "keelDepthMm",
    ]);
    // Up to 52.5 the table asks neither steering nor height.
    const small = hull(12, 46 * IN, { steering: undefined, keelDepthMm: undefined, powerKw: 15 * HP });
    expect(afloat("power", small).outcome).toBe("fits");
  });

  test("from 20 ft up it is not asked; just under, with a spread, it cannot be told", () => {
    expect(afloat("power", hull(20, 2000)).outcome).toBe("not asked");
    expect(afloat("power", hull(19.9, 2000)).outcome).not.toBe("not asked");
    expect(afloat("power", { ...hull(19.9, 2000), lengthOverallMm: taken(20 * FT - 2, 10) }).outcome).toBe(
      "cannot tell",
    );
  });

  test("without a full transom the breadth aft lies between transom and beam: sure only where both ends agree", () => {
    // 12 ft; transom 600, beam 1300: F from 23.6 to 51.2: 3 hp to 15 hp.
    const narrow = hull(12, 600, { beamMm: 1300, steering: "tiller" });
    const at = (hp: number) => afloat("power", { ...narrow, powerKw: hp * HP }).outcome;
    expect([at(3), at(8), at(16)]).toEqual(["fits", "cannot tell", "fouls"]);
  });
});

test("it says whose rule it is and whom it gives way to", () => {
  expect(noteIds(afloat("power", hull(16, 6.5 * FT)))).toEqual(expect.arrayContaining(["us-rule", "defers"]));
});
