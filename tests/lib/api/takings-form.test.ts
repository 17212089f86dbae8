/** What the form for one taking makes of what is typed into it. */
import { describe, expect, test } from "vitest";
import { readTaking } from "#app/_parts/takings/read-taking.ts";

const read = (key: string, texts: Record<string, string>) => readTaking("motor", key, texts);

describe("a taking as typed", () => {
  test("is read as people write lengths, its ± in the same unit, the text kept", () => {
    const { taking, troubles, reading } = read("shaftLengthMm", {
      taking: '20 1/2"',
      "taking.plusMinus": "1/16",
      "taking.how": "declared",
      comment: " In the frost ",
    });
    expect(troubles).toEqual([]);
    // 20.5 x 25.4 = 520.7; 25.4 / 16 = 1.5875
    expect(taking).toEqual({
      key: "shaftLengthMm",
      taken: { value: 520.7, plusMinus: 1.5875, how: "declared" },
      raw: '20 1/2"',
      comment: "In the frost",
    });
    expect(reading).toMatchObject({ kind: "value", value: 520.7 });
  });

  test("of a mass is from papers where nobody says; a length is measured", () => {
    expect(read("massKg", { taking: "25 kg" }).taking?.taken.how).toBe("declared");
    expect(read("shaftLengthMm", { taking: "520 mm" }).taking?.taken.how).toBe("measured");
  });

  test("of the trim-pin holes is a list", () => {
    expect(read("pinAnglesDeg", { taking: "4 8 12.5" }).taking?.taken).toEqual({
      value: [4, 8, 12.5],
      how: "measured",
    });
    expect(read("pinAnglesDeg", { taking: "8 4" }).troubles).toMatchObject([{ name: "taking" }]);
  });
});

describe("what keeps it from being stored stands at its box", () => {
  test.each([
    ["nothing typed", "shaftLengthMm", {}, ["taking"]],
    ["no length", "shaftLengthMm", { taking: "twenty bananas" }, ["taking"]],
    ["a length no motor has", "shaftLengthMm", { taking: "5 m" }, ["taking"]],
    [
      "a spread that is none",
      "shaftLengthMm",
      { taking: "520 mm", "taking.plusMinus": "a bit" },
      ["taking.plusMinus"],
    ],
    [
      "a spread below nothing",
      "shaftLengthMm",
      { taking: "520 mm", "taking.plusMinus": "-1 mm" },
      ["taking.plusMinus"],
    ],
    ["both", "shaftLengthMm", { taking: "?", "taking.plusMinus": "?" }, ["taking", "taking.plusMinus"]],
    ["a comment without end", "shaftLengthMm", { taking: "520 mm", comment: "x".repeat(501) }, ["comment"]],
    ["no number of the vocabulary", "constructor", { taking: "520 mm" }, ["key"]],
  ])("%s", (_what, key, texts, names) => {
    const { taking, troubles } = read(key, texts);
    expect(taking).toBeUndefined();
    expect(troubles.map(({ name }) => name)).toEqual(names);
  });

  test("a bare number asks which unit, likely ones only", () => {
    const { reading, troubles } = read("shaftLengthMm", { taking: "20" });
    // 20 mm, 20 cm, 20 m, 20 in, 20 ft: a shaft is 200 to 1000 mm
    expect(reading.kind === "ask" && reading.readings.map(({ value }) => value).sort()).toEqual([200, 508]);
    expect(troubles[0]?.says).not.toMatch(/ft/);
  });
});
