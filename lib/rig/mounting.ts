/**
 * One motor hung on one stern: the only room that knows both. Everything a question asks about the
 * pairing is worked out here once and remembered.
 */

import type { Clearance } from "#lib/geometry/clearance.ts";
import { gapAlong, leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part, Range } from "#lib/geometry/mechanism.ts";
import type { MotorKey, MotorValues } from "#lib/rig/motor.ts";
import { obstaclesOf } from "#lib/rig/obstacles.ts";
import { mechanismOf, missingOfParts, partsOf, pinRange } from "#lib/rig/parts.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** What the helmsman does, where it costs nothing: which trim-pin hole he runs in, and whether he holds the motor straight while it tilts. */
export interface Handling {
  /** Number of the hole, counted from the lowest as 0; absent, the one that lays the plate nearest parallel. */
  readonly hole?: number;
  readonly straightWhileTilting?: boolean;
}

/** A motor and a stern as plain numbers. */
export interface Rig {
  readonly motor: MotorValues;
  readonly stern: SternValues;
  readonly handling?: Handling;
}

/** A key of either record; no key stands in both. */
export type RigKey = MotorKey | SternKey;

/** How close the certified least clearance is to the true one, mm; a hundredth, so that a margin can be read to a tenth. */
const WITHIN_MM = 0.01;

export interface Mounting {
  readonly rig: Rig;
  readonly mechanism: Mechanism | undefined;
  /** The moving parts that are fully known. */
  readonly parts: readonly Part[];
  /** Keys of the moving parts nobody has taken. */
  readonly missing: readonly (MotorKey | "steering")[];
  readonly obstacles: readonly Obstacle[];
  /** Least clearance of an obstacle over all parts and poses (held straight while tilting: steering only in the trim-pin holes); undefined where the obstacle or every part is unknown. */
  clearance(obstacleId: string): Clearance | undefined;
  /** The same with the motor held straight ahead at every tilt. */
  straightClearance(obstacleId: string): Clearance | undefined;
}

/** Hangs a motor on a stern. Nothing is solved until it is asked for. */
export function mount(rig: Rig): Mounting {
  const mechanism = mechanismOf(rig.motor);
  const parts = handledParts(rig);
  const obstacles = obstaclesOf(rig.stern, rig.motor.bracketWidthMm);
  const solve = (straight: boolean) =>
    remembered((obstacleId) => {
      const obstacle = obstacles.find(({ id }) => id === obstacleId);
      if (!mechanism || !obstacle || parts.length === 0) return undefined;
      return leastClearance(mechanism, parts, obstacle, { within: WITHIN_MM, straight });
    });
  return {
    rig,
    mechanism,
    parts,
    missing: missingOfParts(rig.motor),
    obstacles,
    clearance: solve(false),
    straightClearance: solve(true),
  };
}

function remembered<T>(work: (key: string) => T): (key: string) => T {
  const known = new Map<string, T>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key) as T;
  };
}

/**
 * The moving parts with the poses they take as the motor is handled: held straight while tilting, each
 * part steers only in the trim-pin holes, and tilts on from there straight ahead.
 */
function handledParts({ motor, handling }: Rig): Part[] {
  const parts = partsOf(motor);
  const { pinAnglesDeg, tiltArcDeg } = motor;
  if (!handling?.straightWhileTilting || !pinAnglesDeg || tiltArcDeg === undefined) return parts;
  const holes = pinRange({ ...motor, pinAnglesDeg, tiltArcDeg });
  return parts.flatMap((part) => [
    { ...part, faceAngles: holes },
    { ...part, steeringAngles: { from: 0, to: 0 } },
  ]);
}

/**
 * The same clearance on a slightly different rig, with the tightest pose and its separating direction held
 * (the envelope theorem: to first order the pose's own shift does not matter). A pose that stands at an
 * end of its range moves with that end.
 */
export function clearanceHeld(found: Clearance, obstacleId: string, was: Rig): (rig: Rig) => number {
  const number = handledParts(was).findIndex((part) => part.id === found.partId && takes(part, found.pose));
  const before = handledParts(was)[number]!;
  return (rig) => {
    const mechanism = mechanismOf(rig.motor);
    const part = handledParts(rig)[number];
    const obstacle = obstaclesOf(rig.stern, rig.motor.bracketWidthMm).find(({ id }) => id === obstacleId);
    if (!mechanism || !part || !obstacle)
      throw new Error(`${obstacleId}: a number was taken away while its effect was asked`);
    const pose = {
      faceAngleDeg: follow(found.pose.faceAngleDeg, before.faceAngles, part.faceAngles),
      steeringDeg: follow(found.pose.steeringDeg, before.steeringAngles, part.steeringAngles),
    };
    return gapAlong(mechanism, part, obstacle, pose, found.direction);
  };
}

/** Whether a part takes a pose at all. */
const takes = (
  { faceAngles, steeringAngles }: Part,
  { faceAngleDeg, steeringDeg }: Clearance["pose"],
): boolean => within(faceAngleDeg, faceAngles) && within(steeringDeg, steeringAngles);

const within = (angle: number, { from, to }: Range): boolean => angle > from - 1e-6 && angle < to + 1e-6;

/** An angle that stood at an end of its range stays at that end. */
function follow(angle: number, was: Range, is: Range): number {
  if (Math.abs(angle - was.from) < 1e-6) return is.from;
  if (Math.abs(angle - was.to) < 1e-6) return is.to;
  return angle;
}
