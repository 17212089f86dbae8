/**
 * Room above the well sole. A cowl or a tiller that comes down on the sole stops the tilt short, and the
 * motor cannot be brought out of the water. Margin: from the least clearance of any moving part above the
 * sole, over all tilt and steering, to one inch (common practice, no source). A leg
 * that hangs outside is not held against the sole through the transom. Leaves out hoses and battery
 * leads lying on the sole.
 */
import type { Check } from "#lib/checks/check.ts";
import { movingKeys, roomBeside } from "#lib/checks/moving-room.ts";
import { hasWell, OBSTACLE_KEYS } from "#lib/rig/obstacles.ts";

export const soleRoom: Check = {
  id: "sole-room",
  question: "Does the tilting motor stay clear of the well sole?",
  why: "A motor that lands on the sole does not tilt up out of the water.",
  leavesOut: "Hoses and leads lying on the sole.",
  unit: "mm",
  limits: ["soleRoomMm"],
  asked: ({ stern }) => hasWell(stern) || "There is no well sole.",
  needs: ({ motor }) => [...movingKeys(motor), ...OBSTACLE_KEYS.sole],
  edges: (study) => roomBeside(study, ["sole"], "soleRoomMm"),
};
