/**
 * Where water first comes in over the stern: the seat of the motor, and behind it the front of the motor
 * well. Without a well the seat is the boat's lowest side; with one, water over the seat stays in the well
 * until it reaches the front bulkhead's top.
 */
import { aboveWater, type Level } from "#lib/rig/afloat/floating.ts";
import { type BracketPoint, bracketToHull, type HullPoint, legToBracket } from "#lib/rig/frame.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** A transom's rake and the seat on it, above the datum. */
export interface Seat {
  readonly rakeDeg: number;
  readonly seatMm: number;
}

/** The numbers of a stern that say where its well is. */
export type WellPlace = Seat &
  Required<
    Pick<
      SternValues,
      "transomThicknessMm" | "soleDropMm" | "soleAngleDeg" | "wellDepthMm" | "wellFrontHeightMm"
    >
  >;

const inHull = (point: BracketPoint, { rakeDeg, seatMm }: Seat): HullPoint =>
  bracketToHull(point, rakeDeg, seatMm);

/** The outside corner of the seat, in the hull's frame. */
export const seatPoint = (seat: Seat): HullPoint => inHull([0, 0, 0], seat);

/** Top of the well's front bulkhead on its after face. */
export const wellFrontPoint = (stern: WellPlace): HullPoint =>
  inHull(inWell(stern, stern.wellDepthMm, 0, stern.wellFrontHeightMm), stern);

/** The well sole at the transom, where its drains are. */
export const drainPoint = (stern: WellPlace): HullPoint => inHull(inWell(stern, 0, 0, 0), stern);

/** Freeboard of the seat, mm, plumb; minus = under water. */
export const freeboardAtSeat = (level: Level, seat: Seat): number => aboveWater(level, seatPoint(seat));

/** Freeboard of the well's front, mm, plumb. */
export const freeboardAtWellFront = (level: Level, stern: WellPlace): number =>
  aboveWater(level, wellFrontPoint(stern));

/** Height of the well sole at its drains above the water outside, mm; minus = water comes in by the drains and stands in the well. */
export const soleAboveWater = (level: Level, stern: WellPlace): number =>
  aboveWater(level, drainPoint(stern));

/** Which edge the boat's own floor is safe behind: the well's front, or the seat where there is no well. */
export function floodingEdge(
  level: Level,
  seat: Seat,
  well?: WellPlace,
): { readonly at: "seat" | "well front"; readonly freeboardMm: number } {
  if (!well) return { at: "seat", freeboardMm: freeboardAtSeat(level, seat) };
  const front = freeboardAtWellFront(level, well);
  // A front lower than the seat is still met only by water that has come over the seat.
  const seatFree = freeboardAtSeat(level, seat);
  return front >= seatFree ? { at: "well front", freeboardMm: front } : { at: "seat", freeboardMm: seatFree };
}

/** Where a motor's mass is taken to hang, x forward of the transom, mm: on the steering axis at the tilt tube's height (common practice, no source; nobody measures it). */
export function motorMassX(
  motor: Required<Pick<MotorValues, "tiltAxisForwardMm" | "tiltAxisAboveMm" | "steerAxisAftMm">>,
  seat: Seat,
  faceAngleDeg: number,
): number {
  return inHull(legToBracket([-motor.steerAxisAftMm, 0, 0], faceAngleDeg, motor), seat)[0];
}
