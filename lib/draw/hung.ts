/** A motor hung on a stern as the three views see it: what can be placed, where, and what has to be left out. */
import { type Body, bodiesOf, leftOut } from "#lib/draw/bodies.ts";
import { type Flat, type Mark, outline } from "#lib/draw/drawing.ts";
import { silhouette } from "#lib/draw/hull.ts";
import {
  type Axes,
  type Berth,
  drawnMotor,
  fromBracket,
  GHOST,
  type Pose,
  posed,
  SOLID,
  type View,
} from "#lib/draw/view.ts";
import { placed } from "#lib/geometry/mechanism.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import type { Mounting } from "#lib/rig/mounting.ts";
import { tiltRange } from "#lib/rig/parts.ts";
import { runningHole, seatNow } from "#lib/rig/plate.ts";

/** A pairing ready to be drawn. */
export interface Hung {
  readonly mounting: Mounting;
  readonly berth: Berth;
  readonly bodies: readonly Body[];
  /** Where the axes are and the pose it runs in; absent where these were not taken, and then no motor is drawn. */
  readonly motion?: { readonly axes: Axes; readonly running: Pose; readonly fullUp?: Pose };
  /** What is left out of the drawings, in words. */
  readonly notes: readonly string[];
}

/** Hangs the motor for drawing; undefined where rake or seat are not known: then there is nothing to draw on. */
export function hang(mounting: Mounting): Hung | undefined {
  const { motor, stern } = mounting.rig;
  const seatMm = seatNow(stern);
  const { rakeDeg } = stern;
  if (seatMm === undefined || rakeDeg === undefined) return undefined;
  const motion = motionOf(mounting, rakeDeg);
  const bodies = bodiesOf(motor);
  const missing = leftOut(motor);
  const notes: string[] = [];
  if (!motion) notes.push("Motor not drawn: its tilt tube, steering axis or pin holes are not known.");
  else if (missing.length > 0) notes.push(`Not drawn for want of a number: ${missing.join(", ")}.`);
  if (motion && bodies.length > 0) {
    notes.push(
      "The motor is drawn inside its measured envelope (thin boxes). Below the plate only heights are measured; the shape is typical.",
    );
  }
  return { mounting, berth: { rakeDeg, seatMm }, bodies, motion, notes };
}

function motionOf({ rig: { motor } }: Mounting, rakeDeg: number): Hung["motion"] {
  const { measuredAtDeg, tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm, pinAnglesDeg, tiltArcDeg } =
    motor;
  if (measuredAtDeg === undefined || tiltAxisForwardMm === undefined || tiltAxisAboveMm === undefined)
    return undefined;
  if (steerAxisAftMm === undefined || pinAnglesDeg === undefined || pinAnglesDeg.length === 0)
    return undefined;
  const running = { faceAngleDeg: runningHole(pinAnglesDeg, rakeDeg), steeringDeg: 0 };
  const axes = { measuredAtDeg, tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm };
  if (tiltArcDeg === undefined) return { axes, running };
  return {
    axes,
    running,
    fullUp: { faceAngleDeg: tiltRange({ ...motor, pinAnglesDeg, tiltArcDeg }).to, steeringDeg: 0 },
  };
}

/** The motor as it runs (or as held in `pose`), in full line. */
export function solidMotor(hung: Hung, view: View, pose = hung.motion?.running): Mark[] {
  if (!hung.motion || !pose) return [];
  const { berth, motion } = hung;
  return drawnMotor(shownAt(hung, pose), { view, berth, axes: motion.axes, pose }, SOLID);
}

/** The motor, or some of its bodies, in another position: long-dash-double-dot. */
export function ghostMotor(hung: Hung, view: View, pose: Pose, only?: readonly string[]): Mark[] {
  if (!hung.motion) return [];
  const bodies = shownAt(hung, pose).filter((body) => !only || only.includes(body.of));
  const placing = { view, berth: hung.berth, axes: hung.motion.axes, pose };
  return drawnMotor(bodies, placing, { ...GHOST, fill: "paper" });
}

/** A tiller that folds is out of the way once the leg has left its pin holes. */
function shownAt({ bodies, mounting: { rig } }: Hung, { faceAngleDeg }: Pose): readonly Body[] {
  const folded = rig.motor.tillerFolds && faceAngleDeg > Math.max(...(rig.motor.pinAnglesDeg ?? []));
  return folded ? bodies.filter(({ of }) => of !== "tiller" && of !== "grip") : bodies;
}

/** The measured envelope of every part at a pose: what the checks work with, as faint thin boxes. */
export function envelope(hung: Hung, view: View, pose: Pose): Mark[] {
  const { mechanism, parts } = hung.mounting;
  if (!mechanism) return [];
  return parts
    .filter(({ faceAngles }) => pose.faceAngleDeg >= faceAngles.from && pose.faceAngleDeg <= faceAngles.to)
    .map((part) => {
      const corners = placed(mechanism, part, pose).map((point) => fromBracket(view, point, hung.berth));
      return outline(silhouette(corners), { line: "dimension", tone: "faint", of: `envelope ${part.id}` });
    });
}

/** The tilt axis on a view. */
export function tiltAxis({ motion, berth }: Hung, view: View): Flat | undefined {
  if (!motion) return undefined;
  const { tiltAxisForwardMm, tiltAxisAboveMm } = motion.axes;
  return fromBracket(view, [tiltAxisForwardMm, 0, tiltAxisAboveMm], berth);
}

/** The point of the plate's underside on the steering axis as the motor runs, in the bracket frame. */
export function plateBelowAxis({ motion, mounting }: Hung): BracketPoint | undefined {
  const shaft = mounting.rig.motor.shaftLengthMm;
  if (!motion || shaft === undefined) return undefined;
  return posed([0, 0, -shaft], "steered", motion.running, motion.axes);
}
