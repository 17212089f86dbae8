import { describe, expect, test } from "vitest";
import { ask, rooms, taken, untold, without } from "./bench.ts";

const ID = "clamp-opening";
const NEEDS = ["clampOpeningMinMm", "clampOpeningMaxMm", "transomThicknessMm"];

describe("Clamp opening", () => {
  test("45 thick in clamps of 30 to 60: 15 to spare either way; 50 thick, 10 and 20", () => {
    expect(rooms(ID)).toEqual([15, 15]);
    expect(rooms(ID, { transomThicknessMm: 50 })).toEqual([10, 20]);
  });

  test("either edge: as thick as the clamps open, or as thin, still goes", () => {
    const at = (transomThicknessMm: number) => ask(ID, { transomThicknessMm }).outcome;
    expect([60, 60.01, 30, 29.99].map(at)).toEqual(["fits", "fouls", "fits", "fouls"]);
  });

  test("the edge that rules is said", () => {
    expect(ask(ID, { transomThicknessMm: 64 }).says).toContain("at most 60 mm: 4 mm short");
    expect(ask(ID, { transomThicknessMm: 23 }).says).toContain("at least 30 mm: 7 mm short");
  });

  test("spread: 1 mm on both, U = 2 sqrt(2/3) = 1.633", () => {
    const at = (thickness: number) =>
      ask(ID, {
        transomThicknessMm: taken(thickness, 1),
        clampOpeningMaxMm: taken(60, 1),
        clampOpeningMinMm: taken(30, 1),
      }).outcome;
    expect([58.3, 58.5, 61.6, 61.7].map(at)).toEqual(["fits", "cannot tell", "cannot tell", "fouls"]);
  });

  test("needs both openings and the thickness", () => {
    expect(without(ID, NEEDS)).toEqual(untold(NEEDS));
  });

  test("too thick is too thick, whatever the other opening", () => {
    expect(ask(ID, { transomThicknessMm: 70, clampOpeningMinMm: undefined })).toMatchObject({
      outcome: "fouls",
      missing: ["clampOpeningMinMm"],
    });
  });

  test("not asked of a motor bolted through the transom; asked where nobody said how it is held", () => {
    const wrong = { transomThicknessMm: 90 };
    expect(ask(ID, { ...wrong, fixing: "bolted" })).toMatchObject({ outcome: "not asked", missing: [] });
    expect(ask(ID, { ...wrong, fixing: "clamped" }).outcome).toBe("fouls");
    expect(ask(ID, wrong).outcome).toBe("fouls");
  });

  test("the owner's spare room, said to be the owner's", () => {
    const own = { limits: { clampRoomMm: 16 } };
    expect(rooms(ID, own)).toEqual([-1, -1]);
    expect(ask(ID, own)).toMatchObject({
      outcome: "fouls",
      ruling: { edge: { limit: { value: 16, status: "set by the owner" } } },
    });
  });
});
