/** Views made for sheets of paper, for a page: without frame, notes and title block. */
import type { View } from "#lib/draw/paper/page.ts";
import type { Content } from "#lib/draw/sheet.ts";

/** A view made for paper as one for the screen: its lines give the scale, its words and dimensions follow. */
export function onScreen({ title, says, marks }: View): Content {
  const isThing = ({ mark }: ReturnType<View["marks"]>[number]) => mark === "outline" || mark === "arc";
  return {
    title,
    says,
    things: marks(1).filter(isThing),
    lettered: (scale) => marks(scale).filter((mark) => !isThing(mark)),
    notes: [],
  };
}
