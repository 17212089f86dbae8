/**
 * Transom height as 33 CFR 183.3 defines it: vertical, projected on the centreline plane, not along the
 * rake (67 FR 34760, 15 May 2002; public domain). The length along the face is worked from it by hand:
 * 20 in at 14 degrees is 20/cos 14 = 20/0.970296 = 20.612 in along the face, and stays 20.000 in plumb.
 */
import { describe, expect, test } from "vitest";
import { MM_PER_INCH } from "#lib/quantity/length.ts";
import { bracketToHull } from "#lib/rig/frame.ts";
import { seatForPlate } from "#lib/rig/plate.ts";

const RAKE = 14;
const SEAT = 20 * MM_PER_INCH;

describe("a seat 20 in over the datum on a transom raked 14 degrees", () => {
  test("the seat stands 20.000 in over the datum, plumb, aft of where the face meets the datum", () => {
    const [x, , z] = bracketToHull([0, 0, 0], RAKE, SEAT);
    expect(z / MM_PER_INCH).toBeCloseTo(20, 9);
    // 20 tan 14 = 20 x 0.249328 = 4.98656 in.
    expect(x / MM_PER_INCH).toBeCloseTo(-4.98656, 4);
  });

  test("20.612 in down the face from the seat is the datum, on the face", () => {
    const [x, , z] = bracketToHull([0, 0, -20.612 * MM_PER_INCH], RAKE, SEAT);
    // 20.612 is rounded to a thousandth of an inch.
    expect(Math.abs(z) / MM_PER_INCH).toBeLessThan(0.0005);
    expect(Math.abs(x) / MM_PER_INCH).toBeLessThan(0.0005);
  });

  test("20 in down the face is still 0.594 in above the datum: a tape along the rake reads a transom too high", () => {
    const [, , z] = bracketToHull([0, 0, -SEAT], RAKE, SEAT);
    // 20 (1 - cos 14) = 20 x 0.029704 = 0.59409 in.
    expect(z / MM_PER_INCH).toBeCloseTo(0.59409, 4);
  });

  test("a leg of 20 in, measured and run parallel to the keel line, reaches the datum from that seat", () => {
    const motor = {
      shaftLengthMm: SEAT,
      measuredAtDeg: RAKE,
      tiltAxisForwardMm: 33,
      tiltAxisAboveMm: 36,
      steerAxisAftMm: 100,
    };
    expect(seatForPlate(motor, RAKE, RAKE, 0)).toBeCloseTo(SEAT, 9);
  });
});
