/**
 * How a clearance changes when a number changes a little: the tightest pose and its separating direction
 * are held, and the two nearest points are followed as points of their bodies. To first order the pose's
 * and the points' own shifts do not matter (the envelope theorem), so this is the clearance's derivative
 * wherever the tightest place does not jump.
 */
import type { Clearance } from "#lib/geometry/clearance.ts";
import type { Range } from "#lib/geometry/mechanism.ts";
import { type BracketPoint, legToBracket, steeredToLeg } from "#lib/rig/frame.ts";
import type { Corner } from "#lib/rig/motor.ts";
import { handled, type Rig } from "#lib/rig/mounting.ts";
import { outlineOf } from "#lib/rig/obstacles.ts";
import { type PartBox, partBox } from "#lib/rig/parts.ts";

type Axes = {
  readonly tiltAxisForwardMm: number;
  readonly tiltAxisAboveMm: number;
  readonly steerAxisAftMm: number;
};

/** The clearance of the rig it is given, with pose, direction and nearest points of `found` (on the rig `was`) held. */
export function clearanceHeld(found: Clearance, obstacleId: string, was: Rig): (rig: Rig) => number {
  const number = boxesOf(was, found.partId).findIndex((part) => takes(part, found.pose));
  const before = boxesOf(was, found.partId)[number]!;
  const onPart = shares(before, carriedBack(found.partPoint, before, found.pose, was.motor as Axes));
  const onObstacle = sharesOf(cornersOf(was, obstacleId), found.obstaclePoint);
  const n = found.direction;
  const partWas = placeOfPart(was);
  const obstacleWas = blend(cornersOf(was, obstacleId), onObstacle);
  return (rig) => {
    // What was not changed need not be worked out again.
    const x = rig.motor === was.motor ? partWas : placeOfPart(rig);
    const y =
      rig.stern === was.stern && rig.motor.bracketWidthMm === was.motor.bracketWidthMm
        ? obstacleWas
        : blend(cornersOf(rig, obstacleId), onObstacle);
    return n[0] * (x[0] - y[0]) + n[1] * (x[1] - y[1]) + n[2] * (x[2] - y[2]);
  };

  function placeOfPart(rig: Rig): BracketPoint {
    const part = boxesOf(rig, found.partId)[number]!;
    const pose = {
      faceAngleDeg: follow(found.pose.faceAngleDeg, before.faceAngles, part.faceAngles),
      steeringDeg: follow(found.pose.steeringDeg, before.steeringAngles, part.steeringAngles),
    };
    return carried(pointAt(part, onPart), part, pose, rig.motor as Axes);
  }
}

/** The part with the poses it takes; two boxes where the motor is held straight while tilting. */
const boxesOf = (rig: Rig, partId: string): PartBox[] => handled([partBox(rig.motor, partId)], rig);

const cornersOf = ({ motor, stern }: Rig, obstacleId: string): readonly BracketPoint[] =>
  outlineOf(stern, obstacleId, motor.bracketWidthMm).corners;

/** Whether a part takes a pose at all. */
const takes = ({ faceAngles, steeringAngles }: PartBox, pose: Clearance["pose"]): boolean =>
  within(pose.faceAngleDeg, faceAngles) && within(pose.steeringDeg, steeringAngles);

const within = (angle: number, { from, to }: Range): boolean => angle > from - 1e-6 && angle < to + 1e-6;

/** An angle that stood at an end of its range stays at that end. */
function follow(angle: number, was: Range, is: Range): number {
  if (Math.abs(angle - was.from) < 1e-6) return is.from;
  if (Math.abs(angle - was.to) < 1e-6) return is.to;
  return angle;
}

/** A point of the part, in its own coordinates, at a pose: where it is in the bracket frame. */
function carried(point: Corner, { moves }: PartBox, pose: Clearance["pose"], axes: Axes): BracketPoint {
  const inLeg = moves === "steered" ? steeredToLeg(point, pose.steeringDeg, axes.steerAxisAftMm) : point;
  return legToBracket(inLeg, pose.faceAngleDeg, axes);
}

/** The way back: both motions are rigid, so the coordinates are the projections on the carried axes. */
function carriedBack(point: BracketPoint, part: PartBox, pose: Clearance["pose"], axes: Axes): Corner {
  const origin = carried([0, 0, 0], part, pose, axes);
  const along = (axis: Corner) => {
    const end = carried(axis, part, pose, axes);
    return end.reduce((sum, value, k) => sum + (value - origin[k]!) * (point[k]! - origin[k]!), 0);
  };
  return [along([1, 0, 0]), along([0, 1, 0]), along([0, 0, 1])];
}

/** A point's place between the two corners of a box, 0 to 1 in each direction. */
const shares = ({ from, to }: PartBox, point: Corner): Corner =>
  [0, 1, 2].map((k) => (point[k]! - from[k]!) / (to[k]! - from[k]!)) as unknown as Corner;

const pointAt = ({ from, to }: PartBox, share: Corner): Corner =>
  [0, 1, 2].map((k) => from[k]! + share[k]! * (to[k]! - from[k]!)) as unknown as Corner;

/** The point with shares a, b, c between the low and high faces of eight corners (each corner weighs the product of its shares). */
function blend(corners: readonly BracketPoint[], [a, b, c]: Corner): BracketPoint {
  const point = [0, 0, 0];
  for (let i = 0; i < 8; i += 1) {
    const weight = (i & 1 ? a : 1 - a) * (i & 2 ? b : 1 - b) * (i & 4 ? c : 1 - c);
    for (let k = 0; k < 3; k += 1) point[k]! += weight * corners[i]![k]!;
  }
  return point as unknown as BracketPoint;
}

/** The shares at which eight corners blend to a point: Newton's method, two or three steps since the faces are flat. */
function sharesOf(corners: readonly BracketPoint[], target: BracketPoint): Corner {
  let share: [number, number, number] = [0.5, 0.5, 0.5];
  for (let step = 0; step < 20; step += 1) {
    const here = blend(corners, share);
    const miss = [0, 1, 2].map((k) => target[k]! - here[k]!);
    if (Math.hypot(...miss) < 1e-9) break;
    const slopes = [0, 1, 2].map((k) => {
      const [low, high] = [0, 1].map((end) => blend(corners, share.with(k, end) as unknown as Corner));
      return [0, 1, 2].map((j) => high![j]! - low![j]!);
    });
    const by = solved(slopes, miss);
    share = [share[0] + by[0]!, share[1] + by[1]!, share[2] + by[2]!];
  }
  return share;
}

/** The three weights with which the rows of `rows` add up to `sum` (Cramer's rule). */
function solved(rows: readonly number[][], sum: readonly number[]): number[] {
  const volume = (a: readonly number[], b: readonly number[], c: readonly number[]) =>
    a[0]! * (b[1]! * c[2]! - b[2]! * c[1]!) +
    a[1]! * (b[2]! * c[0]! - b[0]! * c[2]!) +
    a[2]! * (b[0]! * c[1]! - b[1]! * c[0]!);
  const [a, b, c] = rows as [number[], number[], number[]];
  const whole = volume(a, b, c);
  return [volume(sum, b, c) / whole, volume(a, sum, c) / whole, volume(a, b, sum) / whole];
}
