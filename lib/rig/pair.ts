/**
 * Two motors on one stern: where each sits, the room between them in all their attitudes, and the room each
 * has from the stern at its place. Each keeps its own bracket frame, set off athwart (plus = to port) and
 * along the face where it sits on another height.
 */
import { type Clearance, leastClearance } from "#lib/geometry/clearance.ts";
import type { Part, Range } from "#lib/geometry/mechanism.ts";
import { leastBetween, type Moving, type TwoClearance } from "#lib/geometry/two-movers.ts";
import { cos } from "#lib/quantity/angle.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import type { Corner, MotorValues } from "#lib/rig/motor.ts";
import { LEG } from "#lib/rig/mounting.ts";
import { isUncut, obstacleIds, outlineOf, solidOf } from "#lib/rig/obstacles.ts";
import { mechanismOf, partsOf } from "#lib/rig/parts.ts";
import { seatNow } from "#lib/rig/plate.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** One of the two at its place. */
export interface Berthed {
  readonly motor: MotorValues;
  /** Its middle from the centreline, plus = to port, mm. */
  readonly offsetMm: number;
  /** Its seat above the datum, plumb, mm. */
  readonly seatMm: number;
}

/** Whether a place lies inside the notch; nothing cut, nowhere does. */
export const inNotch = (stern: SternValues, offsetMm: number): boolean =>
  stern.notchWidthMm !== undefined && Math.abs(offsetMm) < stern.notchWidthMm / 2;

/** The seat a motor finds at a place: the notch's inside it, the uncut top elsewhere. */
export const seatAt = (stern: SternValues, offsetMm: number): number | undefined =>
  inNotch(stern, offsetMm) || isUncut(stern) ? seatNow(stern) : stern.transomTopMm;

/** Each where it stands along the common face: the first one's seat is the origin's height. */
function moving(each: Berthed, first: Berthed, rakeDeg: number): Moving | undefined {
  const mechanism = mechanismOf(each.motor);
  const parts = partsOf(each.motor);
  if (!mechanism || parts.length === 0) return undefined;
  return { mechanism, parts, saddle: [0, each.offsetMm, (each.seatMm - first.seatMm) / cos(rakeDeg)] };
}

/** How close the certificate of the room between two motors is, mm. */
const WITHIN = { within: 0.1, withinOverlap: 10 };

/** Least room between the two over every tilt and every steering of both; undefined where the motion or every part of one is unknown. */
export function roomBetween(one: Berthed, other: Berthed, rakeDeg: number): TwoClearance | undefined {
  const [a, b] = [moving(one, one, rakeDeg), moving(other, one, rakeDeg)];
  return a && b && leastBetween(a, b, WITHIN);
}

/** An angle that stood at an end of its range stays at that end. */
function follow(angle: number, was: Range, is: Range): Range {
  const end = Math.abs(angle - was.from) < 1e-6 ? is.from : Math.abs(angle - was.to) < 1e-6 ? is.to : angle;
  return { from: end, to: end };
}

/** The same part held in the pose found for it. */
function held(
  parts: readonly Part[],
  was: readonly Part[],
  id: string,
  pose: { faceAngleDeg: number; steeringDeg: number },
): Part[] {
  const [now, before] = [parts.find((part) => part.id === id), was.find((part) => part.id === id)];
  if (!now || !before) return [];
  const faceAngles = follow(pose.faceAngleDeg, before.faceAngles, now.faceAngles);
  return [
    {
      ...now,
      faceAngles,
      steeringAngles: follow(pose.steeringDeg, before.steeringAngles, now.steeringAngles),
    },
  ];
}

/** The room of slightly different motors in the attitudes found: what its spread is worked out from. */
export function roomHeld(found: TwoClearance, was: readonly [Berthed, Berthed], rakeDeg: number) {
  return (one: Berthed, other: Berthed): number => {
    const sides = [one, other].map((each, i) => {
      const side = moving(each, one, rakeDeg)!;
      return { ...side, parts: held(side.parts, partsOf(was[i]!.motor), found.partIds[i]!, found.poses[i]!) };
    });
    return leastBetween(sides[0]!, sides[1]!, WITHIN).mm;
  };
}

/** The stern as a motor at a place sees it: heights from its own seat, nothing cut where it sits beside the notch. */
export function sternFrom(stern: SternValues, { offsetMm, seatMm }: Omit<Berthed, "motor">): SternValues {
  const raised = (seatMm - (seatNow(stern) ?? seatMm)) / cos(stern.rakeDeg ?? 0);
  const lowered = ([f, y, v]: Corner): Corner => [f, y, v - raised];
  const seen: SternValues = {
    ...stern,
    ...(stern.soleDropMm !== undefined && { soleDropMm: stern.soleDropMm + raised }),
    ...(stern.obstacles && {
      obstacles: stern.obstacles.map((one) => ({
        ...one,
        fromMm: lowered(one.fromMm),
        toMm: lowered(one.toMm),
      })),
    }),
  };
  return inNotch(stern, offsetMm)
    ? { ...seen, seatMm }
    : { ...seen, seatMm: undefined, notchWidthMm: undefined, transomTopMm: seatMm };
}

/** Ids of what a motor at its place can strike. */
export const obstaclesAt = (stern: SternValues, each: Berthed): string[] =>
  obstacleIds(sternFrom(stern, each), each.motor.bracketWidthMm);

/** Least room from one obstacle of the stern at its place; with `hold` only the part and pose found are looked at, on the motor it was found on. */
export function roomAt(
  stern: SternValues,
  each: Berthed,
  obstacleId: string,
  hold?: { readonly found: Clearance; readonly was: MotorValues },
): Clearance | undefined {
  const mechanism = mechanismOf(each.motor);
  const seen = sternFrom(stern, each);
  const parts = hold
    ? held(partsOf(each.motor), partsOf(hold.was), hold.found.partId, hold.found.pose)
    : partsOf(each.motor);
  if (!mechanism || parts.length === 0 || !obstaclesAt(stern, each).includes(obstacleId)) return undefined;
  const { corners } = outlineOf(seen, obstacleId, each.motor.bracketWidthMm);
  // The straight top stands on either side of the bracket itself; all else stands from the boat's centreline.
  const beside = isUncut(seen) && obstacleId.startsWith("cheek");
  const shifted = beside ? corners : corners.map(([f, y, v]): BracketPoint => [f, y - each.offsetMm, v]);
  const solid = solidOf({ id: obstacleId, corners: shifted });
  const least = (of: readonly Part[]) => leastClearance(mechanism, of, solid, { within: 0.01 });
  const found = least(parts);
  const inside = parts.filter((part) => part.id !== LEG);
  // The sole begins at the inside face: a leg that hangs outside is not near it through the transom.
  return obstacleId === "sole" && found.partId === LEG && found.partPoint[0] < 0 && inside.length > 0
    ? least(inside)
    : found;
}
