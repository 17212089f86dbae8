/**
 * Frame and title block of a drawing sheet, with the mandatory fields of ISO 7200:2004 (legal owner,
 * identification number, date of issue, sheet number, title, approval person, creator, document type).
 */
import { type Flat, lettering, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { breadthOf } from "#lib/draw/lettering.ts";
import { MARGIN, PAPERS, type PaperSize, type Stamp } from "#lib/draw/paper/paper.ts";

/** Height of the block, paper mm: three rows. */
export const BLOCK_HIGH = 30;
const ROW = BLOCK_HIGH / 3;

/** What one sheet says of itself. */
export interface SheetOf {
  readonly title: string;
  readonly documentType: string;
  readonly scale: string;
  readonly dimensions: string;
  readonly sheet: number;
  readonly sheets: number;
}

/** Words cut to a breadth on paper, with an ellipsis where something is left off. */
export function shortened(text: string, height: number, breadth: number): string {
  if (breadthOf(text, height) <= breadth) return text;
  const count = Math.max(1, Math.floor(breadth / breadthOf("n", height)) - 1);
  return `${[...text].slice(0, count).join("")}…`;
}

/** Frame and block; `scale` turns paper mm into the drawing's true mm. */
export function titleBlock(paper: PaperSize, scale: number, stamp: Stamp, of: SheetOf): Mark[] {
  const [wide, high] = PAPERS[paper];
  const at = (x: number, y: number): Flat => [x * scale, y * scale];
  const [left, right, bottom, top] = [MARGIN, wide - MARGIN, MARGIN, high - MARGIN];
  const rows: [caption: string, value: string, share: number][][] = [
    [
      ["Identification number", stamp.identification, 0.52],
      ["Dimensions in", of.dimensions, 0.28],
      ["Sheet", `${of.sheet} of ${of.sheets}`, 0.2],
    ],
    [
      ["Legal owner", stamp.owner, 0.34],
      ["Creator", stamp.creator, 0.22],
      ["Approved by", stamp.approval, 0.22],
      ["Date of issue", stamp.issued, 0.22],
    ],
    [
      ["Title", of.title, 0.52],
      ["Document type", of.documentType, 0.28],
      ["Scale", of.scale, 0.2],
    ],
  ];
  return [
    outline([at(left, bottom), at(right, bottom), at(right, top), at(left, top)], { of: "frame" }),
    ...rows.flatMap((cells, i) => row(cells, MARGIN + i * ROW, left, right, at)),
  ];
}

/** One row of cells above `y`. */
function row(
  cells: readonly [caption: string, value: string, share: number][],
  y: number,
  left: number,
  right: number,
  at: (x: number, y: number) => Flat,
): Mark[] {
  let x = left;
  const marks: Mark[] = [line([at(left, y + ROW), at(right, y + ROW)], { of: "block" })];
  for (const [i, [caption, value, share]] of cells.entries()) {
    const wide = (right - left) * share;
    if (i > 0) marks.push(line([at(x, y), at(x, y + ROW)], { line: "dimension", of: "block" }));
    marks.push(lettering(at(x + 1.5, y + ROW - 3), caption, { height: 1.7 }));
    marks.push(
      lettering(at(x + 1.5, y + 2.2), shortened(value, 2.5, wide - 3), {
        height: 2.5,
        bold: caption === "Title",
      }),
    );
    x += wide;
  }
  return marks;
}
