/**
 * Drains: at the lowest corners of the sole for the way it lies, with the hole for their tube.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { type Marked, marked } from "#lib/fit/cut-plan/marked.ts";
import { meeting, type Plane, planeThrough } from "#lib/fit/cut-plan/planes.ts";
import type { Post } from "#lib/fit/cut-plan/posts.ts";
import { soleDirections, type WellPlanes, type WellShape } from "#lib/fit/cut-plan/well-shape.ts";
import { sin } from "#lib/quantity/angle.ts";
import { soleRiseDeg } from "#lib/rig/afloat/well-water.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import { holeForTubeMm } from "#lib/standards/joinery.ts";

/** The drains, alike to port and starboard. */
export interface DrainPlan {
  /** Where water gathers with the keel line level: the corners at the transom, at the front, or nowhere (a level sole). */
  readonly lowest: "transom" | "front" | "level";
  /** How the sole rises forward, degrees; minus = it falls. */
  readonly riseDeg: number;
  readonly tubeOutsideMm: number;
  readonly hole: Marked;
  /** Hole's centre from the centreline, above the sole square to it, and at the transom below the seat along the inside face. */
  readonly acrossMm: number;
  readonly aboveSoleMm: number;
  readonly belowSeatMm?: number;
  readonly says: string;
}

/** Below this a sole does not drain by itself, degrees (common practice, no source). */
const LEVEL_DEG = 0.5;

/** Where the drains go. They stand clear of the fillet in the corner, and inboard of a post that fills it. */
export function drainPlan(
  shape: WellShape,
  planes: WellPlanes,
  posts: readonly Post[],
  choices: Settled,
): DrainPlan {
  const riseDeg = soleRiseDeg(shape.soleAngleDeg, shape.rakeDeg);
  const lowest = Math.abs(riseDeg) < LEVEL_DEG ? "level" : riseDeg > 0 ? "transom" : "front";
  const holeMm = holeForTubeMm(choices.tubeOutsideMm);
  const along = lowest === "front" ? shape.wellDepthMm : 0;
  const aboveSoleMm = holeMm / 2;
  const acrossMm =
    acrossOf(shape, planes.port, along, aboveSoleMm, posts, lowest) - holeMm / 2 - choices.filletRadiusMm;
  return {
    lowest,
    riseDeg,
    tubeOutsideMm: choices.tubeOutsideMm,
    hole: { ...marked(holeMm, "up", choices.lengths), markMm: holeMm },
    acrossMm,
    aboveSoleMm,
    ...(lowest !== "front" && { belowSeatMm: shape.soleDropMm - aboveSoleMm / sin(shape.soleAngleDeg) }),
    says: WORDS[lowest],
  };
}

const WORDS: Record<DrainPlan["lowest"], string> = {
  transom:
    "Water gathers at the transom: bore through it at both after corners, the hole just touching the sole.",
  front:
    "The sole falls forward and water gathers at the front beam, inside the boat: lay it rising forward if that can be had, else lead hoses from both forward corners out through the transom.",
  level:
    "The sole lies level and sheds no water of itself: bore at both after corners, and pack the sole up a little at the front.",
};

/** Free half breadth at the corner, at the hole's height. */
function acrossOf(
  shape: WellShape,
  side: Plane,
  along: number,
  above: number,
  posts: readonly Post[],
  lowest: DrainPlan["lowest"],
): number {
  const { forward, up } = soleDirections(shape);
  const foot = inWell(shape, along, 0, above);
  const wall = meeting(side, planeThrough(foot, forward), planeThrough(foot, up))[1];
  const inCorner = posts.filter(({ low, side: at }) => at !== "middle" && low[0] < 0 && lowest !== "front");
  return Math.min(wall, ...inCorner.map(({ low, high, side: at }) => (at === "port" ? low[1] : -high[1])));
}
