/**
 * The notch: where its seat and cheeks are marked, where the saw stops, how far it may stray, and what
 * stands near it.
 */

import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { exactly, type Marked, marked, type Tolerance } from "#lib/fit/cut-plan/marked.ts";
import { near, type Warning } from "#lib/fit/cut-plan/nearby.ts";
import { roundedNotch } from "#lib/fit/cut-plan/notch-outline.ts";
import { greatestNeed, type Need } from "#lib/fit/cut-plan/pairings.ts";
import type { Place, Spot } from "#lib/fit/cut-plan/place.ts";
import type { SeatPlan } from "#lib/fit/cut-plan/seat.ts";
import { notchWidthNeed } from "#lib/fit/needs.ts";
import { cos } from "#lib/quantity/angle.ts";
import { withNumber } from "#lib/rig/alter.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { joinery } from "#lib/standards/joinery.ts";

/** A distance to lay off from something a tape can be hooked on. */
export interface Offset {
  readonly from: string;
  readonly to: string;
  readonly length: Marked;
}

/** The notch as it is marked on the outside face and sawn square to it. */
export interface NotchPlan {
  /** `cut` from an uncut top, `change` of a notch that is there, `none` where it serves as it is. */
  readonly action: "cut" | "change" | "none";
  /** The seat above the datum, plumb, as marked. */
  readonly seatMm: number;
  /** From the uncut top down to the seat: along the face, as it is marked, and plumb. */
  readonly depth: { readonly along: Marked; readonly plumbMm: number };
  /** From the present seat down, along the face; 0 where it stays. */
  readonly deeper: Marked;
  /** From the centreline to each cheek, alike to port and starboard. */
  readonly halfWidth: Marked;
  /** Half width the limits ask, without room for the spread. */
  readonly leastHalfMm: number;
  /** From each present cheek outward; absent where nothing is cut yet. */
  readonly widerEachSide?: Marked;
  readonly corner: { readonly radiusMm: number; readonly boreMm: number; readonly why: string };
  /** Where the saw stops: down each cheek from the top, and along the seat from the centreline. */
  readonly stops: { readonly cheek: Marked; readonly seat: Marked; readonly says: string };
  /** Centres of the corner holes: from the centreline and below the top, along the face. */
  readonly holes: { readonly acrossMm: number; readonly downMm: number };
  readonly tolerance: { readonly depth: Tolerance; readonly halfWidth: Tolerance };
  readonly offsets: readonly Offset[];
  /** The line to saw on the outside face, from the port top corner to the starboard one; up = along the face from the new seat. */
  readonly line: readonly Spot[];
  readonly place: Place;
  readonly warnings: readonly Warning[];
}

/** Outside face seen from aft: port to the left, origin on the seat's middle. */
const FROM_AFT: Place = { originMm: [0, 0, 0], right: [0, -1, 0], up: [0, 0, 1] };

/** The stern with its seat sawn, and a notch of some width where none was: what the width is asked of. */
function seated(stern: Stern, { stern: sawn }: SeatPlan, radiusMm: number): Stern {
  const width = stern.notchWidthMm?.value ?? 600;
  return withNumber(withNumber(sawn, "notchWidthMm", width), "notchCornerRadiusMm", radiusMm);
}

/** The half width each motor asks, the corner's radius included; undefined where it cannot be told. */
function halfNeed(motors: readonly Motor[], stern: Stern, seatMm: number): Need | undefined {
  const whole = greatestNeed(
    motors,
    stern,
    (mounting, beyond) => notchWidthNeed(mounting, seatMm, beyond),
    (width) => withNumber(stern, "notchWidthMm", width),
    ["steering-room", "bracket"],
  );
  return whole && { least: whole.least / 2, withSpread: whole.withSpread / 2 };
}

/** A notch that is there and needs no saw keeps its corners. */
function servesAsItIs(
  motors: readonly Motor[],
  stern: Stern,
  seat: SeatPlan,
): { need: Need; radiusMm: number } | undefined {
  if (!stern.seatMm || !stern.notchWidthMm || seat.deeperMm > 0 || seat.raiseMm > 0) return undefined;
  const radiusMm = stern.notchCornerRadiusMm?.value ?? 0;
  const need = halfNeed(motors, seated(stern, seat, radiusMm), seat.seatMm);
  return need && need.least <= stern.notchWidthMm.value / 2 ? { need, radiusMm } : undefined;
}

