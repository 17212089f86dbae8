/**
 * The sheet a view is drawn on: one breadth for all, so that drawings side by side stay to one scale on
 * screen and paper alike; notes, a scale bar, and the largest scale at which every view fits.
 */
import { type Drawing, lettering, type Mark, type Window } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { folded } from "#lib/draw/lettering.ts";
import { barLength, NOTE, scaleBar } from "#lib/draw/scale-bar.ts";
import { settled } from "#lib/draw/settle.ts";
import { frame, SHEET, STRIP, type Strip } from "#lib/draw/title-strip.ts";

/** Reductions of ISO 5455, to which alone a drawing is made. */
export const SCALES = [1, 2, 5, 10, 20, 50, 100] as const;

/** Greatest height of the drawn part, mm, so that sheet and strip stay on one page. */
const TALLEST = 196;

/** Free paper around a view inside the frame, mm. */
export const MARGIN = 4;

/** What a view draws: the things themselves, and their lettering once the scale is known. */
export interface Content {
  readonly title: string;
  readonly says: string;
  readonly things: readonly Mark[];
  readonly lettered: (scale: number) => readonly Mark[];
  readonly notes: readonly string[];
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
