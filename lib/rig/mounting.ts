/**
 * One motor hung on one stern: the only room that knows both. Everything a question asks about the
 * pairing is worked out here once and remembered.
 */

import type { Clearance } from "#lib/geometry/clearance.ts";
import { gapAlong, leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part } from "#lib/geometry/mechanism.ts";
import type { MotorKey, MotorValues } from "#lib/rig/motor.ts";
import { obstaclesOf } from "#lib/rig/obstacles.ts";
import { mechanismOf, missingOfParts, partsOf, pinRange } from "#lib/rig/parts.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** A motor and a stern as plain numbers. */
export interface Rig {
  readonly motor: MotorValues;
  readonly stern: SternValues;
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
  /** Least clearance of an obstacle over all parts and poses; undefined where the obstacle or every part is unknown. */
  clearance(obstacleId: string): Clearance | undefined;
  /** The same with the motor held straight ahead at every tilt. */
  straightClearance(obstacleId: string): Clearance | undefined;
  /** The same, straight ahead while tilting but steering freely in the trim-pin holes. */
  heldStraightClearance(obstacleId: string): Clearance | undefined;
}

/** Hangs a motor on a stern. Nothing is solved until it is asked for. */
export function mount(rig: Rig): Mounting {
  const mechanism = mechanismOf(rig.motor);
  const parts = partsOf(rig.motor);
  const obstacles = obstaclesOf(rig.stern, rig.motor.bracketWidthMm);
  const solve = (candidates: readonly Part[], straight: boolean) =>
    remembered((obstacleId) => {
      const obstacle = obstacles.find(({ id }) => id === obstacleId);
      if (!mechanism || !obstacle || candidates.length === 0) return undefined;
      return leastClearance(mechanism, candidates, obstacle, { within: WITHIN_MM, straight });
    });
  const straightClearance = solve(parts, true);
  const inHoles = solve(restingInHoles(rig.motor, parts), false);
  return {
    rig,
    mechanism,
    parts,
    missing: missingOfParts(rig.motor),
    obstacles,
    clearance: solve(parts, false),
    straightClearance,
    heldStraightClearance: (id) => {
      const [straight, resting] = [straightClearance(id), inHoles(id)];
      return straight && resting && resting.mm < straight.mm ? resting : straight;
    },
  };
}

function remembered<T>(work: (key: string) => T): (key: string) => T {
  const known = new Map<string, T>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key) as T;
  };
}

/** The parts with their tilt kept to the trim-pin holes. */
function restingInHoles(motor: MotorValues, parts: readonly Part[]): Part[] {
  const { pinAnglesDeg, tiltArcDeg } = motor;
  if (!pinAnglesDeg || tiltArcDeg === undefined) return [];
  const holes = pinRange({ ...motor, pinAnglesDeg, tiltArcDeg });
  return parts.map((part) => ({ ...part, faceAngles: holes }));
}

/**
 * The same clearance on a slightly different rig, with the tightest pose and its separating direction held
 * (the envelope theorem: to first order the pose's own shift does not matter). A pose that stands at an
 * end of its range moves with that end.
 */
export function clearanceHeld(found: Clearance, obstacleId: string, was: Rig): (rig: Rig) => number {
  return (rig) => {
    const mechanism = mechanismOf(rig.motor);
    const part = partsOf(rig.motor).find(({ id }) => id === found.partId);
    const obstacle = obstaclesOf(rig.stern, rig.motor.bracketWidthMm).find(({ id }) => id === obstacleId);
    if (!mechanism || !part || !obstacle)
      throw new Error(`${obstacleId}: a number was taken away while its effect was asked`);
    const before = partsOf(was.motor).find(({ id }) => id === found.partId)!;
    const pose = {
      faceAngleDeg: follow(found.pose.faceAngleDeg, before.faceAngles, part.faceAngles),
      steeringDeg: follow(found.pose.steeringDeg, before.steeringAngles, part.steeringAngles),
    };
    return gapAlong(mechanism, part, obstacle, pose, found.direction);
  };
}

/** An angle that stood at an end of its range stays at that end. */
function follow(angle: number, was: { from: number; to: number }, is: { from: number; to: number }): number {
  if (Math.abs(angle - was.from) < 1e-6) return is.from;
  if (Math.abs(angle - was.to) < 1e-6) return is.to;
  return angle;
}
