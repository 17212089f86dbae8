import type { CutChoicesSent } from "#lib/entry/cut-choices.ts";
import { impossibleStern } from "#lib/entry/stern.ts";
import { cutPlan } from "#lib/fit/cut-plan/cut-plan.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

export type { CutPlan };

/** The plan, or in plain words why these choices cannot be built. */
export function planOf(
  motors: readonly Motor[],
  stern: Stern,
  choices: CutChoicesSent = {},
): { readonly plan: CutPlan } | { readonly impossible: string } {
  const never =
    choices.seatMm === undefined ? [] : impossibleStern({ ...stern, seatMm: given(choices.seatMm) });
  if (never[0]) return { impossible: never[0].says };
  try {
    return { plan: cutPlan(motors, stern, choices) };
  } catch (caught) {
    if (caught instanceof RangeError) return { impossible: caught.message };
    throw caught;
  }
}

const given = (value: number): Measured => ({ value, how: "measured" });
