import { describe, expect, test } from "vitest";
import { ask, margin, rooms, taken, untold, without } from "./bench.ts";

const ID = "plate-height";
const LEG = [
  "shaftLengthMm",
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
  "rakeDeg",
];

describe("Plate height", () => {
  test("leg measured, run and raked at one angle: seat less shaft, whatever the axes", () => {
    // m = p = r = 14: z = 500 - 515 = -15, 15 under the datum and 25.4 - 15 = 10.4 above an inch below it.
    const at14 = { rakeDeg: 14, measuredAtDeg: 14, pinAnglesDeg: [8, 14], seatMm: 500, shaftLengthMm: 515 };
    for (const axes of [{}, { tiltAxisForwardMm: -40, tiltAxisAboveMm: 90, steerAxisAftMm: 10 }]) {
      const [high, low] = rooms(ID, { ...at14, ...axes });
      expect(high).toBeCloseTo(15, 9);
      expect(low).toBeCloseTo(10.4, 9);
    }
    expect(ask(ID, at14)).toMatchObject({ outcome: "fits", ruling: { edge: { need: -25.4 } } });
  });

  test("three different angles", () => {
    // m = 4: D = 520 + 30 x 0.0697565 + 40 x 0.9975641 = 561.99526.
    // r = 10, p = 12, t = 2: z = 505 + 30 x 0.1736482 + 40 x 0.9848078 + 100 x 0.0348995 - 561.99526 x 0.9993908
    //   = 505 + 5.20945 + 39.39231 + 3.48995 - 561.65290 = -8.56119.
    const raked = { measuredAtDeg: 4, rakeDeg: 10, pinAnglesDeg: [6, 12, 18], seatMm: 505 };
    const [high, low] = rooms(ID, raked);
    expect(high).toBeCloseTo(8.5612, 3);
    expect(low).toBeCloseTo(25.4 - 8.5612, 3);
  });

  test("either edge: level with the datum and an inch below it still fit, a hundredth beyond fouls", () => {
    // Plumb and parallel: z = seat - 520.
    const outcome = (seatMm: number) => ask(ID, { seatMm }).outcome;
    expect([520, 520.01, 494.6, 494.59].map(outcome)).toEqual(["fits", "fouls", "fits", "fouls"]);
    expect(margin(ID, { seatMm: 520.01 })).toBeCloseTo(-0.01, 9);
    expect(margin(ID, { seatMm: 490 })).toBeCloseTo(-4.6, 9);
  });

  test("the nearer edge rules and is named", () => {
    expect(ask(ID, { seatMm: 516 })).toMatchObject({ ruling: { edge: { need: 0, have: -4 } } });
    expect(ask(ID, { seatMm: 500 }).ruling?.edge.need).toBeCloseTo(-25.4, 9);
  });

  test("spread: two numbers of 1 mm each move it by themselves; with 2 mm to spare U decides", () => {
    // u = sqrt(1/3 + 1/3) = 0.8165, U = 1.633: 2 mm fits, 1.6 mm cannot be told, -1.7 fouls.
    const at = (seatMm: number) =>
      ask(ID, { seatMm: taken(seatMm, 1), shaftLengthMm: taken(520, 1) }).outcome;
    expect([518, 518.4, 520, 521.6, 521.7].map(at)).toEqual([
      "fits",
      "cannot tell",
      "cannot tell",
      "cannot tell",
      "fouls",
    ]);
  });

  test("each number of the leg, the pin angles and the rake is needed", () => {
    expect(without(ID, LEG)).toEqual(untold(LEG));
  });

  test("nothing cut: the uncut top is the seat; without either it asks for the seat", () => {
    const uncut = { seatMm: undefined, notchWidthMm: undefined };
    expect(margin(ID, { ...uncut, transomTopMm: 512 })).toBeCloseTo(8, 9);
    expect(ask(ID, { ...uncut, transomTopMm: undefined })).toMatchObject({
      outcome: "cannot tell",
      missing: ["seatMm"],
    });
  });

  test("the hull's own window stands in place of common practice, and says so", () => {
    const own = { plateHighMm: taken(40, 0), plateLowMm: taken(10, 0), seatMm: 545 };
    expect(rooms(ID, own)[0]).toBeCloseTo(15, 9);
    expect(rooms(ID, own)[1]).toBeCloseTo(15, 9);
    expect(ask(ID, own).ruling?.edge.limit).toMatchObject({ status: "set by the owner" });
    const limits = { limits: { plateHighMm: -30, plateLowMm: -60 }, seatMm: 490 };
    expect(ask(ID, limits)).toMatchObject({ outcome: "fits", ruling: { edge: { need: -30 } } });
    expect(margin(ID, limits)).toBeCloseTo(0, 9);
  });

  test("another hole, when it is said to be run in", () => {
    // p = 6 on a plumb transom: z = 508 + 40 + 100 sin 6 - 560 cos 6 = 548 + 10.45285 - 556.93226 = 1.52058.
    const { ruling } = ask(ID, { pinAnglesDeg: [0, 6] }, { handling: { hole: 1 } });
    expect(ruling?.margin).toBeCloseTo(-1.5206, 3);
  });
});
