/** Plywood transoms by USL Code 2008, section 5M, M.42.4 (read in a transcription): 0.041 (160 + 50 L) and 20 to 45 mm more in way of the motor. */
import { expect, test } from "vitest";
import { taken } from "../bench.ts";
import { afloat, figureOf, noteIds } from "./bench.ts";

test("5 m on the water and 45 kW: 41.8 mm in way of the motor, 16.8 elsewhere", () => {
  const found = afloat("transom-thickness", { waterlineLengthMm: 5000, lengthOverallMm: 5400, powerKw: 45 });
  expect(figureOf(found, "Yardstick in way of the motor")).toBeCloseTo(41.81, 2);
  expect(figureOf(found, "Yardstick elsewhere")).toBeCloseTo(16.81, 2);
  // The bench transom is 45.
  expect(found).toMatchObject({ outcome: "fits", marginMm: 3.19, standing: "yardstick" });
  expect(noteIds(found)).toContain("yardstick");
});

test("4 m and under 30 kW: 34.76; thinner fouls, within the spread cannot be told", () => {
  expect(afloat("transom-thickness", { transomThicknessMm: 34.7 }).outcome).toBe("fouls");
  expect(afloat("transom-thickness", { transomThicknessMm: taken(35, 1) }).outcome).toBe("cannot tell");
  expect(afloat("transom-thickness", { transomThicknessMm: taken(36, 1) }).outcome).toBe("fits");
});

test("each number is needed; from 165 kW the rule gives no figure", () => {
  for (const key of ["transomThicknessMm", "waterlineLengthMm", "powerKw"])
    expect(afloat("transom-thickness", { [key]: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: [key],
    });
  expect(afloat("transom-thickness", { powerKw: 165 }).outcome).toBe("not asked");
});
