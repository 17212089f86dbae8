/**
 * Room for the moving motor: what the questions about cheeks, sole, bulkhead, sides and other obstacles
 * have in common. The least clearance over every tilt and every steering angle, of every part, must keep
 * the limit. A foul of a part that is known stands even where other parts are not.
 */
import type { Edge, NeededKey, Study } from "#lib/checks/check.ts";
import type { Clearance } from "#lib/geometry/clearance.ts";
import { inDegrees } from "#lib/quantity/words.ts";
import { clearanceHeld } from "#lib/rig/held.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { type Mounting, mount } from "#lib/rig/mounting.ts";
import { keysOfObstacle } from "#lib/rig/obstacles.ts";
import { keysOfPart, missingOfParts } from "#lib/rig/parts.ts";
import type { LimitKey } from "#lib/standards/common-practice.ts";

/** Kept beside each motor's values: five questions ask for the same. */
const moving = new WeakMap<MotorValues, readonly NeededKey[]>();

/** The motor's numbers that say where its moving parts go. */
export function movingKeys(motor: MotorValues): readonly NeededKey[] {
  const kept = moving.get(motor);
  if (kept) return kept;
  const parts = ["cowl", "midsection", ...(motor.tillerLengthMm === undefined ? [] : ["tiller"])];
  const keys = [...new Set<NeededKey>([...parts.flatMap(keysOfPart), ...missingOfParts(motor)])];
  moving.set(motor, keys);
  return keys;
}

/** Names of the obstacles in a sentence. */
const NAMES: Record<string, string> = {
  "cheek-port": "the port cheek of the notch",
  "cheek-starboard": "the starboard cheek of the notch",
  sole: "the well sole",
  bulkhead: "the front bulkhead",
  "side-port": "the port side of the well",
  "side-starboard": "the starboard side of the well",
};

/** An obstacle's name in a sentence. */
export const obstacleName = (id: string): string => NAMES[id] ?? id.replace(/^obstacle:/, "");

/** The least clearance that counts: of the sole, what passes inside the boat; of everything else, every part. */
const counting = (mounting: Mounting, id: string): Clearance | undefined =>
  INSIDE.includes(id) ? mounting.insideClearance(id) : mounting.clearance(id);

/** The sole begins at the inside face: only through the transom can a leg outside be near it. */
const INSIDE = ["sole"];

/** One edge per obstacle that is there: least clearance less the limit. */
export function roomBeside(study: Study, obstacleIds: readonly string[], limitKey: LimitKey): Edge[] {
  const { mounting, write } = study;
  const limit = study.limit(limitKey);
  return obstacleIds.flatMap((id) => {
    const found = counting(mounting, id);
    if (!found) return [];
    const held = clearanceHeld(found, id, mounting.rig);
    return [
      {
        room: found.mm - limit.value,
        held: (other) => held(other) - limit.value,
        anew: (other) => counting(mount(other), id)!.mm - limit.value,
        keys: [...keysOfPart(found.partId), ...keysOfObstacle(id)],
        have: found.mm,
        need: limit.value,
        limit,
        says: `${passes(found.partId, found.mm, obstacleName(id), write)} ${poseWords(found.pose)}, ${write(limit.value)} wanted`,
      },
    ];
  });
}

function passes(part: string, mm: number, obstacle: string, write: Study["write"]): string {
  const name = { cowl: "the cowl", midsection: "the leg", tiller: "the tiller" }[part] ?? part;
  return mm < 0
    ? `${name} strikes ${obstacle}, ${write(-mm)} into it,`
    : `${name} passes ${write(mm)} from ${obstacle}`;
}

/** "with the leg at 66° to the transom and the tiller 40° to starboard". */
function poseWords({ faceAngleDeg, steeringDeg }: { faceAngleDeg: number; steeringDeg: number }): string {
  const side = steeringDeg > 0 ? "port" : "starboard";
  const steer =
    Math.abs(steeringDeg) < 0.05
      ? "steering straight"
      : `steering ${inDegrees(Math.abs(steeringDeg))} to ${side}`;
  return `with the leg at ${inDegrees(faceAngleDeg)} to the transom, ${steer}`;
}
