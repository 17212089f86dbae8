import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plainNumber } from "#lib/entry/number-text.ts";
import { type QuantityResult, readAngle, readCount, readMass, readPower } from "#lib/entry/quantity-text.ts";
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { WATTS_PER_HORSEPOWER, WATTS_PER_METRIC_HORSEPOWER } from "#lib/quantity/power.ts";

const amountOf = (result: QuantityResult) => (result.kind === "quantity" ? result.value : result);
const readingsOf = (result: QuantityResult) => (result.kind === "ask" ? result.readings : []);

describe("constants", () => {
  test("the pound (international yard and pound agreement, 1959)", () => {
    expect(KG_PER_POUND).toBe(0.45359237);
  });
  test("the horsepowers (NIST SP 811, appendix B.8: 7.456999 E+02 and 7.354988 E+02)", () => {
    expect(WATTS_PER_HORSEPOWER).toBeCloseTo(745.6999, 4);
    expect(WATTS_PER_HORSEPOWER).toBeCloseTo(745.699872, 6);
    expect(WATTS_PER_METRIC_HORSEPOWER).toBeCloseTo(735.4988, 4);
    expect(WATTS_PER_METRIC_HORSEPOWER).toBeCloseTo(735.49875, 10);
  });
});

test.each([
  ["14", 14],
  ["14°", 14],
  ["14 deg", 14],
  ["−14,5 degrees", -14.5],
  ["+3", 3],
  ["1,234°", 1.234],
])("angle %s is %s degrees", (text, degrees) => {
  expect(amountOf(readAngle(text))).toBe(degrees);
});

test("masses have a unit or are asked, the usual unit first", () => {
  expect(amountOf(readMass("25 kg"))).toBe(25);
  // 55 x 0.45359237 = 24.94758035
  expect(amountOf(readMass("55 lbs"))).toBe(24.94758035);
  expect(readingsOf(readMass("25")).map(({ text }) => text)).toEqual(["25 kg", "25 lb"]);
  expect(readingsOf(readMass("25", "lb")).map(({ text }) => text)).toEqual(["25 lb", "25 kg"]);
});

test("powers have a unit or are asked", () => {
  expect(amountOf(readPower("4.4 kW"))).toBe(4.4);
  expect(amountOf(readPower("1200W"))).toBe(1.2);
  // 6 x 745.699872 W = 4474.199232 W; 6 x 735.49875 W = 4412.9925 W
  expect(amountOf(readPower("6 HP"))).toBeCloseTo(4.474199232, 8);
  expect(amountOf(readPower("6 PS"))).toBe(4.4129925);
  expect(readingsOf(readPower("6")).map(({ text }) => text)).toEqual(["6 kW", "6 hp", "6 PS"]);
});

test("counts are digits only", () => {
  expect(amountOf(readCount("2"))).toBe(2);
  expect(amountOf(readCount("٢"))).toBe(2);
  for (const text of ["2.5", "-2", "1e3", "two", "0x2", "99999999", ""])
    expect(readCount(text).kind).toBe("refused");
});

test.each([
  [readAngle, "14 rad"],
  [readAngle, "14° 30'"],
  [readAngle, "1 1/2°"],
  [readMass, "-5 kg"],
  [readMass, "5 st"],
  [readMass, "5 kg 3"],
  [readPower, "1e3 kW"],
  [readPower, "NaN kW"],
  [readPower, "9".repeat(400)],
  [readMass, ""],
])("refused with an example of what to type: %o %s", (read, text) => {
  expect(read(text)).toMatchObject({
    kind: "refused",
    text,
    says: expect.stringContaining("Type for instance"),
  });
});

test("a number written in full reads back to the last bit, and no text throws", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 300, noNaN: true }), (value) => {
      expect(amountOf(readAngle(`${plainNumber(value)}°`))).toBe(value);
      expect(amountOf(readMass(`${plainNumber(value)} kg`))).toBe(value);
      expect(amountOf(readPower(`${plainNumber(value)} kW`))).toBe(value);
    }),
  );
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 50 }), (text) => {
      for (const read of [readAngle, readMass, readPower, readCount]) {
        const result = read(text);
        if (result.kind === "quantity" && !Number.isFinite(result.value)) return false;
      }
      return true;
    }),
    { numRuns: 2000 },
  );
});
