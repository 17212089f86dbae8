/**
 * The three views, and how a motor in a pose is thrown onto them.
 *
 * - profile: from port; forward is to the LEFT (that is how a boat looks from her port side), up is up.
 * - plan: from above; forward to the left, port at the foot, so that it hangs squarely under the profile.
 * - elevation: from aft, looking forward; port is to the left, up is up.
 */
import type { Body } from "#lib/draw/bodies.ts";
import { type Flat, type LineKind, type Mark, outline, type Tone } from "#lib/draw/drawing.ts";
import { silhouette } from "#lib/draw/hull.ts";
import {
  type BracketPoint,
  bracketToHull,
  type HullPoint,
  legHeight,
  legToBracket,
  steeredToLeg,
} from "#lib/rig/frame.ts";
import type { Corner } from "#lib/rig/motor.ts";

/** A view; see the head of this file for which way each looks. */
export type View = "profile" | "plan" | "elevation";

/** A hull point on the drawing plane of a view. */
export function thrown(view: View, [x, y, z]: HullPoint): Flat {
  if (view === "profile") return [-x, z];
  if (view === "plan") return [-x, -y];
  return [-y, z];
}

/** Where the motor hangs: rake and seat of the stern, degrees and mm above the datum. */
export interface Berth {
  readonly rakeDeg: number;
  readonly seatMm: number;
}

/** A bracket point on the drawing plane of a view. */
export const fromBracket = (view: View, point: BracketPoint, { rakeDeg, seatMm }: Berth): Flat =>
  thrown(view, bracketToHull(point, rakeDeg, seatMm));

/** The numbers that say where a motor's axes are. */
export interface Axes {
  readonly measuredAtDeg: number;
  readonly tiltAxisForwardMm: number;
  readonly tiltAxisAboveMm: number;
  readonly steerAxisAftMm: number;
}

/** An attitude of the motor: face angle plus = lower end aft, steering plus = tiller to port; degrees. */
export interface Pose {
  readonly faceAngleDeg: number;
  readonly steeringDeg: number;
}

/** A point of a body ([x, y, height above the saddle]) in the bracket frame at a pose. */
export function posed([x, y, height]: Corner, moves: Body["moves"], pose: Pose, axes: Axes): BracketPoint {
  const z = legHeight(height, axes.measuredAtDeg, axes);
  const inLeg =
    moves === "steered"
      ? steeredToLeg([x, y, z], pose.steeringDeg, axes.steerAxisAftMm)
      : ([x, y, z] as const);
  return legToBracket(inLeg, pose.faceAngleDeg, axes);
}

/** Everything that says where a body lies on a drawing. */
export interface Placing {
  readonly view: View;
  readonly berth: Berth;
  readonly axes: Axes;
  readonly pose: Pose;
}

/** The silhouette of a body in a view at a pose. */
export const bodyOutline = (
  body: Pick<Body, "moves" | "points">,
  { view, berth, axes, pose }: Placing,
): Flat[] =>
  silhouette(body.points.map((point) => fromBracket(view, posed(point, body.moves, pose, axes), berth)));

/** How a motor is drawn: as it runs (solid), or in another position (long-dash-double-dot). */
export interface Look {
  readonly line: LineKind;
  readonly tone: Tone;
  readonly fill: "paper" | "none";
}
/** As it runs: full line, hiding what lies behind. */
export const SOLID: Look = { line: "visible", tone: "ink", fill: "paper" };
/** In another position: long-dash-double-dot. */
export const GHOST: Look = { line: "extreme", tone: "ink", fill: "none" };

/** Drawn thin whatever the look: they lie inside an outline. */
const DETAILS = new Set(["seam", "hub"]);

/** How a body departs from its look: details thin; the propeller from aft as the circle it sweeps, through which the gearcase is seen. */
function thinned(of: string, view: View): Partial<Look> {
  if (of === "propeller" && view === "elevation") return { line: "centre", fill: "none" };
  return DETAILS.has(of) ? { line: "dimension", fill: "none" } : {};
}

/** Parts nearer the reader last: from above the cowl hides the leg, from aft the propeller hides the gearcase. */
function nearestLast(bodies: readonly Body[], view: View): readonly Body[] {
  if (view === "profile") return bodies;
  const order =
    view === "plan"
      ? ["skeg", "hub", "propeller", "gearcase", "strut", "plate", "leg", "swivel", "tiller", "grip", "cowl"]
      : [
          "tiller",
          "grip",
          "swivel",
          "leg",
          "cowl",
          "seam",
          "skeg",
          "strut",
          "plate",
          "gearcase",
          "propeller",
          "hub",
        ];
  return bodies
    .filter((body) => view !== "plan" || body.of !== "seam")
    .toSorted((a, b) => order.indexOf(a.of) - order.indexOf(b.of));
}

/** A motor at a pose in a view, as outlines. */
export function drawnMotor(bodies: readonly Body[], placing: Placing, look: Look): Mark[] {
  const shown = look.fill === "none" ? bodies.filter((body) => !DETAILS.has(body.of)) : bodies;
  return nearestLast(shown, placing.view).map((body) => {
    return outline(bodyOutline(body, placing), { ...look, ...thinned(body.of, placing.view), of: body.of });
  });
}
