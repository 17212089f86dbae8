import { describe, expect, test } from "vitest";
import { aboardSchema, readAboard } from "#lib/entry/aboard.ts";
import { problems } from "#lib/entry/problem.ts";
import { twoRequestSchema } from "#lib/entry/two.ts";
import { USUAL_ABOARD } from "#lib/rig/afloat/aboard.ts";

describe("what is aboard, as sent", () => {
  test("what is left out is as usual: two of 75 kg and 20 kg of fuel", () => {
    expect(aboardSchema.parse({})).toEqual(USUAL_ABOARD);
    expect(aboardSchema.parse({ persons: 3 })).toEqual({ ...USUAL_ABOARD, persons: 3 });
  });

  test.each([
    [{ persons: 1.5 }, "whole number"],
    [{ persons: -1 }, "between 0 and 30"],
    [{ fuelKg: "much" }, "must be a number"],
    [{ dog: 1 }, "dog"],
  ])("%j is refused in words", (given, words) => {
    const parsed = aboardSchema.safeParse(given);
    expect(parsed.success).toBe(false);
    expect(
      problems(parsed.error!)
        .map(({ detail }) => detail)
        .join(" "),
    ).toContain(words);
  });
});

describe("what is aboard, as typed", () => {
  test("bare numbers in the usual unit, others with their own", () => {
    // 165 lb = 74.84 kg; 4 ft = 1219.2 mm.
    const { aboard, errors } = readAboard(
      { persons: "3", personKg: "165 lb", fuelKg: "12", fuelForwardMm: "4 ft" },
      "mm",
    );
    expect(errors).toEqual({});
    expect(aboard.persons).toBe(3);
    expect(aboard.personKg).toBeCloseTo(74.84, 2);
    expect(aboard.fuelKg).toBe(12);
    expect(aboard.fuelForwardMm).toBeCloseTo(1219.2, 6);
  });

  test("what cannot be read is said at its field, kept as typed, and the usual stands in its place", () => {
    const read = readAboard({ persons: "many", personKg: "80", fuelKg: "99999" }, "mm");
    expect(Object.keys(read.errors).sort()).toEqual(["fuelKg", "persons"]);
    expect(read.texts.persons).toBe("many");
    expect(read.aboard).toEqual({ ...USUAL_ABOARD, personKg: 80 });
  });
});

test("two motors want a list of two and their places", () => {
  const ids = { motorIds: ["a-motor", "b-motor"], sternId: "a-stern" };
  expect(twoRequestSchema.safeParse({ ...ids, offsetsMm: [300, -300] }).success).toBe(true);
  for (const wrong of [
    ids,
    { ...ids, offsetsMm: [300] },
    { ...ids, offsetsMm: [300, 9000] },
    { ...ids, motorIds: ["a-motor"], offsetsMm: [1, 2] },
  ])
    expect(twoRequestSchema.safeParse(wrong).success).toBe(false);
});
