/** Certified least clearances; see search.ts for the method and its derivation. */

import * as ledger from "#lib/geometry/ledger.ts";
import type { Mechanism, Obstacle, Part, Pose, Range } from "#lib/geometry/mechanism.ts";
import { type Fixed, fixed, type Mover, mover, turn } from "#lib/geometry/motion.ts";
import { search } from "#lib/geometry/search.ts";
import { nearestPoints, separate, separation } from "#lib/geometry/separation.ts";
import type { Triple } from "#lib/geometry/solid.ts";

/** The least clearance of an obstacle, and where it happens. */
export interface Clearance {
  /** Signed distance at `pose`: apart, the distance; overlapping, minus the least shift that parts them. Millimetres. */
  readonly mm: number;
  /** Certified: over all poses asked for, the clearance is nowhere less than this. */
  readonly lowerMm: number;
  readonly partId: string;
  readonly pose: Pose;
  /** Unit direction from the obstacle towards the part, bracket frame, at that pose. */
  readonly direction: Triple;
  /** Nearest (or, overlapping, deepest) points at that pose, bracket frame. */
  readonly partPoint: Triple;
  readonly obstaclePoint: Triple;
  /** Cells of poses looked at: the work done. */
  readonly nodes: number;
}

export interface ClearanceOptions {
  /** Width of the certificate, mm, when the answer is 0 or more; 0.1 unless given. */
  readonly within?: number;
  /** Width of the certificate, mm, when they overlap; 1 unless given. */
  readonly withinOverlap?: number;
  /** Steering held at 0 throughout. */
  readonly straight?: boolean;
  /** Stop as soon as the clearance is certified to be at least this. */
  readonly stopAbove?: number;
  /** Stop as soon as a pose with less clearance than this is found. */
  readonly stopBelow?: number;
}

const DEGREES = 180 / Math.PI;

/**
 * Least clearance of the obstacle from all the parts over all their poses. `mm` is met at `pose`, and the
 * true least lies between `lowerMm` and `mm`; the two differ by no more than `within` (`withinOverlap` when
 * `mm` is negative), unless the search was stopped by one of the options or gave up after 20,000 cells:
 * `lowerMm` is honest in every case. Throws a RangeError when there is no part or a range runs backwards.
 */
export function leastClearance(
  mechanism: Mechanism,
  parts: readonly Part[],
  obstacle: Obstacle,
  options: ClearanceOptions = {},
): Clearance {
  if (parts.length === 0) throw new RangeError("A clearance needs at least one part.");
  for (const part of parts) checkRanges(part);
  const movers = parts.map((part) => mover(mechanism, part));
  const still = fixed(mechanism, obstacle);
  const within = options.within ?? 0.1;
  const goal = {
    within,
    withinOverlap: Math.max(options.withinOverlap ?? 1, within),
    stopAbove: options.stopAbove ?? Number.POSITIVE_INFINITY,
    stopBelow: options.stopBelow ?? Number.NEGATIVE_INFINITY,
  };
  search(movers, still, goal, options.straight ?? false);
  const { outcome } = ledger;
  const nearest = movers[outcome[ledger.PART]!]!;
  const [p, s] = [outcome[ledger.AT_P]!, outcome[ledger.AT_S]!];
  const lowerMm = outcome[ledger.CERTIFIED]!;
  const nodes = outcome[ledger.NODES]!;
  separate(
    nearest,
    still,
    p,
    s,
    outcome[ledger.DIRECTION]!,
    outcome[ledger.DIRECTION + 1]!,
    outcome[ledger.DIRECTION + 2]!,
  );
  return { ...described(mechanism, nearest, still, p, s), lowerMm, nodes };
}

/** Clearance of one part from the obstacle in one pose, exact to a millionth of a millimetre. */
export function clearanceAt(mechanism: Mechanism, part: Part, obstacle: Obstacle, pose: Pose): Clearance {
  const moving = mover(mechanism, part);
  const still = fixed(mechanism, obstacle);
  const [p, s] = radians(part, pose);
  separate(moving, still, p, s, 0, 1, 0);
  return described(mechanism, moving, still, p, s);
}

/**
 * Gap along a held direction (bracket frame, any length but 0; taken as a unit vector) in one pose: the
 * part's least height along it minus the obstacle's greatest. Along the direction of a clearance this is
 * that clearance, and its change with a dimension is the clearance's change.
 */
export function gapAlong(
  mechanism: Mechanism,
  part: Part,
  obstacle: Obstacle,
  pose: Pose,
  direction: Triple,
): number {
  const moving = mover(mechanism, part);
  const still = fixed(mechanism, obstacle);
  const [p, s] = radians(part, pose);
  const points = new Float64Array(24);
  turn(moving.corners, moving.aft, Math.cos(p), Math.sin(p), Math.cos(s), Math.sin(s), points);
  const [f, y, v] = direction;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) {
    low = Math.min(low, f * points[k]! + y * points[k + 1]! + v * points[k + 2]!);
    high = Math.max(high, f * still.corners[k]! + y * still.corners[k + 1]! + v * still.corners[k + 2]!);
  }
  return (low - high) / Math.hypot(f, y, v);
}

/** Face angle and steering in radians; a tilting part stays straight. */
function radians(part: Part, pose: Pose): [number, number] {
  return [pose.faceAngleDeg / DEGREES, part.moves === "steered" ? pose.steeringDeg / DEGREES : 0];
}

/** The last separation as a clearance, back from the tilt axis to the saddle corner. */
function described(mechanism: Mechanism, moving: Mover, still: Fixed, p: number, s: number): Clearance {
  const mm = separation[3]!;
  const direction: Triple = [separation[0]!, separation[1]!, separation[2]!];
  const points = nearestPoints(still);
  const fromSaddle = (k: number): Triple => [
    points[k]! + mechanism.tiltAxisForwardMm,
    points[k + 1]!,
    points[k + 2]! + mechanism.tiltAxisAboveMm,
  ];
  return {
    mm,
    lowerMm: mm,
    partId: moving.part.id,
    pose: { faceAngleDeg: p * DEGREES, steeringDeg: s * DEGREES },
    direction,
    partPoint: fromSaddle(0),
    obstaclePoint: fromSaddle(3),
    nodes: 1,
  };
}

function checkRanges(part: Part): void {
  checkRange(part, part.faceAngles);
  checkRange(part, part.steeringAngles);
}

function checkRange(part: Part, { from, to }: Range): void {
  if (from <= to && Number.isFinite(to - from)) return;
  throw new RangeError(`The poses of "${part.id}" run from ${from} to ${to} degrees.`);
}
