/**
 * Room beside whatever else is in the way: a cleat, a swim ladder, a second motor's bracket, a thwart,
 * listed with the stern as boxes. Margin: from the least clearance of any moving part, over all tilt and
 * steering, to one inch (common practice, no source). Leaves out what nobody listed.
 */
import type { Check } from "#lib/checks/check.ts";
import { movingKeys, roomBeside } from "#lib/checks/moving-room.ts";

export const obstacleRoom: Check = {
  id: "obstacle-room",
  question: "Does the motor clear everything else that stands in its way?",
  why: "A cleat or a ladder in the sweep of the motor bends, or bends the motor.",
  leavesOut: "Anything not listed with the stern.",
  unit: "mm",
  limits: ["obstacleRoomMm"],
  asked: ({ stern }) => (stern.obstacles?.length ?? 0) > 0 || "Nothing else was listed as in the way.",
  needs: ({ motor }) => movingKeys(motor),
  edges: (study) =>
    roomBeside(
      study,
      (study.mounting.rig.stern.obstacles ?? []).map(({ label }) => `obstacle:${label}`),
      "obstacleRoomMm",
    ),
};
