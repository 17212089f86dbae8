/** The address of a cut plan: read, written back, and what was typed in it told at its box. */
import { describe, expect, test } from "vitest";
import { cutAskedFrom, cutQuery, motorIdsFrom, planKey } from "#app/_parts/cut-plan/asked.ts";
import { printingFrom } from "#app/_parts/cut-plan/printing.ts";
import { rulerFrom } from "#app/_parts/cut-plan/ruler.ts";
import { isCutName, readAsBuilt, readCutChoices } from "#lib/entry/cut-text.ts";

const MM = { usual: "mm" } as const;

describe("the address", () => {
  test("is read and written back the same", () => {
    const asked = cutAskedFrom({
      motors: "a,b",
      units: "in",
      soleThicknessMm: "1/2 in",
      "posts.0.label": "post & knee",
      "built.seatMm": "500 mm",
      stranger: "x",
      wood: "",
    });
    expect(asked).toEqual({
      motors: ["a", "b"],
      lengths: "in",
      texts: { soleThicknessMm: "1/2 in", "posts.0.label": "post & knee" },
      built: { seatMm: "500 mm" },
    });
    expect(cutAskedFrom(Object.fromEntries(new URLSearchParams(cutQuery(asked))))).toEqual(asked);
  });

  test("holds each motor once, and six at most", () => {
    expect(motorIdsFrom(["a,b", "b,c"])).toEqual(["a", "b", "c"]);
    expect(motorIdsFrom("a,b,c,d,e,f,g,h")).toHaveLength(6);
    expect(motorIdsFrom(undefined)).toEqual([]);
  });

  test("knows its own names only", () => {
    const names = [
      "wood",
      "posts.3.fromMm.2",
      "frames.19.label",
      "posts.20.label",
      "posts.0.fromMm.3",
      "__proto__",
    ];
    expect(names.filter(isCutName)).toEqual(names.slice(0, 3));
  });

  test("names a plan's ticks by stern, motors and choices, not by the unit it is read in", () => {
    const asked = cutAskedFrom({ motors: "b,a", wood: "soft" });
    const key = planKey("s", asked);
    expect(planKey("s", { ...asked, lengths: "in", motors: ["a", "b"] })).toBe(key);
    expect(planKey("s", { ...asked, texts: {} })).not.toBe(key);
    expect(planKey("t", asked)).not.toBe(key);
  });
});

describe("what is typed", () => {
  test("lengths are read as people write them", () => {
    const read = readCutChoices({ soleThicknessMm: '1/2"', sideFlareDeg: "-8", wood: "soft" }, "in", MM);
    expect(read).toEqual({
      ok: true,
      value: { lengths: "in", soleThicknessMm: 12.7, sideFlareDeg: -8, wood: "soft" },
    });
  });

  test("a bare length is asked of a person, and counts in the key's unit for a program", () => {
    const asked = readCutChoices({ filletRadiusMm: "12" }, "mm", MM);
    expect(asked.ok ? [] : asked.asks.map(({ field, readings }) => [field, readings[0]!.text])).toEqual([
      ["filletRadiusMm", "12 mm"],
    ]);
    expect(readCutChoices({ filletRadiusMm: "12" }, "mm", { ...MM, bare: true })).toEqual({
      ok: true,
      value: { lengths: "mm", filletRadiusMm: 12 },
    });
  });

  test("every fault stands at its own box, in the row it was typed in", () => {
    const read = readCutChoices(
      {
        soleThicknessMm: "5 m",
        wood: "balsa",
        "posts.2.label": "post",
        "posts.2.fromMm.0": "4 cm",
        "posts.2.fromMm.1": "wide",
      },
      "mm",
      MM,
    );
    const fields = read.ok ? [] : read.errors.map(({ field }) => field);
    expect(fields).toEqual(expect.arrayContaining(["soleThicknessMm", "wood", "posts.2.fromMm.1"]));
    expect(fields.every((field) => !field.startsWith("posts.0"))).toBe(true);
  });

  test("a post typed whole becomes a box", () => {
    const corner = (end: string, values: string[]) =>
      values.map((value, axis) => [`posts.1.${end}.${axis}`, value] as const);
    const texts = Object.fromEntries([
      ["posts.1.label", "stern post"],
      ...corner("fromMm", ["45 mm", "-64 cm", "-20 in"]),
      ...corner("toMm", ["120 mm", "-79 cm", "4 in"]),
    ]);
    const read = readCutChoices(texts, "mm", MM);
    expect(read.ok && read.value.posts).toEqual([
      { label: "stern post", fromMm: [45, -640, -508], toMm: [120, -790, 101.6] },
    ]);
  });

  test("numbers measured after the saw count as measured", () => {
    expect(readAsBuilt({ seatMm: "20 in", strange: "5" }, MM)).toEqual({
      ok: true,
      value: { seatMm: { value: 508, how: "measured" } },
    });
  });
});

describe("the rule on the 100 mm bar", () => {
  test.each([
    ["99.5", true],
    ["100,4 mm", true],
    ["99.4", false],
    ["100.6 mm", false],
    ["9.94 cm", false],
  ])("%s: the templates may be used: %s", (text, good) => {
    expect(rulerFrom(text).good).toBe(good);
  });

  test("a correction undoes what the printer did; nonsense gets none", () => {
    expect(rulerFrom("98").factor! * 98).toBeCloseTo(100, 9);
    for (const text of ["4 in", "50", "a hundred", "-100", "1e2"]) {
      expect([text, rulerFrom(text).good, rulerFrom(text).factor !== undefined]).toEqual([
        text,
        false,
        text === "4 in",
      ]);
    }
  });

  test("an owner's name that cannot stand in a title block is told, not printed", () => {
    expect(printingFrom({ owner: "A. N. Onymous", paper: "letter" })).toMatchObject({
      paper: "letter",
      owner: "A. N. Onymous",
    });
    expect(printingFrom({ owner: "x".repeat(90) }).ownerSays).toContain("80 characters");
  });
});
