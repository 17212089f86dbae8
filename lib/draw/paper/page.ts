/**
 * One view on one sheet of paper: as large a scale of ISO 5455 as fits, frame, title block, bars, notes.
 */
import type { Drawing, Flat, Mark } from "#lib/draw/drawing.ts";
import { lettering } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { folded } from "#lib/draw/lettering.ts";
import { bars, MARGIN, moved, PAPERS, type PaperSize, type Stamp } from "#lib/draw/paper/paper.ts";
import { BLOCK_HIGH, type SheetOf, titleBlock } from "#lib/draw/paper/title-block.ts";
import { settled } from "#lib/draw/settle.ts";

/** Scales of ISO 5455 a plan is drawn to. */
export const PAPER_SCALES = [1, 2, 5, 10, 20, 50] as const;

/** Height of the notes' lettering, mm. */
const NOTE = 2.2;
const NOTE_STEP = NOTE * 1.6;
/** Room for the plumb bars at the left and the level bars above the block, mm. */
const BARS_WIDE = 16;
const BARS_HIGH = 16;

/** What a sheet shows: the view at a scale (its dimensions depend on it), and notes under it. */
export interface View {
  readonly title: string;
  readonly says: string;
  readonly marks: (scale: number) => readonly Mark[];
  readonly notes: readonly string[];
}

/** Everything a sheet needs besides its view. */
export interface Sheeting {
  readonly paper: PaperSize;
  readonly stamp: Stamp;
  readonly dimensions: string;
  readonly sheet: number;
  readonly sheets: number;
}

/** The rectangle left for a view above its notes, paper mm. */
function room(paper: PaperSize, lines: number) {
  const [wide, high] = PAPERS[paper];
  return {
    left: MARGIN + BARS_WIDE,
    right: wide - MARGIN - 3,
    bottom: MARGIN + BLOCK_HIGH + BARS_HIGH + lines * NOTE_STEP + 4,
    top: high - MARGIN - 4,
  };
}

/** A view on its sheet. */
export function page(view: View, { paper, stamp, dimensions, sheet, sheets }: Sheeting): Drawing {
  const [wide, high] = PAPERS[paper];
  const lines = view.notes.flatMap((note) => folded(note, NOTE, wide - 2 * MARGIN - BARS_WIDE - 4));
  const free = room(paper, lines.length);
  const placed = (scale: number): Mark[] => settled(view.marks(scale), scale);
  const fits = (scale: number): boolean => {
    const { left, right, bottom, top } = extent(placed(scale), scale);
    return (
      (right - left) / scale <= free.right - free.left && (top - bottom) / scale <= free.top - free.bottom
    );
  };
  const scale = PAPER_SCALES.find(fits) ?? PAPER_SCALES.at(-1)!;
  const marks = placed(scale);
  const reach = extent(marks, scale);
  const shift: Flat = [
    ((free.left + free.right) / 2) * scale - (reach.left + reach.right) / 2,
    ((free.bottom + free.top) / 2) * scale - (reach.bottom + reach.top) / 2,
  ];
  const about: SheetOf = {
    title: view.title,
    documentType: "Cut plan",
    scale: `SCALE 1:${scale}`,
    dimensions,
    sheet,
    sheets,
  };
  const noteTop = free.bottom - 4;
  return {
    title: view.title,
    says: view.says,
    scale,
    window: { left: 0, right: wide * scale, bottom: 0, top: high * scale },
    marks: [
      ...marks.map((mark) => moved(mark, shift)),
      ...lines.map((text, i) =>
        lettering([free.left * scale, (noteTop - (i + 0.5) * NOTE_STEP) * scale], text, { height: NOTE }),
      ),
      ...bars([(MARGIN + BARS_WIDE) * scale, (MARGIN + BLOCK_HIGH + 10) * scale], "level", scale),
      ...bars([(MARGIN + 5) * scale, (MARGIN + BLOCK_HIGH + BARS_HIGH) * scale], "plumb", scale),
      ...titleBlock(paper, scale, stamp, about),
    ],
  };
}
