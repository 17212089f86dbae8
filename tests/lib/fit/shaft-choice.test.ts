/**
 * Before anything is sawn. By hand: a leg measured at the transom's own rake hangs so that the plate stands
 * seat less shaft length over the datum (the case every other can be reduced to), so with the usual window
 * of 25.4 mm below the datum up to it the seat lies between leg - 25.4 and leg.
 */
import { describe, expect, test } from "vitest";
import {
  classChoices,
  cutOnce,
  marksBetween,
  motorChoice,
  seatsFor,
  withCut,
} from "#lib/fit/shaft-choice.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

const exact = (value: number): Measured => ({ value, plusMinus: 0, how: "measured" });
const within = (value: number, plusMinus: number): Measured => ({ value, plusMinus, how: "measured" });

/** Hung at 14 degrees, the transom's rake, in the second of three holes. */
const motor = (id: string, leg: number): Motor => ({
  id,
  label: id,
  shaftClass: "long",
  shaftLengthMm: within(leg, 3),
  measuredAtDeg: exact(14),
  tiltAxisForwardMm: exact(20),
  tiltAxisAboveMm: exact(60),
  steerAxisAftMm: exact(40),
  pinAnglesDeg: { value: [10, 14, 18], plusMinus: 0, how: "measured" },
});

const uncut: Stern = {
  id: "uncut",
  label: "Uncut",
  rakeDeg: exact(14),
  transomThicknessMm: exact(40),
  transomTopMm: exact(600),
  waterlineMm: exact(180),
};

describe("What a motor asks for", () => {
  const choice = motorChoice(motor("a", 500), uncut)!;

  test("is the seat that puts its plate between an inch below the datum and level with it", () => {
    expect(choice.low).toBeCloseTo(474.6, 9);
    expect(choice.high).toBeCloseTo(500, 9);
    expect(choice.middle).toBeCloseTo(487.3, 9);
    expect(seatsFor(motor("a", 500), uncut)).toEqual({
      low: choice.low,
      middle: choice.middle,
      high: choice.high,
    });
  });

  test("leaves the saw what the leg's own spread does not use up", () => {
    // U = 2 x 3/sqrt 3 = 3.4641 mm (JCGM 100:2008, 4.3.7; the plate moves mm for mm with the leg).
    expect(choice.sawBetween![0]).toBeCloseTo(478.0641, 3);
    expect(choice.sawBetween![1]).toBeCloseTo(496.5359, 3);
  });

  test("leaves it nothing where the leg was only guessed at", () => {
    // +-25 mm gives U = 28.9 mm, more than half the window.
    expect(
      motorChoice({ ...motor("a", 500), shaftLengthMm: within(500, 25) }, uncut)!.sawBetween,
    ).toBeUndefined();
  });

  test("tells the notch below the uncut top, the hole, the attitude and the freeboard left", () => {
    expect(choice.notchDepth).toBeCloseTo(112.7, 9);
    expect(choice.deeperBy).toBeCloseTo(112.7, 9);
    expect(choice.hole).toBe(2);
    expect(choice.attitudeDeg).toBeCloseTo(0, 9);
    expect(choice.freeboard).toBeCloseTo(307.3, 9);
  });

  test("tells where the plate stands with the top as it is", () => {
    expect(choice.plateNow).toBeCloseTo(100, 9);
    expect(choice.keepsWindowNow).toBe(false);
    expect(motorChoice(motor("b", 610), uncut)!.keepsWindowNow).toBe(true);
  });

  test("is a riser where the seat is too low already", () => {
    const low: Stern = { ...uncut, seatMm: exact(450), notchWidthMm: exact(600) };
    expect(motorChoice(motor("a", 500), low)!.deeperBy).toBeCloseTo(-37.3, 9);
  });

  test("cannot be told without the rake", () => {
    const { rakeDeg: _, ...unraked } = uncut;
    expect(motorChoice(motor("a", 500), unraked)).toBeUndefined();
  });
});

