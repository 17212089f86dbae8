import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatLength, type LengthFormat } from "#lib/entry/length-format.ts";
import { type LengthResult, type LengthUnit, readLength } from "#lib/entry/length-text.ts";
import { plainNumber } from "#lib/entry/number-text.ts";

const kinds = (result: LengthResult) => (result.kind === "refused" ? `refused: ${result.code}` : result.kind);
const readingsOf = (result: LengthResult) => (result.kind === "ask" ? result.readings : []);

describe("lengths that can be read one way only", () => {
  // 15 1/2 in = 15.5 x 25.4 mm = 393.7 mm; the inch is 25.4 mm exactly (1959 agreement).
  test.each([
    '15 1/2"',
    '15-1/2"',
    '15½"',
    "15 1⁄2 in",
    "1' 3 1/2\"",
    "1’ 3 ½”",
    "1′ 3 1/2″",
    "1 ft 3 1/2 in",
    "1'-3 1/2\"",
    "15.5in",
    '15,5"',
    "15 1/2 inches",
    "15½ in.",
    "+15 1/2 in",
    "1 foot 3 1/2 inch",
    "  15 1/2 in  ",
    "15 ½ in",
  ])("%s is 393.7 mm", (text) => {
    expect(readLength(text)).toEqual({ kind: "length", mm: 393.7, value: 15.5, unit: "in", text });
  });

  test.each<[string, number, LengthUnit]>([
    ["394mm", 394, "mm"],
    ["39.4 cm", 39.4, "cm"],
    ["39,4 cm", 39.4, "cm"],
    ["0.394 m", 0.394, "m"],
    ["0,394 m", 0.394, "m"],
    ["394 MM", 394, "mm"],
    ["３９４ｍｍ", 394, "mm"],
    ["٣٩٤ mm", 394, "mm"],
    ["39٫4 cm", 39.4, "cm"],
    ["394㎜", 394, "mm"],
    ["394 millimetres", 394, "mm"],
    [".394 m", 0.394, "m"],
  ])("%s is 394 mm", (text, value, unit) => {
    expect(readLength(text)).toEqual({ kind: "length", mm: 394, value, unit, text });
  });

  // Worked by hand: 15 x 25.4 = 381; 304.8 x 2 = 609.6; 25.4 / 2 = 12.7; 15.125 x 25.4 = 384.175.
  test.each([
    ["15''", 381],
    ["15′′", 381],
    ["1,234.5 mm", 1234.5],
    ["1.234,5 mm", 1234.5],
    ["1 234,5 mm", 1234.5],
    ["1 234 mm", 1234],
    ["1,234,567.5 mm", null],
    ["2 ft", 609.6],
    ["2'", 609.6],
    ['1/2"', 12.7],
    ["0 mm", 0],
    ["1.234 m", 1234],
    ["15.125 in", 384.175],
  ])("%s is %s mm", (text, mm) => {
    const result = readLength(text);
    if (mm === null) expect(kinds(result)).toBe("refused: too-large");
    else expect(result).toMatchObject({ kind: "length", mm });
  });
});

describe("what could mean two things is asked", () => {
  test("a bare number shows millimetres and inches, the record's usual unit first", () => {
    expect(readingsOf(readLength("394")).map(({ unit }) => unit)).toEqual(["mm", "cm", "in"]);
    expect(readingsOf(readLength("15", "in")).map(({ unit, mm }) => [unit, mm])).toEqual([
      ["in", 381],
      ["mm", 15],
      ["cm", 150],
      ["ft", 4572],
      ["m", 15000],
    ]);
  });

  test("nought is nought in every unit and is not asked", () => {
    expect(readLength("0", "in")).toEqual({ kind: "length", mm: 0, value: 0, unit: "in", text: "0" });
    expect(readLength("0.0")).toMatchObject({ kind: "length", mm: 0 });
  });

  test.each(["15 1/2", "15½"])("%s without a unit can be inches or feet", (text) => {
    expect(readingsOf(readLength(text)).map(({ mm }) => mm)).toEqual([393.7, 4724.4]);
  });

  test("1 3 1/2 is feet and inches, or a stray blank", () => {
    expect(readingsOf(readLength("1 3 1/2")).map(({ text, mm }) => [text, mm])).toEqual([
      ["15.5 in", 393.7],
      ["13.5 in", 342.9],
      ["13.5 ft", 4114.8],
    ]);
  });

  test("1,234 mm is thousands or decimals, and so is 1.234 mm", () => {
    expect(readingsOf(readLength("1,234 mm")).map(({ mm }) => mm)).toEqual([1234, 1.234]);
    expect(readingsOf(readLength("1.234 mm")).map(({ mm }) => mm)).toEqual([1.234, 1234]);
  });

  test("feet and a number without an inch mark", () => {
    expect(readingsOf(readLength("1' 3 1/2")).map(({ mm }) => mm)).toEqual([393.7]);
  });

  test('151/2" is a fraction, or 15 1/2 with the blank forgotten', () => {
    // 151/2 = 75.5; 75.5 x 25.4 = 1917.7.
    expect(readingsOf(readLength('151/2"')).map(({ mm }) => mm)).toEqual([1917.7, 393.7]);
  });

  test("minus is kept in the readings where minus is allowed", () => {
    expect(readingsOf(readLength("−15 1/2", "in", { signed: true })).map(({ mm }) => mm)).toEqual([
      -393.7, -4724.4,
    ]);
  });

  test("every reading says what to type, and that text reads as this reading and no other", () => {
    for (const typed of [
      "394",
      "15 1/2",
      "1 3 1/2",
      "1,234 mm",
      "1.234 mm",
      "1,234",
      '151/2"',
      "31/16",
      "1' 3",
    ]) {
      const readings = readingsOf(readLength(typed));
      expect(readings.length).toBeGreaterThan(0);
      for (const { text, mm, unit, says } of readings) {
        expect(readLength(text)).toMatchObject({ kind: "length", mm, unit });
        expect(says).toContain(text);
      }
    }
  });
});

