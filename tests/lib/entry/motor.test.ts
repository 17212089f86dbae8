import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { z } from "zod";
import { motorPatchSchema, motorSchema } from "#lib/entry/motor.ts";
import { applyPatch } from "#lib/entry/patch.ts";
import { problems } from "#lib/entry/problem.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { anyMotor } from "#tests/lib/entry/any-record.ts";

const base = { id: "old-two-stroke", label: "Old two-stroke" };
const faults = (given: unknown) => {
  const result = motorSchema.safeParse(given);
  return result.success ? [] : problems(result.error);
};
const parsed = (given: object): Motor => motorSchema.parse({ ...base, ...given });

describe("what is taken", () => {
  test("a motor of which nothing is known but its name", () => {
    expect(parsed({})).toEqual(base);
  });
  test("a bare number counts as measured", () => {
    expect(parsed({ shaftLengthMm: 394 })).toEqual({
      ...base,
      shaftLengthMm: { value: 394, how: "measured" },
    });
  });
  test("a number with its half-width and how", () => {
    const shaftLengthMm = { value: 394, plusMinus: 2, how: "declared" };
    expect(parsed({ shaftLengthMm })).toEqual({ ...base, shaftLengthMm });
  });
  test("pin angles as a list or with how", () => {
    expect(parsed({ pinAnglesDeg: [-4, 0, 4] }).pinAnglesDeg).toEqual({ value: [-4, 0, 4], how: "measured" });
    const how = { value: [1], plusMinus: 2, how: "estimated" };
    expect(parsed({ pinAnglesDeg: how }).pinAnglesDeg).toEqual(how);
  });
  test("minus nought is nought, and what is less than a millionth is nothing", () => {
    const { tillerOffsetMm, tiltAxisAboveMm } = parsed({ tillerOffsetMm: -0, tiltAxisAboveMm: 1e-300 });
    expect(Object.is(tillerOffsetMm?.value, 0)).toBe(true);
    expect(tiltAxisAboveMm?.value).toBe(0);
  });
  test("texts are tidied: one spelling of each letter, no blanks around, empty notes left out", () => {
    expect(parsed({ label: "  Cafe\u0301 \n", notes: "   " })).toEqual({ ...base, label: "Café" });
    expect(parsed({ notes: "one\r\ntwo\rthree" }).notes).toBe("one\ntwo\nthree");
    expect(parsed({ label: "<script>alert(1)</script>" }).label).toBe("<script>alert(1)</script>");
  });
  test("every generated motor stays as it is", () => {
    fc.assert(
      fc.property(anyMotor, (motor) => {
        expect(motorSchema.parse(motor)).toEqual(motor);
      }),
      { numRuns: 300 },
    );
  });
});

