/**
 * What a stern puts in a motor's way, as solids in the bracket frame. Cheeks reach outward and downward,
 * sole and sides forward, the bulkhead forward of its aft face, all without end; none reaches aft of the
 * transom.
 */
import type { Obstacle } from "#lib/geometry/mechanism.ts";
import { box, hexahedron } from "#lib/geometry/solid.ts";
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import type { Corner } from "#lib/rig/motor.ts";
import { seatNow } from "#lib/rig/plate.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** An obstacle by its eight corners, in the order of a solid's. */
export interface Outline {
  readonly id: string;
  readonly corners: readonly BracketPoint[];
}

/** The solid of an outline. */
export const solidOf = ({ id, corners }: Outline): Obstacle => ({
  id,
  solid: isBox(id) ? box(corners[0]!, corners[7]!) : hexahedron(corners),
});

/** Cheeks and listed obstacles lie along the bracket frame's axes. */
const isBox = (id: string): boolean => id.startsWith("cheek") || id.startsWith("obstacle:");

const boxCorners = (from: Corner, to: Corner): BracketPoint[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((i) => [
    (i & 1 ? Math.max : Math.min)(from[0], to[0]),
    (i & 2 ? Math.max : Math.min)(from[1], to[1]),
    (i & 4 ? Math.max : Math.min)(from[2], to[2]),
  ]);

/** "Without end": far beyond anything a motor reaches, mm. */
const FAR = 20_000;

/** Keys any of which says that there is a motor well. */
export const WELL_KEYS = [
  "soleDropMm",
  "soleAngleDeg",
  "wellDepthMm",
  "wellFrontHeightMm",
  "wellWidthAftMm",
  "wellWidthFrontMm",
  "sideFlareDeg",
] as const satisfies readonly SternKey[];

/** What each obstacle needs to be known. */
export const OBSTACLE_KEYS = {
  cheek: ["notchWidthMm", "transomThicknessMm", "transomTopMm", "seatMm", "rakeDeg"],
  sole: ["soleDropMm", "soleAngleDeg", "transomThicknessMm"],
  bulkhead: ["soleDropMm", "soleAngleDeg", "transomThicknessMm", "wellDepthMm", "wellFrontHeightMm"],
  side: [
    "soleDropMm",
    "soleAngleDeg",
    "transomThicknessMm",
    "wellDepthMm",
    "wellWidthAftMm",
    "wellWidthFrontMm",
    "sideFlareDeg",
  ],
} as const satisfies Record<string, readonly SternKey[]>;

/** The numbers an obstacle rests on; a listed one rests on none. The straight top of an uncut transom has the bracket's width in place of a notch. */
export function keysOfObstacle(id: string): readonly (SternKey | "bracketWidthMm")[] {
  if (id.startsWith("cheek")) return [...OBSTACLE_KEYS.cheek, "bracketWidthMm"];
  if (id.startsWith("side")) return [...OBSTACLE_KEYS.side, "wellSideHeightMm"];
  return id === "sole" || id === "bulkhead" ? OBSTACLE_KEYS[id] : [];
}

export type Side = "port" | "starboard";
type With<K extends SternKey> = SternValues & Required<Pick<SternValues, K>>;

export const hasWell = (stern: SternValues): boolean => WELL_KEYS.some((key) => stern[key] !== undefined);
/** Nothing is cut: the transom is a straight top. */
export const isUncut = (stern: SternValues): boolean =>
  stern.seatMm === undefined && stern.notchWidthMm === undefined;

const knows = <K extends SternKey>(stern: SternValues, keys: readonly K[]): stern is With<K> =>
  keys.every((key) => stern[key] !== undefined);

/** One cheek of a notch: the transom beside it, from `halfWidthMm` outward and from the uncut top down. */
export function cheek(
  side: Side,
  halfWidthMm: number,
  stern: With<"transomThicknessMm" | "rakeDeg" | "transomTopMm">,
  seatMm: number,
): Outline {
  const outward = side === "port" ? 1 : -1;
  const top = (stern.transomTopMm - seatMm) / cos(stern.rakeDeg);
  return {
    id: `cheek-${side}`,
    corners: boxCorners([0, outward * halfWidthMm, -FAR], [stern.transomThicknessMm, outward * FAR, top]),
  };
}

/** A point of the well: `along` the sole from the inside face of the transom, `y` to port, `above` the sole and square to it. */
export function inWell(
  stern: With<"transomThicknessMm" | "soleAngleDeg" | "soleDropMm">,
  along: number,
  y: number,
  above: number,
): BracketPoint {
  const { soleAngleDeg: a } = stern;
  return [
    stern.transomThicknessMm + along * sin(a) - above * cos(a),
    y,
    -stern.soleDropMm + along * cos(a) + above * sin(a),
  ];
}

/** The well sole: everything forward of the inside face and under the sole's plane. */
export function sole(stern: With<(typeof OBSTACLE_KEYS.sole)[number]>): Outline {
  const aft = inWell(stern, 0, 0, 0);
  const fore = inWell(stern, FAR, 0, 0);
  const corners: BracketPoint[] = [];
  for (const topOfSole of [false, true]) {
    for (const y of [-FAR, FAR]) {
      for (const [f, , v] of [aft, fore]) corners.push([f, y, topOfSole ? v : v - FAR]);
    }
  }
  return { id: "sole", corners };
}

/** The front bulkhead: everything forward of its aft face (square to the sole, `wellDepthMm` along it) up to its top. */
export function bulkhead(stern: With<(typeof OBSTACLE_KEYS.bulkhead)[number]>): Outline {
  const corners: BracketPoint[] = [];
  for (const above of [-FAR, stern.wellFrontHeightMm]) {
    for (const y of [-FAR, FAR]) {
      for (const along of [stern.wellDepthMm, FAR]) corners.push(inWell(stern, along, y, above));
    }
  }
  return { id: "bulkhead", corners };
}

/**
 * One side of the well: everything forward of the inside face and outboard of the plane through the
 * side's line on the sole, leaning outward by the flare as seen from aft, up to its top where one is
 * given. `moreMm` shifts it outward.
 */
export function wellSide(side: Side, stern: With<(typeof OBSTACLE_KEYS.side)[number]>, moreMm = 0): Outline {
  const outward = side === "port" ? 1 : -1;
  const taper = (stern.wellWidthFrontMm - stern.wellWidthAftMm) / 2 / stern.wellDepthMm;
  const flare = tan(stern.sideFlareDeg);
  const [t, a] = [stern.transomThicknessMm, stern.soleAngleDeg];
  const planeAt = ([f, , v]: BracketPoint) => {
    const along = (f - t) * sin(a) + (v + stern.soleDropMm) * cos(a);
    const above = -(f - t) * cos(a) + (v + stern.soleDropMm) * sin(a);
    return stern.wellWidthAftMm / 2 + moreMm + taper * along + flare * above;
  };
  const top = stern.wellSideHeightMm ?? FAR;
  // The top is a plane square to the side's own height; on the inside face it stands top / sin a up.
  const upAt = (f: number) => -stern.soleDropMm + (top + (f - t) * cos(a)) / sin(a);
  const corners: BracketPoint[] = [];
  for (const upper of [false, true]) {
    for (const outer of [false, true]) {
      for (const f of [t, t + FAR]) {
        const point: BracketPoint = [f, 0, upper ? upAt(f) : -FAR];
        corners.push([f, outward * (outer ? planeAt(point) + FAR : planeAt(point)), point[2]]);
      }
    }
  }
  return { id: `side-${side}`, corners };
}

/**
 * Ids of the obstacles of a stern that are fully known. An uncut transom has a straight top: the motor's
 * bracket covers its middle, so only the top beside the bracket, `bracketWidthMm` wide, can be struck.
 */
export function obstacleIds(stern: SternValues, bracketWidthMm?: number): string[] {
  const notch = isUncut(stern) ? bracketWidthMm : stern.notchWidthMm;
  const transom = knows(stern, ["transomThicknessMm", "rakeDeg", "transomTopMm"]);
  return [
    ...(notch !== undefined && transom && seatNow(stern) !== undefined
      ? ["cheek-port", "cheek-starboard"]
      : []),
    ...(knows(stern, OBSTACLE_KEYS.sole) ? ["sole"] : []),
    ...(knows(stern, OBSTACLE_KEYS.bulkhead) ? ["bulkhead"] : []),
    ...(knows(stern, OBSTACLE_KEYS.side) ? ["side-port", "side-starboard"] : []),
    ...(stern.obstacles ?? []).map(({ label }) => `obstacle:${label}`),
  ];
}

/** One of the obstacles `obstacleIds` names; throws for any other. */
export function outlineOf(stern: SternValues, id: string, bracketWidthMm?: number): Outline {
  const whole = stern as Required<SternValues>;
  const side: Side = id.endsWith("-port") ? "port" : "starboard";
  switch (id) {
    case "cheek-port":
    case "cheek-starboard":
      return cheek(side, (isUncut(stern) ? bracketWidthMm! : whole.notchWidthMm) / 2, whole, seatNow(stern)!);
    case "sole":
      return sole(whole);
    case "bulkhead":
      return bulkhead(whole);
    case "side-port":
    case "side-starboard":
      // A height nobody took stays unknown: `whole` only promises the keys the sides need.
      return wellSide(side, stern as With<(typeof OBSTACLE_KEYS.side)[number]>);
    default: {
      const listed = stern.obstacles?.find(({ label }) => id === `obstacle:${label}`);
      if (!listed) throw new Error(`${id}: no such obstacle`);
      return { id, corners: boxCorners(listed.fromMm, listed.toMm) };
    }
  }
}

/** Kept beside each stern's values: a long list hangs many motors on the same one. */
const solids = new WeakMap<SternValues, Map<string, Obstacle>>();

/** One of the obstacles `obstacleIds` names, as a solid. */
export function obstacleOf(stern: SternValues, id: string, bracketWidthMm?: number): Obstacle {
  const name = isUncut(stern) ? `${id} ${bracketWidthMm}` : id;
  const kept = solids.get(stern) ?? new Map<string, Obstacle>();
  solids.set(stern, kept);
  const found = kept.get(name) ?? solidOf(outlineOf(stern, id, bracketWidthMm));
  kept.set(name, found);
  return found;
}

/** Every obstacle of a stern that is fully known, by its corners. */
export const outlinesOf = (stern: SternValues, bracketWidthMm?: number): Outline[] =>
  obstacleIds(stern, bracketWidthMm).map((id) => outlineOf(stern, id, bracketWidthMm));

/** The same as solids. */
export const obstaclesOf = (stern: SternValues, bracketWidthMm?: number): Obstacle[] =>
  outlinesOf(stern, bracketWidthMm).map(solidOf);
