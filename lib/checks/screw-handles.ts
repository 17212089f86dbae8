/**
 * Clamp-screw handles against the well sole. Handles that strike the sole cannot be turned, and skinned
 * knuckles leave screws slack. Two edges: the sole lies at least six inches below the seat, and at least
 * an inch below the lowest point the handles sweep. Needs the screws' drop, the handles' swing and the
 * sole's drop. Both limits are common practice, no source. Leaves out the hand that turns them.
 */
import { BOLTED, type Check, type Edge, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { hasWell } from "#lib/rig/obstacles.ts";

/** Lowest point of the handles' sweep below the saddle, mm. */
export const handleSweep = ({ motor }: Rig): number => motor.screwDropMm! + motor.handleSwingMm!;

export const screwHandles: Check = {
  id: "screw-handles",
  question: "Do the clamp-screw handles turn clear of the well sole?",
  why: "Handles that strike the sole cannot be tightened, and a slack screw drops the motor.",
  leavesOut: "Room for the hand that turns them, and handles that fold or take a spanner.",
  unit: "mm",
  limits: ["screwHandlesMm", "soleDropMm"],
  asked: ({ motor, stern }) =>
    motor.fixing === "bolted" ? BOLTED : hasWell(stern) || "There is no well sole under the handles.",
  needs: () => ["soleDropMm", "screwDropMm", "handleSwingMm"],
  edges: ({ mounting: { rig }, limit, write }: Study): Edge[] => {
    const well = known(rig.stern, "soleDropMm");
    if (!well) return [];
    const [least, spare] = [limit("soleDropMm"), limit("screwHandlesMm")];
    const drop = ({ stern }: Rig) => stern.soleDropMm! - least.value;
    const edges: Edge[] = [
      {
        room: drop(rig),
        held: drop,
        have: well.soleDropMm,
        need: least.value,
        limit: least,
        says: `the sole lies ${write(well.soleDropMm)} below the seat, ${write(least.value)} wanted`,
      },
    ];
    if (known(rig.motor, "screwDropMm", "handleSwingMm")) {
      const clear = (other: Rig) => other.stern.soleDropMm! - handleSweep(other) - spare.value;
      edges.push({
        room: clear(rig),
        held: clear,
        have: well.soleDropMm - handleSweep(rig),
        need: spare.value,
        limit: spare,
        says: `the handles sweep ${write(handleSweep(rig))} below the seat and the sole lies ${write(well.soleDropMm)} below it, ${write(spare.value)} between them wanted`,
      });
    }
    return edges;
  },
};
