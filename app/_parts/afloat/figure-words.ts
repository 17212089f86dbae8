import type { Figure } from "#lib/checks/afloat-check.ts";
import { figure, inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

const tenth = (value: number): string => String(Number(value.toFixed(1))).replace("-", "−");

/** A time as people say it: seconds up to two minutes, then minutes. */
const timeWords = (seconds: number): string =>
  seconds < 120 ? `${Math.round(seconds)} s` : `${Math.round(seconds / 60)} min`;

/** A figure with its unit: lengths as the reader likes them. */
export function figureWords({ value, unit }: Pick<Figure, "value" | "unit">, lengths: LengthSystem): string {
  if (unit === "mm") return lengthWriter(lengths)(value);
  if (unit === "deg") return inDegrees(value);
  if (unit === "s") return timeWords(value);
  if (unit === "persons") return String(value);
  return `${unit === "kg" && value >= 100 ? figure(value) : tenth(value)} ${unit}`;
}
