/**
 * The well to be built: how deep its sole lies, how far it reaches forward, how high its front stands, and
 * the planes its parts are sawn to. The hull's sides stay where they are: a sole set lower or laid at
 * another angle meets them elsewhere.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { type Marked, marked } from "#lib/fit/cut-plan/marked.ts";
import { greatestNeed, type Need } from "#lib/fit/cut-plan/pairings.ts";
import {
  cross,
  dot,
  meeting,
  minus,
  type Plane,
  planeOfPoints,
  planeThrough,
  rising,
  turned,
  unit,
  type Vector,
} from "#lib/fit/cut-plan/planes.ts";
import { soleDropNeed, wellDepthNeed } from "#lib/fit/needs.ts";
import { atan2, cos, sin } from "#lib/quantity/angle.ts";
import { withNumber } from "#lib/rig/alter.ts";
import { bracketToHull } from "#lib/rig/frame.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import { sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** The clear inside of the well, mm and degrees, as the stern's keys mean it. */
export interface WellShape {
  readonly soleDropMm: number;
  readonly soleAngleDeg: number;
  readonly wellDepthMm: number;
  readonly wellFrontHeightMm: number;
  readonly wellWidthAftMm: number;
  readonly wellWidthFrontMm: number;
  readonly sideFlareDeg: number;
  readonly transomThicknessMm: number;
  readonly rakeDeg: number;
  readonly seatMm: number;
}

/** The well's planes in the bracket frame; normals point out of the well, the sole's underside down. */
export interface WellPlanes {
  readonly transom: Plane;
  readonly sole: Plane;
  readonly front: Plane;
  readonly port: Plane;
  readonly starboard: Plane;
  readonly sheer: Plane;
}

/** Directions of the sole: forward along it, and up square to it. */
export const soleDirections = ({ soleAngleDeg: a }: Pick<WellShape, "soleAngleDeg">) => ({
  forward: [sin(a), 0, cos(a)] as Vector,
  up: [-cos(a), 0, sin(a)] as Vector,
});

type SoleOf = Pick<WellShape, "soleDropMm" | "soleAngleDeg" | "transomThicknessMm">;
type SidesOf = SoleOf &
  Pick<WellShape, "wellDepthMm" | "wellWidthAftMm" | "wellWidthFrontMm" | "sideFlareDeg">;

/** The port side's inner plane, from two points on its line along the sole and one above. */
export function portSide(well: SidesOf): Plane {
  const out = (sin(well.sideFlareDeg) / cos(well.sideFlareDeg)) * 100;
  const aft = inWell(well, 0, well.wellWidthAftMm / 2, 0);
  const fore = inWell(well, well.wellDepthMm, well.wellWidthFrontMm / 2, 0);
  const above = inWell(well, 0, well.wellWidthAftMm / 2 + out, 100);
  return planeOfPoints(aft, fore, above, [0, 1, 0]);
}

/** A plane of one side seen in the middle of the boat: the other side's. */
export const mirrored = ({ normal, at }: Plane): Plane => ({
  normal: [normal[0], -normal[1], normal[2]],
  at,
});

/** The sheer: through the transom's top on the centreline, running forward at `riseDeg` to the keel line. Normal up. */
function sheerPlane({ rakeDeg, seatMm }: WellShape, topMm: number, riseDeg: number): Plane {
  // In the bracket frame the keel line runs forward at minus the rake, the sheer `riseDeg` steeper.
  const along = rising(riseDeg - rakeDeg);
  return planeThrough([0, 0, (topMm - seatMm) / cos(rakeDeg)], cross(along, [0, 1, 0]));
}

/** All the planes of a well. */
export function planesOf(well: WellShape, topMm: number, sheerRiseDeg: number): WellPlanes {
  const { forward, up } = soleDirections(well);
  const origin = inWell(well, 0, 0, 0);
  const port = portSide(well);
  return {
    transom: turned(planeThrough([well.transomThicknessMm, 0, 0], [1, 0, 0])),
    sole: turned(planeThrough(origin, up)),
    front: planeThrough(inWell(well, well.wellDepthMm, 0, 0), forward),
    port,
    starboard: mirrored(port),
    sheer: sheerPlane(well, topMm, sheerRiseDeg),
  };
}

