/**
 * Full-size templates over several sheets: each tile with its letter and number, 10 mm of overlap,
 * register crosses, and a 50 mm square of its own.
 */
import {
  type Drawing,
  type Flat,
  type LineKind,
  lettering,
  line,
  type Mark,
  outline,
} from "#lib/draw/drawing.ts";
import { MARGIN, PAPERS, type PaperSize, registerCross, type Stamp, square } from "#lib/draw/paper/paper.ts";
import { shortened } from "#lib/draw/paper/title-block.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** What every sheet shares with the next, mm. */
export const OVERLAP = 10;
/** Side of the square on every tile, mm. */
export const CHECK_SQUARE = 50;
/** Height of the band under a tile that holds its square and words, mm. */
const BAND = 58;

/** A thing drawn full size: its marks in true mm (outlines, lines, arcs and words), and which way its sides lie. */
export interface Template {
  readonly id: string;
  readonly name: string;
  readonly face: string;
  readonly sides: {
    readonly left: string;
    readonly right: string;
    readonly top: string;
    readonly bottom: string;
  };
  readonly marks: readonly Mark[];
}

/** One tile: where its window lies on the template, and its sheet. */
export interface Tile {
  readonly name: string;
  readonly template: string;
  /** Lower left corner of the window on the template, true mm. */
  readonly originMm: Flat;
  /** Lower left corner of the window on the sheet, true mm. */
  readonly onSheetMm: Flat;
  readonly sheet: Drawing;
}

type Run = { readonly a: Flat; readonly b: Flat; readonly line: LineKind; readonly of: string };

/** Marks as straight runs; arcs in chords of 3 degrees. */
function runsOf(marks: readonly Mark[]): Run[] {
  const chain = (points: readonly Flat[], closed: boolean, style: Pick<Run, "line" | "of">): Run[] =>
    points.flatMap((a, i) => {
      const b = points[i + 1] ?? (closed ? points[0] : undefined);
      return b ? [{ a, b, ...style }] : [];
    });
  return marks.flatMap((mark) => {
    if (mark.mark === "outline") return chain(mark.points, mark.closed, mark);
    if (mark.mark !== "arc") return [];
    const steps = Math.ceil((mark.toDeg - mark.fromDeg) / 3);
    const points = Array.from({ length: steps + 1 }, (_, k): Flat => {
      const angle = mark.fromDeg + ((mark.toDeg - mark.fromDeg) * k) / steps;
      return [mark.centre[0] + mark.radius * cos(angle), mark.centre[1] + mark.radius * sin(angle)];
    });
    return chain(points, false, mark);
  });
}

/** The piece of a run within a rectangle (Liang and Barsky); undefined where it misses. */
export function clippedRun(a: Flat, b: Flat, low: Flat, high: Flat): [Flat, Flat] | undefined {
  let [from, to] = [0, 1];
  for (const k of [0, 1] as const) {
    const by = b[k] - a[k];
    for (const [sign, edge] of [
      [-1, low[k]],
      [1, high[k]],
    ] as const) {
      const room = sign * (edge - a[k]);
      const step = sign * by;
      if (step === 0 && room < 0) return undefined;
      if (step > 0) to = Math.min(to, room / step);
      if (step < 0) from = Math.max(from, room / step);
    }
  }
  if (from >= to) return undefined;
  const at = (share: number): Flat => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
  return [at(from), at(to)];
}

/** Columns are lettered from the left, rows numbered from the foot: A1 is the lower left tile. */
export const tileName = (column: number, row: number): string =>
  `${column >= 26 ? String.fromCharCode(64 + Math.floor(column / 26)) : ""}${String.fromCharCode(65 + (column % 26))}${row + 1}`;

/**
 * The tiles of a template that carry a line of it. `factor` draws everything that much larger for a
 * printer that shrinks (see ruler.ts); true sizes on the print stay true.
 */
export function tiles(template: Template, paper: PaperSize, stamp: Stamp, factor = 1): Tile[] {
  const scale = 1 / factor;
  const [wide, high] = PAPERS[paper].map((mm) => mm * scale) as [number, number];
  const margin = MARGIN * scale;
  const size: Flat = [wide - 2 * margin, high - 2 * margin - BAND];
  const step: Flat = [size[0] - OVERLAP, size[1] - OVERLAP];
  const runs = runsOf(template.marks);
  const ends = runs.flatMap(({ a, b }) => [a, b]);
  // The first tile begins an overlap outside the drawing, so that no line runs along its edge.
  const start: Flat = [
    Math.min(...ends.map(([x]) => x)) - OVERLAP,
    Math.min(...ends.map(([, y]) => y)) - OVERLAP,
  ];
  const count = [0, 1].map((k) =>
    Math.ceil((Math.max(...ends.map((end) => end[k as 0 | 1])) - start[k as 0 | 1]) / step[k as 0 | 1]),
  ) as [number, number];
  const grid = Array.from({ length: count[0] * count[1] }, (_, i): [number, number] => [
    i % count[0],
    Math.floor(i / count[0]),
  ]);
  const inked = grid.filter(([column, row]) => {
    const low: Flat = [start[0] + column * step[0], start[1] + row * step[1]];
    return runs.some(({ a, b }) => clippedRun(a, b, low, [low[0] + size[0], low[1] + size[1]]));
  });
  return inked.map(([column, row]) => {
    const originMm: Flat = [start[0] + column * step[0], start[1] + row * step[1]];
    const onSheetMm: Flat = [margin, margin + BAND];
    const name = tileName(column, row);
    const marks = [
      ...tileMarks(template, runs, originMm, size, onSheetMm),
      ...crosses(onSheetMm, step, scale),
      ...band(template, { name, count, column, row, stamp, inked }, margin, wide, scale),
    ];
    return {
      name,
      template: template.id,
      originMm,
      onSheetMm,
      sheet: {
        title: `${template.name}, tile ${name}`,
        says: `Full-size template of the ${template.name}, tile ${name}.`,
        scale,
        window: { left: 0, right: wide, bottom: 0, top: high },
        marks,
      },
    };
  });
}

