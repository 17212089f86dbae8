/**
 * Thickness of the transom for the power. A transom too thin works, cracks at the clamps and comes off
 * with the motor. One published rule was found, for plywood transoms of commercial timber vessels; for any
 * other boat it says only whether a thickness is of the usual order. Margin: from the transom's thickness
 * to the rule's figure in way of the motor. Leaves out knees, stringers, the soundness of the wood, and
 * transoms of other materials.
 */
import {
  type AfloatCheck,
  type AfloatFinding,
  type AfloatStudy,
  DEFERS,
  fromRecord,
  fromStandard,
  missingOf,
  notKnown,
} from "#lib/checks/afloat-check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import type { Note } from "#lib/standards/citation.ts";
import { plywoodTransom, transomThickness as thicknessFor } from "#lib/standards/usl-code-5m.ts";

const KEYS = ["transomThicknessMm", "waterlineLengthMm", "powerKw"] as const;

const CAUTION: Note = {
  id: "yardstick",
  says: "A yardstick for timber: the rule is for plywood transoms of commercial vessels in Australia, was read in a copy that is not the official text, and may have been replaced. It says nothing of metal, moulded or well-kneed transoms.",
};

const wanted = ({ motor, stern }: Rig) => thicknessFor(stern.waterlineLengthMm!, motor.powerKw!);

function answer(study: AfloatStudy): AfloatFinding {
  const { rig } = study.afloat;
  const missing = missingOf(rig, KEYS);
  const notes = [CAUTION, DEFERS];
  if (missing.length > 0)
    return { outcome: "cannot tell", says: notKnown(missing), missing, figures: [], notes };
  const { plainMm, atMotorMm } = wanted(rig);
  if (atMotorMm === undefined) {
    return {
      outcome: "not asked",
      says: "From 165 kW up the rule gives no figure.",
      missing: [],
      figures: [],
      notes,
    };
  }
  const have = rig.stern.transomThicknessMm!;
  const judged = study.judge({
    room: ({ rig: r }) => r.stern.transomThicknessMm! - (wanted(r).atMotorMm ?? atMotorMm),
    keys: KEYS,
  });
  const cited = fromStandard(plywoodTransom);
  return {
    outcome: judged.verdict,
    says: `The transom is ${study.write(have)} thick where the clamps grip; for this length and power the yardstick is ${study.write(atMotorMm)} of plywood.`,
    missing: [],
    ruling: {
      judged,
      have,
      need: atMotorMm,
      limit: { value: atMotorMm, status: plywoodTransom.status, ...cited },
    },
    figures: [
      { label: "Transom thickness", value: have, unit: "mm", ...fromRecord("transomThicknessMm") },
      { label: "Yardstick in way of the motor", value: atMotorMm, unit: "mm", ...cited },
      { label: "Yardstick elsewhere", value: plainMm, unit: "mm", ...cited },
    ],
    notes,
  };
}

export const transomThickness: AfloatCheck = {
  id: "transom-thickness",
  question: "Is the transom of the usual thickness for this power?",
  why: "A thin transom works under the motor, cracks at the clamps and lets go.",
  leavesOut: "Knees, stringers, the soundness of the wood, and every material but plywood.",
  unit: "mm",
  standing: "yardstick",
  is: "A yardstick from a rule for plywood transoms of commercial timber vessels in Australia.",
  standards: [plywoodTransom],
  needs: KEYS,
  answer,
};
