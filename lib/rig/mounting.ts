/**
 * One motor hung on one stern: the only room that knows both. Everything a question asks about the
 * pairing is worked out here once and remembered.
 */

import type { Clearance } from "#lib/geometry/clearance.ts";
import { leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part } from "#lib/geometry/mechanism.ts";
import type { MotorKey, MotorValues } from "#lib/rig/motor.ts";
import { obstacleIds, obstacleOf } from "#lib/rig/obstacles.ts";
import { mechanismOf, missingOfParts, type PartBox, partsOf, pinRange } from "#lib/rig/parts.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** What the helmsman does, where it costs nothing: which trim-pin hole he runs in, and whether he holds the motor straight while it tilts. */
export interface Handling {
  /** Number of the hole, counted from the lowest as 0; absent, the one that lays the plate nearest parallel. */
  readonly hole?: number;
  readonly straightWhileTilting?: boolean;
}

/** A motor and a stern as plain numbers. */
export interface Rig {
  readonly motor: MotorValues;
  readonly stern: SternValues;
  readonly handling?: Handling;
}

/** A key of either record; no key stands in both. */
export type RigKey = MotorKey | SternKey;

/** How close the certified least clearance is to the true one, mm; a hundredth, so that a margin can be read to a tenth. */
const WITHIN_MM = 0.01;

export interface Mounting {
  readonly rig: Rig;
  readonly mechanism: Mechanism | undefined;
  /** The moving parts that are fully known. */
  readonly parts: readonly Part[];
  /** Keys of the moving parts nobody has taken. */
  readonly missing: readonly (MotorKey | "steering")[];
  /** Ids of the obstacles that are fully known. */
  readonly obstacleIds: readonly string[];
  /** The same as solids, made when first asked for. */
  readonly obstacles: readonly Obstacle[];
  /** Least clearance of an obstacle over all parts and poses (held straight while tilting: steering only in the trim-pin holes); undefined where the obstacle or every part is unknown. */
  clearance(obstacleId: string): Clearance | undefined;
  /** The same of what passes inside the boat: a leg that is nearest from outside, through the transom, is left out. */
  insideClearance(obstacleId: string): Clearance | undefined;
  /** The same with the motor held straight ahead at every tilt. */
  straightClearance(obstacleId: string): Clearance | undefined;
}

/** Id of the part that hangs outside the transom. */
export const LEG = "midsection";

/** Hangs a motor on a stern. Nothing is solved until it is asked for. */
export function mount(rig: Rig): Mounting {
  const mechanism = mechanismOf(rig.motor);
  const parts = once(() => handled(partsOf(rig.motor), rig));
  const ids = once(() => obstacleIds(rig.stern, rig.motor.bracketWidthMm));
  const missing = once(() => missingOfParts(rig.motor));
  const solid = (id: string) => obstacleOf(rig.stern, id, rig.motor.bracketWidthMm);
  const least = (obstacleId: string, candidates: readonly Part[], straight: boolean) =>
    mechanism && ids().includes(obstacleId) && candidates.length > 0
      ? leastClearance(mechanism, candidates, solid(obstacleId), { within: WITHIN_MM, straight })
      : undefined;
  const clearance = remembered((id) => least(id, parts(), false));
  return {
    rig,
    mechanism,
    get parts() {
      return parts();
    },
    get missing() {
      return missing();
    },
    get obstacleIds() {
      return ids();
    },
    get obstacles() {
      return ids().map(solid);
    },
    clearance,
    insideClearance: remembered((id) => {
      const found = clearance(id);
      const outside = found?.partId === LEG && found.partPoint[0] < 0;
      const inside = parts().filter((part) => part.id !== LEG);
      return outside ? least(id, inside, false) : found;
    }),
    straightClearance: remembered((id) => least(id, parts(), true)),
  };
}

/** Worked out when first asked for, then kept. */
function once<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
}

function remembered<T>(work: (key: string) => T): (key: string) => T {
  const known = new Map<string, T>();
  return (key) => {
    if (!known.has(key)) known.set(key, work(key));
    return known.get(key) as T;
  };
}

/**
 * The moving parts with the poses they take as the motor is handled: held straight while tilting, each
 * part steers only in the trim-pin holes, and tilts on from there straight ahead.
 */
export function handled<P extends Omit<PartBox, "from" | "to">>(
  parts: readonly P[],
  { motor, handling }: Rig,
): P[] {
  const { pinAnglesDeg, tiltArcDeg } = motor;
  if (!handling?.straightWhileTilting || !pinAnglesDeg || tiltArcDeg === undefined) return [...parts];
  const holes = pinRange({ ...motor, pinAnglesDeg, tiltArcDeg });
  return parts.flatMap((part) => [
    { ...part, faceAngles: holes },
    { ...part, steeringAngles: { from: 0, to: 0 } },
  ]);
}
