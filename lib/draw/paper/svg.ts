/** A sheet as a file of its own: SVG in true millimetres with plain colours, for any program that reads it. */
import type { Drawing } from "#lib/draw/drawing.ts";
import { toSvg } from "#lib/draw/svg.ts";

/** The sheet's tokens replaced by their daylight values; paper white. */
export const sheetSvg = (drawing: Drawing): string =>
  toSvg(drawing)
    .replace(/var\(--paper, [^)]*\)/g, "#ffffff")
    .replace(/var\(--[\w-]+, ([^()]*)\)/g, "$1");
