/**
 * The seat to be sawn: midway in the stretch that suits the motors, marked with a little wood left on.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { marked, stepOf, type Tolerance } from "#lib/fit/cut-plan/marked.ts";
import { cutOnce, motorChoice } from "#lib/fit/shaft-choice.ts";
import { cos } from "#lib/quantity/angle.ts";
import { withSeat } from "#lib/rig/alter.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** The seat with what it does to the stern. */
export interface SeatPlan {
  /** Above the datum, plumb, as marked. */
  readonly seatMm: number;
  /** Saw anywhere between these and every plate stands in its window, spread included where it leaves room. */
  readonly betweenMm: readonly [number, number];
  /** Along the face from the present seat or top down to it; 0 where it stays. */
  readonly deeperMm: number;
  /** Plumb height to be built up where the present seat stands too low; 0 where it does not. */
  readonly raiseMm: number;
  readonly rounded: "up" | "down" | "not at all";
  readonly tolerance: Tolerance;
  /** Motors whose plate stands outside its window at this seat. */
  readonly unsuited: readonly string[];
  /** The stern with its seat there. */
  readonly stern: Stern;
}

/** Seats that surely suit the motors: the windows less the legs' own spread, where that leaves any; else the bare windows. */
function stretch(motors: readonly Motor[], stern: Stern, bare: readonly [number, number]): [number, number] {
  const sure = motors.map((motor) => motorChoice(motor, stern)?.sawBetween);
  if (!sure.every((one) => one !== undefined)) return [...bare];
  const [low, high] = [Math.max(...sure.map(([from]) => from)), Math.min(...sure.map(([, to]) => to))];
  return low < high ? [low, high] : [...bare];
}

/** The seat; undefined where no plate can be placed, or top and rake are not known. */
export function seatPlan(motors: readonly Motor[], stern: Stern, choices: Settled): SeatPlan | undefined {
  const once = cutOnce(motors, stern);
  if (!once || !stern.transomTopMm || !stern.rakeDeg) return undefined;
  const outside = once.motors.filter(({ room }) => room < -1e-9).map(({ motor }) => motor);
  const suited = motors.filter(({ id }) => !outside.includes(id));
  const between = stretch(suited, stern, once.between);
  const now = (stern.seatMm ?? stern.transomTopMm).value;
  const stays = choices.seatMm === undefined && now >= between[0] && now <= between[1];
  const wanted = choices.seatMm ?? (stays ? now : (between[0] + between[1]) / 2);
  const { seatMm, rounded } =
    stays || wanted >= now || choices.seatMm !== undefined
      ? { seatMm: wanted, rounded: "not at all" as const }
      : onMark(now, wanted, between, stern.rakeDeg.value, choices);
  return {
    seatMm,
    betweenMm: between,
    deeperMm: Math.max(0, now - seatMm) / cos(stern.rakeDeg.value),
    raiseMm: Math.max(0, seatMm - now),
    rounded,
    tolerance: depthTolerance(seatMm, between, stern.rakeDeg.value, choices),
    unsuited: outside,
    stern: withSeat(stern, seatMm),
  };
}

/** The seat whose depth along the face from where it is now stands on a step of the rule: the shallower step, unless that leaves the stretch. */
function onMark(
  now: number,
  wanted: number,
  [low, high]: readonly [number, number],
  rakeDeg: number,
  { lengths }: Settled,
): { seatMm: number; rounded: SeatPlan["rounded"] } {
  const step = stepOf(lengths);
  const steps = (now - wanted) / cos(rakeDeg) / step;
  for (const [whole, rounded] of [
    [Math.floor(steps + 1e-6), "down"],
    [Math.ceil(steps - 1e-6), "up"],
  ] as const) {
    const seatMm = now - whole * step * cos(rakeDeg);
    if (seatMm >= low && seatMm <= high) return { seatMm, rounded };
  }
  return { seatMm: wanted, rounded: "not at all" };
}

/** How far the saw may stray, along the face. */
function depthTolerance(
  seatMm: number,
  [low, high]: readonly [number, number],
  rakeDeg: number,
  { lengths }: Settled,
): Tolerance {
  const write = (mm: number) => marked(mm, "down", lengths).text;
  const moreMm = Math.max(0, (seatMm - low) / cos(rakeDeg));
  const lessMm = Math.max(0, (high - seatMm) / cos(rakeDeg));
  const says = `Up to ${write(moreMm)} deeper or ${write(lessMm)} shallower still keeps the plate where this hull wants it. Leave the line on: too shallow can be sawn again, too deep cannot.`;
  return { moreMm, lessMm, says };
}
