/**
 * Figures on a drawing: whole millimetres without a unit, or inches and sixteenths with the inch sign
 * (ISO 129-1, from memory). Lengths of parts are rounded up: wood left on can still come off.
 */
import { type Marked, marked } from "#lib/fit/cut-plan/marked.ts";
import { figure, type LengthSystem } from "#lib/quantity/words.ts";

/** The figure of a mark: "136", "4 3⁄4″". */
export const figureOfMark = ({ text }: Pick<Marked, "text">, lengths: LengthSystem): string =>
  lengths === "in" ? text.replace("/", "⁄").replace(" in", "″") : text.replace(" mm", "");

/** The figure of a length of a part, rounded up. */
export const figureUp = (mm: number, lengths: LengthSystem): string =>
  figureOfMark(marked(mm, "up", lengths), lengths);

/** The same in a sentence, with its unit: "15 7/8 in", "403 mm". */
export const writtenUp = (mm: number, lengths: LengthSystem): string =>
  unbroken(marked(mm, "up", lengths).text);

/** The same rounded down: how far a bit may go in. */
export const writtenDown = (mm: number, lengths: LengthSystem): string =>
  unbroken(marked(mm, "down", lengths).text);

/** A size things are bought in: in the reader's unit where it stands on a step of it, else in millimetres; never rounded. */
export function boughtSize(mm: number, lengths: LengthSystem): string {
  const { text, rounded } = marked(mm, "up", lengths);
  return unbroken(rounded === "not at all" ? text : `${Number(mm.toFixed(1))} mm`);
}

/** A figure stays on one line with its fraction and its unit. */
const unbroken = (text: string): string => text.replaceAll(" ", "\u00a0");

/** An angle of a saw setting, to a tenth of a degree. */
export const degrees = (deg: number): string => `${Number(deg.toFixed(1))}°`;

/** Rise over run for a bevel gauge: "6.4 in 100", or inches over 12: "3/4 in in 12 in". */
export const riseOverRun = (per100: number, lengths: LengthSystem): string =>
  lengths === "mm" ? `${figure(per100)} in 100` : `${nearestSixteenth(per100 * 3.048)} in 12 in`;

/** Millimetres over 304.8 written to the nearest sixteenth: a gauge is set, nothing is cut to it. */
const nearestSixteenth = (mm: number): string =>
  marked(Math.round((mm / 25.4) * 16) * (25.4 / 16), "up", "in").text;
