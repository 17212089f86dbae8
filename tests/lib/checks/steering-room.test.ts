import { describe, expect, test } from "vitest";
import { ask, bench, margin, rooms, taken, untold, without } from "./bench.ts";

const ID = "steering-room";
/** The leg, 80 wide, is the widest thing that passes between the cheeks, 250 high; the cowl is slim. */
const SLIM = { cowlWidthMm: 60, cowlFrontMm: 30, cowlAftMm: 40 };

describe("Steering room between the cheeks", () => {
  test("held straight by its stops: half the notch less half the leg's width, both sides", () => {
    // 600/2 - 80/2 = 260; less an inch 234.6.
    const [port, starboard] = rooms(ID, SLIM);
    expect(port).toBeCloseTo(234.6, 6);
    expect(starboard).toBeCloseTo(234.6, 6);
    expect(ask(ID, SLIM)).toMatchObject({ outcome: "fits", missing: [] });
  });

  test("the edge: an inch each side fits, a tenth less fouls", () => {
    // 2 x (40 + 25.4) = 130.8.
    expect(margin(ID, { ...SLIM, notchWidthMm: 130.8 })).toBeCloseTo(0, 6);
    expect(ask(ID, { ...SLIM, notchWidthMm: 130.6 }).outcome).toBe("fouls");
    expect(margin(ID, { ...SLIM, notchWidthMm: 100 })).toBeCloseTo(10 - 25.4, 6);
  });

  test("steering round: the leg's aft corner is what swings widest", () => {
    // Corner 60 aft and 40 out of the steering axis: sqrt(60^2 + 40^2) = 72.111, reached at 56.3 degrees.
    const round = { ...SLIM, steerPortDeg: 90, steerStarboardDeg: 90 };
    for (const room of rooms(ID, round)) expect(room).toBeCloseTo(300 - 72.111 - 25.4, 2);
    // To port only as far as 30 degrees the corner swings to 60 sin 30 + 40 cos 30 = 64.641, to starboard.
    const [port, starboard] = rooms(ID, { ...SLIM, steerPortDeg: 30 });
    expect(starboard).toBeCloseTo(300 - 64.641 - 25.4, 2);
    // The front corner swings to port: 40 sin 30 + 40 cos 30 = 54.641.
    expect(port).toBeCloseTo(300 - 54.641 - 25.4, 2);
  });

  test("nothing cut: the straight top beside the bracket takes the cheeks' place", () => {
    // The top, level with the saddle, begins 120 either side, beside the bracket. Straight down the leg's
    // front is 30 aft of it and 80 inboard: sqrt(30^2 + 80^2) = 85.44; tilting takes the leg aft below the axis
    // and over the top above it, more than 85 up.
    const uncut = { ...SLIM, seatMm: undefined, notchWidthMm: undefined };
    expect(ask(ID, uncut)).toMatchObject({ outcome: "fits", missing: [] });
    expect(margin(ID, uncut)).toBeCloseTo(85.44 - 25.4, 2);
    expect(ask(ID, { ...uncut, bracketWidthMm: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["bracketWidthMm"],
    });
    // With a cut notch the bracket's width is not needed.
    expect(ask(ID, { ...SLIM, bracketWidthMm: undefined }).outcome).toBe("fits");
  });

  test("spread: half the notch and half the leg", () => {
    // u^2 = (0.25 x 4^2 + 0.25 x 2^2)/3 = 5/3; U = 2.582.
    const at = (notchWidth: number) =>
      ask(ID, { ...SLIM, notchWidthMm: taken(notchWidth, 4), midsectionWidthMm: taken(80, 2) });
    expect(at(140).ruling?.u).toBeCloseTo(Math.sqrt(5 / 3), 6);
    expect([136.2, 135.8, 125.8, 125.4].map((width) => at(width).outcome)).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
  });

  test("needs the leg, the cowl, their motions, the transom, and the tiller where there is one", () => {
    const needs = [
      "measuredAtDeg",
      "tiltAxisForwardMm",
      "tiltAxisAboveMm",
      "steerAxisAftMm",
      "pinAnglesDeg",
      "tiltArcDeg",
      "steerPortDeg",
      "steerStarboardDeg",
      "cowlFrontMm",
      "cowlAftMm",
      "cowlWidthMm",
      "cowlBottomMm",
      "cowlTopMm",
      "midsectionFrontMm",
      "midsectionAftMm",
      "midsectionWidthMm",
      "shaftLengthMm",
      "notchWidthMm",
      "transomThicknessMm",
      "transomTopMm",
      "rakeDeg",
      "steering",
    ];
    expect(without(ID, needs)).toEqual(untold(needs));
    const tiller = ["tillerLengthMm", "tillerHeightMm", "tillerThicknessMm", "tillerOffsetMm"];
    expect(ask(ID, { ...SLIM, steering: "tiller" }).missing).toEqual(tiller);
  });

  test("a known part that fouls does so whatever is not known of the others", () => {
    const tight = { ...SLIM, notchWidthMm: 90, cowlTopMm: undefined };
    expect(ask(ID, tight)).toMatchObject({ outcome: "fouls", missing: ["cowlTopMm"] });
    expect(ask(ID, { ...tight, notchWidthMm: 300 }).outcome).toBe("cannot tell");
  });

  test("held straight while tilting, steering counts in the trim-pin holes only", () => {
    // In the hole the steering axis stands 70 aft of the face. A point of the leg d from it at an angle q aft
    // of abeam is d cos q out and 70 + d sin q aft: the front corner (d 56.569) turned q ahead of abeam comes
    // nearest to the cheek's corner, in line with it: sqrt(300^2 + 70^2) - 56.569 = 251.490. The aft one has
    // d 72.111, and stands in line with the cheek's corner when turned 56.310 + 13.134 = 69.444
    // degrees, which is within 90: sqrt(300^2 + 70^2) - 72.111 = 308.0584 - 72.1110 = 235.9474.
    // Tilting straight it passes at 260.
    const round = { ...SLIM, steerPortDeg: 90, steerStarboardDeg: 90 };
    const held = ask(ID, round, { handling: { straightWhileTilting: true } });
    expect(held.ruling?.margin).toBeCloseTo(235.9474 - 25.4, 2);
    expect(ask(ID, round).ruling?.margin).toBeCloseTo(300 - 72.111 - 25.4, 2);
  });

  test("the owner's room, said to be the owner's", () => {
    expect(ask(ID, { ...SLIM, limits: { steeringRoomMm: 200 } })).toMatchObject({
      outcome: "fits",
      ruling: { edge: { need: 200, limit: { status: "set by the owner" } } },
    });
    expect(margin(ID, { ...SLIM, limits: { steeringRoomMm: 261 } })).toBeCloseTo(-1, 6);
    // Limits given with the question overrule the stern's own.
    const over = ask(ID, { ...SLIM, limits: { steeringRoomMm: 261 } }, { limits: { steeringRoomMm: 10 } });
    expect(over.ruling?.margin).toBeCloseTo(250, 6);
    expect(bench().stern.limits).toBeUndefined();
  });
});
