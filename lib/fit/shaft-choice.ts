/**
 * Before anything is sawn: which seat each shaft class and each motor asks of this stern, how far the saw
 * may stray, and the one seat that suits the most of several motors.
 */
import { limitOf } from "#lib/checks/check.ts";
import { plateAboveDatum, plateHeight, runningHoleNumber } from "#lib/checks/plate-height.ts";
import { freeboardWith } from "#lib/fit/afloat-word.ts";
import { examine } from "#lib/fit/examine.ts";
import { notchWidthNeed, seatNeed } from "#lib/fit/needs.ts";
import { COVERAGE_FACTOR, combined, standardUncertainty } from "#lib/quantity/uncertainty.ts";
import { withNumber, withSeat } from "#lib/rig/alter.ts";
import { type Motor, SHAFT_CLASSES, type ShaftClass } from "#lib/rig/motor.ts";
import { mount, type Rig } from "#lib/rig/mounting.ts";
import { seatNow } from "#lib/rig/plate.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

/** The seat one class or one motor asks for; heights above the datum, plumb, mm. */
export interface SeatChoice {
  /** A motor's id, or absent for a class by its nominal length. */
  readonly motor?: string;
  readonly shaftClass?: ShaftClass;
  /** Seats that keep the plate in its window, and midway between. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Saw anywhere between these and the plate surely stands in its window; absent where the leg's own spread eats the window up. */
  readonly sawBetween?: readonly [number, number];
  /** Present top (of the notch where one is cut, else of the transom) down to the seat asked for; minus = a riser. */
  readonly deeperBy?: number;
  /** Uncut top down to the seat asked for: the whole notch. */
  readonly notchDepth?: number;
  /** The narrowest notch and some: 5 mm more each side. */
  readonly notchWidth?: number;
  /** Number of the running hole from the lowest as 1, and the plate's attitude in it. */
  readonly hole?: number;
  readonly attitudeDeg?: number;
  /** The plate above the datum with the seat as it is now, and whether that is within the window. */
  readonly plateNow?: number;
  readonly keepsWindowNow?: boolean;
  /** Seat asked for above the water without the motor. */
  readonly freeboard?: number;
  /** The same with this motor, two persons amidships and a portable tank aboard. */
  readonly freeboardLoaded?: number;
}

/** Room each side beyond the least a notch needs: what saw, tape and numbers err by between them (common practice, no source). */
const SAW_MM = 5;

const valuesOf = (motor: Motor, stern: Stern): Rig => ({
  motor: motorValues(motor),
  stern: sternValues(stern),
});

/** What every class asks for by its nominal leg, hung parallel with the plate level: seat = leg + where the plate is wanted. */
export function classChoices(stern: Stern): SeatChoice[] {
  const rig: Rig = { motor: {}, stern: sternValues(stern) };
  const [low, high] = [limitOf(rig, "plateLowMm").value, limitOf(rig, "plateHighMm").value];
  return SHAFT_CLASSES.map((shaftClass) => {
    const leg = nominalShaft[shaftClass].value;
    const seats = { low: leg + low, middle: leg + (low + high) / 2, high: leg + high };
    return { shaftClass, ...seats, ...against(rig, seats.middle), ...nowFor(rig, (seat) => seat - leg) };
  });
}

/** Seats that keep one motor's plate in its window, and midway between; undefined where its plate cannot be placed. The cheap part of `motorChoice`. */
export const seatsFor = (motor: Motor, stern: Stern): ReturnType<typeof seatNeed> =>
  seatNeed(valuesOf(motor, stern));

/**
 * The stern with one seat cut (or raised) and a notch of that width, where it has none: what the motors then
 * come to can be asked of it like of any other.
 */
export function withCut(stern: Stern, seatMm: number, notchWidthMm: number | undefined): Stern {
  const cut = withSeat(stern, seatMm);
  return stern.notchWidthMm || notchWidthMm === undefined
    ? cut
    : withNumber(cut, "notchWidthMm", notchWidthMm);
}

/** A hair of rounding: 486.0000000001 is 486. */
const HAIR = 1e-6;

/** Two heights to saw between as marks on a tape, each to a whole `stepMm` and inside the two; undefined where no mark lies between them. */
export function marksBetween(
  [low, high]: readonly [number, number],
  stepMm: number,
): readonly [number, number] | undefined {
  const marks = [Math.ceil(low / stepMm - HAIR) * stepMm, Math.floor(high / stepMm + HAIR) * stepMm] as const;
  return marks[0] <= marks[1] ? marks : undefined;
}

