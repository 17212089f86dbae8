import { bareSheet } from "#lib/draw/bare-sheet.ts";
import type { View } from "#lib/draw/paper/page.ts";
import type { Content } from "#lib/draw/sheet.ts";
import { toSvg } from "#lib/draw/svg.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./cut-plan.module.css";

/** A view of the plan on screen, to scale. On a narrow screen it scrolls sideways rather than shrink its lettering. */
export function PlanFigure({
  id,
  content,
  lengths,
}: {
  readonly id: string;
  readonly content: Content;
  readonly lengths: LengthSystem;
}) {
  const drawing = bareSheet(content, lengths);
  return (
    <figure>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section className={look.board} tabIndex={0} aria-label={`${content.title}, drawing`}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
        <div className={look.drawing} dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id }) }} />
      </section>
    </figure>
  );
}

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
