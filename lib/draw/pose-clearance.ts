/** The nearest obstacle with the motor held in one pose: what the drawing shows while a reader tilts and steers it. */
import { clearanceAt } from "#lib/geometry/clearance.ts";
import type { Pose } from "#lib/geometry/mechanism.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import { LEG, type Mounting } from "#lib/rig/mounting.ts";

/** The clearance of one obstacle at a pose, millimetres; negative = they overlap. Points in the bracket frame. */
export interface PoseClearance {
  readonly obstacle: string;
  readonly part: string;
  readonly mm: number;
  readonly nearest: { readonly partMm: BracketPoint; readonly obstacleMm: BracketPoint };
}

/** Every obstacle's clearance from the parts that are out at this pose (a folded tiller is not), least first. Empty where the motion is not known. */
export function clearancesAtPose({ mechanism, parts, obstacles }: Mounting, pose: Pose): PoseClearance[] {
  if (!mechanism) return [];
  const out = parts.filter(
    ({ faceAngles }) => pose.faceAngleDeg >= faceAngles.from && pose.faceAngleDeg <= faceAngles.to,
  );
  return obstacles
    .flatMap((obstacle) => {
      const each = out.map((part) => clearanceAt(mechanism, part, obstacle, pose));
      // A leg outside is not held against the sole through the transom.
      const counting = each.filter(
        ({ partId, partPoint }) => !(obstacle.id === "sole" && partId === LEG && partPoint[0] < 0),
      );
      const least = counting.toSorted((a, b) => a.mm - b.mm)[0];
      if (!least) return [];
      const nearest = { partMm: least.partPoint, obstacleMm: least.obstaclePoint };
      return [{ obstacle: obstacle.id, part: least.partId, mm: least.mm, nearest }];
    })
    .toSorted((a, b) => a.mm - b.mm);
}
