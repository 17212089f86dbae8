import type { NamedPose } from "#app/_parts/report/pose-bench.tsx";
import { obstacleWords } from "#lib/draw/clearance-marks.ts";
import { hang } from "#lib/draw/hung.ts";
import type { Report } from "#lib/fit/report.ts";
import { mount, type Rig } from "#lib/rig/mounting.ts";
import { knows, MOTION_KEYS, tiltRange } from "#lib/rig/parts.ts";

/** The poses a motor can take and those worth a button: as it runs, full up, and the tightest three. Undefined where the motion is not known. */
export function benchPoses(rig: Rig, report: Report) {
  const motion = hang(mount(rig))?.motion;
  if (!motion || !knows(rig.motor, MOTION_KEYS)) return undefined;
  const { from, to } = tiltRange(rig.motor);
  const tight = report.clearances.toSorted((a, b) => a.mm - b.mm).slice(0, 3);
  const poses: NamedPose[] = [
    { name: "As it runs", ...motion.running },
    { name: "Full up", faceAngleDeg: to, steeringDeg: 0 },
    ...tight.map(({ obstacle, faceAngleDeg, steeringDeg }) => ({
      name: `Tightest: ${obstacleWords(obstacle)}`,
      faceAngleDeg,
      steeringDeg,
    })),
  ];
  const steer = [-rig.motor.steerStarboardDeg, rig.motor.steerPortDeg] as const;
  return { poses, tilt: [from, to] as const, steer };
}
