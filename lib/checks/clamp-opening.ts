/**
 * Clamp opening. Too thick a transom does not go into the bracket; too thin a one is never gripped and
 * the motor walks off. Margin: from the transom's thickness to the nearer end of what the screws can
 * hold. Needs the two openings and the thickness. Leaves out the soundness of the wood: a soft core is
 * crushed whatever the opening.
 */
import { BOLTED, type Check, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";

export const clampOpening: Check = {
  id: "clamp-opening",
  question: "Does the clamp bracket go over the transom and grip it?",
  why: "A transom too thick does not enter the bracket; one too thin lets the motor work loose and go overboard.",
  leavesOut: "Whether the wood is sound: a soft core crushes whatever the opening.",
  unit: "mm",
  limits: ["clampRoomMm"],
  asked: ({ motor }) => motor.fixing !== "bolted" || BOLTED,
  needs: () => ["clampOpeningMinMm", "clampOpeningMaxMm", "transomThicknessMm"],
  edges: ({ mounting: { rig }, limit, write }: Study) => {
    const edge = (key: "clampOpeningMinMm" | "clampOpeningMaxMm") => {
      const room = ({ motor, stern }: Rig) => {
        const sign = key === "clampOpeningMaxMm" ? 1 : -1;
        return sign * (motor[key]! - stern.transomThicknessMm!) - spare.value;
      };
      const spare = limit("clampRoomMm");
      const have = known(rig.stern, "transomThicknessMm")?.transomThicknessMm;
      const need = rig.motor[key];
      if (have === undefined || need === undefined) return [];
      const end = key === "clampOpeningMaxMm" ? "at most" : "at least";
      const says = `the transom is ${write(have)} thick and the clamps hold ${end} ${write(need)}`;
      return [{ room: room(rig), held: room, have, need, limit: spare, says }];
    };
    return [...edge("clampOpeningMaxMm"), ...edge("clampOpeningMinMm")];
  },
};
