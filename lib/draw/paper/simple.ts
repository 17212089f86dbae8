/** A drawing's marks broken down to what every writer knows: outlines, arcs and words without leaders. */
import { drawnAngle, drawnDimension, drawnLettering } from "#lib/draw/dimension.ts";
import type { Arc, Lettering, Mark, Outline } from "#lib/draw/drawing.ts";

export type Simple = Outline | Arc | Lettering;

/** Words on one line: no control or direction-changing characters, which a label may not hold but a file must not trust. */
export const oneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, " ");

/** One mark taken apart. */
function apart(mark: Mark, scale: number): Simple[] {
  if (mark.mark === "dimension") return simple(drawnDimension(mark, scale), scale);
  if (mark.mark === "angle") return simple(drawnAngle(mark, scale), scale);
  if (mark.mark === "lettering" && mark.leader) return simple(drawnLettering(mark, scale), scale);
  return mark.mark === "lettering" ? [{ ...mark, text: oneLine(mark.text) }] : [mark];
}

/** Dimensions, angles and leaders taken apart; `scale` as in Drawing. */
export const simple = (marks: readonly Mark[], scale: number): Simple[] =>
  marks.flatMap((mark) => apart(mark, scale));
