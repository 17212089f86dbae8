import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readMotorForm, readSternForm } from "#lib/entry/form.ts";
import { exactText, formOf } from "#lib/entry/form-of.ts";
import { anyMotor, anyStern } from "#tests/lib/entry/any-record.ts";

const kinds = { id: "a-motor", label: "A motor" };

describe("a typed form", () => {
  test("becomes a record, and the texts are kept as typed", () => {
    const result = readMotorForm(
      {
        shaftLengthMm: { text: '15 1/2"', how: "measured", plusMinus: "1/16" },
        powerKw: { text: "6 hp", how: "declared" },
        massKg: { text: "" },
        pinAnglesDeg: { text: "−4, 0 4;8.5", plusMinus: "1" },
        tillerOffsetMm: { text: "-12 mm" },
      },
      {
        ...kinds,
        notes: "",
        shaftClass: "short",
        strokes: "4",
        year: "1987",
        tillerFolds: "yes",
        steering: "tiller",
      },
    );
    expect(result).toEqual({
      ok: true,
      record: {
        ...kinds,
        shaftClass: "short",
        strokes: 4,
        year: 1987,
        tillerFolds: true,
        steering: "tiller",
        // 15.5 x 25.4 = 393.7; 25.4 / 16 = 1.5875; 6 mechanical horsepower of 745.69987 W = 4.4742 kW.
        shaftLengthMm: { value: 393.7, plusMinus: 1.5875, how: "measured" },
        powerKw: { value: expect.closeTo(4.4742, 4), how: "declared" },
        pinAnglesDeg: { value: [-4, 0, 4, 8.5], plusMinus: 1, how: "measured" },
        tillerOffsetMm: { value: -12, how: "measured" },
      },
      raw: {
        shaftLengthMm: '15 1/2"',
        "shaftLengthMm.plusMinus": "1/16",
        powerKw: "6 hp",
        pinAnglesDeg: "−4, 0 4;8.5",
        "pinAnglesDeg.plusMinus": "1",
        tillerOffsetMm: "-12 mm",
      },
    });
  });

  test("asks and complains at every field at once, and guesses nothing", () => {
    const result = readMotorForm(
      {
        shaftLengthMm: { text: "394" },
        massKg: { text: "25" },
        cowlWidthMm: { text: "15 1/0 in" },
        cowlTopMm: { text: "10 mm" },
        pinAnglesDeg: { text: "4,8,12" },
        bracketDropMm: { text: "-5 mm" },
      },
      { id: "Bad Id", label: "" },
      "in",
    );
    if (result.ok) throw new Error("must not be taken");
    expect(result.asks.map(({ field, readings }) => [field, readings[0]?.unit])).toEqual([
      ["shaftLengthMm", "in"],
      ["massKg", "lb"],
    ]);
    expect(result.errors.map(({ field }) => field).sort()).toEqual(
      ["bracketDropMm", "cowlTopMm", "cowlWidthMm", "id", "label", "pinAnglesDeg"].sort(),
    );
  });

  test("what is impossible as a whole is said at a field", () => {
    const result = readSternForm({ plateHighMm: { text: "-40 mm" }, plateLowMm: { text: "0 mm" } }, kinds);
    expect(result).toMatchObject({
      ok: false,
      errors: [{ field: "plateLowMm", says: "The lowest plate (0 mm) lies above the highest (-40 mm)." }],
    });
  });

  test("boxes and limits are typed like every other length", () => {
    const box = { label: "Ladder", fromMm: ["1 in", "0 mm", "-2 in"], toMm: ["10 cm", "30 mm", "5"] };
    const asked = readSternForm(
      {},
      { ...kinds, obstacles: [box], limits: { soleRoomMm: "1 in", plateHighMm: "" } },
    );
    expect(asked).toMatchObject({ ok: false, asks: [{ field: "obstacles.0.toMm.2" }], errors: [] });
    const whole = { ...box, toMm: ["10 cm", "30 mm", "5 mm"] };
    expect(readSternForm({}, { ...kinds, obstacles: [whole], limits: { soleRoomMm: "1 in" } })).toMatchObject(
      {
        ok: true,
        record: {
          obstacles: [{ label: "Ladder", fromMm: [25.4, 0, -50.8], toMm: [100, 30, 5] }],
          limits: { soleRoomMm: 25.4 },
        },
      },
    );
  });

  test("a plus-minus alone is in the unit of its number, but not after metres", () => {
    expect(readSternForm({ seatMm: { text: "394 mm", plusMinus: "2" } }, kinds)).toMatchObject({
      ok: true,
      record: { seatMm: { value: 394, plusMinus: 2 } },
    });
    expect(readSternForm({ seatMm: { text: "0.394 m", plusMinus: "2" } }, kinds)).toMatchObject({
      ok: false,
      asks: [{ field: "seatMm.plusMinus" }],
    });
  });

  test("strange keys are named, never taken", () => {
    const typed = JSON.parse(
      '{"__proto__":{"text":"1 mm"},"seatMn":{"text":"1 mm"},"constructor":{"text":"x"}}',
    );
    const result = readSternForm(typed, kinds);
    if (result.ok) throw new Error("must not be taken");
    expect(result.errors.map(({ field }) => field).sort()).toEqual(["__proto__", "constructor", "seatMn"]);
  });
});

describe("a record as a form", () => {
  test("keeps the text as typed while it still says the value", () => {
    expect(exactText(393.7, "mm", "mm", '15 1/2"')).toBe('15 1/2"');
    expect(exactText(394, "mm", "mm", '15 1/2"')).toBe("394 mm");
    expect(exactText(393.7, "mm", "in")).toBe("15 1/2 in");
    expect(exactText(394, "mm", "in")).toBe("394 mm");
    expect(exactText(-4.5, "deg", "mm")).toBe("−4.5°");
    expect(exactText(1.234, "mm", "mm")).toBe("1.2340 mm");
  });

  test.each(["mm", "in"] as const)(
    "reads back as the same motor and the same stern, to the last bit (%s)",
    (system) => {
      fc.assert(
        fc.property(anyMotor, (motor) => {
          const { typed, kinds: facts } = formOf(motor, system);
          const result = readMotorForm(typed, facts, system);
          expect(result.ok ? result.record : result).toEqual(motor);
        }),
        { numRuns: 300 },
      );
      fc.assert(
        fc.property(anyStern, (stern) => {
          const { typed, kinds: facts } = formOf(stern, system);
          const result = readSternForm(typed, facts, system);
          expect(result.ok ? result.record : result).toEqual(stern);
        }),
        { numRuns: 300 },
      );
    },
  );
});
