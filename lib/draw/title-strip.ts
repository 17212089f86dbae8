/** The frame of a sheet and the strip of ruled cells at its foot. */
import { lettering, line, type Mark, outline, type Window } from "#lib/draw/drawing.ts";
import { breadthOf } from "#lib/draw/lettering.ts";
import { NOTE } from "#lib/draw/scale-bar.ts";

/** Breadth of every sheet on paper, mm: A4 and US Letter both print it with a margin of 10 mm or more. */
export const SHEET = 190;

/** Height of the title strip on paper, mm. */
export const STRIP = 17;

/** What the title strip says besides the view. */
export interface Strip {
  readonly motor: string;
  readonly stern: string;
  readonly lengths: "mm" | "in";
  readonly engine: string;
}

/** Words cut to a breadth on paper, with an ellipsis where something is left off. */
function cut(text: string, height: number, breadth: number): string {
  if (breadthOf(text, height) <= breadth) return text;
  const letters = [...text];
  return `${letters.slice(0, Math.max(1, Math.floor(breadth / breadthOf("n", height)) - 1)).join("")}…`;
}

/** The frame and the strip of ruled cells at its foot. */
export function frame(
  title: string,
  { left, right, bottom, top }: Window,
  scale: number,
  strip: Strip,
  number: number,
): Mark[] {
  const mm = (value: number) => value * scale;
  const inset = mm(0.4);
  const [l, r, b, t] = [left + inset, right - inset, bottom + inset, top - inset];
  const high = bottom + mm(STRIP);
  const cells = [86, 50, 17].map((fromRight) => right - mm(fromRight));
  const words = (x: number, row: number, text: string, height: number, bold = false) =>
    lettering([x + mm(2), bottom + mm(row)], text, { height, bold });
  const particulars: [string, string][] = [
    ["DIMENSIONS IN", strip.lengths === "mm" ? "MILLIMETRES" : "INCHES"],
    ["ALL SHEETS", `SCALE 1:${scale}`],
    ["SHEET", `${number} OF 3`],
  ];
  const named = SHEET - 86 - 4;
  return [
    outline(
      [
        [l, b],
        [r, b],
        [r, t],
        [l, t],
      ],
      { of: "frame" },
    ),
    line(
      [
        [l, high],
        [r, high],
      ],
      { of: "strip" },
    ),
    ...cells.map((x) =>
      line(
        [
          [x, b],
          [x, high],
        ],
        { line: "dimension", of: "strip" },
      ),
    ),
    words(left, 11.3, cut(title.toUpperCase(), 3.5, named), 3.5, true),
    words(left, 6.6, cut(`Motor: ${strip.motor}`, NOTE, named), NOTE),
    words(left, 2.4, cut(`Stern: ${strip.stern}`, NOTE, named), NOTE),
    ...particulars.flatMap(([name, value], i) => [
      words(cells[i]!, 11.6, name, 2),
      words(cells[i]!, 4.4, value, 3.5, true),
    ]),
  ];
}
