/** Two motors on one stern by hand, on the bench pairing: brackets of 240, cowls 120 forward, 200 aft and 200 broad, steering held straight unless a test frees it. */
import { describe, expect, test } from "vitest";
import { assess } from "#lib/fit/assess.ts";
import { assessTwo } from "#lib/fit/two-motors.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { AFLOAT, EMPTY } from "../../checks/afloat/bench.ts";
import { bench, type Changes, taken } from "../../checks/bench.ts";

function two(offsetsMm: readonly [number, number], changes: Changes = {}, second: Changes = {}) {
  const { motor, stern } = bench({ ...AFLOAT, ...changes });
  const other = {
    ...bench({ ...AFLOAT, ...changes, ...second }).motor,
    id: "second",
    label: "Second",
  } as Motor;
  return assessTwo([motor, other], stern, { offsetsMm, aboard: EMPTY });
}
const answer = (report: ReturnType<typeof two>, id: string) => report.checks.find((one) => one.id === id)!;

/** Nothing cut: a straight top of 508 and 1600 broad. */
const STRAIGHT = { seatMm: undefined, notchWidthMm: undefined, transomTopMm: 508, transomWidthMm: 1600 };

describe("Two motors", () => {
  test("brackets: 600 apart less 240 is 360, an inch wanted", () => {
    expect(answer(two([300, -300], STRAIGHT), "spacing")).toMatchObject({
      outcome: "fits",
      have: 360,
      marginMm: 334.6,
    });
    expect(answer(two([130, -130], STRAIGHT), "spacing")).toMatchObject({ outcome: "fouls", marginMm: -5.4 });
    expect(answer(two([135, -135], { ...STRAIGHT, bracketWidthMm: taken(240, 6) }), "spacing").outcome).toBe(
      "cannot tell",
    );
  });

  test("bodies straight ahead: cowls of 200 are 400 apart at 600, whatever the tilt", () => {
    const report = two([300, -300], STRAIGHT);
    expect(report.between?.mm).toBeCloseTo(400, 1);
    expect(answer(report, "between")).toMatchObject({ outcome: "fits" });
  });

  test("bodies steering: a cowl turned right round reaches the corner of 200 aft and 100 aside", () => {
    // Hard over 90 to either side the aft end of the cowl lies square across: 200 from the axis. 600 - 2 x 200 = 200;
    // on the way its corner reaches sqrt(200^2 + 100^2) = 223.6: 600 - 447.2 = 152.8.
    const report = two([300, -300], { ...STRAIGHT, steerPortDeg: 90, steerStarboardDeg: 90 });
    expect(report.between?.mm).toBeCloseTo(600 - 2 * Math.hypot(200, 100), 0);
    expect(report.between!.mm - report.between!.certifiedMm).toBeLessThanOrEqual(0.11);
    const close = two([230, -230], { ...STRAIGHT, steerPortDeg: 90, steerStarboardDeg: 90 });
    // 460 - 447.2 = 12.8 apart, 25.4 wanted.
    expect(answer(close, "between")).toMatchObject({ outcome: "fouls" });
    expect(close.verdict).toBe("fouls");
    expect(close.governs).toBe("between");
  });

  test("transom: 1600 broad, the outer bracket ends 800 - 300 - 120 = 380 inside", () => {
    expect(answer(two([300, -300], STRAIGHT), "transom-width")).toMatchObject({ outcome: "fits", have: 380 });
    expect(answer(two([680, -300], STRAIGHT), "transom-width")).toMatchObject({ outcome: "fouls", have: 0 });
    expect(
      answer(two([300, -300], { ...STRAIGHT, transomWidthMm: undefined }), "transom-width"),
    ).toMatchObject({
      outcome: "cannot tell",
      missing: [{ of: "the stern", key: "transomWidthMm" }],
    });
  });

  test("notch: 600 wide with corners of 20; wholly in it, wholly beside it, or across its cheek", () => {
    // Beside: 460 - 120 - 300 = 40. In it: 300 - 20 - 0 - 120 = 160.
    expect(answer(two([0, 460]), "notch")).toMatchObject({ outcome: "fits", marginMm: 40 });
    expect(answer(two([0, 380]), "notch")).toMatchObject({ outcome: "fouls", marginMm: -40 });
    expect(answer(two([250, -250]), "notch")).toMatchObject({ outcome: "fouls", marginMm: -90 });
    expect(answer(two([300, -300], STRAIGHT), "notch").outcome).toBe("not asked");
  });

  test("each finds its seat: in the notch its bottom, beside it the uncut top", () => {
    expect(two([0, 460]).motors.map(({ seatMm }) => seatMm)).toEqual([508, 758]);
  });

  test("a motor off the middle of the notch is that much nearer to its cheek", () => {
    // Cowl of 100 half breadth, but its bottom hangs 200 over the saddle under a cheek of 250: 300 - 100 = 200; 60 to port: 140.
    const clear = (y: number) => answer(two([y, -460]), "first-clear").have;
    expect(clear(0)! - clear(60)!).toBeCloseTo(60, 1);
  });

  test("mass and power together", () => {
    const report = two(
      [300, -300],
      { ...STRAIGHT, ratedPowerKw: 12, ratedMotorMassKg: 90 },
      { massKg: 30, powerKw: 4 },
    );
    // 50 + 30 and 7 + 4.
    expect(report.afloat.find(({ id }) => id === "motor-mass")).toMatchObject({
      outcome: "fits",
      marginKg: 10,
    });
    expect(report.afloat.find(({ id }) => id === "power")).toMatchObject({ outcome: "fits", marginKw: 1 });
    expect(report.afloat.map(({ id }) => id)).toEqual([
      "power",
      "motor-mass",
      "transom-thickness",
      "freeboard",
    ]);
  });

  test("mass together sinks the stern by the mass of both: 80 kg as of one motor of 80", () => {
    const both = two([300, -300], STRAIGHT, { massKg: 30 }).afloat.find(({ id }) => id === "freeboard");
    const { motor, stern } = bench({ ...AFLOAT, ...STRAIGHT, massKg: 80 });
    const one = assess(motor, stern, {}, { aboard: EMPTY }).afloat.find(({ id }) => id === "freeboard");
    expect(both?.trim?.after).toEqual(one?.trim?.after);
  });

  test("what is missing is named with the motor it is missing of; a foul of known parts stands", () => {
    const report = two([300, -300], STRAIGHT, { cowlWidthMm: undefined });
    expect(answer(report, "between")).toMatchObject({
      outcome: "cannot tell",
      missing: [{ of: "Second", key: "cowlWidthMm" }],
    });
    expect(report.verdict).toBe("cannot tell");
    const close = two([30, -30], STRAIGHT, { cowlWidthMm: undefined });
    expect(answer(close, "between").outcome).toBe("fouls");
  });

  test("swapping port and starboard swaps nothing but sides", () => {
    const free = {
      ...STRAIGHT,
      steerPortDeg: 40,
      steerStarboardDeg: 30,
      tillerLengthMm: 600,
      tillerHeightMm: 120,
      tillerThicknessMm: 50,
      tillerOffsetMm: 0,
      steering: "tiller",
    };
    const mirrored = { ...free, steerPortDeg: 30, steerStarboardDeg: 40 };
    expect(two([350, -350], free).between?.mm).toBeCloseTo(two([-350, 350], mirrored).between!.mm, 1);
  });
});
