/** What a seat asks of the saw, in words. */
import { marksBetween, type SeatChoice } from "#lib/fit/shaft-choice.ts";
import { MM_PER_INCH } from "#lib/quantity/length.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** The marks of the tape people saw to: whole millimetres, or sixteenths. */
const MARK: Record<LengthSystem, number> = { mm: 1, in: MM_PER_INCH / 16 };

/** "486 to 497 mm"; rounded inward, so that either end is still within. */
export function rangeWords(
  range: readonly [number, number] | undefined,
  lengths: LengthSystem,
): string | undefined {
  const marks = range && marksBetween(range, MARK[lengths]);
  if (!marks) return undefined;
  const write = lengthWriter(lengths);
  const [low, high] = marks.map(write) as [string, string];
  const unit = / (mm|in)$/;
  return low === high ? `at ${low}` : `${low.replace(unit, "")} to ${high}`;
}

/** Less than this from the present top is no change worth a saw, mm. */
const NOTHING = 0.5;

/** "Cut 64 mm down", "A riser of 22 mm": from the present top to the seat. */
export function changeWords({ deeperBy }: SeatChoice, cut: boolean, lengths: LengthSystem): string {
  if (deeperBy === undefined) return "the present top was not measured";
  const write = lengthWriter(lengths);
  if (Math.abs(deeperBy) < NOTHING) return "as it is";
  if (deeperBy < 0) return `a riser of ${write(-deeperBy)}`;
  return cut ? `${write(deeperBy)} deeper` : `${write(deeperBy)} down from the top`;
}

/** "12 mm below the datum, within its window". */
export function nowWords(
  { plateNow, keepsWindowNow }: SeatChoice,
  lengths: LengthSystem,
): string | undefined {
  if (plateNow === undefined) return undefined;
  const side = plateNow > 0 ? "above" : "below";
  const stands =
    Math.abs(plateNow) < NOTHING
      ? "level with the datum"
      : `${lengthWriter(lengths)(Math.abs(plateNow))} ${side} the datum`;
  return `${stands}, ${keepsWindowNow ? "within its window" : "outside its window"}`;
}
