/**
 * A stern as its plan leaves it, and a stern as it was measured after the saw.
 */
import { assess } from "#lib/fit/assess.ts";
import { hung } from "#lib/fit/cut-plan/pairings.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import { notchWidthNeed, seatNeed } from "#lib/fit/needs.ts";
import type { Report } from "#lib/fit/report.ts";
import { cos } from "#lib/quantity/angle.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import { withNumber, withSeat } from "#lib/rig/alter.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern, SternKey } from "#lib/rig/stern.ts";

/** The stern cut exactly to the marks of its plan. */
export function cutStern({ notch, well }: Pick<CutPlan, "notch" | "well">, stern: Stern): Stern {
  if (!notch) return stern;
  const seated = withSeat(stern, notch.seatMm);
  const notched = withNumber(
    withNumber(seated, "notchWidthMm", 2 * notch.halfWidth.markMm),
    "notchCornerRadiusMm",
    notch.corner.radiusMm,
  );
  if (!well) return notched;
  const { shape } = well;
  const keys = [
    "soleDropMm",
    "soleAngleDeg",
    "wellDepthMm",
    "wellFrontHeightMm",
    "wellWidthAftMm",
    "wellWidthFrontMm",
    "sideFlareDeg",
  ] as const;
  const built = keys.reduce((sum, key) => withNumber(sum, key, shape[key]), notched);
  const { wellSideHeightMm: side, soleDropMm: drop } = notched;
  if (!side || !drop) return built;
  return withNumber(built, "wellSideHeightMm", Math.max(0, side.value + shape.soleDropMm - drop.value));
}

/** What can be measured after the saw. */
export type AsBuilt = Partial<Readonly<Record<SternKey, Measured>>>;

/** A cut that can still be made, or the wood that is missing: `byMm` plus = may still come off. */
export interface Trim {
  readonly cut: "seat" | "cheeks";
  /** Least and most that may still come off, mm, along the face or each side; a minus `fromMm` = it serves as it is. */
  readonly fromMm: number;
  readonly toMm?: number;
  readonly says: string;
}

/** The report on a stern as built, with what can still be trimmed. */
export interface AsBuiltReport {
  readonly stern: Stern;
  readonly report: Report;
  readonly trim: readonly Trim[];
}

/** Puts what was measured after cutting into the stern and assesses it again; lengths in its words are written in `lengths`. */
export function asBuilt(
  motor: Motor,
  recorded: Stern,
  measured: AsBuilt,
  lengths: LengthSystem = "mm",
): AsBuiltReport {
  const seated = measured.seatMm ? withSeat(recorded, measured.seatMm.value) : recorded;
  const stern: Stern = { ...seated, ...measured };
  return {
    stern,
    report: assess(motor, stern, {}, { lengths }),
    trim: [...seatTrim(motor, stern), ...cheekTrim(motor, stern)],
  };
}

/** How much deeper the seat may go, or must. */
function seatTrim(motor: Motor, stern: Stern): Trim[] {
  const need = seatNeed(hung(motor, stern).rig);
  if (!need || !stern.seatMm || !stern.rakeDeg) return [];
  const along = (seat: number) => (stern.seatMm!.value - seat) / cos(stern.rakeDeg!.value);
  const [fromMm, toMm] = [along(need.high), along(need.low)];
  const says =
    toMm < 0
      ? "The seat is cut too deep: build it up with a pad."
      : fromMm > 0
        ? "The seat is still too high: more has to come off."
        : "The seat serves as it is.";
  return [{ cut: "seat", fromMm, toMm, says }];
}

/** How much wider each side of the notch must go; wider than that is the builder's choice. */
function cheekTrim(motor: Motor, stern: Stern): Trim[] {
  if (!stern.notchWidthMm || !stern.seatMm) return [];
  const need = notchWidthNeed(hung(motor, stern), stern.seatMm.value);
  if (need === undefined) return [];
  const fromMm = (need - stern.notchWidthMm.value) / 2;
  const says =
    fromMm > 0 ? "The notch is still too narrow: take as much off each cheek." : "The notch is wide enough.";
  return [{ cut: "cheeks", fromMm, says }];
}
