/** Mass by the capacity label, and the allowances of 33 CFR 183.75 (82 FR 16512) beside it. 1 lb is 0.45359237 kg. */
import { describe, expect, test } from "vitest";
import { taken } from "../bench.ts";
import { afloat, EMPTY, figureOf, noteIds } from "./bench.ts";

const LB = 0.45359237;
const HP = 0.745699872;

describe("Motor mass", () => {
  test("the label's figure for the motor", () => {
    expect(afloat("motor-mass", { ratedMotorMassKg: 55 })).toMatchObject({ outcome: "fits", marginKg: 5 });
    expect(afloat("motor-mass", { ratedMotorMassKg: 45 })).toMatchObject({ outcome: "fouls", marginKg: -5 });
    // u = 3/sqrt 3: U = 3.46.
    expect(afloat("motor-mass", { ratedMotorMassKg: 53, massKg: taken(50, 3) })).toMatchObject({
      outcome: "cannot tell",
      expandedUncertaintyKg: 3.46,
      measureNext: "massKg",
    });
  });

  test("the label's figure for persons, motor and gear: the nearer of the two rules", () => {
    // 9.4 hp: controls 5, battery 20, tank 50 lb = 34.02 kg. 50 + 34.02 + 150 = 234.02.
    const two = { ...EMPTY, persons: 2 };
    const total = (kg: number) => afloat("motor-mass", { ratedMotorMassKg: 60, ratedTotalMassKg: kg }, two);
    expect(total(240)).toMatchObject({ outcome: "fits", marginKg: 5.98 });
    expect(total(230)).toMatchObject({ outcome: "fouls", marginKg: -4.02 });
    expect(total(300)).toMatchObject({ outcome: "fits", marginKg: 10, need: 60 });
  });

  test("25 hp with a portable tank: 350 lb in all (Table 183.75, column 9), over a transom of more than 20 in", () => {
    const found = afloat("motor-mass", { powerKw: 25 * HP, seatMm: 600 });
    expect(figureOf(found, "Rule's allowance: running motor, controls, battery and tank")).toBeCloseTo(
      350 * LB,
      2,
    );
    expect(figureOf(found, "Rule's allowance: motor dry")).toBeCloseTo(187 * LB, 2);
    expect(figureOf(found, "Rule's allowance: controls")).toBeCloseTo(9 * LB, 2);
    // At 20 in the dry weight may drop a tenth.
    expect(figureOf(afloat("motor-mass", { powerKw: 25 * HP }), "Rule's allowance: motor dry")).toBeCloseTo(
      168.3 * LB,
      2,
    );
  });

  test("550 lb left for persons is four persons (United States Coast Guard handbook, subpart C, worked example)", () => {
    const found = afloat("motor-mass", { powerKw: 25 * HP, seatMm: 600, ratedTotalMassKg: 900 * LB });
    expect(figureOf(found, "Left for persons, by the rule's allowance")).toBeCloseTo(550 * LB, 2);
    expect(figureOf(found, "Persons, by the rule's allowance")).toBe(4);
    expect(noteIds(found)).not.toContain("tested");
    const less = afloat("motor-mass", { powerKw: 25 * HP, seatMm: 600, ratedTotalMassKg: 897 * LB });
    expect(figureOf(less, "Persons, by the rule's allowance")).toBe(4);
    expect(noteIds(less)).toContain("tested");
  });

  test("without a label it cannot be told, and the label is named; without a mass the mass", () => {
    expect(afloat("motor-mass")).toMatchObject({ outcome: "cannot tell", missing: ["ratedMotorMassKg"] });
    expect(afloat("motor-mass", { ratedMotorMassKg: 60, massKg: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["massKg"],
    });
    expect(afloat("motor-mass", { ratedTotalMassKg: 600, powerKw: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["powerKw"],
    });
    // A foul stands without the gear's weight.
    expect(afloat("motor-mass", { ratedTotalMassKg: 40, powerKw: undefined }).outcome).toBe("fouls");
  });
});
