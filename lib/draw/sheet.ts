/**
 * The sheet a view is drawn on: one breadth for all, so that drawings side by side stay to one scale on
 * screen and paper alike; a frame, a title strip, a scale bar, and figures that do not run into each other.
 */
import { drawnAngle, drawnDimension, figureOf } from "#lib/draw/dimension.ts";
import {
  type Drawing,
  type Flat,
  lettering,
  line,
  type Mark,
  outline,
  type Window,
} from "#lib/draw/drawing.ts";
import { boxOf, breadthOf, collide, folded } from "#lib/draw/lettering.ts";
import { cos, sin } from "#lib/quantity/angle.ts";
import { MM_PER_INCH } from "#lib/quantity/length.ts";

/** Reductions of ISO 5455, to which alone a drawing is made. */
export const SCALES = [1, 2, 5, 10, 20, 50, 100] as const;

/** Breadth of every sheet on paper, mm: A4 and US Letter both print it with a margin of 10 mm or more. */
export const SHEET = 190;
/** Greatest height of the drawn part, mm, so that sheet and strip stay on one page. */
const TALLEST = 196;
const MARGIN = 4;
const STRIP = 17;
const NOTE = 2.3;

/** What a view draws: the things themselves, and their lettering once the scale is known. */
export interface Content {
  readonly title: string;
  readonly says: string;
  readonly things: readonly Mark[];
  readonly lettered: (scale: number) => readonly Mark[];
  readonly notes: readonly string[];
}

/** What the title strip says besides the view. */
export interface Strip {
  readonly motor: string;
  readonly stern: string;
  readonly lengths: "mm" | "in";
  readonly engine: string;
}

function points(mark: Mark, scale: number): Flat[] {
  switch (mark.mark) {
    case "outline":
      return [...mark.points];
    case "arc":
      return Array.from({ length: 25 }, (_, k) => {
        const angle = mark.fromDeg + ((mark.toDeg - mark.fromDeg) * k) / 24;
        return [mark.centre[0] + mark.radius * cos(angle), mark.centre[1] + mark.radius * sin(angle)];
      });
    case "lettering": {
      const { left, right, bottom, top } = boxOf(mark, scale);
      return [
        [left, bottom],
        [right, top],
      ];
    }
    case "dimension":
      return drawnDimension(mark, scale).flatMap((part) => points(part, scale));
    case "angle":
      return drawnAngle(mark, scale).flatMap((part) => points(part, scale));
  }
}

