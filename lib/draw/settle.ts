/** Figures and words that do not run into each other. */
import type { Mark, Window } from "#lib/draw/drawing.ts";
import { wordsBox } from "#lib/draw/extent.ts";
import { collide } from "#lib/draw/lettering.ts";

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
