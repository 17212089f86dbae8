/**
 * Sinkage and change of trim against printed exercises (D. R. Derrett, Ship Stability for Masters and
 * Mates, as set at sailorsknowit.com and in an online copy, p. 159) and box shapes worked by hand. The
 * formulas: change of trim = w d / MCT 1 cm, rise = w / TPC, TPC = A rho / 100, MCT = D GM / 100 L
 * (min.sg, Mariner's formulae).
 */
import { describe, expect, test } from "vitest";
import { atan2 } from "#lib/quantity/angle.ts";
import { changeOf, type Level, loaded, moved, waterAt } from "#lib/rig/afloat/floating.ts";
import {
  areaM2,
  flotationMm,
  type Hydrostatics,
  hydrostatics,
  longitudinalInertiaM4,
} from "#lib/rig/afloat/waterplane.ts";

const metres = (value: number): number => value * 1000;
const tonnes = (value: number): number => value * 1000;

describe("a ship of 120 m, 6.7 m forward and 7.3 m aft, MCT 250 t m, TPC 10 t, flotation amidships", () => {
  const ship: Hydrostatics = {
    lengthMm: metres(120),
    kgPerCm: tonnes(10),
    kgMPerCm: tonnes(250),
    flotationMm: metres(60),
  };
  const before: Level = { atTransomMm: metres(7.3), bowUpDeg: atan2(7.3 - 6.7, 120) };
  const discharged = [{ label: "cargo", kg: tonnes(-220), xMm: metres(60 + 24) }];
  const after = loaded(before, ship, discharged);

  test("220 t out 24 m forward: rises 22 cm, 21.12 cm by the stern, 7.19 m aft and 6.37 m forward", () => {
    const { sinkageMm, trimMm } = changeOf(ship, discharged);
    expect(sinkageMm).toBeCloseTo(-220, 9);
    expect(trimMm).toBeCloseTo(211.2, 9);
    expect(waterAt(after, 0)).toBeCloseTo(7185.6, 6);
    expect(waterAt(after, metres(120))).toBeCloseTo(6374.4, 6);
  });

  test("then 380 t from 5 m aft to 20 m forward brings it to 7.00 m aft; unrounded it takes 371.2 t", () => {
    const shifted = (t: number) => loaded(after, ship, moved("cargo", tonnes(t), metres(55), metres(80)));
    expect(waterAt(shifted(380), 0) / 1000).toBeCloseTo(7.0, 2);
    expect(waterAt(shifted(371.2), 0) / 1000).toBeCloseTo(7.0, 6);
    // The page adds all 38 cm forward and prints 6.75 m; flotation is amidships, so half of it belongs
    // there: 6.37 + 0.19 = 6.56 m.
    expect(waterAt(shifted(380), metres(120)) / 1000).toBeCloseTo(6.56, 2);
  });
});

test("25 cm by the stern, MCT 100 t m: 649.5 t from 50 m forward and the rest from 45 m aft bring her to an even keel", () => {
  // Trim example 5; its answer page was not read. By hand 0.95 x = 617 cm, x = 649.47 t.
  const ship: Hydrostatics = {
    lengthMm: metres(100),
    kgPerCm: tonnes(20),
    kgMPerCm: tonnes(100),
    flotationMm: 0,
  };
  const at = (t: number, forward: number) => ({ label: "cargo", kg: tonnes(t), xMm: metres(forward) });
  const change = changeOf(ship, [
    at(-1200, 30),
    at(-600, -20),
    at(-649.5, 50),
    at(-(2000 - 649.5), -45),
    at(360, -5),
  ]);
  // To the tenth of a tonne: 0.05 t at 95 m over 100 t m is half a millimetre.
  expect(Math.abs(change.trimMm + 250)).toBeLessThan(0.5);
});

describe("a box 4.0 x 1.5 m in fresh water, 50 kg hung on the transom", () => {
  const box = hydrostatics({ waterlineLengthMm: 4000, waterlineBeamMm: 1500, fullness: 1 });
  const motor = [{ label: "motor", kg: 50, xMm: 0 }];

  test("60 kg a centimetre and 20 kg m a centimetre: 0.833 cm down, 5.0 cm by the stern", () => {
    expect(box.kgPerCm).toBeCloseTo(60, 9);
    expect(box.kgMPerCm).toBeCloseTo(20, 9);
    expect(changeOf(box, motor).sinkageMm).toBeCloseTo(50 / 6, 9);
    expect(changeOf(box, motor).trimMm).toBeCloseTo(50, 9);
  });

  test("stern down 3.33 cm, bow up 1.67 cm, however it floated before", () => {
    for (const atTransomMm of [100, 137]) {
      const after = loaded({ atTransomMm, bowUpDeg: 0 }, box, motor);
      expect(waterAt(after, 0) - atTransomMm).toBeCloseTo(33.33, 2);
      expect(waterAt(after, 4000) - atTransomMm).toBeCloseTo(-16.67, 2);
      // 50 mm in 4000.
      expect(after.bowUpDeg).toBeCloseTo(0.7162, 4);
    }
  });

  test("75 kg moving 1.5 m aft sinks nothing and puts the stern 2.81 cm down", () => {
    // 75 x 1.5 / 20 = 5.625 cm, half of it at either end.
    const after = loaded({ atTransomMm: 0, bowUpDeg: 0 }, box, moved("person", 75, 2000, 500));
    expect(waterAt(after, 0)).toBeCloseTo(28.125, 6);
    expect(waterAt(after, 4000)).toBeCloseTo(-28.125, 6);
  });
});

describe("fullness", () => {
  const plane = (fullness: number) => ({ waterlineLengthMm: 4000, waterlineBeamMm: 1500, fullness });

  test("box: L/2 and B L^3 / 12; wedge: L/3 and B L^3 / 36, as in any table of sections", () => {
    expect(flotationMm(plane(1))).toBe(2000);
    expect(longitudinalInertiaM4(plane(1))).toBeCloseTo((1.5 * 64) / 12, 9);
    expect(flotationMm(plane(0.5))).toBeCloseTo(4000 / 3, 9);
    expect(longitudinalInertiaM4(plane(0.5))).toBeCloseTo((1.5 * 64) / 36, 9);
    expect(areaM2(plane(0.5))).toBeCloseTo(3, 9);
  });

  test("three quarters, the cubic 1 - (x/L)^3: flotation at 0.4 L, B L^3 (1/6 - 0.12) by integration", () => {
    expect(flotationMm(plane(0.75))).toBeCloseTo(1600, 9);
    expect(longitudinalInertiaM4(plane(0.75))).toBeCloseTo(1.5 * 64 * (1 / 6 - 0.12), 9);
  });

  test("a fullness of 0 or over 1, or no length, is refused", () => {
    expect(() => hydrostatics(plane(0))).toThrow(RangeError);
    expect(() => hydrostatics(plane(1.01))).toThrow(RangeError);
    expect(() => hydrostatics({ ...plane(0.8), waterlineLengthMm: 0 })).toThrow(RangeError);
  });
});
