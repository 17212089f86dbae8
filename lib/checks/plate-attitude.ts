/**
 * Plate attitude. A plate that does not lie parallel with the keel line drags, and pushes the stern down
 * (trimmed in) or the bow up (trimmed out). Margin: from the angle between plate and keel line in the
 * best trim-pin hole to the limit, either way. Needs the pin angles and the rake. The limit, three
 * degrees, is half the coarsest usual spacing of the holes: common practice, no source. Leaves out
 * trimming on purpose for load or sea.
 */
import type { Check, Study } from "#lib/checks/check.ts";
import { runningHoleNumber } from "#lib/checks/plate-height.ts";
import { inDegrees } from "#lib/quantity/words.ts";
import type { Rig } from "#lib/rig/mounting.ts";

const attitude = ({ motor, stern }: Rig, hole: number): number => motor.pinAnglesDeg![hole]! - stern.rakeDeg!;

export const plateAttitude: Check = {
  id: "plate-attitude",
  question: "Is there a trim-pin hole that lays the plate parallel with the keel line?",
  why: "A plate out of parallel drags, and lifts the bow or digs it in.",
  leavesOut: "Trimming in or out on purpose, for load or sea.",
  unit: "deg",
  limits: ["plateAttitudeDeg"],
  asked: () => true,
  needs: () => ["pinAnglesDeg", "rakeDeg"],
  edges: ({ mounting: { rig }, limit }: Study) => {
    const hole = runningHoleNumber(rig);
    if (hole === undefined) return [];
    const most = limit("plateAttitudeDeg");
    const trim = attitude(rig, hole);
    const way = trim > 0 ? "trimmed out" : "trimmed in";
    const lies =
      Math.abs(trim) < 0.05 ? "parallel with the keel line" : `${inDegrees(Math.abs(trim))} ${way}`;
    const says = `in the best hole, number ${hole + 1} from the bottom, the plate lies ${lies}; ${inDegrees(most.value)} either way is the most`;
    return [1, -1].map((sign) => ({
      room: most.value - sign * trim,
      held: (other: Rig) => most.value - sign * attitude(other, hole),
      have: Math.abs(trim),
      need: most.value,
      limit: most,
      says,
    }));
  },
};
