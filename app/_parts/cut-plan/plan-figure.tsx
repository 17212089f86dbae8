import { bareSheet } from "#lib/draw/bare-sheet.ts";
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
