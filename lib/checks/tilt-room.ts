/**
 * Tilt room forward in the well. The head of a tilted motor swings far into the boat; a bulkhead too far
 * aft stops it. Two edges: the least clearance of any moving part from the bulkhead keeps an inch, and the
 * well is at least 22 in fore and aft. Both limits are common practice, no source. Leaves out anything
 * stowed against the bulkhead.
 */
import { type Check, type Edge, known, type Study } from "#lib/checks/check.ts";
import { movingKeys, roomBeside } from "#lib/checks/moving-room.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { hasWell, OBSTACLE_KEYS } from "#lib/rig/obstacles.ts";

function length({ mounting: { rig }, limit, write }: Study): Edge[] {
  const well = known(rig.stern, "wellDepthMm");
  if (!well) return [];
  const least = limit("wellDepthMm");
  const room = ({ stern }: Rig) => stern.wellDepthMm! - least.value;
  const says = `the well is ${write(well.wellDepthMm)} fore and aft, ${write(least.value)} wanted`;
  return [{ room: room(rig), held: room, have: well.wellDepthMm, need: least.value, limit: least, says }];
}

export const tiltRoom: Check = {
  id: "tilt-room",
  question: "Is the well long enough fore and aft for the tilted motor?",
  why: "A motor whose head strikes the bulkhead cannot be tilted up, and cracks its cowl trying.",
  leavesOut: "Gear stowed against the bulkhead.",
  unit: "mm",
  limits: ["bulkheadRoomMm", "wellDepthMm"],
  asked: ({ stern }) => hasWell(stern) || "There is no well.",
  needs: ({ motor }) => [...movingKeys(motor), ...OBSTACLE_KEYS.bulkhead],
  edges: (study) => [...roomBeside(study, ["bulkhead"], "bulkheadRoomMm"), ...length(study)],
};
