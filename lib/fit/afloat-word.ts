/** The questions afloat in one word, for lists; and the freeboard a seat would leave with a motor and the load aboard. */
import { type AfloatOptions, afloatOf } from "#lib/fit/afloat.ts";
import type { Outcome } from "#lib/fit/report.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import { USUAL_ABOARD } from "#lib/rig/afloat/aboard.ts";
import { lying } from "#lib/rig/afloat/lying.ts";
import { seatFreeboard } from "#lib/rig/afloat/stern-edge.ts";
import { withSeat } from "#lib/rig/alter.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { motorValues, sternValues, takenOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What a pairing comes to afloat: the gravest of its answers, and which questions stand so. */
export interface AfloatWord {
  readonly outcome: Outcome;
  readonly ids: readonly string[];
}

const ORDER: readonly Outcome[] = ["fouls", "cannot tell", "fits"];

/** The gravest answer afloat of one pairing. Costs about a millisecond: ask it where somebody wants it. */
export function afloatWord(
  motor: Motor,
  stern: Stern,
  options: AfloatOptions & { readonly tape?: Tape } = {},
): AfloatWord {
  const rig = { motor: motorValues(motor), stern: sternValues(stern) };
  const found = afloatOf(rig, takenOf(motor, stern, options.tape), options);
  const outcome = ORDER.find((each) => found.some((one) => one.outcome === each)) ?? "not asked";
  return { outcome, ids: found.filter((one) => one.outcome === outcome).map(({ id }) => id) };
}

/** Freeboard of a seat at `seatMm` above the datum with the motor and the load aboard, mm; undefined where it cannot be worked out. */
export function freeboardWith(
  motor: Motor,
  stern: Stern,
  seatMm: number,
  aboard = USUAL_ABOARD,
): number | undefined {
  const rig = { motor: motorValues(motor), stern: sternValues(withSeat(stern, seatMm)) };
  const lies = lying({ rig, aboard });
  return lies && seatFreeboard(lies.after, rig.stern);
}
