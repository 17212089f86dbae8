import { describe, expect, test } from "vitest";
import { ask, margin, taken, untold, without } from "./bench.ts";

const ID = "clamp-depth";
const NO_WELL = {
  soleDropMm: undefined,
  soleAngleDeg: undefined,
  wellDepthMm: undefined,
  wellFrontHeightMm: undefined,
  wellWidthAftMm: undefined,
  wellWidthFrontMm: undefined,
  sideFlareDeg: undefined,
};

describe("Clamp depth", () => {
  test("pads reach 130 down, the sole lies 200 down: 70 of flat transom left", () => {
    expect(margin(ID)).toBe(70);
  });

  test("the edge: pads down to the sole fit, a hair lower foul", () => {
    expect(ask(ID, { soleDropMm: 130 }).outcome).toBe("fits");
    expect(ask(ID, { soleDropMm: 129.99 }).outcome).toBe("fouls");
    expect(margin(ID, { soleDropMm: 118 })).toBe(-12);
  });

  test("spread: 3 and 4 mm, U = 2 x 5/sqrt 3 = 5.77", () => {
    const at = (drop: number) => ask(ID, { soleDropMm: taken(drop, 3), clampDepthMm: taken(130, 4) }).outcome;
    expect([135.8, 135.7, 124.3, 124.2].map(at)).toEqual(["fits", "cannot tell", "cannot tell", "fouls"]);
  });

  test("needs the pads' depth and the sole's drop", () => {
    expect(without(ID, ["clampDepthMm", "soleDropMm"])).toEqual(untold(["clampDepthMm", "soleDropMm"]));
  });

  test("not asked where there is no well", () => {
    expect(ask(ID, NO_WELL).outcome).toBe("not asked");
  });

  test("not asked of a motor bolted through the transom; asked where nobody said how it is held", () => {
    const wrong = { soleDropMm: 20 };
    expect(ask(ID, { ...wrong, fixing: "bolted" })).toMatchObject({ outcome: "not asked", missing: [] });
    expect(ask(ID, { ...wrong, fixing: "clamped" }).outcome).toBe("fouls");
    expect(ask(ID, wrong).outcome).toBe("fouls");
  });

  test("the owner's spare room, said to be the owner's", () => {
    expect(ask(ID, { limits: { clampRoomMm: 70 } })).toMatchObject({
      outcome: "fits",
      ruling: { margin: 0, edge: { limit: { value: 70, status: "set by the owner" } } },
    });
  });
});
