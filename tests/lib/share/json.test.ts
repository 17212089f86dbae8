import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readCollection, readJson, writeCollection, writeRecord } from "#lib/share/json.ts";
import { anyMotor, anyStern } from "#tests/lib/entry/any-record.ts";

const distinct = { maxLength: 5, selector: ({ id }: { readonly id: string }) => id };

test("what was written reads back the same, one record or all", () => {
  fc.assert(
    fc.property(fc.uniqueArray(anyMotor, distinct), fc.uniqueArray(anyStern, distinct), (motors, sterns) => {
      const text = writeCollection({ motors, sterns });
      const whole = { motors: { records: motors, errors: [] }, sterns: { records: sterns, errors: [] } };
      expect(readCollection(text)).toEqual(whole);
      expect(readCollection(new TextEncoder().encode(text))).toEqual(whole);
      expect(readJson("motor", text).records).toEqual(motors);
      for (const motor of motors)
        expect(readJson("motor", writeRecord(motor))).toEqual({ records: [motor], errors: [] });
      for (const stern of sterns)
        expect(readJson("stern", writeRecord(stern))).toEqual({ records: [stern], errors: [] });
    }),
    { numRuns: 150 },
  );
});

test("a list, a byte-order mark, a file of the other kind only", () => {
  expect(readJson("stern", '\ufeff[{"id":"a","label":"A"}]').records).toEqual([{ id: "a", label: "A" }]);
  expect(readJson("stern", '{"motors":[]}')).toEqual({ records: [], errors: [] });
});

test("good records are read, the others are told by number and place", () => {
  const list =
    '[{"id":"a","label":"A"},{"id":"b","label":"B","seatMm":1e309},{"id":"a","label":"A"},{"id":"c","label":"C","__proto__":{"seatMm":3},"seatMn":1},5]';
  const { records, errors } = readJson("stern", list);
  expect(records).toEqual([{ id: "a", label: "A" }]);
  expect(errors.map(({ row, column }) => `${row} ${column}`)).toEqual([
    "2 /seatMm",
    "3 /id",
    "4 /__proto__",
    "4 /seatMn",
    "5 ",
  ]);
});

describe("hostile files", () => {
  test.each<[string, string, RegExp]>([
    ["no JSON", "{\n\n  id: 1}", /not JSON/],
    ["nothing", "", /not JSON/],
    ["deep", "[".repeat(500_000), /not JSON/],
    ["deep and closed", `${"[".repeat(500_000)}${"]".repeat(500_000)}`, /./],
    ["more than 1 MB", `[${"1,".repeat(600_000)}1]`, /1 MB/],
    ["too many records", `[${"1,".repeat(5000)}1]`, /5000 records/],
    ["a number", "5", /must hold/],
    ["a stranger beside the lists", '{"motors":[],"sterns":[],"users":[]}', /nothing else/],
    ["a list that is none", '{"motors":5}', /must hold/],
  ])("%s", (_, text, words) => {
    const { records, errors } = readJson("motor", text);
    expect(records).toEqual([]);
    expect(errors[0]?.says).toMatch(words);
  });

  test("nothing is thrown, whatever is sent", () => {
    fc.assert(
      fc.property(fc.oneof(fc.json(), fc.string({ unit: "binary" })), (text) => {
        expect(readJson("motor", text)).toHaveProperty("errors");
        expect(readCollection(text)).toHaveProperty("motors");
      }),
      { numRuns: 2000 },
    );
  });
});
