import type { Mechanism, Obstacle, Part, Pose } from "#lib/geometry/mechanism.ts";
import type { Triple } from "#lib/geometry/solid.ts";

/** The least clearance of an obstacle, and where it happens. */
export interface Clearance {
  /** Signed distance at `pose`: apart, the distance; overlapping, minus the least shift that parts them. Millimetres. */
  readonly mm: number;
  /** Certified: over all poses asked for the clearance is nowhere less than this. */
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

export function leastClearance(
  _mechanism: Mechanism,
  _parts: readonly Part[],
  _obstacle: Obstacle,
  _options: ClearanceOptions = {},
): Clearance {
  throw new Error("to come");
}

export function clearanceAt(_mechanism: Mechanism, _part: Part, _obstacle: Obstacle, _pose: Pose): Clearance {
  throw new Error("to come");
}

export function gapAlong(
  _mechanism: Mechanism,
  _part: Part,
  _obstacle: Obstacle,
  _pose: Pose,
  _direction: Triple,
): number {
  throw new Error("to come");
}
