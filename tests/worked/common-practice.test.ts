/**
 * What the trade does, in its own inches. Every value here is common practice, no source.
 */
import { expect, test } from "vitest";
import type { Check } from "#lib/checks/check.ts";
import { limitOf } from "#lib/checks/check.ts";
import { screwHandles } from "#lib/checks/screw-handles.ts";
import { shaftClass } from "#lib/checks/shaft-class.ts";
import { steeringRoom } from "#lib/checks/steering-room.ts";
import { tiltRoom } from "#lib/checks/tilt-room.ts";
import { needsOf } from "#lib/fit/needs.ts";
import { supportLineMm } from "#lib/fit/support-line.ts";
import { inches, MM_PER_INCH } from "#lib/quantity/length.ts";
import { inInches } from "#lib/quantity/words.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** The rooms to spare a question finds, inches, one per edge. */
function rooms(check: Check, motor: MotorValues, stern: SternValues): number[] {
  const mounting = mount({ motor, stern });
  const study = { mounting, limit: (key: Parameters<typeof limitOf>[1]) => limitOf(mounting.rig, key) };
  return check.edges({ ...study, write: inInches }).map(({ room }) => room / MM_PER_INCH);
}

/** A leg measured and run at the rake, so that the plate hangs its length below the seat. */
const hung = (rakeDeg: number): MotorValues => ({
  measuredAtDeg: rakeDeg,
  tiltAxisForwardMm: 30,
  tiltAxisAboveMm: 30,
  steerAxisAftMm: 90,
  pinAnglesDeg: [rakeDeg],
});

test("a plate found 3 1/4 in above the keel's underside that should run 3/4 in below needs a notch 4 in deep", () => {
  const stern: SternValues = {
    rakeDeg: 12,
    transomTopMm: inches(23.75),
    plateHighMm: inches(-0.75),
    plateLowMm: inches(-0.75),
  };
  const motor = { ...hung(12), shaftLengthMm: inches(20.5) };
  const { notchDepthMm, seatMm } = needsOf(mount({ motor, stern }));
  expect(notchDepthMm! / MM_PER_INCH).toBeCloseTo(4, 6);
  expect(seatMm! / MM_PER_INCH).toBeCloseTo(19.75, 6);
});

test.each([
  [20, 0.5],
  [20.5, 0],
  [19.5, 0],
  [20.25, 0.25],
])(
  "a long shaft's seat is 20 in, half an inch either way: at %s in there is %s in to spare",
  (seat, spare) => {
    const motor: MotorValues = { shaftClass: "long", shaftLengthMm: inches(20) };
    expect(Math.min(...rooms(shaftClass, motor, { seatMm: inches(seat) }))).toBeCloseTo(spare, 6);
  },
);

test("a long shaft on a seat of 20 5/8 in is an eighth too high by its class", () => {
  const motor: MotorValues = { ...hung(12), shaftClass: "long", shaftLengthMm: inches(20) };
  const stern: SternValues = { rakeDeg: 12, seatMm: inches(20.625) };
  expect(Math.min(...rooms(shaftClass, motor, stern))).toBeCloseTo(-0.125, 6);
});

test("a tiller that crosses the transom line 15 1/2 in off centre leaves an inch a side in a 33 in notch", () => {
  // Steering axis over the transom (in line with the tilt tube, an inch inside its face), tiller swung
  // square across: its end stands its own length off the centreline. A thin tiller, so that its corner
  // swings out no further: sqrt(15.5^2 + 0.2^2) - 15.5 = 0.0013 in.
  const motor: MotorValues = {
    ...hung(0),
    tiltAxisForwardMm: inches(1),
    steerAxisAftMm: 0,
    tiltArcDeg: 60,
    steerPortDeg: 90,
    steerStarboardDeg: 90,
    tillerFolds: true,
    tillerLengthMm: inches(15.5),
    tillerHeightMm: inches(2),
    tillerThicknessMm: inches(0.4),
    tillerOffsetMm: 0,
  };
  const stern: SternValues = {
    rakeDeg: 0,
    transomThicknessMm: inches(2),
    transomTopMm: inches(25),
    seatMm: inches(20),
    notchWidthMm: inches(33),
  };
  const [port, starboard] = rooms(steeringRoom, motor, stern);
  expect(Math.abs(port!)).toBeLessThan(0.002);
  expect(Math.abs(starboard!)).toBeLessThan(0.002);
  const tighter = rooms(steeringRoom, motor, { ...stern, notchWidthMm: inches(32) });
  for (const room of tighter) expect(Math.abs(room + 0.5)).toBeLessThan(0.002);
});

test("with a 1/2 in deck and its top 6 in below the seat, the deck's support is marked at 6 1/2 in", () => {
  expect(supportLineMm(inches(6), inches(0.5)) / MM_PER_INCH).toBeCloseTo(6.5, 9);
});

test("screws that swing to 5 in below the seat have the inch they need over a sole 6 in down, and none over", () => {
  const motor: MotorValues = { screwDropMm: inches(2.5), handleSwingMm: inches(2.5) };
  const [drop, handles] = rooms(screwHandles, motor, { soleDropMm: inches(6) });
  expect(drop).toBeCloseTo(0, 9);
  expect(handles).toBeCloseTo(0, 9);
  const mounting = mount({ motor, stern: { soleDropMm: inches(6) } });
  const write = inInches;
  const found = screwHandles.edges({ mounting, write, limit: (key) => limitOf(mounting.rig, key) });
  expect(found[1]!.have / MM_PER_INCH).toBeCloseTo(1, 9);
});

test("a well of 22 in is the shortest", () => {
  expect(rooms(tiltRoom, {}, { wellDepthMm: inches(22) })[0]).toBeCloseTo(0, 9);
  expect(rooms(tiltRoom, {}, { wellDepthMm: inches(21.5) })[0]).toBeCloseTo(-0.5, 9);
});