/** The least rectangle around marks, true mm. */
export function extent(marks: readonly Mark[], scale: number): Window {
  const all = marks.flatMap((mark) => points(mark, scale));
  const [xs, ys] = [all.map((point) => point[0]), all.map((point) => point[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** The rectangle of a mark's words, where it has any. */
export function wordsBox(mark: Mark, scale: number): Window | undefined {
  if (mark.mark === "lettering") return boxOf(mark, scale);
  if (mark.mark === "dimension") return boxOf(figureOf(mark, scale), scale);
  return undefined;
}

/** The same mark with its words `step` steps away: a dimension further out, level words up or down. */
function steppedAside(mark: Mark, scale: number, step: number): Mark {
  const up = Math.ceil(step / 2) * (step % 2 === 0 ? -1 : 1) * 1.5 * scale;
  if (mark.mark === "lettering") return { ...mark, at: [mark.at[0], mark.at[1] + up] };
  if (mark.mark !== "dimension") return mark;
  if (mark.figureAt) return { ...mark, figureAt: [mark.figureAt[0], mark.figureAt[1] + up] };
  return { ...mark, offset: mark.offset + Math.sign(mark.offset || 1) * 2 * step };
}

/** Words that stand free are brought inside the sheet's sides. */
function broughtIn(mark: Mark, scale: number, sides: Pick<Window, "left" | "right">): Mark {
  const box = wordsBox(mark, scale);
  if (!box || mark.mark === "angle") return mark;
  const shift = Math.max(0, sides.left - box.left) - Math.max(0, box.right - sides.right);
  if (mark.mark === "lettering") return { ...mark, at: [mark.at[0] + shift, mark.at[1]] };
  if (mark.mark !== "dimension" || !mark.figureAt) return mark;
  return { ...mark, figureAt: [mark.figureAt[0] + shift, mark.figureAt[1]] };
}

const ENDLESS = { left: Number.NEGATIVE_INFINITY, right: Number.POSITIVE_INFINITY };

/** Marks with their words inside the sheet's sides and moved aside until no two collide: the first placed stays, the later gives way. */
export function settled(
  marks: readonly Mark[],
  scale: number,
  sides: Pick<Window, "left" | "right"> = ENDLESS,
): Mark[] {
  const taken: Window[] = [];
  return marks.map((mark) => {
    const within = broughtIn(mark, scale, sides);
    let placed = within;
    for (let step = 1; step <= 60; step++) {
      const box = wordsBox(placed, scale);
      if (!box || !taken.some((other) => collide(box, other))) break;
      placed = steppedAside(within, scale, step);
    }
    const box = wordsBox(placed, scale);
    if (box) taken.push(box);
    return placed;
  });
}

/** Marks that take room beside the things themselves: dimensions on their own lines. Free words find their place inside the sheet. */
const bound = (marks: readonly Mark[]): Mark[] =>
  marks.filter((mark) => mark.mark === "dimension" && !mark.figureAt);

/** What a view needs of the plane: its things and their dimension lines. */
const needed = (content: Content, scale: number): Window =>
  extent([...content.things, ...settled(bound(content.lettered(scale)), scale)], scale);

/** The largest scale of ISO 5455 at which every view fits its sheet. */
export function scaleFor(contents: readonly Content[]): number {
  const fits = (scale: number) =>
    contents.every((content) => {
      const { left, right, bottom, top } = needed(content, scale);
      return (right - left) / scale <= SHEET - 2 * MARGIN && (top - bottom) / scale <= TALLEST;
    });
  return SCALES.find(fits) ?? SCALES.at(-1)!;
}

/** A scale bar of whole hundreds of millimetres, or of whole inches, some 50 mm long on paper; filled every other part, its length lettered with its unit. */
export function scaleBar(at: Flat, scale: number, lengths: "mm" | "in"): Mark[] {
  const part =
    lengths === "mm"
      ? 10 * scale
      : Math.max(0.5, Math.round((10 * scale) / MM_PER_INCH / 2) * 2 || 0.5) * MM_PER_INCH;
  const high = 1.6 * scale;
  const [x, y] = at;
  const bars = [0, 1, 2, 3, 4].map((k) =>
    outline(
      [
        [x + k * part, y],
        [x + (k + 1) * part, y],
        [x + (k + 1) * part, y + high],
        [x + k * part, y + high],
      ],
      { line: "dimension", fill: k % 2 === 0 ? "solid" : "paper", of: "scale bar" },
    ),
  );
  const long = 5 * part;
  const words = lengths === "mm" ? `${long} mm` : `${Number((long / MM_PER_INCH).toFixed(1))} in`;
  const up = y + high + 1 * scale;
  return [
    ...bars,
    lettering([x, up], "0", { height: NOTE, align: "middle" }),
    lettering([x + long, up], words, { height: NOTE, align: "middle" }),
  ];
}

/** True length of the bar drawn at a scale, mm. */
export const barLength = (scale: number, lengths: "mm" | "in"): number => {
  const { left, right } = extent(
    scaleBar([0, 0], scale, lengths).filter((mark) => mark.mark === "outline"),
    scale,
  );
  return right - left;
};

/** Words cut to a breadth on paper, with an ellipsis where something is left off. */
function cut(text: string, height: number, breadth: number): string {
  if (breadthOf(text, height) <= breadth) return text;
  const letters = [...text];
  return `${letters.slice(0, Math.max(1, Math.floor(breadth / breadthOf("n", height)) - 1)).join("")}…`;
}

/** A view on its sheet at a scale: frame, view, notes, scale bar, title strip. */
export function sheeted(content: Content, scale: number, strip: Strip, number: number): Drawing {
  const room = needed(content, scale);
  const middle = (room.left + room.right) / 2;
  const [left, right] = [middle - (SHEET / 2) * scale, middle + (SHEET / 2) * scale];
  const sides = { left: left + 3 * scale, right: right - 3 * scale };
  const marks = [...content.things, ...settled(content.lettered(scale), scale, sides)];
  const reach = extent(marks, scale);
  const notes = content.notes.flatMap((note) => folded(note, NOTE, SHEET - 75));
  const foot = Math.max(12, notes.length * NOTE * 1.7 + 5);
  const window: Window = {
    left,
    right,
    bottom: reach.bottom - (MARGIN + foot + STRIP) * scale,
    top: reach.top + (MARGIN + 2) * scale,
  };
  const framed = [
    ...footing(notes, window, foot, scale, strip),
    ...frame(content.title, window, scale, strip, number),
  ];
  return { title: content.title, says: content.says, scale, window, marks: [...marks, ...framed] };
}

/** Notes to the left, scale bar to the right, between the view and the strip. */
function footing(
  notes: readonly string[],
  window: Window,
  foot: number,
  scale: number,
  { lengths }: Strip,
): Mark[] {
  const low = window.bottom + STRIP * scale;
  const lines = notes.map((note, i) =>
    lettering([window.left + 4 * scale, low + (foot - 4 - i * NOTE * 1.7) * scale], note, { height: NOTE }),
  );
  const long = barLength(scale, lengths);
  return [...lines, ...scaleBar([window.right - 12 * scale - long, low + 3.5 * scale], scale, lengths)];
}

/** The frame and the strip of ruled cells at its foot. */
function frame(
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

/** The part of a sheet its view fills, without frame, notes and strip, and with room for a line of words above and the scale bar below. */
function viewed({ marks, scale }: Pick<Drawing, "marks" | "scale">): Window {
  const sheet = ["frame", "strip", "scale bar", "datum"];
  const things = marks.filter(
    (mark) => mark.mark === "arc" || (mark.mark === "outline" && !sheet.includes(mark.of)),
  );
  const { left, right, bottom, top } = extent(things, scale);
  const room = MARGIN * scale;
  return { left: left - room, right: right + room, bottom: bottom - 2.2 * room, top: top + 2.2 * room };
}

/** Windows for pictures that move, one for each sheet: what the sheet's view fills, all of one breadth, so that they too stay to one scale. */
export function viewsOf<Name extends string>(
  sheets: Readonly<Record<Name, Drawing>>,
): Record<Name, Pick<Drawing, "window" | "scale">> {
  const windows = Object.entries<Drawing>(sheets).map(([name, drawing]) => ({
    name,
    scale: drawing.scale,
    window: viewed(drawing),
  }));
  const breadth = Math.max(...windows.map(({ window }) => window.right - window.left));
  const broadened = windows.map(({ name, scale, window }) => {
    const more = (breadth - (window.right - window.left)) / 2;
    return [
      name,
      { scale, window: { ...window, left: window.left - more, right: window.right + more } },
    ] as const;
  });
  return Object.fromEntries(broadened) as Record<Name, Pick<Drawing, "window" | "scale">>;
}
