/**
 * Clamp depth. The pads need flat transom under them, inside the boat; a well sole set too high leaves
 * them half on the wood. Margin: from the lowest edge of the pads down to the well sole. Needs the clamp
 * depth and the sole's drop. Leaves out knees, frames and stringers beside the pads: list them as
 * obstacles.
 */
import { BOLTED, type Check, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { hasWell } from "#lib/rig/obstacles.ts";

const room = ({ motor, stern }: Rig): number => stern.soleDropMm! - motor.clampDepthMm!;

export const clampDepth: Check = {
  id: "clamp-depth",
  question: "Is there flat transom enough inside for the clamp pads?",
  why: "Pads that half miss the wood let the motor slip.",
  leavesOut: "Knees, frames and stringers beside the pads: list them as obstacles.",
  unit: "mm",
  limits: ["clampRoomMm"],
  asked: ({ motor, stern }) =>
    motor.fixing === "bolted" ? BOLTED : hasWell(stern) || "There is no well sole to limit the pads.",
  needs: () => ["clampDepthMm", "soleDropMm"],
  edges: ({ mounting: { rig }, limit, write }: Study) => {
    const pads = known(rig.motor, "clampDepthMm");
    const well = known(rig.stern, "soleDropMm");
    if (!pads || !well) return [];
    const spare = limit("clampRoomMm");
    return [
      {
        room: room(rig) - spare.value,
        held: (other: Rig) => room(other) - spare.value,
        have: well.soleDropMm,
        need: pads.clampDepthMm + spare.value,
        limit: spare,
        says: `the clamp pads reach ${write(pads.clampDepthMm)} below the seat and the sole lies ${write(well.soleDropMm)} below it`,
      },
    ];
  },
};
