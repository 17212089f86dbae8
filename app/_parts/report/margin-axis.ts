/** The one axis on which margins of a unit stand: wide enough for those that are close, whatever the far ones are. */
import type { MarginUnit } from "#app/_parts/report/writing.ts";
import { MM_PER_INCH } from "#lib/quantity/length.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** A margin with its doubt, in the unit of its axis. */
export interface Margin {
  readonly margin: number;
  readonly spread: number;
  readonly worst: number;
}

/** From the most that is short (minus) to the most to spare; nought is "at the limit" and always on it. */
export interface MarginAxis {
  readonly from: number;
  readonly to: number;
  /** Where a figure stands, nought left out. */
  readonly ticks: readonly number[];
}

/** The axis reaches at least this far, so that a margin worth a look has its place. */
const LEAST: Record<MarginUnit, number> = { mm: 50, deg: 3 };
/** It reaches no further than three times the widest doubt, if that is more. */
const DOUBTS = 3;

const STEPS = {
  mm: [5, 10, 20, 50, 100, 200, 500, 1000],
  in: [0.25, 0.5, 1, 2, 4, 8, 16, 32].map((inches) => inches * MM_PER_INCH),
  deg: [1, 2, 5, 10, 20, 45],
};

/** The axis of some margins. Margins far off reach beyond it and are shown by an arrow. */
export function marginAxis(
  margins: readonly Margin[],
  unit: MarginUnit,
  lengths: LengthSystem = "mm",
): MarginAxis {
  const most = Math.max(LEAST[unit], ...margins.map(({ spread }) => DOUBTS * spread));
  const reach = (wanted: readonly number[]) => Math.min(most, Math.max(most / 4, ...wanted));
  const steps = unit === "deg" ? STEPS.deg : STEPS[lengths];
  const step = steps.find((each) => each >= most / 3) ?? steps.at(-1)!;
  const whole = (size: number) => Math.ceil(size / step - 1e-9) * step;
  const from = -whole(reach(margins.map(({ margin, spread, worst }) => Math.max(spread - margin, -worst))));
  const to = whole(reach(margins.map(({ margin, spread }) => margin + spread)));
  const ticks = Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
  return { from, to, ticks: ticks.filter((tick) => Math.abs(tick) > step / 2) };
}

/** Room kept at either end of the axis for arrows, per cent of its breadth. */
const EDGE = 6;

/** Where a value stands, per cent of the breadth from the left; beyond the axis, at its end. */
export function placeOn({ from, to }: MarginAxis, value: number): number {
  const share = (Math.min(to, Math.max(from, value)) - from) / (to - from);
  return EDGE + share * (100 - 2 * EDGE);
}

/** Whether a value lies beyond the axis, and at which end. */
export const beyond = ({ from, to }: MarginAxis, value: number): "short" | "spare" | undefined =>
  value < from ? "short" : value > to ? "spare" : undefined;