/** Clear widths and flare where a new sole meets a side plane that stays. */
export function widthsOn(side: Plane, well: SoleOf & Pick<WellShape, "wellDepthMm">) {
  const { forward, up } = soleDirections(well);
  const sole = planeThrough(inWell(well, 0, 0, 0), up);
  const halfAt = (along: number) => meeting(side, sole, planeThrough(inWell(well, along, 0, 0), forward))[1];
  return {
    wellWidthAftMm: 2 * halfAt(0),
    wellWidthFrontMm: 2 * halfAt(well.wellDepthMm),
    sideFlareDeg: atan2(-dot(side.normal, up), side.normal[1]),
  };
}

/** What is still to be known before a well can be planned. */
export function missingOfWell(stern: Stern, choices: Settled): string[] {
  const widths = ["wellWidthAftMm", "wellWidthFrontMm", "sideFlareDeg"] as const;
  return widths.filter((key) => stern[key] === undefined && choices[key] === undefined);
}

/** The shape with what was marked and needed on the way. */
export interface PlannedShape {
  readonly shape: WellShape;
  readonly drop: Marked;
  readonly depth: Marked;
  readonly dropNeed: Need;
  readonly depthNeed: Need;
  readonly planes: WellPlanes;
}

/** The greatest height of the front, square to the sole, that stays at or under the sheer all along its aft face; minus where the sole itself lies over it. */
export function heightToSheer(well: WellShape, sheer: Plane): number {
  const { up } = soleDirections(well);
  const foot = inWell(well, well.wellDepthMm, 0, 0);
  return (sheer.at - dot(sheer.normal, foot)) / dot(sheer.normal, up);
}

/** The longest well whose front, `heightMm` high, stays at or under the sheer; Infinity where the sole does not rise to it. */
export function depthToSheer(well: WellShape, sheer: Plane, heightMm: number): number {
  const { forward, up } = soleDirections(well);
  const foot = inWell(well, 0, 0, 0);
  const room = sheer.at - dot(sheer.normal, foot) - heightMm * dot(sheer.normal, up);
  const climbs = dot(sheer.normal, forward);
  return climbs <= 1e-9 ? (room >= 0 ? Number.POSITIVE_INFINITY : 0) : Math.max(0, room / climbs);
}

/**
 * The well for the motors on a stern whose notch is sawn (`sawn`); undefined where a need cannot be told.
 * The stern's own figures are kept where they are at least the need.
 */
export function wellShape(
  motors: readonly Motor[],
  recorded: Stern,
  sawn: Stern,
  choices: Settled,
): PlannedShape | undefined {
  const values = sternValues(sawn);
  const { transomThicknessMm, rakeDeg, transomTopMm, seatMm } = values as Required<typeof values>;
  const soleAngleDeg = lies(choices, rakeDeg, recorded);
  const bare = withoutWell(sawn, soleAngleDeg);
  const dropNeed = greatestNeed(motors, bare, soleDropNeed, (drop) => withNumber(bare, "soleDropMm", drop), [
    "clamp-depth",
    "screw-handles",
    "sole-room",
  ]);
  if (!dropNeed) return undefined;
  const drop = markedNeed(choices.soleDropMm, sawn.soleDropMm?.value, dropNeed, choices);
  const laid = withNumber(bare, "soleDropMm", drop.markMm);
  const depthNeed = depthNeedOf(motors, laid, seatMm, choices);
  if (!depthNeed) return undefined;
  const depth = markedNeed(choices.wellDepthMm, sawn.wellDepthMm?.value, depthNeed, choices);
  const sole = { transomThicknessMm, soleAngleDeg, soleDropMm: drop.markMm, wellDepthMm: depth.markMm };
  const start: WellShape = {
    ...sole,
    ...widths(sole, sawn, choices),
    rakeDeg,
    seatMm,
    wellFrontHeightMm: 0,
  };
  const { sheer } = planesOf(start, transomTopMm, choices.sheerRiseDeg);
  const wellFrontHeightMm =
    choices.wellFrontHeightMm ??
    sawn.wellFrontHeightMm?.value ??
    Math.max(0, marked(heightToSheer(start, sheer), "down", choices.lengths).markMm);
  const shape = { ...start, wellFrontHeightMm };
  const planes = planesOf(shape, transomTopMm, choices.sheerRiseDeg);
  return { shape, drop, depth, dropNeed, depthNeed, planes };
}

