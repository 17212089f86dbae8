/**
 * How a boat lies at rest with a motor hung on it and people and fuel aboard, from the water measured
 * without the motor. That level was taken at the transom alone; the keel line is taken to have lain level.
 */
import type { Aboard } from "#lib/rig/afloat/aboard.ts";
import { type Level, loaded, type Mass } from "#lib/rig/afloat/floating.ts";
import { motorMassX, type Seat, seatPoint } from "#lib/rig/afloat/freeboard.ts";
import { type Hydrostatics, hydrostatics } from "#lib/rig/afloat/waterplane.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { runningHole, seatNow } from "#lib/rig/plate.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import { MOTOR_AFT } from "#lib/standards/afloat-practice.ts";
import { FULLNESS_BY_FORM } from "#lib/standards/waterplane-fullness.ts";

/** A pairing afloat with its load. `fullnessShift` is added to the fullness usual for the hull's form; 0 where absent. */
export interface Afloat {
  readonly rig: Rig;
  readonly aboard: Aboard;
  readonly fullnessShift?: number;
}

/** Numbers without which nothing is known of how the boat lies with the motor. */
export const LYING_STERN = [
  "waterlineMm",
  "waterlineLengthMm",
  "waterlineBeamMm",
  "rakeDeg",
] as const satisfies readonly (keyof SternValues)[];

/** How the boat lies. */
export interface Lying {
  readonly water: Hydrostatics;
  readonly masses: readonly Mass[];
  readonly before: Level;
  readonly after: Level;
}

/** The seat and rake of a stern; undefined where one was not taken. */
export function seatOf(stern: SternValues): Seat | undefined {
  const seatMm = seatNow(stern);
  return seatMm === undefined || stern.rakeDeg === undefined ? undefined : { rakeDeg: stern.rakeDeg, seatMm };
}

/** The waterplane's hydrostatics; undefined where its length, breadth or the hull's form is not known. */
export function waterOf({
  rig: { stern },
  fullnessShift = 0,
}: Omit<Afloat, "aboard">): Hydrostatics | undefined {
  const { waterlineLengthMm, waterlineBeamMm, hullForm } = stern;
  if (waterlineLengthMm === undefined || waterlineBeamMm === undefined || hullForm === undefined)
    return undefined;
  const fullness = Math.min(1, FULLNESS_BY_FORM[hullForm].value + fullnessShift);
  return hydrostatics({ waterlineLengthMm, waterlineBeamMm, fullness });
}

/** Face angle in the running hole; the leg parallel to the face where no hole was taken. */
export const runningAngle = ({ motor, stern, handling }: Rig): number => {
  const pins = motor.pinAnglesDeg;
  if (!pins || pins.length === 0) return 0;
  return pins[handling?.hole ?? -1] ?? runningHole(pins, stern.rakeDeg ?? 0);
};

const axesOf = ({ tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm }: MotorValues) =>
  tiltAxisForwardMm === undefined || tiltAxisAboveMm === undefined || steerAxisAftMm === undefined
    ? undefined
    : { tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm };

/** Where the motor's mass is taken to hang, mm forward of the transom's foot (a minus); from its axes where they were taken, else a usual way aft of the saddle. */
export const hangsAt = (rig: Rig, seat: Seat): number => {
  const axes = axesOf(rig.motor);
  return axes ? motorMassX(axes, seat, runningAngle(rig)) : seatPoint(seat)[0] - MOTOR_AFT.value;
};

/** What comes aboard: the motor, the persons, the fuel; what weighs nothing is left out. */
export function massesOf({ rig, aboard }: Afloat, seat: Seat): Mass[] {
  const amidships = (rig.stern.waterlineLengthMm ?? 0) / 2;
  return [
    { label: "motor", kg: rig.motor.massKg ?? 0, xMm: hangsAt(rig, seat) },
    { label: "persons", kg: aboard.persons * aboard.personKg, xMm: aboard.personsForwardMm ?? amidships },
    { label: "fuel", kg: aboard.fuelKg, xMm: aboard.fuelForwardMm },
  ].filter(({ kg }) => kg > 0);
}

/** How the boat lies before and after; undefined where a number it needs was not taken. */
export function lying(afloat: Afloat): Lying | undefined {
  const { motor, stern } = afloat.rig;
  const [seat, water] = [seatOf(stern), waterOf(afloat)];
  if (!seat || !water || stern.waterlineMm === undefined || motor.massKg === undefined) return undefined;
  const before: Level = { atTransomMm: stern.waterlineMm, bowUpDeg: 0 };
  const masses = massesOf(afloat, seat);
  return { water, masses, before, after: loaded(before, water, masses) };
}