/** What lies in the window: lines cut at its border, words whose place is within it, and the border. */
function tileMarks(template: Template, runs: readonly Run[], low: Flat, size: Flat, to: Flat): Mark[] {
  const high: Flat = [low[0] + size[0], low[1] + size[1]];
  const shift = ([x, y]: Flat): Flat => [x - low[0] + to[0], y - low[1] + to[1]];
  const drawn = runs.flatMap(({ a, b, line: kind, of }): Mark[] => {
    const piece = clippedRun(a, b, low, high);
    return piece ? [line(piece.map(shift), { line: kind, of })] : [];
  });
  const words = template.marks.flatMap((mark): Mark[] =>
    mark.mark === "lettering" &&
    mark.at[0] > low[0] &&
    mark.at[0] < high[0] &&
    mark.at[1] > low[1] &&
    mark.at[1] < high[1]
      ? [{ ...mark, at: shift(mark.at) }]
      : [],
  );
  const border = outline(
    [low, [high[0], low[1]], high, [low[0], high[1]]].map((at) => shift(at as Flat)),
    { line: "dimension", tone: "faint", of: "tile" },
  );
  return [border, ...drawn, ...words];
}

/** Crosses in the middle of the overlaps at the four corners: those of neighbours fall on each other. */
const crosses = ([x, y]: Flat, step: Flat, scale: number): Mark[] =>
  [0, 1].flatMap((right) =>
    [0, 1].flatMap((up) =>
      registerCross([x + OVERLAP / 2 + right * step[0], y + OVERLAP / 2 + up * step[1]], scale),
    ),
  );

interface Banner {
  readonly name: string;
  readonly count: readonly [number, number];
  readonly column: number;
  readonly row: number;
  readonly stamp: Stamp;
  readonly inked: readonly (readonly [number, number])[];
}

/** The band under the window: the square, the tile's name and its place in the whole, what it belongs to. */
function band(template: Template, banner: Banner, margin: number, wide: number, scale: number): Mark[] {
  const { name, count, column, row, stamp, inked } = banner;
  const [x, y] = [margin + 2, margin + 4];
  const text = x + CHECK_SQUARE + 6;
  const lines: [string, number, boolean][] = [
    [`TILE ${name}`, 5, true],
    [
      `${template.name}, full size. ${template.face.charAt(0).toUpperCase()}${template.face.slice(1)}.`,
      2.2,
      false,
    ],
    [
      `Left ${template.sides.left}, right ${template.sides.right}, top ${template.sides.top}, foot ${template.sides.bottom}.`,
      2.2,
      true,
    ],
    ["Print at 100 %. The square must measure 50 mm both ways, else do not use it.", 2.2, false],
    ["Lay sheets over each other by 10 mm, cross on cross.", 2.2, false],
    [`${stamp.identification}. ${stamp.record}`, 2.2, false],
    [`Version ${stamp.version}, ${stamp.issued}`, 2.2, false],
  ];
  // The last lines leave room for the map of tiles.
  const breadth = (i: number) => (wide - margin - text) / scale - (i > 3 ? 32 : 3);
  const cell = Math.min(4, 24 / Math.max(...count)) * scale;
  const map = wide - margin - 3 - count[0] * cell;
  return [
    square([x, y], CHECK_SQUARE, "check square"),
    lettering([x + CHECK_SQUARE / 2, y + CHECK_SQUARE / 2], "50 mm square", { height: 2.2, align: "middle" }),
    ...lines.map(([words, height, bold], i) =>
      lettering(
        [text, y + CHECK_SQUARE - 5 - (i === 0 ? 0 : 4 + i * 5.5)],
        shortened(words, height, breadth(i)),
        { height, bold },
      ),
    ),
    ...inked.map(([c, r]) => {
      const [left, foot] = [map + c * cell, y + r * cell];
      const here = c === column && r === row;
      return outline(
        [
          [left, foot],
          [left + cell, foot],
          [left + cell, foot + cell],
          [left, foot + cell],
        ],
        { line: "dimension", fill: here ? "solid" : "none", of: here ? "this tile" : "another tile" },
      );
    }),
  ];
}