/** The choice, else the stern's figure where it is enough, else the need with its spread; on the step above. */
function markedNeed(
  choice: number | undefined,
  own: number | undefined,
  need: Need,
  { lengths }: Settled,
): Marked {
  return marked(choice ?? Math.max(own ?? 0, need.withSpread), "up", lengths);
}

const lies = ({ soleLies }: Settled, rakeDeg: number, stern: Stern): number =>
  soleLies === undefined ? (stern.soleAngleDeg?.value ?? 90) : soleLies === "level" ? 90 + rakeDeg : 90;

/** The stern without its well, but for how the sole is to lie. */
function withoutWell(stern: Stern, soleAngleDeg: number): Stern {
  const { soleDropMm, wellDepthMm, wellFrontHeightMm, wellWidthAftMm, wellWidthFrontMm, ...rest } = stern;
  const { sideFlareDeg, wellSideHeightMm, ...bare } = rest;
  return { ...bare, soleAngleDeg: { value: soleAngleDeg, how: "measured", plusMinus: SAWN_DEG } };
}

/** Half-width of an angle laid off with a bevel gauge, degrees (common practice, no source). */
const SAWN_DEG = 0.5;

/** The depth fore and aft, asked with the front as high as it can stand. */
function depthNeedOf(
  motors: readonly Motor[],
  laid: Stern,
  seatMm: number,
  choices: Settled,
): Need | undefined {
  const front = choices.wellFrontHeightMm;
  const stern = front === undefined ? laid : withNumber(laid, "wellFrontHeightMm", front);
  const highest =
    (stern.soleDropMm!.value + (stern.transomTopMm!.value - seatMm)) / cos(stern.rakeDeg!.value);
  return greatestNeed(
    motors,
    stern,
    (mounting, beyond) => wellDepthNeed(mounting, seatMm, undefined, beyond),
    (depth) => withNumber(withNumber(stern, "wellFrontHeightMm", front ?? highest), "wellDepthMm", depth),
    ["tilt-room"],
  );
}

/** Clear widths on the new sole: as chosen, else from the stern's sides, which stay where they are. */
function widths(sole: SoleOf & Pick<WellShape, "wellDepthMm">, sawn: Stern, choices: Settled) {
  const old = sternValues(sawn);
  const own = {
    wellWidthAftMm: choices.wellWidthAftMm ?? old.wellWidthAftMm!,
    wellWidthFrontMm: choices.wellWidthFrontMm ?? old.wellWidthFrontMm!,
    sideFlareDeg: choices.sideFlareDeg ?? old.sideFlareDeg!,
  };
  const chosen = [choices.wellWidthAftMm, choices.wellWidthFrontMm, choices.sideFlareDeg];
  if (
    chosen.some((one) => one !== undefined) ||
    old.soleDropMm === undefined ||
    old.wellDepthMm === undefined
  ) {
    return own;
  }
  const was = { ...sole, soleDropMm: old.soleDropMm, soleAngleDeg: old.soleAngleDeg ?? 90 };
  return widthsOn(portSide({ ...was, ...own, wellDepthMm: old.wellDepthMm }), sole);
}

/** Height of a point of the bracket frame above the datum, plumb, mm. */
export const aboveDatum = ({ rakeDeg, seatMm }: WellShape, point: Vector): number =>
  bracketToHull(point, rakeDeg, seatMm)[2];

/** The direction in which two planes meet, unit length. */
export const meetingLine = (a: Plane, b: Plane): Vector => unit(cross(a.normal, b.normal));

/** A point moved from one plane along a direction until it lies on another. */
export function carriedTo(point: Vector, direction: Vector, { normal, at }: Plane): Vector {
  const by = (at - dot(normal, point)) / dot(normal, direction);
  return minus(point, [-direction[0] * by, -direction[1] * by, -direction[2] * by]);
}
