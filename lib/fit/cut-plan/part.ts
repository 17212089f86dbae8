/** A finished part: what the plan says of one piece of wood. */
import { type Blank, cutsOf, notchesOf, outlineOn, type PartCut } from "#lib/fit/cut-plan/panel.ts";
import type { Place, Spot } from "#lib/fit/cut-plan/place.ts";

/** What a part is made of. */
export interface Stock {
  readonly kind: "sheet" | "board";
  readonly thicknessMm: number;
  /** Width of the board, where it is one. */
  readonly widthMm?: number;
}

/** A part of the well. */
export interface CutPart {
  readonly id: string;
  readonly name: string;
  readonly stock: Stock;
  /** Which face is marked, and how it is looked at. */
  readonly face: string;
  /** Where the four sides of the drawing lie in the boat: what is written there on a template. */
  readonly sides: {
    readonly left: string;
    readonly right: string;
    readonly top: string;
    readonly bottom: string;
  };
  /** Outline of the marked face and of the back, both as one looks at the marked face, anticlockwise, mm. */
  readonly outline: readonly Spot[];
  readonly back: readonly Spot[];
  readonly place: Place;
  readonly cuts: readonly PartCut[];
  /** Greatest length and depth over both faces: what the stock must hold. */
  readonly overallMm: readonly [long: number, deep: number];
  /** Length along the top and along the bottom edge of the drawing, on the marked face. */
  readonly topMm: number;
  readonly bottomMm: number;
  /** Labels of what it is notched round. */
  readonly round: readonly string[];
  readonly notes: readonly string[];
}

/** What a part is called and made of, before it is cut. */
export interface Naming extends Pick<CutPart, "id" | "name" | "stock" | "face" | "sides"> {
  readonly notes?: readonly string[];
}

const hundredth = (value: number): number => Math.round(value * 100) / 100 + 0;
const rounded = (outline: readonly Spot[]): Spot[] =>
  outline.map(([right, up]) => [hundredth(right), hundredth(up)]);

/** Breadth of an outline between its leftmost and rightmost corner at its upper or lower edge, mm. */
function edgeLength(outline: readonly Spot[], highest: boolean): number {
  const ups = outline.map(([, up]) => up);
  const at = highest ? Math.max(...ups) : Math.min(...ups);
  const on = outline.filter(([, up]) => Math.abs(up - at) < 0.05).map(([right]) => right);
  return Math.max(...on) - Math.min(...on);
}

/** A board is at least as wide as the part is deep with its bevels. */
const stockFor = (stock: Stock, deepMm: number): Stock =>
  stock.kind === "board" ? { ...stock, widthMm: Math.max(stock.widthMm ?? 0, deepMm) } : stock;

/** Cuts a blank. Throws as `outlineOn` does. */
export function cutPart(naming: Naming, blank: Blank): CutPart {
  const outline = rounded(outlineOn(blank, 0));
  const back = rounded(outlineOn(blank, blank.thicknessMm));
  const all = [...outline, ...back];
  const size = (k: 0 | 1) =>
    Math.max(...all.map((spot) => spot[k])) - Math.min(...all.map((spot) => spot[k]));
  const deep = hundredth(size(1));
  return {
    ...naming,
    stock: stockFor(naming.stock, deep),
    notes: naming.notes ?? [],
    outline,
    back,
    place: blank.place,
    cuts: cutsOf(blank),
    overallMm: [hundredth(size(0)), deep],
    topMm: hundredth(edgeLength(outline, true)),
    bottomMm: hundredth(edgeLength(outline, false)),
    round: notchesOf(blank),
  };
}
