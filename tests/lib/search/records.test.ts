import { describe, expect, test } from "vitest";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { wordsOf } from "#lib/search/query.ts";
import { searchRecords } from "#lib/search/records.ts";

const motors: Motor[] = [
  {
    id: "grey",
    label: "Grey tiller motor",
    shaftClass: "short",
    strokes: 2,
    powerKw: { value: 3.7, how: "declared" },
  },
  {
    id: "blue",
    label: "Blue club motor",
    shaftClass: "long",
    strokes: 4,
    powerKw: { value: 7.5, how: "declared" },
  },
  { id: "quiet", label: "Quiet lake motor", strokes: 0, notes: "Borrowed from the harbour shed" },
  { id: "remote", label: "Workboat motor", steering: "remote", shaftClass: "extra-long", year: 1998 },
];
const sterns: Stern[] = [
  { id: "pram", label: "Plywood pram", hullForm: "flat" },
  {
    id: "skiff",
    label: "Éider skiff",
    hullForm: "vee",
    hardChine: true,
    lengthOverallMm: { value: 4200, how: "measured" },
  },
];
const find = (query: string, records: readonly (Motor | Stern)[] = motors) =>
  searchRecords(
    records.map((record) => ({ record })),
    query,
  ).map(({ record }) => record.id);

describe("a search finds", () => {
  test.each([
    ["a word of the label", "grey", "grey"],
    ["the beginning of a word, as it is being typed", "workb", "remote"],
    ["a word with a letter missing", "qiet", "quiet"],
    ["a word with two letters swapped", "bleu club", "blue"],
    ["the class", "extra-long", "remote"],
    ["the steering", "remote", "remote"],
    ["the kind of engine", "electric", "quiet"],
    ["the power with its unit", "7.5 kW", "blue"],
    ["a power by its first figure", "3", "grey"],
    ["the year", "1998", "remote"],
    ["the notes", "harbour", "quiet"],
    ["words in any order from different places", "four-stroke long blue", "blue"],
    ["a slip in one word together with a number", "clbu 7.5", "blue"],
  ])("%s", (_what, query, id) => {
    expect(find(query)[0]).toBe(id);
  });

  test("letters with and without their accents", () => {
    expect(find("eider", sterns)).toEqual(["skiff"]);
    expect(find("ÉIDER", sterns)).toEqual(["skiff"]);
  });

  test("a stern by its form and its length", () => {
    expect(find("vee 4.2", sterns)).toEqual(["skiff"]);
    expect(find("hard chine", sterns)).toEqual(["skiff"]);
    expect(find("flat", sterns)).toEqual(["pram"]);
  });

  test("the label before the notes", () => {
    const records: Motor[] = [
      { id: "in-notes", label: "Old motor", notes: "hung on the dinghy" },
      { id: "in-label", label: "Dinghy motor" },
    ];
    expect(find("dinghy", records)).toEqual(["in-label", "in-notes"]);
  });
});

describe("a search does not find", () => {
  test("a record one of the words is not in", () => {
    expect(find("blue electric")).toEqual([]);
  });

  test("one number for another", () => {
    expect(find("7.4")).toEqual([]);
    expect(find("1989")).toEqual([]);
  });

  test("anything where nothing is like it", () => {
    expect(find("xylophone")).toEqual([]);
  });
});

test("a query of blanks finds everything, as it came", () => {
  expect(find("  \t ")).toEqual(["grey", "blue", "quiet", "remote"]);
});

test("a query is cut at 64 characters and 8 words", () => {
  expect(wordsOf("a".repeat(10_000))).toEqual(["a".repeat(64)]);
  expect(wordsOf("😀".repeat(100))).toEqual(["😀".repeat(64)]);
  expect(wordsOf("a b c d e f g h i j")).toHaveLength(8);
});

test.each(["(", "[a-", "\\", "^!=='", "'\"", "| & !", "__proto__", "constructor", "%_*", "\u0000", "\ud800"])(
  "the query %j is only text",
  (query) => {
    expect(Array.isArray(find(query))).toBe(true);
  },
);
