/**
 * Steering room between the cheeks. A notch too narrow stops the tiller or the cowl before the motor is
 * hard over, tilted or not: the boat cannot be turned as sharply as its helmsman believes. Margin: from
 * the least clearance of any moving part beside either cheek, over all tilt and steering, to one inch
 * (common practice, no source). Where nothing is cut, the straight top beside the bracket takes the
 * cheeks' place. Leaves out hands on the tiller and cables not listed as solids.
 */
import type { Check } from "#lib/checks/check.ts";
import { movingKeys, roomBeside } from "#lib/checks/moving-room.ts";
import { isUncut, OBSTACLE_KEYS } from "#lib/rig/obstacles.ts";

export const steeringRoom: Check = {
  id: "steering-room",
  question: "Does the motor steer hard over both ways between the cheeks, at every tilt?",
  why: "A motor that strikes the notch cannot be put hard over, and breaks the cheek or a knuckle trying.",
  leavesOut: "Hands on the tiller, and cables or linkages not listed as solids.",
  unit: "mm",
  limits: ["steeringRoomMm"],
  asked: () => true,
  needs: ({ motor, stern }) => [
    ...movingKeys(motor),
    ...(isUncut(stern)
      ? (["bracketWidthMm", "transomThicknessMm", "transomTopMm", "rakeDeg"] as const)
      : OBSTACLE_KEYS.cheek),
  ],
  edges: (study) => roomBeside(study, ["cheek-port", "cheek-starboard"], "steeringRoomMm"),
};
