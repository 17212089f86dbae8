/** The wood to fetch, with every part laid out on it: sheets by their outlines, boards by the length each part takes. */
import { type Flat, lettering, type Mark, outline } from "#lib/draw/drawing.ts";
import { breadthOf } from "#lib/draw/lettering.ts";
import { boughtSize } from "#lib/draw/paper/figures.ts";
import { reachOf } from "#lib/draw/paper/part-view.ts";
import type { Content } from "#lib/draw/sheet.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { WellPlan } from "#lib/fit/cut-plan/plan.ts";
import type { Board, Laid, Sheet } from "#lib/fit/cut-plan/stock.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** A sheet or board at its height on the drawing. */
type Piece = { readonly bottom: number } & (
  | { readonly sheet: Sheet; readonly board?: undefined }
  | { readonly board: Board; readonly sheet?: undefined }
);

/** Room over a sheet for its words and under a board for its parts' names, paper mm. */
const GAP = 12;
/** Greatest breadth and height of the view, paper mm, and the scales it may come to (ISO 5455). */
const ROOM = [180, 194] as const;
const SCALES = [10, 20, 50, 100, 200] as const;

const rectangle = ([x, y]: Flat, [wide, high]: Flat): Flat[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];

/** Sheets and boards one under the other, the first on top, `gap` true mm between. */
function stacked({ sheets, boards }: WellPlan["stock"], gap: number): Piece[] {
  let y = 0;
  const below = (high: number) => {
    y -= high + gap;
    return y;
  };
  return [
    ...sheets.map((sheet): Piece => ({ sheet, bottom: below(sheet.sizeMm[1]) })),
    ...boards.map((board): Piece => ({ board, bottom: below(board.widthMm) })),
  ];
}

/** The gap that leaves room for the words at the scale the whole comes to. */
function gapFor({ sheets, boards }: WellPlan["stock"]): number {
  const wide = Math.max(0, ...sheets.map(({ sizeMm }) => sizeMm[0]), ...boards.map(({ longMm }) => longMm));
  const high = [...sheets.map(({ sizeMm }) => sizeMm[1]), ...boards.map(({ widthMm }) => widthMm)];
  const total = high.reduce((sum, each) => sum + each, 0);
  const fits = (scale: number) =>
    wide <= ROOM[0] * scale && total + high.length * GAP * scale <= ROOM[1] * scale;
  return GAP * (SCALES.find(fits) ?? SCALES.at(-1)!);
}

/** A part's marked face where it lies on its sheet, turned a quarter to the left where it lies so; never turned over. */
function laidOutline({ outline: marked, back }: CutPart, { atMm, turned }: Laid, bottom: number): Flat[] {
  const turn = ([x, y]: Flat): Flat => (turned ? [-y, x] : [x, y]);
  const whole = reachOf([...marked, ...back].map(turn));
  return marked
    .map(turn)
    .map(([x, y]): Flat => [x - whole.left + atMm[0], y - whole.bottom + atMm[1] + bottom]);
}

function thingsOf(pieces: readonly Piece[], parts: readonly CutPart[]): Mark[] {
  return pieces.flatMap(({ sheet, board, bottom }): Mark[] => {
    if (board) {
      return [
        outline(rectangle([0, bottom], [board.longMm, board.widthMm]), { line: "dimension", of: "board" }),
        ...board.parts.map(({ part, fromMm, lengthMm }) =>
          outline(rectangle([fromMm, bottom], [lengthMm, board.widthMm]), { fill: "wash", of: part }),
        ),
      ];
    }
    return [
      outline(rectangle([0, bottom], sheet.sizeMm), { line: "dimension", of: "sheet" }),
      ...sheet.parts.flatMap((laid) => {
        const part = parts.find(({ id }) => id === laid.part);
        return part ? [outline(laidOutline(part, laid, bottom), { fill: "wash", of: part.id })] : [];
      }),
    ];
  });
}

/** Words at a place, no higher than leaves them inside a breadth. */
function fitting(at: Flat, text: string, breadth: number, scale: number): Mark {
  const height = Math.min(2.5, (2.5 * breadth) / scale / breadthOf(text, 2.5));
  return lettering(at, text, { height, align: "middle" });
}

function letteredOn(
  pieces: readonly Piece[],
  parts: readonly CutPart[],
  scale: number,
  lengths: LengthSystem,
): Mark[] {
  const size = (mm: number) => boughtSize(mm, lengths);
  const nameOf = (id: string) => parts.find((part) => part.id === id)?.name ?? id;
  const over = (y: number, text: string) =>
    lettering([0, y + 1.5 * scale], text, { height: 2.5, bold: true });
  return pieces.flatMap(({ sheet, board, bottom }): Mark[] => {
    if (board) {
      const words = `Board ${size(board.thicknessMm)} x ${size(board.widthMm)}, ${size(board.longMm)} long`;
      return [
        over(bottom + board.widthMm, words),
        ...board.parts.map(({ part, fromMm, lengthMm }) =>
          fitting([fromMm + lengthMm / 2, bottom - 3.5 * scale], nameOf(part), lengthMm, scale),
        ),
      ];
    }
    const [long, wide] = sheet.sizeMm;
    return [
      over(bottom + wide, `Sheet ${size(sheet.thicknessMm)} thick, ${size(long)} x ${size(wide)}`),
      ...sheet.parts.map(({ part, atMm, sizeMm }) =>
        fitting(
          [atMm[0] + sizeMm[0] / 2, bottom + atMm[1] + sizeMm[1] / 2 - 1.25 * scale],
          nameOf(part),
          sizeMm[0],
          scale,
        ),
      ),
    ];
  });
}

/** The stock of a well as a view to scale. */
export function stockView(
  { stock, parts }: Pick<WellPlan, "stock" | "parts">,
  lengths: LengthSystem,
): Content {
  const pieces = stacked(stock, gapFor(stock));
  return {
    title: "Stock",
    says: "Sheets and boards with the parts laid out on them, the saw's cut left between.",
    things: thingsOf(pieces, parts),
    lettered: (scale) => letteredOn(pieces, parts, scale, lengths),
    notes: [],
  };
}
