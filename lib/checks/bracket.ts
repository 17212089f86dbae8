/**
 * Bracket in the notch. A bracket wider than the flat of the notch does not come down on its seat, or
 * rides up on the rounded corners. Margin: from half the bracket's width to half the flat of the notch
 * (the clear width less both corner radii), each side. Needs the two widths; the corner radius where it
 * is known, else the corners are taken as square. Leaves out shimming and packing.
 */
import { type Check, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { isUncut } from "#lib/rig/obstacles.ts";

const flat = ({ stern }: Rig): number => stern.notchWidthMm! - 2 * (stern.notchCornerRadiusMm ?? 0);
const eachSide = (rig: Rig): number => (flat(rig) - rig.motor.bracketWidthMm!) / 2;

export const bracket: Check = {
  id: "bracket",
  question: "Does the clamp bracket come down on its seat in the notch?",
  why: "A bracket caught between the cheeks or on the rounded corners never sits down, and rocks.",
  leavesOut: "Packing and shims.",
  unit: "mm",
  limits: ["bracketMm"],
  asked: ({ stern }) => !isUncut(stern) || "Nothing is cut: the bracket sits on a straight top.",
  needs: () => ["bracketWidthMm", "notchWidthMm"],
  also: ["notchCornerRadiusMm"],
  edges: ({ mounting: { rig }, limit, write }: Study) => {
    const width = known(rig.motor, "bracketWidthMm");
    if (!width || !known(rig.stern, "notchWidthMm")) return [];
    const spare = limit("bracketMm");
    return [
      {
        room: eachSide(rig) - spare.value,
        held: (other: Rig) => eachSide(other) - spare.value,
        have: flat(rig),
        need: width.bracketWidthMm + 2 * spare.value,
        limit: spare,
        says: `the bracket is ${write(width.bracketWidthMm)} wide and the flat of the notch ${write(flat(rig))}`,
      },
    ];
  },
};
