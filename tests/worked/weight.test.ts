/**
 * Weights and persons, 33 CFR 183.35 to 183.43 and 183.75 (public domain), against the regulation's own
 * table and the worked examples of the United States Coast Guard's boatbuilder's handbook
 * (uscgboating.org, Safe Loading, subpart C, special discussion of 183.41; public domain).
 */
import { describe, expect, test } from "vitest";
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { motorAllowance, TABLE_183_75 } from "#lib/standards/cfr-33-183-75.ts";
import {
  persons,
  personsWeight,
  personsWeightUpToTwoHp,
  weightCapacityKg,
} from "#lib/standards/cfr-33-183-loading.ts";

const lb = (pounds: number): number => pounds * KG_PER_POUND;
const kW = (hp: number): number => (hp * WATTS_PER_HORSEPOWER) / 1000;

describe("Table 183.75", () => {
  test("has fourteen rows that follow one another from 0.1 to 350 hp, a tenth apart", () => {
    expect(TABLE_183_75).toHaveLength(14);
    expect([TABLE_183_75[0]![0], TABLE_183_75.at(-1)![1]]).toEqual([0.1, 350]);
    TABLE_183_75.slice(1).forEach(([from], i) => {
      expect(from - TABLE_183_75[i]![1]).toBeCloseTo(0.1, 9);
    });
  });

  // Column 9 typed again from the table as printed by newboatbuilders.com (ABYC S-30, table 1A).
  const totals = [32, 44, 94, 185, 234, 350, 459, 628, 649, 723, 762, 863, 914, 1117];
  test.each(TABLE_183_75.map((row, i) => [row, totals[i]!] as const))(
    "row %j holds together",
    (row, total) => {
      const [from, to, dry, running, swamped, controls, battery, , tank, sum] = row;
      expect(sum).toBe(total);
      expect(running).toBe(Math.round(1.05 * dry));
      expect(swamped).toBe(Math.round(0.85 * running));
      expect(sum).toBe(running + controls + battery + tank);
      for (const hp of [from, to]) {
        expect(motorAllowance(kW(hp))?.totalKg).toBeCloseTo(lb(total), 9);
        expect(motorAllowance(kW(hp))?.dryKg).toBeCloseTo(lb(dry), 9);
      }
    },
  );

  test("controls are 5 % of dry from the fourth row on; the first three have none", () => {
    expect(TABLE_183_75.slice(0, 3).map((row) => row[5])).toEqual([0, 0, 0]);
    for (const row of TABLE_183_75.slice(3)) expect(row[5]).toBe(Math.round(0.05 * row[2]));
  });

  test("25 hp with a portable tank sets 350 lb aside; with fixed fuel 250 lb; two of them 700 lb", () => {
    expect(motorAllowance(kW(25))!.totalKg).toBeCloseTo(lb(350), 9);
    expect(motorAllowance(kW(25), { fixedFuel: true })!.totalKg).toBeCloseTo(lb(250), 9);
    expect(motorAllowance(kW(25), { motors: 2 })!.totalKg).toBeCloseTo(lb(700), 9);
  });

  // By hand: dry x 0.9, x 1.05, x 0.85.
  test.each([
    [15, 114.3, 120.0, 102.0],
    [25, 168.3, 176.7, 150.2],
    [50, 257.4, 270.3, 229.7],
  ])(
    "%d hp on a transom of 20 in or less: %d dry, %d running, %d lb swamped",
    (hp, dry, running, swamped) => {
      const low = motorAllowance(kW(hp), { lowTransom: true })!;
      expect(low.dryKg / KG_PER_POUND).toBeCloseTo(dry, 1);
      expect(low.runningKg / KG_PER_POUND).toBeCloseTo(running, 1);
      expect(low.swampedKg / KG_PER_POUND).toBeCloseTo(swamped, 1);
      const less = running - motorAllowance(kW(hp))!.runningKg / KG_PER_POUND;
      expect(low.totalKg / KG_PER_POUND).toBeCloseTo(
        motorAllowance(kW(hp))!.totalKg / KG_PER_POUND + less,
        1,
      );
    },
  );

  test.each([2.05, 3.95, 6.95, 34.95])("in the gap at %d hp the heavier row is taken, and said", (hp) => {
    const found = motorAllowance(kW(hp))!;
    expect(found.rowHp[0]).toBeGreaterThan(hp);
    expect(found.notes.map(({ id }) => id)).toContain("between-rows");
    expect(motorAllowance(kW(found.rowHp[0]))!.notes.map(({ id }) => id)).not.toContain("between-rows");
  });

  test("above 350 hp there is no row, and none is made up; no power is refused", () => {
    expect(motorAllowance(kW(350.1))).toBeUndefined();
    expect(() => motorAllowance(0)).toThrow(RangeError);
  });
});

describe("persons, the handbook's three examples", () => {
  test("550 lb: (32 + 550) / 141 = 4.12, 4 persons, and no test is asked for", () => {
    const found = personsWeight(lb(900), lb(350));
    expect(found.kg).toBeCloseTo(lb(550), 9);
    expect(found.testToo).toBe(false);
    expect(persons(found.kg)).toBe(4);
  });

  test("547 lb and 545 lb in the test: 545 / 0.6 = 908, the lesser is 547, 4 persons", () => {
    const found = personsWeight(lb(897), lb(350), lb(545));
    expect(found).toMatchObject({ testToo: true, limitedBy: "weight" });
    expect(found.kg).toBeCloseTo(lb(547), 9);
    expect(persons(found.kg)).toBe(4);
  });

  test("547 lb and 328 lb in the test: 328 / 0.6 = 546.67 (the page cuts it to 546), 4 persons", () => {
    const found = personsWeight(lb(897), lb(350), lb(328));
    expect(found.limitedBy).toBe("test");
    expect(found.kg / KG_PER_POUND).toBeCloseTo(546.67, 2);
    expect(persons(found.kg)).toBe(4);
  });

  // (n - 1/2) 141 - 32, by hand: a half goes up.
  test.each([
    [38.5, 1],
    [179.5, 2],
    [320.5, 3],
    [461.5, 4],
    [602.5, 5],
  ])("%d lb is where %d persons begin", (pounds, count) => {
    expect(persons(lb(pounds))).toBe(count);
    expect(persons(lb(pounds - 0.01))).toBe(count - 1);
  });
});

describe("weight capacity", () => {
  const hull = { maxDisplacementKg: 1500, boatKg: 300 };
  test("a fifth of 1200 kg over 2 hp (183.35), three tenths up to it (183.37)", () => {
    expect(weightCapacityKg(hull, "over 2 hp")).toBeCloseTo(240, 9);
    expect(weightCapacityKg(hull, "up to 2 hp")).toBeCloseTo(360, 9);
    expect(weightCapacityKg(hull, "manual")).toBeCloseTo(360, 9);
    expect(weightCapacityKg({ maxDisplacementKg: 200, boatKg: 300 }, "over 2 hp")).toBe(0);
  });

  test("nine tenths for persons under oars, 25 lb less with 2 hp (183.43)", () => {
    expect(personsWeightUpToTwoHp(lb(500), "manual")).toBeCloseTo(lb(450), 9);
    expect(personsWeightUpToTwoHp(lb(500), "up to 2 hp")).toBeCloseTo(lb(425), 9);
  });
});
