/** What the three views of a pairing share: the pairing hung, its report, the poses worth drawing, and their words. */
import { bestView } from "#lib/draw/clearance-marks.ts";
import type { Hung } from "#lib/draw/hung.ts";
import type { Reach } from "#lib/draw/stern-lines.ts";
import type { Pose, View } from "#lib/draw/view.ts";
import type { Report, ReportClearance } from "#lib/fit/report.ts";
import { inDegrees } from "#lib/quantity/words.ts";

/** What the views are drawn from: the pairing hung, its report, and how lengths are lettered (without unit). */
export interface Subject {
  readonly hung: Hung;
  readonly report: Pick<Report, "plate" | "clearances">;
  readonly write: (mm: number) => string;
}

/** Heads of the motor: what strikes first, and what a ghost of a tightest pose shows. */
export const HEAD = ["cowl", "tiller", "grip", "leg"];

/** At most so many tightest poses are ghosted in one view; the rest stand in the table. */
const GHOSTS = 2;

/** How far the stern is drawn: past the well and past the motor's head, and never less than half a metre each way. */
export function reachOf({ mounting: { rig } }: Hung): Reach {
  const { stern, motor } = rig;
  const well = (stern.wellDepthMm ?? 0) + (stern.transomThicknessMm ?? 0) + 20;
  const half = Math.max(
    (stern.notchWidthMm ?? 0) / 2 + 160,
    (stern.wellWidthAftMm ?? 0) / 2 + 120,
    (motor.cowlWidthMm ?? 0) / 2 + 300,
    420,
  );
  const sideMm = Math.min(half, (stern.transomWidthMm ?? Number.POSITIVE_INFINITY) / 2);
  return { foreMm: Math.max(460, well), sideMm };
}

/** The pose at which a clearance is least. */
export const posedOf = ({ faceAngleDeg, steeringDeg }: ReportClearance): Pose => ({
  faceAngleDeg,
  steeringDeg,
});

/** Hard over to port and to starboard in the running hole, as far as the stops are known. */
export function hardOver({ motion, mounting: { rig } }: Hung): Pose[] {
  if (!motion) return [];
  const { steerPortDeg = 0, steerStarboardDeg = 0 } = rig.motor;
  const stops = [steerPortDeg, -steerStarboardDeg].filter((deg) => deg !== 0);
  return stops.map((steeringDeg) => ({ ...motion.running, steeringDeg }));
}

/** The clearances that are seen best in a view, least first; one measured through the transom stands in nobody's way and is not drawn. */
export const seenIn = (view: View, { hung, report }: Subject): ReportClearance[] =>
  report.clearances
    .filter((one) => !one.throughTransom && bestView(one, hung) === view)
    .toSorted((a, b) => a.mm - b.mm);

/** Whether two poses look the same on paper: within a degree. */
export const samePose = (a: Pose, b: Pose): boolean =>
  Math.abs(a.faceAngleDeg - b.faceAngleDeg) < 1 && Math.abs(a.steeringDeg - b.steeringDeg) < 1;

/** The tightest poses of a view, each once. */
export function tightest(clearances: readonly ReportClearance[]): Pose[] {
  const poses: Pose[] = [];
  for (const pose of clearances.map(posedOf))
    if (!poses.some((other) => samePose(other, pose))) poses.push(pose);
  return poses.slice(0, GHOSTS);
}

/** "leg 66°, tiller 40° to starboard". */
export function poseWords({ faceAngleDeg, steeringDeg }: Pose): string {
  const side = steeringDeg > 0 ? "port" : "starboard";
  const turned =
    Math.abs(steeringDeg) < 0.05 ? "straight ahead" : `tiller ${inDegrees(Math.abs(steeringDeg))} to ${side}`;
  return `leg ${inDegrees(faceAngleDeg)}, ${turned}`;
}
