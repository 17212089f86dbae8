/** The index on a harbour's records among thousands of generated ones; the queries were written by hand (harbour.ts). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { generatedRecords } from "#app/_command/generated-records.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { searchIndex } from "#lib/search/search-index.ts";
import { slips } from "#lib/search/slips.ts";
import { begun, crossing, harbour, slipped } from "#tests/lib/search/harbour.ts";

const crowd = [...generatedRecords({ motors: 3000, sterns: 600, seed: 5 })].map(({ record }) => ({ record }));
const index = searchIndex([...crowd, ...harbour.map((record) => ({ record }))]);
const first = (query: string, limit = 10) => index.search(query, limit).map(({ record }) => record.id);

/** Queries whose record is not among the first ten. */
const missed = (list: readonly (readonly [string, string])[]) =>
  list.filter(([query, wanted]) => !first(query).includes(wanted)).map(([query]) => query);

describe("among 3,600 others, the record that is meant is among the first ten", () => {
  test("in spite of slips of the finger", () => {
    expect(missed(slipped)).toEqual([]);
  });
  test("by words and amounts from different places of it", () => {
    expect(missed(crossing)).toEqual([]);
  });
  test("while the last word is being typed", () => {
    expect(missed(begun)).toEqual([]);
  });
});

const motor = (id: string, more: Partial<Motor>): { record: Motor } => ({
  record: { id, label: id, ...more },
});
const found = (records: readonly { record: Motor }[], query: string) =>
  searchIndex(records)
    .search(query)
    .map(({ record }) => record.id);

describe("amounts with their unit", () => {
  const few = [
    motor("weak", { powerKw: { value: 10.4, how: "declared" }, shaftClass: "short" }),
    // 15 hp = 11.19 kW (NIST SP 811, appendix B.8)
    motor("fifteen", { powerKw: { value: 11.2, how: "declared" }, shaftClass: "long" }),
    motor("leg", { shaftLengthMm: { value: 512, how: "measured" } }),
    motor("said", { notes: "Sold to us as a 15 hp." }),
    motor("extra", { shaftClass: "extra-long" }),
  ];
  test.each([
    ["15 hp", ["fifteen", "said"]],
    ["15hp", ["fifteen", "said"]],
    ["15 horsepower", ["fifteen", "said"]],
    ["11.2 kW", ["fifteen"]],
    ["11,2 kw", ["fifteen"]],
    // 15 PS = 11.03 kW (NIST SP 811, appendix B.8): within rounding of a motor that is called 15 hp
    ["15 PS", ["fifteen"]],
    // the nominal long shaft (common practice, no source), and a leg of 512 mm
    ["20 in", ["fifteen", "leg"]],
    ['20"', ["fifteen", "leg"]],
    ["20 inch", ["fifteen", "leg"]],
    ["508 mm", ["fifteen", "leg"]],
    ["25 in", ["extra"]],
    ["long 15 hp", ["fifteen"]],
    ["15 hp long", ["fifteen"]],
    ["extra long", ["extra"]],
    ["extra-long", ["extra"]],
  ])("%s", (query, ids) => {
    expect(found(few, query).sort()).toEqual([...ids].sort());
  });

  test("a number alone is no other number", () => {
    expect(found(few, "11.3")).toEqual([]);
    expect(found(few, "1")).toEqual(expect.arrayContaining(["fifteen", "weak", "said"]));
  });
});

test("the nearer word comes first: itself, then what it begins, then a slip", () => {
  const labels = ["otterboard", "otter", "utter", "heron"].map((label) => motor(label, {}));
  expect(found(labels, "otter")).toEqual(["otter", "otterboard"]);
  expect(found(labels, "ytter")).toEqual(["otter", "utter", "otterboard"]);
});

test("two words may stand written as one", () => {
  expect(found([motor("workboat", {}), motor("rowing boat", {})], "work boat")[0]).toBe("workboat");
});

test("records found by more of the query leave out those found by less", () => {
  const three = [motor("blue tiller", {}), motor("blue", {}), motor("tiller", {})];
  expect(found(three, "blue tiller")).toEqual(["blue tiller"]);
  expect(found(three, "blue zebra").sort()).toEqual(["blue", "blue tiller"]);
});

test("an index is not worn by searches, and answers the same again", () => {
  const before = first("kelp cuter");
  for (const [query] of [...slipped, ...crossing]) first(query);
  expect(first("kelp cuter")).toEqual(before);
  expect(first("")).toEqual([]);
  expect(first("of the with")).toEqual(first("of the with"));
  expect(searchIndex([]).search("anything")).toEqual([]);
});

test("more than fifty come with the best fifty in front, each once", () => {
  const all = first("tiller", 500);
  expect(new Set(all).size).toBe(500);
  expect(all.slice(0, 10)).toEqual(first("tiller", 10));
});

test("any text is only text", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (query) => {
      expect(index.search(query, 10).length).toBeLessThanOrEqual(10);
    }),
  );
});

describe("slips", () => {
  /** Whole and beginning, no more than `most`, else most + 1. */
  const both = (typed: string, word: string, most = 2) => {
    const packed = slips(typed, word, most);
    return [packed >> 4, packed & 15];
  };
  test.each([
    ["otter", "otter", 0, 0],
    ["oter", "otter", 1, 1],
    ["ottter", "otter", 1, 1],
    ["ottar", "otter", 1, 1],
    ["otetr", "otter", 1, 1],
    ["otter", "otterboard", 3, 0],
    ["oter", "otterboard", 3, 1],
    ["heron", "otter", 3, 3],
    ["", "ab", 2, 0],
    // optimal string alignment changes no stretch twice: three, where free transposition would need two
    ["ca", "abc", 3, 1],
  ])("from %j to %j: whole %i, beginning %i", (typed, word, whole, beginning) => {
    expect(both(typed, word)).toEqual([whole, beginning]);
  });

  test("agree with the distance worked out by its definition", () => {
    const letters = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 7 });
    fc.assert(
      fc.property(letters, letters, (typed, word) => {
        const whole = distance(typed, word);
        const beginnings = Array.from({ length: word.length + 1 }, (_, at) =>
          distance(typed, word.slice(0, at)),
        );
        expect(both(typed, word)).toEqual([Math.min(whole, 3), Math.min(...beginnings, 3)]);
      }),
    );
  });
});

/** Optimal string alignment distance by its recursive definition. */
function distance(a: string, b: string): number {
  if (a === "" || b === "") return a.length + b.length;
  const [headA, headB] = [a.slice(0, -1), b.slice(0, -1)];
  const same = a.at(-1) === b.at(-1);
  const ways = [distance(headA, b) + 1, distance(a, headB) + 1, distance(headA, headB) + (same ? 0 : 1)];
  if (a.length > 1 && b.length > 1 && a.at(-1) === b.at(-2) && a.at(-2) === b.at(-1))
    ways.push(distance(a.slice(0, -2), b.slice(0, -2)) + 1);
  return Math.min(...ways);
}
