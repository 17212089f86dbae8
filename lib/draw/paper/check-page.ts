/** The first page of the templates: squares and bars to lay a rule on, and what to do with the sheets. */
import { type Drawing, lettering, line, type Mark } from "#lib/draw/drawing.ts";
import { folded } from "#lib/draw/lettering.ts";
import { bar, MARGIN, PAPERS, type PaperSize, type Stamp, square } from "#lib/draw/paper/paper.ts";
import { CHECK_SQUARE } from "#lib/draw/paper/tiles.ts";

const STEPS: readonly string[] = [
  'Print this page alone first, at 100 %: no "fit to page", no "shrink", no borderless.',
  "Lay a steel rule on the square and on both bars, level and plumb. The square must measure 50 mm both ways, the bars 100 mm and 4 in.",
  "Write down what the rule shows on the 100 mm bar. Half a millimetre either way is good. More is not: do not use the templates; give the figure where the file came from and take the corrected one, then check that one as well.",
  "Print the rest from the same machine with the same settings, and look at the square on every sheet.",
  "Trim along the thin border where a sheet lies on top. Lay each over its neighbour by 10 mm until the crosses fall on each other, and tape them on a flat board.",
  "Wide lines are the marked face, dashed ones its back. Look at the words PORT, STARBOARD, FORWARD and AFT before you lay a template on the wood: it goes on the face it names.",
  "Damp paper grows and shrinks: check the whole length with a tape before you mark.",
];

/** The check page. `factor` as for the tiles. */
export function checkPage(paper: PaperSize, stamp: Stamp, factor = 1): Drawing {
  const scale = 1 / factor;
  const [wide, high] = PAPERS[paper].map((mm) => mm * scale) as [number, number];
  const left = (MARGIN + 8) * scale;
  const top = high - (MARGIN + 8) * scale;
  const breadth = wide / scale - 2 * MARGIN - 16;
  const lines = STEPS.flatMap((text, i) => folded(`${i + 1}. ${text}`, 2.8, breadth).concat(""));
  const squareAt = top - 22 * scale - CHECK_SQUARE;
  const barsAt = squareAt - 12;
  const textAt = barsAt - 62;
  const marks: Mark[] = [
    lettering([left, top - 5 * scale], "CHECK PAGE: measure before you mark", { height: 5, bold: true }),
    ...folded(
      `${stamp.identification}. Version ${stamp.version}, ${stamp.issued}. ${stamp.record}`,
      2.5,
      breadth,
    )
      .slice(0, 2)
      .map((text, i) => lettering([left, top - (12 + i * 4.5) * scale], text, { height: 2.5 })),
    square([left, squareAt], CHECK_SQUARE, "check square"),
    lettering([left + CHECK_SQUARE / 2, squareAt + CHECK_SQUARE / 2], "50 mm square", {
      height: 2.5,
      align: "middle",
    }),
    ...bar([left, barsAt], 100, "level", "100 mm", scale),
    ...bar([left, barsAt - 10], 101.6, "level", "4 in", scale),
    ...bar([left + 130, top - 125 * scale], 100, "plumb", "100 mm", scale),
    ...bar([left + 145, top - 125 * scale], 101.6, "plumb", "4 in", scale),
    lettering([left, barsAt - 30], "What did your rule show on the 100 mm bar?", { height: 3.5, bold: true }),
    line(
      [
        [left, barsAt - 48],
        [left + 60, barsAt - 48],
      ],
      { line: "dimension", of: "answer" },
    ),
    lettering([left + 62, barsAt - 48], "mm", { height: 3.5 }),
    ...lines.map((text, i) => lettering([left, textAt - i * 4.6 * scale], text, { height: 2.8 })),
  ];
  return {
    title: "Check page",
    says: "A 50 mm square, bars of 100 mm and 4 in level and plumb, and what to do with the templates.",
    scale,
    window: { left: 0, right: wide, bottom: 0, top: high },
    marks: marks.filter((mark) => mark.mark !== "lettering" || mark.text !== ""),
  };
}
