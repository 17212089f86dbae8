/**
 * What wood to fetch: panels laid out on sheets by shelves, boards cut from lengths, the largest first.
 * Simple and honest, not the least possible waste.
 */
import type { CutPart, Stock } from "#lib/fit/cut-plan/part.ts";

/** A part laid on a sheet: its lower left corner, and whether it lies turned a quarter. */
export interface Laid {
  readonly part: string;
  readonly atMm: readonly [number, number];
  readonly sizeMm: readonly [number, number];
  readonly turned: boolean;
}

/** One sheet. */
export interface Sheet {
  readonly thicknessMm: number;
  readonly sizeMm: readonly [number, number];
  readonly parts: readonly Laid[];
}

/** One board with the parts cut from it, in order from its end. */
export interface Board {
  readonly thicknessMm: number;
  readonly widthMm: number;
  readonly longMm: number;
  readonly parts: readonly { readonly part: string; readonly fromMm: number; readonly lengthMm: number }[];
}

/** The list of stock. */
export interface StockPlan {
  readonly sheets: readonly Sheet[];
  readonly boards: readonly Board[];
  /** Parts too large for a sheet or a board: they are scarfed or joined. */
  readonly tooLarge: readonly string[];
  /** Area of the panels and length of the board parts themselves, saw cuts left out. */
  readonly areaM2: number;
  readonly lengthM: number;
}

/** Sizes things are bought in, and the saw's cut between parts, mm. */
export interface Bought {
  readonly sheetLongMm: number;
  readonly sheetWideMm: number;
  readonly boardLongMm: number;
  readonly kerfMm: number;
}

interface Shelf {
  readonly from: number;
  readonly high: number;
  filled: number;
}

interface Filling {
  readonly thicknessMm: number;
  readonly shelves: Shelf[];
  readonly parts: Laid[];
}

/** The part lying down: its longer way along the sheet, where it fits so. */
function lying(
  [long, deep]: readonly [number, number],
  { sheetLongMm, sheetWideMm }: Bought,
): { size: [number, number]; turned: boolean } | undefined {
  const flat = { size: [long, deep] as [number, number], turned: false };
  const stood = { size: [deep, long] as [number, number], turned: true };
  const options = long >= deep ? [flat, stood] : [stood, flat];
  return options.find(({ size }) => size[0] <= sheetLongMm && size[1] <= sheetWideMm);
}

/** Lays a part on the first shelf with room, else on a new shelf; false where the sheet is full. */
function lay(sheet: Filling, part: string, size: [number, number], turned: boolean, bought: Bought): boolean {
  const { kerfMm, sheetLongMm, sheetWideMm } = bought;
  const shelf = sheet.shelves.find(
    ({ high, filled }) => size[1] <= high + 1e-9 && filled + size[0] <= sheetLongMm,
  );
  const last = sheet.shelves.at(-1);
  const from = last ? last.from + last.high + kerfMm : 0;
  if (!shelf && from + size[1] > sheetWideMm) return false;
  const on = shelf ?? { from, high: size[1], filled: 0 };
  if (!shelf) sheet.shelves.push(on);
  sheet.parts.push({ part, atMm: [on.filled, on.from], sizeMm: size, turned });
  on.filled += size[0] + kerfMm;
  return true;
}

/** Sheets for the panels, the deepest first. */
function sheetsFor(parts: readonly CutPart[], bought: Bought): { sheets: Sheet[]; tooLarge: string[] } {
  const placed = parts.map(({ id, stock, overallMm }) => ({ id, stock, how: lying(overallMm, bought) }));
  const tooLarge = placed.filter(({ how }) => !how).map(({ id }) => id);
  const sheets: Filling[] = [];
  for (const { id, stock, how } of placed.toSorted((a, b) => (b.how?.size[1] ?? 0) - (a.how?.size[1] ?? 0))) {
    if (!how) continue;
    const same = sheets.filter(({ thicknessMm }) => thicknessMm === stock.thicknessMm);
    if (same.some((sheet) => lay(sheet, id, how.size, how.turned, bought))) continue;
    const fresh: Filling = { thicknessMm: stock.thicknessMm, shelves: [], parts: [] };
    lay(fresh, id, how.size, how.turned, bought);
    sheets.push(fresh);
  }
  const sizeMm = [bought.sheetLongMm, bought.sheetWideMm] as const;
  return {
    sheets: sheets.map(({ thicknessMm, parts: on }) => ({ thicknessMm, sizeMm, parts: on })),
    tooLarge,
  };
}

type Mutable = {
  thicknessMm: number;
  widthMm: number;
  parts: { part: string; fromMm: number; lengthMm: number }[];
};
const sameStock = (a: Stock, b: Pick<Board, "thicknessMm" | "widthMm">): boolean =>
  a.thicknessMm === b.thicknessMm && a.widthMm === b.widthMm;

/** Boards for the rest, the longest first. */
function boardsFor(
  parts: readonly CutPart[],
  { boardLongMm, kerfMm }: Bought,
): { boards: Board[]; tooLarge: string[] } {
  const boards: Mutable[] = [];
  const tooLarge: string[] = [];
  for (const { id, stock, overallMm } of parts.toSorted((a, b) => b.overallMm[0] - a.overallMm[0])) {
    const lengthMm = overallMm[0];
    if (lengthMm > boardLongMm) {
      tooLarge.push(id);
      continue;
    }
    const used = (board: Mutable) => board.parts.reduce((sum, part) => sum + part.lengthMm + kerfMm, 0);
    const room = boards.find((board) => sameStock(stock, board) && used(board) + lengthMm <= boardLongMm);
    const board = room ?? { thicknessMm: stock.thicknessMm, widthMm: stock.widthMm!, parts: [] };
    if (!room) boards.push(board);
    board.parts.push({ part: id, fromMm: used(board), lengthMm });
  }
  return { boards: boards.map((board) => ({ ...board, longMm: boardLongMm })), tooLarge };
}

/** Sheets and boards for a list of parts. */
export function stockPlan(parts: readonly CutPart[], bought: Bought): StockPlan {
  const panels = parts.filter(({ stock }) => stock.kind === "sheet");
  const lengths = parts.filter(({ stock }) => stock.kind === "board");
  const sheets = sheetsFor(panels, bought);
  const boards = boardsFor(lengths, bought);
  return {
    sheets: sheets.sheets,
    boards: boards.boards,
    tooLarge: [...sheets.tooLarge, ...boards.tooLarge],
    areaM2: panels.reduce((sum, { overallMm: [long, deep] }) => sum + long * deep, 0) / 1e6,
    lengthM: lengths.reduce((sum, { overallMm: [long] }) => sum + long, 0) / 1e3,
  };
}
