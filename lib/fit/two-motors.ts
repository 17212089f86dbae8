/**
 * Two motors on one stern, a pair or a main motor and an auxiliary: do their brackets find room, do they
 * clear each other however each is tilted and steered, does each clear the stern where it sits, and what do
 * both come to in power and mass. The room between them is certified over all four angles.
 */

import { afloatOf } from "#lib/fit/afloat.ts";
import type { ReportAfloat } from "#lib/fit/afloat-report.ts";
import { examine, verdictOfAnswer } from "#lib/fit/examine.ts";
import { ENGINE_VERSION, type Verdict } from "#lib/fit/report.ts";
import { rounded } from "#lib/fit/rounded.ts";
import { moreAnswers } from "#lib/fit/two-answers.ts";
import type { TwoAnswer, TwoBerth, TwoReport } from "#lib/fit/two-report.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Aboard } from "#lib/rig/afloat/aboard.ts";
import { withSeat } from "#lib/rig/alter.ts";
import type { Motor, MotorValues } from "#lib/rig/motor.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { seatAt } from "#lib/rig/pair.ts";
import { motorValues, sternValues, type Taken, takenOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Where the two sit and how the boat is loaded. */
export interface TwoOptions {
  /** Middles from the centreline, plus = to port, mm. */
  readonly offsetsMm: readonly [number, number];
  /** Seats above the datum, where they are not the notch's or the uncut top's. */
  readonly seatsMm?: readonly [number | undefined, number | undefined];
  readonly aboard?: Aboard;
  readonly tape?: Tape;
  readonly lengths?: LengthSystem;
}

/** Assesses two motors on one stern. */
export function assessTwo(motors: readonly [Motor, Motor], stern: Stern, options: TwoOptions): TwoReport {
  const values = sternValues(stern);
  const berths = motors.map((motor, i): TwoBerth => {
    const offsetMm = options.offsetsMm[i]!;
    const seatMm = options.seatsMm?.[i] ?? seatAt(values, offsetMm);
    const { governing } = examine(motor, seatMm === undefined ? stern : withSeat(stern, seatMm), options);
    const alone = { verdict: verdictOfAnswer(governing), governs: governing.check.id };
    return { id: motor.id, offsetMm, ...(seatMm !== undefined && { seatMm }), alone };
  }) as [TwoBerth, TwoBerth] & TwoBerth[];
  const { answers, between } = moreAnswers(motors, stern, berths, {
    tape: options.tape,
    write: lengthWriter(options.lengths ?? "mm"),
  });
  const [governing] = answers.filter(({ outcome }) => outcome !== "not asked").sort(byGravity);
  return rounded({
    engine: ENGINE_VERSION,
    stern: stern.id,
    motors: [berths[0], berths[1]],
    verdict: governing!.outcome as Verdict,
    governs: governing!.id,
    ...(between && { between }),
    checks: answers,
    afloat: together(motors, stern, options),
  });
}

const GRAVITY = { fouls: 0, "cannot tell": 1, fits: 2, "not asked": 3 } as const;

/** The worse first; of two alike the one with less room beside its spread. */
function byGravity(a: TwoAnswer, b: TwoAnswer): number {
  const room = ({ marginMm = Number.NEGATIVE_INFINITY, expandedUncertaintyMm = 0 }: TwoAnswer) =>
    marginMm / Math.max(expandedUncertaintyMm, 1e-3);
  return GRAVITY[a.outcome] - GRAVITY[b.outcome] || room(a) - room(b);
}

/** What both come to: asked as of one motor with the power and mass of the two, hung where the first hangs. */
function together([one, other]: readonly [Motor, Motor], stern: Stern, options: TwoOptions): ReportAfloat[] {
  const [a, b] = [motorValues(one), motorValues(other)];
  const sum = (key: "powerKw" | "massKg"): Partial<MotorValues> =>
    a[key] === undefined || b[key] === undefined ? { [key]: undefined } : { [key]: a[key] + b[key] };
  const motor = { ...a, ...sum("powerKw"), ...sum("massKg") };
  const [first, second] = [takenOf(one, stern, options.tape), takenOf(other, stern, options.tape)];
  const taken = (key: RigKey): Taken | undefined => {
    const [ours, theirs] = [first(key), second(key)];
    if ((key !== "powerKw" && key !== "massKg") || !ours || !theirs) return ours;
    return {
      ...ours,
      value: (motor[key] as number | undefined) ?? 0,
      halfWidth: Math.hypot(ours.halfWidth, theirs.halfWidth),
      byDefault: ours.byDefault && theirs.byDefault,
    };
  };
  return afloatOf({ motor, stern: sternValues(stern) }, taken, options)
    .filter(({ id }) => TOGETHER.includes(id))
    .map((found) => ({ ...found, notes: [...found.notes, BOTH] }));
}

const TOGETHER = ["power", "motor-mass", "transom-thickness", "freeboard"];

const BOTH = {
  id: "both",
  says: "Power and mass of both motors together, hung where the first one hangs; gear is set aside as for one motor of that power.",
};
