import { describe, expect, test } from "vitest";
import { ask, rooms, taken, untold, without } from "./bench.ts";

const ID = "screw-handles";
const NEEDS = ["soleDropMm", "screwDropMm", "handleSwingMm"];

describe("Clamp-screw handles", () => {
  test("six inches to the sole, and an inch below the sweep", () => {
    // 200 - 152.4 = 47.6; sweep 60 + 55 = 115, 200 - 115 - 25.4 = 59.6.
    const [drop, clear] = rooms(ID);
    expect(drop).toBeCloseTo(47.6, 9);
    expect(clear).toBeCloseTo(59.6, 9);
  });

  test("either edge", () => {
    // The drop: 152.4. Long handles: 60 + 100 + 25.4 = 185.4.
    expect(ask(ID, { soleDropMm: 152.4 }).outcome).toBe("fits");
    expect(ask(ID, { soleDropMm: 152.39 }).outcome).toBe("fouls");
    expect(ask(ID, { soleDropMm: 185.4, handleSwingMm: 100 }).outcome).toBe("fits");
    expect(ask(ID, { soleDropMm: 185.39, handleSwingMm: 100 }).outcome).toBe("fouls");
  });

  test("the edge that rules is the one least surely met", () => {
    expect(ask(ID, { soleDropMm: 160 }).ruling?.edge.limit.value).toBeCloseTo(152.4, 9);
    expect(ask(ID, { soleDropMm: 190, handleSwingMm: 100 }).ruling?.edge.limit.value).toBeCloseTo(25.4, 9);
    // Both edges have 10 to spare at 162.4 with a sweep of 127; the handles' spread is the wider.
    const spread = { screwDropMm: taken(72, 3), soleDropMm: taken(162.4, 1) };
    expect(ask(ID, spread).ruling?.edge.limit.value).toBeCloseTo(25.4, 9);
  });

  test("needs the sole's drop, the screws' drop and the handles' swing", () => {
    expect(without(ID, NEEDS)).toEqual(untold(NEEDS));
  });

  test("a sole too near fouls even where the handles were not measured", () => {
    expect(ask(ID, { soleDropMm: 120, handleSwingMm: undefined })).toMatchObject({
      outcome: "fouls",
      missing: ["handleSwingMm"],
    });
  });

  test("not asked where there is no well", () => {
    const none = [
      "soleDropMm",
      "soleAngleDeg",
      "wellDepthMm",
      "wellFrontHeightMm",
      "wellWidthAftMm",
      "wellWidthFrontMm",
      "sideFlareDeg",
    ];
    const changes = Object.fromEntries(none.map((key) => [key, undefined]));
    expect(ask(ID, changes).outcome).toBe("not asked");
  });

  test("not asked of a motor bolted through the transom; asked where nobody said how it is held", () => {
    const wrong = { soleDropMm: 20 };
    expect(ask(ID, { ...wrong, fixing: "bolted" })).toMatchObject({ outcome: "not asked", missing: [] });
    expect(ask(ID, { ...wrong, fixing: "clamped" }).outcome).toBe("fouls");
    expect(ask(ID, wrong).outcome).toBe("fouls");
  });

  test("the owner's limits, each for its own edge", () => {
    const [drop, clear] = rooms(ID, { limits: { soleDropMm: 190, screwHandlesMm: 70 } });
    expect(drop).toBe(10);
    expect(clear).toBe(15);
    expect(ask(ID, { limits: { soleDropMm: 201 } })).toMatchObject({
      outcome: "fouls",
      ruling: { margin: -1, edge: { limit: { status: "set by the owner" } } },
    });
  });
});
