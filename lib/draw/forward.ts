/** Which way the bow lies. */
import { arrowhead } from "#lib/draw/dimension.ts";
import { type Flat, lettering, line, type Mark } from "#lib/draw/drawing.ts";

/** A bold word with an arrow to the left: where the bow is. */
export function forward(at: Flat, scale: number): Mark[] {
  const tip: Flat = [at[0], at[1] + 1.2 * scale];
  return [
    line([tip, [tip[0] + 12 * scale, tip[1]]], { line: "dimension", of: "forward" }),
    arrowhead(tip, 180, scale * 1.4, "ink"),
    lettering([at[0] + 14 * scale, at[1]], "FORWARD", { height: 3, bold: true }),
  ];
}
