/**
 * Shaft class. The class on the label stands for a nominal leg of 15, 20, 25 or 30 in; the seat should
 * stand that high over the datum, give or take half an inch. It is the rough question a buyer can ask
 * with nothing but the label. Where the leg itself was measured, the plate's height is the better answer
 * and overrules this one, so where that lacks another number a label that does not match cannot be told;
 * where the leg was not measured, a seat that is off by no more than half the step between classes cannot
 * be told without it, since real legs differ from their class by as much. Margin: from the
 * difference of seat and nominal to half an inch. Height is taken plumb, on the centreline,
 * as 33 CFR 183.3 takes transom height, but from the datum: where there is a keel that is the keel's
 * underside, since the propeller works behind it, while the regulation leaves keels out; nominal lengths and the half inch are common practice, no source.
 */
import { type Check, type Edge, limitOf, type NeededKey, type Study } from "#lib/checks/check.ts";
import { plateAboveDatum, plateHeight, runningHoleNumber } from "#lib/checks/plate-height.ts";
import { inches } from "#lib/quantity/length.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { seatNow } from "#lib/rig/plate.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

/** Half the step from one class to the next, mm: real legs differ from nominal by up to this (common practice, no source). */
const HALF_STEP_MM = inches(2.5);
/** A hair of rounding is not off: 20 1/2 in is within half an inch of 20. */
const HAIR_MM = 1e-9;

/** Seat over the datum less the nominal leg, mm; undefined where one is unknown. */
function excess({ motor, stern }: Rig): number | undefined {
  const seat = seatNow(stern);
  if (motor.shaftClass === undefined || seat === undefined) return undefined;
  return seat - nominalShaft[motor.shaftClass].value;
}

/** The numbers of the leg without which a label that does not match settles nothing; none where it matches. */
function legDecides(rig: Rig): readonly NeededKey[] {
  const off = Math.abs(excess(rig) ?? 0);
  if (off <= limitOf(rig, "shaftClassMm").value + HAIR_MM) return [];
  if (rig.motor.shaftLengthMm === undefined) return off <= HALF_STEP_MM + HAIR_MM ? ["shaftLengthMm"] : [];
  const hole = runningHoleNumber(rig);
  const answered = hole !== undefined && plateAboveDatum(rig, hole) !== undefined;
  return answered ? [] : plateHeight.needs(rig);
}

export const shaftClass: Check = {
  id: "shaft-class",
  question: "Is this the shaft class for a transom of this height?",
  why: "A short shaft on a long-shaft transom never reaches clean water; a long one on a short transom drags.",
  leavesOut:
    "How far the real leg differs from its class: measure it, and the plate's height answers better.",
  unit: "mm",
  limits: ["shaftClassMm"],
  overruledBy: {
    check: "plate-height",
    says: "The label's class would not match this seat, but the leg itself was measured and the plate's height answers better.",
  },
  asked: () => true,
  needs: (rig) => [
    "shaftClass",
    rig.stern.transomTopMm === undefined || rig.stern.seatMm !== undefined ? "seatMm" : "transomTopMm",
    ...legDecides(rig),
  ],
  edges: ({ mounting: { rig }, limit, write }: Study): Edge[] => {
    const off = excess(rig);
    if (off === undefined || legDecides(rig).length > 0) return [];
    const most = limit("shaftClassMm");
    const klass = rig.motor.shaftClass!;
    const nominal = nominalShaft[klass].value;
    const seat = nominal + off;
    const says = `the seat stands ${write(seat)} over the datum and a ${klass} shaft is nominally ${write(nominal)}; within ${write(most.value)} of it is wanted`;
    return [1, -1].map((sign) => ({
      room: most.value - sign * off,
      held: (other: Rig) => most.value - sign * excess(other)!,
      have: seat,
      need: nominal,
      limit: most,
      says,
    }));
  },
};