/** What one motor asks for; undefined where its plate cannot be placed. */
export function motorChoice(motor: Motor, stern: Stern): SeatChoice | undefined {
  const rig = valuesOf(motor, stern);
  const seats = seatNeed(rig);
  const hole = runningHoleNumber(rig);
  if (!seats || hole === undefined) return undefined;
  const spare = sawSpare(motor, withSeat(stern, seats.middle));
  const fromTo = spare === undefined ? undefined : ([seats.low + spare, seats.high - spare] as const);
  const mounting = mount(valuesOf(motor, withSeat(stern, seats.middle)));
  const freeboardLoaded = freeboardWith(motor, stern, seats.middle);
  return {
    motor: motor.id,
    shaftClass: motor.shaftClass,
    ...seats,
    ...(fromTo && fromTo[0] < fromTo[1] && { sawBetween: fromTo }),
    notchWidth: notchWidthNeed(mounting, seats.middle, SAW_MM),
    hole: hole + 1,
    attitudeDeg: rig.motor.pinAnglesDeg![hole]! - rig.stern.rakeDeg!,
    ...against(rig, seats.middle),
    ...(freeboardLoaded !== undefined && { freeboardLoaded }),
    ...nowFor(rig, () => plateAboveDatum(rig, hole)),
  };
}

/** Depths and freeboard that go with a seat. */
function against({ stern }: Rig, seat: number) {
  const now = seatNow(stern);
  return {
    ...(now !== undefined && { deeperBy: now - seat }),
    ...(stern.transomTopMm !== undefined && { notchDepth: stern.transomTopMm - seat }),
    ...(stern.waterlineMm !== undefined && { freeboard: seat - stern.waterlineMm }),
  };
}

/** The plate with the seat as it is now. */
function nowFor(rig: Rig, plateAt: (seat: number) => number | undefined) {
  const seat = seatNow(rig.stern);
  const plateNow = seat === undefined ? undefined : plateAt(seat);
  if (plateNow === undefined) return {};
  const keepsWindowNow =
    plateNow >= limitOf(rig, "plateLowMm").value - 1e-9 &&
    plateNow <= limitOf(rig, "plateHighMm").value + 1e-9;
  return { plateNow, keepsWindowNow };
}

/** U of the plate's height but for the seat's own spread: the seat is what is sawn to a mark. */
function sawSpare(motor: Motor, stern: Stern): number | undefined {
  const { answers } = examine(motor, stern, { only: [plateHeight.id] });
  const budget = answers[0]?.ruling?.budget.filter(({ key }) => key !== "seatMm" && key !== "transomTopMm");
  if (!budget) return undefined;
  const parts = budget.map(({ sensitivity, taken }) => sensitivity * standardUncertainty(taken.halfWidth));
  return COVERAGE_FACTOR * combined(parts);
}

/** One cut for several motors. */
export interface OneCut {
  readonly seat: number;
  /** The seats that suit the same motors. */
  readonly between: readonly [number, number];
  readonly notchWidth?: number;
  /** For each motor, the plate's room to its window at this seat (minus: it stands outside) and at its own best seat. */
  readonly motors: readonly { readonly motor: string; readonly room: number; readonly best: number }[];
}

/**
 * The seat that keeps the most plates in their windows; of several equally good stretches the one that
 * leaves the widest, and its middle. The notch is as wide as the widest of those motors needs there.
 * Undefined where no plate can be placed.
 */
export function cutOnce(motors: readonly Motor[], stern: Stern): OneCut | undefined {
  const asked = motors.flatMap((motor) => {
    const seats = seatNeed(valuesOf(motor, stern));
    return seats ? [{ motor, ...seats }] : [];
  });
  const between = stretches(asked)[0];
  if (!between) return undefined;
  const seat = (between[0] + between[1]) / 2;
  const suited = asked.filter(({ low, high }) => low <= seat && seat <= high);
  const cut = withNumber(withSeat(stern, seat), "notchWidthMm", stern.notchWidthMm?.value ?? 600);
  const widths = suited.map(({ motor }) => notchWidthNeed(mount(valuesOf(motor, cut)), seat, SAW_MM));
  return {
    seat,
    between,
    ...(widths.every((width) => width !== undefined) && { notchWidth: Math.max(...widths) }),
    motors: asked.map(({ motor, low, high }) => ({
      motor: motor.id,
      room: Math.min(seat - low, high - seat),
      best: (high - low) / 2,
    })),
  };
}

/** The stretches between neighbouring ends of the windows, those that lie in the most windows first, then the widest. */
function stretches(windows: readonly { low: number; high: number }[]): [number, number][] {
  const ends = [...new Set(windows.flatMap(({ low, high }) => [low, high]))].sort((a, b) => a - b);
  const suits = ([from, to]: [number, number]) =>
    windows.filter(({ low, high }) => low <= from && to <= high).length;
  return ends
    .slice(1)
    .map((to, i): [number, number] => [ends[i]!, to])
    .concat(ends.length === 1 ? [[ends[0]!, ends[0]!]] : [])
    .sort((a, b) => suits(b) - suits(a) || b[1] - b[0] - (a[1] - a[0]));
}