/** The whole notch; undefined where its width cannot be told. */
export function notchPlan(
  motors: readonly Motor[],
  stern: Stern,
  seat: SeatPlan,
  choices: Settled,
): NotchPlan | undefined {
  const topMm = (stern.transomTopMm!.value - seat.seatMm) / cos(stern.rakeDeg!.value);
  const serves = servesAsItIs(motors, stern, seat);
  const radius =
    serves?.radiusMm ?? (topMm > 0 ? Math.min(choices.cornerRadiusMm, topMm) : choices.cornerRadiusMm);
  const need = serves?.need ?? halfNeed(motors, seated(stern, seat, radius), seat.seatMm);
  if (!need) return undefined;
  const there = stern.notchWidthMm ? stern.notchWidthMm.value / 2 : 0;
  const wanted = Math.max(need.withSpread, there);
  const halfWidth = marked(wanted, "up", choices.lengths);
  const widens = need.least > there + 1e-6;
  const half = widens || !stern.notchWidthMm ? halfWidth : exactly(there, "not at all", choices.lengths);
  const along = marked(topMm, "down", choices.lengths);
  const depth = {
    along: { ...along, markMm: topMm, rounded: seat.rounded },
    plumbMm: topMm * cos(stern.rakeDeg!.value),
  };
  // A seat at or over the uncut top is built up: there is nothing to saw.
  const sawn = topMm > 0 && (!stern.seatMm || widens || seat.deeperMm > 0);
  const action = !sawn ? "none" : stern.seatMm ? "change" : "cut";
  const room = { halfMm: half.markMm, topMm, rakeDeg: stern.rakeDeg!.value };
  return {
    action,
    seatMm: seat.seatMm,
    depth,
    deeper: exactly(seat.deeperMm, seat.rounded, choices.lengths),
    halfWidth: half,
    leastHalfMm: need.least,
    ...(stern.notchWidthMm && {
      widerEachSide: marked(Math.max(0, half.markMm - there), "up", choices.lengths),
    }),
    corner: { radiusMm: radius, boreMm: 2 * radius, why: joinery.notchRadiusMm.what },
    stops: {
      cheek: marked(Math.max(0, topMm - radius), "down", choices.lengths),
      seat: marked(Math.max(0, half.markMm - radius), "down", choices.lengths),
      says: "Bore the corners first. Stop each cut where it runs into its hole; turn the work of a round blade over to a hand saw before it gets there, for it cuts further on the side you do not see.",
    },
    holes: { acrossMm: half.markMm - radius, downMm: topMm - radius },
    tolerance: { depth: seat.tolerance, halfWidth: widthTolerance(half.markMm, need.least) },
    offsets: offsetsOf(stern, half, there, choices),
    line: roundedNotch(half.markMm, topMm, radius),
    place: FROM_AFT,
    warnings: near(stern, seat.stern, room, choices),
  };
}

/** Wider never hurts the motor; narrower only down to what the limits ask. */
function widthTolerance(markMm: number, leastMm: number): Tolerance {
  const lessMm = Math.max(0, markMm - leastMm);
  const stray = joinery.sawStrayMm.value;
  const says =
    lessMm >= stray
      ? "Saw to the line. A saw that strays into the notch by its usual sixteenth still does."
      : "Saw outside the line, never inside: leave the line on the waste.";
  return { moreMm: 2 * stray, lessMm, says };
}

/** What a tape can be hooked on: the centreline, the transom's own edges, the cheeks that are there. */
function offsetsOf(stern: Stern, half: Marked, thereMm: number, choices: Settled): Offset[] {
  const breadth = choices.transomTopWidthMm ?? stern.transomWidthMm?.value;
  const edge = choices.transomTopWidthMm
    ? "edge of the transom at its top"
    : "edge of the transom at its widest";
  return (["port", "starboard"] as const).flatMap((side): Offset[] => [
    { from: "centreline", to: `${side} cheek`, length: half },
    ...(breadth === undefined
      ? []
      : [
          {
            from: `${side} ${edge}`,
            to: `${side} cheek`,
            length: marked(breadth / 2 - half.markMm, "down", choices.lengths),
          },
        ]),
    ...(thereMm > 0 && half.markMm > thereMm
      ? [
          {
            from: `${side} cheek as it is`,
            to: `${side} cheek`,
            length: marked(half.markMm - thereMm, "up", choices.lengths),
          },
        ]
      : []),
  ]);
}
