import { type RulerCorrection, rulerCorrection } from "#lib/draw/paper/ruler.ts";
import { readLength } from "#lib/entry/length-text.ts";

/** What a rule showed on the 100 mm bar, as typed: a bare number is millimetres, for the bar's field says so. */
export function rulerFrom(text: string): RulerCorrection {
  const read = readLength(text, "mm");
  if (read.kind === "length") return rulerCorrection(read.mm);
  if (read.kind === "refused") return { good: false, says: read.says };
  const inMm = read.readings.find(({ unit }) => unit === "mm");
  return inMm ? rulerCorrection(inMm.mm) : rulerCorrection(Number.NaN);
}
