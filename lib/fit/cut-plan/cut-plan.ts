/**
 * The cut plan of one stern for one motor or several: what to saw, and the well to build.
 */

import { ADVICE, checklist } from "#lib/fit/cut-plan/checklist.ts";
import { type CutChoices, type Settled, settled } from "#lib/fit/cut-plan/choices.ts";
import type { Warning } from "#lib/fit/cut-plan/nearby.ts";
import { type NotchPlan, notchPlan } from "#lib/fit/cut-plan/notch.ts";
import { CUT_PLAN_VERSION, type CutPlan, type WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { cutStern } from "#lib/fit/cut-plan/sawn.ts";
import { type SeatPlan, seatPlan } from "#lib/fit/cut-plan/seat.ts";
import { wellPlan } from "#lib/fit/cut-plan/well.ts";
import { missingOfWell, wellShape } from "#lib/fit/cut-plan/well-shape.ts";
import { examine } from "#lib/fit/examine.ts";
import { ENGINE_VERSION } from "#lib/fit/report.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { missingOfParts } from "#lib/rig/parts.ts";
import { motorValues } from "#lib/rig/record.ts";
import type { Stern, SternKey } from "#lib/rig/stern.ts";

/** Numbers of a stern without which nothing can be laid out. */
const STERN_KEYS = ["transomTopMm", "rakeDeg", "transomThicknessMm"] as const satisfies readonly SternKey[];
/** Numbers of a motor that say where its seat goes. */
const MOTOR_KEYS = [
  "shaftLengthMm",
  "pinAnglesDeg",
  "bracketWidthMm",
  "clampDepthMm",
  "screwDropMm",
  "handleSwingMm",
] as const;

const ROUNDING: Record<Settled["lengths"], string> = {
  mm: "Marks stand on whole millimetres",
  in: "Marks stand on sixteenths of an inch",
};

/**
 * Plans the cuts. With numbers missing it plans what it can and names them; a well is planned only where
 * it is to be built. Throws a RangeError with a reason in plain words where posts or choices leave no
 * part in one piece.
 */
export function cutPlan(motors: Motor | readonly Motor[], recorded: Stern, given: CutChoices = {}): CutPlan {
  const all: readonly Motor[] = Array.isArray(motors) ? motors : [motors as Motor];
  const stern: Stern = { ...recorded, limits: { ...recorded.limits, ...given.limits } };
  const choices = settled(given, stern);
  const known = STERN_KEYS.every((key) => stern[key] !== undefined);
  const seat = known ? seatPlan(all, stern, choices) : undefined;
  const fitting = all.filter(({ id }) => !seat?.unsuited.includes(id));
  const notch = seat && fitting.length > 0 ? notchPlan(fitting, stern, seat, choices) : undefined;
  const well = notch ? wellOf(fitting, stern, notch, choices) : undefined;
  const plan: CutPlan = {
    version: CUT_PLAN_VERSION,
    engine: ENGINE_VERSION,
    motors: all.map(({ id }) => id),
    stern: stern.id,
    lengths: choices.lengths,
    rounding: `${ROUNDING[choices.lengths]}, rounded to the safe side: depths so that wood is left on, widths and clearances up.`,
    ...(notch && { notch }),
    ...(seat && seat.raiseMm > 0 && { raiseMm: seat.raiseMm }),
    ...(well && { well }),
    missing: missingOf(all, stern, choices, notch !== undefined, well !== undefined),
    warnings: [],
    checklist: checklist(notch, well !== undefined),
    advice: ADVICE,
  };
  return tidied({ ...plan, warnings: warningsOf(plan, all, stern, seat) });
}

function wellOf(
  motors: readonly Motor[],
  stern: Stern,
  notch: NotchPlan,
  choices: Settled,
): WellPlan | undefined {
  if (choices.well !== "build" || missingOfWell(stern, choices).length > 0) return undefined;
  const sawn = cutStern({ notch }, stern);
  const planned = wellShape(motors, stern, sawn, choices);
  return planned && wellPlan(planned, stern, choices);
}

/** What has to be measured before the rest can be planned. */
function missingOf(
  motors: readonly Motor[],
  stern: Stern,
  choices: Settled,
  notch: boolean,
  well: boolean,
): string[] {
  const ofStern = STERN_KEYS.filter((key) => stern[key] === undefined);
  const ofWell = choices.well === "build" && !well ? missingOfWell(stern, choices) : [];
  const ofMotors =
    notch && (well || choices.well === "leave")
      ? []
      : motors.flatMap((motor) => [
          ...MOTOR_KEYS.filter((key) => motor[key] === undefined),
          ...missingOfParts(motorValues(motor)),
        ]);
  return [...new Set<string>([...ofStern, ...ofWell, ...ofMotors])];
}

/** Everything to heed: near the cut, a seat to be raised, motors that do not suit, and questions the cuts cannot answer. */
function warningsOf(
  plan: CutPlan,
  motors: readonly Motor[],
  stern: Stern,
  seat: SeatPlan | undefined,
): Warning[] {
  if (!plan.notch || !seat) return [];
  const write = lengthWriter(plan.lengths);
  const sawn = cutStern(plan, stern);
  return [
    ...plan.notch.warnings,
    ...(seat.raiseMm > 0
      ? [
          {
            about: "seat",
            says: `The seat stands ${write(seat.raiseMm)} too low: build it up with a pad or riser, there is nothing to saw.`,
          },
        ]
      : []),
    ...seat.unsuited.map((id) => ({
      about: id,
      says: "No seat suits this motor together with the others: its plate would stand outside its window.",
    })),
    ...motors.filter(({ id }) => !seat.unsuited.includes(id)).flatMap((motor) => leftOver(motor, sawn)),
  ];
}

/** Questions that a stern cut to the plan still does not fit: no saw answers them. */
function leftOver(motor: Motor, sawn: Stern): Warning[] {
  return examine(motor, sawn)
    .answers.filter(({ outcome }) => outcome === "fouls")
    .map(({ check, says }) => ({ about: `${motor.id}: ${check.id}`, says }));
}

/** Numbers to a ten-thousandth (directions to a thousand-millionth), negative nought as nought, absent keys left out: the same plan reads the same everywhere. */
function tidied<T>(value: T, decimals = 4): T {
  if (typeof value === "number") return (Number(value.toFixed(decimals)) + 0) as T;
  if (Array.isArray(value)) return value.map((one) => tidied(one, decimals)) as T;
  if (value === null || typeof value !== "object") return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, entry]) =>
      entry === undefined ? [] : [[key, tidied(entry, key === "place" ? 9 : decimals)]],
    ),
  ) as T;
}