describe("what cannot be a length is refused in its own words, with an example", () => {
  const refused: readonly (readonly [string, string])[] = [
    ['15 1/0"', "zero-below"],
    ['-15"', "negative"],
    ["1e3mm", "exponent"],
    ['15 31/16"', "fraction-above-one"],
    ['15"x2"', "two-lengths"],
    ['15 1/2 1/2"', "two-fractions"],
    ["15 1/2 mm", "fraction-metric"],
    ["NaN", "not-a-number"],
    ["Infinity mm", "infinite"],
    ["0x10 mm", "hexadecimal"],
    ["9".repeat(400), "too-many-digits"],
    [`${" 394".repeat(20)} mm`, "too-long"],
    ['15 1/128"', "denominator"],
    ['15 1/3"', "denominator"],
    ["", "empty"],
    ["   ", "empty"],
    ["mm", "no-number"],
    ["15 yd", "unknown-unit"],
    ["1.2.3 mm", "number-shape"],
    ["12,34,5 mm", "number-shape"],
    ["1' 13\"", "inches-after-feet"],
    ["1.5' 3\"", "feet-whole"],
    ['15.5 1/2"', "fraction-decimal"],
    ["1 m 20 cm", "two-lengths"],
    ["15² mm", "unreadable"],
    ["9999999999 mm", "too-large"],
    ["<b>15</b> mm", "unreadable"],
  ];
  test.each(refused)("%s: %s", (text, code) => {
    const result = readLength(text);
    expect(kinds(result)).toBe(`refused: ${code}`);
    expect(result).toMatchObject({ text, says: expect.stringMatching(/\d+(\.\d+)? ?(mm|cm|in|")/) });
  });

  test("no two faults share their words", () => {
    const words = new Map(
      refused.map(([text, code]) => {
        const result = readLength(text);
        return [code, result.kind === "refused" ? result.says : ""];
      }),
    );
    expect(new Set(words.values()).size).toBe(words.size);
  });

  test("minus is read where a number may lie on either side, in every kind of dash", () => {
    for (const dash of ["-", "−", "–"])
      expect(readLength(`${dash}15 1/2"`, "in", { signed: true })).toMatchObject({
        mm: -393.7,
        value: -15.5,
      });
  });
});

describe("laws", () => {
  const mm = fc.double({ min: -20_000, max: 20_000, noNaN: true });
  // The step of each format and half of it: rounding may move a value by no more than that.
  const formats: readonly (readonly ["mm" | "in", LengthFormat, number])[] = [
    ["mm", {}, 0.1],
    ["mm", { decimals: 0 }, 1],
    ["mm", { decimals: 2 }, 0.01],
    ["in", {}, 25.4 / 16],
    ["in", { division: 64 }, 25.4 / 64],
    ["in", { division: 1 }, 25.4],
  ];

  test.each(formats)(
    "reading what was formatted gives the value to the format's step: %s %o",
    (system, format, step) => {
      fc.assert(
        fc.property(mm, (value) => {
          const result = readLength(formatLength(value, system, format), system, { signed: true });
          if (result.kind !== "length") return false;
          const nearest = Math.round(value / step) * step;
          const isTie = Math.abs(Math.abs(value / step - Math.trunc(value / step)) - 0.5) < 1e-6;
          return isTie ? Math.abs(result.mm - value) < step * 0.5001 : Math.abs(result.mm - nearest) < 1e-7;
        }),
        { numRuns: 10_000 },
      );
    },
  );

  test("a number written in full reads back as itself, to the last bit", () => {
    fc.assert(
      fc.property(mm, (value) => {
        fc.pre(Math.abs(value) >= 1e-6 || value === 0);
        const result = readLength(`${plainNumber(value)} mm`, "mm", { signed: true });
        return result.kind === "length" && result.mm === value + 0;
      }),
      { numRuns: 10_000 },
    );
  });

  test("no text throws, and every answer is a length that is finite, a question with readings or a refusal with words", () => {
    const pieces = fc.constantFrom(
      ..."0 1 3 15 12 1/2 ½ . , ' \" - − + / mm cm in ft x e ∞ ² \u200f \u0000 ３ ٣ 1,234".split(" "),
      " ",
    );
    const text = fc.oneof(
      fc.string({ unit: "binary", maxLength: 60 }),
      fc.string({ unit: "grapheme", maxLength: 500 }),
      fc.array(pieces, { maxLength: 14 }).map((list) => list.join("")),
      fc.array(pieces, { maxLength: 14 }).map((list) => list.join(" ")),
    );
    fc.assert(
      fc.property(text, fc.boolean(), (typed, signed) => {
        const result = readLength(typed, "in", { signed });
        if (result.kind === "length") return Number.isFinite(result.mm) && (signed || result.mm >= 0);
        if (result.kind === "refused") return result.says.length > 20;
        return result.readings.length > 0 && result.readings.every((one) => Number.isFinite(one.mm));
      }),
      { numRuns: 20_000 },
    );
  });

  test("very long text is refused unread", () => {
    for (const text of [
      "1".repeat(1e6),
      "1 ".repeat(1e6),
      "1/".repeat(1e6),
      " ".repeat(1e6),
      "(".repeat(1e6),
    ])
      expect(readLength(text).kind).toBe("refused");
  });
});