describe("what is refused, at its field and in words", () => {
  test("out of range", () => {
    expect(faults({ ...base, shaftLengthMm: 20 })).toEqual([
      {
        pointer: "/shaftLengthMm",
        detail: "Shaft length must lie between 200 and 1000 mm; you gave 20.",
        code: "out-of-range",
      },
    ]);
    expect(faults({ ...base, shaftLengthMm: { value: 20, how: "measured" } })[0]?.pointer).toBe(
      "/shaftLengthMm/value",
    );
  });

  test.each(Object.entries(motorFields).filter(([key]) => key !== "pinAnglesDeg"))(
    "%s is taken at both ends of its range and refused beyond",
    (key, { min, max }) => {
      expect(faults({ ...base, [key]: min })).toEqual([]);
      expect(faults({ ...base, [key]: max })).toEqual([]);
      for (const beyond of [min - 0.01, max + 0.01])
        expect(faults({ ...base, [key]: beyond })).toMatchObject([
          { pointer: `/${key}`, code: "out-of-range" },
        ]);
    },
  );

  test("a key one slip away is named", () => {
    expect(faults({ ...base, shaftLenghtMm: 394, wholly: 1 })).toEqual([
      {
        pointer: "/shaftLenghtMm",
        detail: "There is nothing called “shaftLenghtMm” here. Did you mean shaftLengthMm?",
        code: "unknown-key",
      },
      { pointer: "/wholly", detail: "There is nothing called “wholly” here.", code: "unknown-key" },
    ]);
  });

  test.each<[unknown]>([
    [JSON.parse("1e309")],
    [Number.NaN],
    ["0x10"],
    [""],
    ["394"],
    [null],
    [true],
    [{}],
    [[394]],
    [{ value: "1" }],
    [{ value: 394, how: "measured", by: "me" }],
    [{ value: 394, how: "measured", plusMinus: -1 }],
    [{ value: 394, how: "measured", plusMinus: 501 }],
    [{ value: 394, how: "guessed" }],
    [{ value: 394 }],
  ])("shaft length %o", (given) => {
    const found = faults({ ...base, shaftLengthMm: given });
    expect(found.length).toBeGreaterThan(0);
    for (const { pointer, detail } of found) {
      expect(pointer).toMatch(/^\/shaftLengthMm(\/|$)/);
      expect(detail).not.toMatch(/Invalid|expected|received|undefined/);
    }
  });

  test.each<[string, object]>([
    ["/pinAnglesDeg", { pinAnglesDeg: [4, 4] }],
    ["/pinAnglesDeg", { pinAnglesDeg: [8, 4] }],
    ["/pinAnglesDeg", { pinAnglesDeg: [] }],
    ["/pinAnglesDeg", { pinAnglesDeg: Array.from({ length: 13 }, (_, hole) => hole) }],
    ["/pinAnglesDeg/value", { pinAnglesDeg: { value: [8, 4], how: "measured" } }],
    ["/pinAnglesDeg/1", { pinAnglesDeg: [4, "8"] }],
    ["/pinAnglesDeg", { pinAnglesDeg: [0, 40], tiltArcDeg: 39 }],
    ["/clampOpeningMinMm", { clampOpeningMinMm: 60, clampOpeningMaxMm: 50 }],
    ["/cowlBottomMm", { cowlBottomMm: 90, cowlTopMm: 90 }],
    ["/cowlBottomMm", { cowlBottomMm: -300, shaftLengthMm: 300 }],
    ["/plateToPropCentreMm", { plateToPropCentreMm: 200, plateToSkegMm: 200 }],
    ["/cowlFrontMm", { cowlFrontMm: 0, cowlAftMm: 0 }],
    ["/year", { year: 1987.5 }],
    ["/year", { year: 1850 }],
    ["/strokes", { strokes: 3 }],
    ["/shaftClass", { shaftClass: "medium" }],
    ["/tillerFolds", { tillerFolds: "yes" }],
    ["/id", { id: "Old Motor" }],
    ["/id", { id: "a--b" }],
    ["/id", { id: "../etc" }],
    ["/id", { id: "a".repeat(81) }],
    ["/label", { label: "" }],
    ["/label", { label: "x".repeat(81) }],
    ["/label", { label: "two\nlines" }],
    ["/label", { label: "right\u202eleft" }],
    ["/label", { label: "zero\u200bwidth" }],
    ["/label", { label: "\u3164" }],
    ["/label", { label: "half \ud800" }],
    ["/notes", { notes: "x".repeat(2001) }],
    ["/notes", { notes: "bell \u0007" }],
    ["/role", { role: "owner" }],
    ["/createdAt", { createdAt: 0 }],
  ])("%s: %o", (pointer, given) => {
    const found = faults({ ...base, ...given });
    expect(found.map((fault) => fault.pointer)).toEqual([pointer]);
    expect(found[0]?.detail).not.toMatch(/Invalid|expected|received|undefined|NaN/);
  });

  test("the label is counted in letters, not in halves of them", () => {
    expect(faults({ ...base, label: "👍".repeat(80) })).toEqual([]);
    expect(faults({ ...base, label: "👍".repeat(81) })).toMatchObject([{ pointer: "/label" }]);
  });

  test("boxes: no thickness, one label twice, too far away, too many", () => {
    const box = { label: "Tank", group: "tilting", fromMm: [0, 0, 0], toMm: [10, 10, 10] };
    expect(faults({ ...base, extraSolids: [box] })).toEqual([]);
    expect(faults({ ...base, extraSolids: [box, box] })).toMatchObject([
      { pointer: "/extraSolids/1/label", code: "impossible" },
    ]);
    expect(faults({ ...base, extraSolids: [{ ...box, toMm: [10, 0, 10] }] })).toMatchObject([
      { pointer: "/extraSolids/0/toMm" },
    ]);
    expect(faults({ ...base, extraSolids: [{ ...box, toMm: [10, 3001, 10] }] })).toMatchObject([
      { pointer: "/extraSolids/0/toMm/1" },
    ]);
    expect(faults({ ...base, extraSolids: [{ ...box, toMm: [10, 10] }] })).toMatchObject([
      { pointer: "/extraSolids/0/toMm" },
    ]);
    const many = Array.from({ length: 21 }, (_, at) => ({ ...box, label: `Box ${at}` }));
    expect(faults({ ...base, extraSolids: many })).toMatchObject([{ pointer: "/extraSolids" }]);
  });

  test("keys that reach into the machine are strangers like any other", () => {
    const given = JSON.parse(
      '{"id":"a","label":"A","__proto__":{"massKg":5},"constructor":{"x":1},"prototype":1}',
    );
    expect(faults(given).map(({ pointer, code }) => [pointer, code])).toEqual([
      ["/__proto__", "unknown-key"],
      ["/constructor", "unknown-key"],
      ["/prototype", "unknown-key"],
    ]);
    expect(({} as Record<string, unknown>).massKg).toBeUndefined();
  });

  test("ten thousand deep, a million keys: an answer, not an accident", () => {
    const deep = JSON.parse(`${'{"a":'.repeat(10_000)}1${"}".repeat(10_000)}`);
    expect(faults({ ...base, shaftLengthMm: deep }).length).toBeGreaterThan(0);
    expect(faults({ ...base, extraSolids: deep, notes: deep }).length).toBeGreaterThan(0);
    const wide = Object.fromEntries(Array.from({ length: 1_000_000 }, (_, at) => [`k${at}`, at]));
    expect(faults({ ...base, ...wide })).toHaveLength(100);
  });

  test("what is no record at all", () => {
    for (const given of [null, undefined, 5, "x", [], [base]])
      expect(faults(given)).toMatchObject([{ pointer: "" }]);
  });

  test("no JSON throws, and no message speaks of the machine", () => {
    const keys = fc.constantFrom(...Object.keys(motorFields), "id", "label", "notes", "extraSolids", "year");
    fc.assert(
      fc.property(fc.dictionary(keys, fc.jsonValue({ maxDepth: 3 })), (given) => {
        for (const { detail } of faults(given))
          expect(detail).not.toMatch(/Invalid|received|undefined|\[object/);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("changes", () => {
  const motor = parsed({ shaftLengthMm: 394, massKg: 20, notes: "x" });

  test("null takes a number away, what is not sent stays", () => {
    const patch = motorPatchSchema.parse({ massKg: null, label: "New name", steering: "tiller" });
    expect(motorSchema.parse(applyPatch(motor, patch))).toEqual({
      ...base,
      label: "New name",
      steering: "tiller",
      notes: "x",
      shaftLengthMm: { value: 394, how: "measured" },
    });
  });

  test("the id and the label cannot be taken away, strangers are named", () => {
    for (const given of [{ id: "other" }, { label: null }, { massKgs: 1 }, { massKg: 1 }])
      expect(motorPatchSchema.safeParse(given).success).toBe(false);
  });

  test("a change that makes the whole impossible is caught on the whole", () => {
    const whole = applyPatch(parsed({ cowlTopMm: 300 }), motorPatchSchema.parse({ cowlBottomMm: 400 }));
    expect(faults(whole)).toMatchObject([{ pointer: "/cowlBottomMm", code: "impossible" }]);
  });
});

test("the JSON Schemas can be written and name every key", () => {
  for (const schema of [motorSchema, motorPatchSchema]) {
    const written = z.toJSONSchema(schema, { io: "input" });
    expect(Object.keys(written.properties ?? {})).toEqual(expect.arrayContaining(Object.keys(motorFields)));
    expect(written.additionalProperties).toBe(false);
  }
});
