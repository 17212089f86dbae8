import { describe, expect, test } from "vitest";
import { ask, margin, taken, untold, without } from "./bench.ts";

const ID = "obstacle-room";
const thwart = (top: number) => ({
  obstacles: [{ label: "thwart", fromMm: [300, -500, top - 100], toMm: [400, 500, top] }],
});

describe("Room beside other obstacles", () => {
  test("a thwart under the tilted cowl", () => {
    // Full up at 95 degrees. The thwart's upper front corner (400, -100) in the leg's frame:
    // X = (400 - 30) cos 95 - (-100 - 40) sin 95 = -32.24761 + 139.46726 = 107.21965; the cowl's front face
    // lies at X = 20: 87.21965 clear.
    expect(margin(ID, thwart(-100))).toBeCloseTo(87.21965 - 25.4, 2);
  });

  test("the edge: each millimetre up takes sin 95 = 0.99619 of it", () => {
    // 61.81965 / 0.9961947 = 62.0558 up to the limit.
    expect(ask(ID, thwart(-100 + 62)).outcome).toBe("fits");
    expect(ask(ID, thwart(-100 + 62.1)).outcome).toBe("fouls");
  });

  test("the tightest of several rules, by its own name", () => {
    const both = [
      ...thwart(-100).obstacles,
      { label: "ladder", fromMm: [-60, 95, -300], toMm: [-20, 130, -100] },
    ];
    // Ladder beside the leg (40 wide each way, straight down): 95 - 40 = 55, nearer than the thwart's 87.
    const { says, ruling } = ask(ID, { obstacles: both });
    expect(ruling?.margin).toBeCloseTo(55 - 25.4, 2);
    expect(says).toContain("The leg passes 55 mm from ladder");
  });

  test("corners given the other way round are the same box", () => {
    const turned = [{ label: "thwart", fromMm: [400, 500, -100], toMm: [300, -500, -200] }];
    expect(margin(ID, { obstacles: turned })).toBeCloseTo(margin(ID, thwart(-100)), 6);
  });

  test("spread comes from the motor alone", () => {
    // The axis' height, the arc's lever and the cowl's front: front weighs 1 at that pose.
    const { ruling } = ask(ID, { ...thwart(-100), cowlFrontMm: taken(120, 3), seatMm: taken(508, 50) });
    expect(ruling?.u).toBeCloseTo(3 / Math.sqrt(3), 3);
  });

  test("not asked where nothing was listed; the motor's numbers are needed where something was", () => {
    expect(ask(ID).outcome).toBe("not asked");
    expect(ask(ID, { obstacles: [] }).outcome).toBe("not asked");
    const needs = ["cowlFrontMm", "tiltAxisAboveMm", "midsectionWidthMm"];
    expect(without(ID, needs, thwart(-100))).toEqual(untold(needs));
  });

  test("the owner's room, said to be the owner's", () => {
    const own = { ...thwart(-100), limits: { obstacleRoomMm: 100 } };
    expect(margin(ID, own)).toBeCloseTo(87.21965 - 100, 2);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ value: 100, status: "set by the owner" });
  });
});
