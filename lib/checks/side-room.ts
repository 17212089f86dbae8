/**
 * Room between the well's sides. Sides that close in on the motor stop it steering while it is tilted,
 * and the tiller before it is hard over. Margin: from the least clearance of any moving part from either
 * side, over all tilt and steering, to one inch (common practice, no source). Sides whose height nobody
 * took are taken to go up without end. Leaves out coamings and rails above the sides.
 */
import type { Check } from "#lib/checks/check.ts";
import { movingKeys, roomBeside } from "#lib/checks/moving-room.ts";
import { hasWell, OBSTACLE_KEYS } from "#lib/rig/obstacles.ts";

export const sideRoom: Check = {
  id: "side-room",
  question: "Does the motor steer and tilt clear of the well's sides?",
  why: "Sides too close stop the tiller before the motor is hard over.",
  leavesOut: "Coamings and rails above the well's sides.",
  unit: "mm",
  limits: ["sideRoomMm"],
  asked: ({ stern }) => hasWell(stern) || "There is no well.",
  needs: ({ motor }) => [...movingKeys(motor), ...OBSTACLE_KEYS.side],
  also: ["wellSideHeightMm"],
  edges: (study) => roomBeside(study, ["side-port", "side-starboard"], "sideRoomMm"),
};