describe("What a class asks for", () => {
  test("is its nominal length less the window, 15, 20, 25 and 30 in", () => {
    const choices = classChoices(uncut);
    expect(choices.map(({ shaftClass }) => shaftClass)).toEqual([
      "short",
      "long",
      "extra-long",
      "ultra-long",
    ]);
    [381, 508, 635, 762].forEach((nominal, i) => {
      expect(choices[i]!.high).toBeCloseTo(nominal, 9);
      expect(choices[i]!.low).toBeCloseTo(nominal - 25.4, 9);
    });
    // 600 uncut: a long leg's plate would stand 92 mm high, an extra-long's 35 mm below the datum.
    expect(choices[1]!.plateNow).toBeCloseTo(92, 9);
    expect(choices[2]!.plateNow).toBeCloseTo(-35, 9);
    expect(choices[1]!.deeperBy).toBeCloseTo(104.7, 9);
    expect(choices[2]!.deeperBy).toBeCloseTo(-22.3, 9);
  });
});

describe("One cut for several motors", () => {
  const [a, b, c] = [motor("a", 500), motor("b", 510), motor("c", 560)];

  test("lies midway in what the most windows have in common", () => {
    // 474.6 to 500 and 484.6 to 510 have 484.6 to 500 in common; 534.6 to 560 lies apart.
    const cut = cutOnce([a, b, c], uncut)!;
    expect(cut.between[0]).toBeCloseTo(484.6, 9);
    expect(cut.between[1]).toBeCloseTo(500, 9);
    expect(cut.seat).toBeCloseTo(492.3, 9);
    const room = Object.fromEntries(cut.motors.map((one) => [one.motor, one.room]));
    expect(room.a).toBeCloseTo(7.7, 9);
    expect(room.b).toBeCloseTo(7.7, 9);
    expect(room.c).toBeCloseTo(-42.3, 9);
    for (const { best } of cut.motors) expect(best).toBeCloseTo(12.7, 9);
  });

  test("is one motor's own seat where there is only one, and nothing where no plate can be placed", () => {
    expect(cutOnce([a], uncut)!.seat).toBeCloseTo(487.3, 9);
    expect(cutOnce([{ id: "x", label: "x" }], uncut)).toBeUndefined();
    expect(cutOnce([], uncut)).toBeUndefined();
  });

  test("takes the wider of two equally good stretches", () => {
    // 500 and 510 have 484.6 to 500 in common, 560 and 565 have 539.6 to 560: two motors each, 15.4 and 20.4 mm.
    const cut = cutOnce([a, b, c, motor("d", 565)], uncut)!;
    expect(cut.between[0]).toBeCloseTo(539.6, 9);
    expect(cut.between[1]).toBeCloseTo(560, 9);
  });
});

describe("Marks to saw between", () => {
  test("lie inside, to a whole millimetre or a sixteenth of an inch", () => {
    expect(marksBetween([478.06, 496.54], 1)).toEqual([479, 496]);
    expect(marksBetween([486, 497], 1)).toEqual([486, 497]);
    // 478.06 mm is 18 13/16 in and a bit: the next sixteenth up is 18 7/8 in, 479.425 mm.
    expect(marksBetween([478.06, 496.54], 25.4 / 16)![0]).toBeCloseTo(18.875 * 25.4, 9);
  });

  test("are none where the two lie closer than a mark", () => {
    expect(marksBetween([486.2, 486.8], 1)).toBeUndefined();
  });
});

describe("A stern with the cut in place", () => {
  test("has the seat, and the notch only where it had none", () => {
    expect(withCut(uncut, 490, 640)).toMatchObject({ seatMm: { value: 490 }, notchWidthMm: { value: 640 } });
    const notched: Stern = { ...uncut, seatMm: exact(520), notchWidthMm: exact(600), soleDropMm: exact(200) };
    const cut = withCut(notched, 490, 640);
    expect(cut.notchWidthMm!.value).toBe(600);
    // The sole stays where it is: 30 mm plumb are 30 / cos 14 = 30.918 mm along the face.
    expect(cut.soleDropMm!.value).toBeCloseTo(200 - 30.918, 3);
  });
});
