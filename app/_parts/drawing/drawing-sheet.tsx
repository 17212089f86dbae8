import type { Drawing } from "#lib/draw/drawing.ts";
import { dimensionsOn } from "#lib/draw/report-drawings.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import look from "./drawing.module.css";

/** One drawing, and beside it the same numbers as a table. On a narrow screen the drawing scrolls sideways rather than shrink its lettering. */
export function DrawingSheet({
  id,
  drawing,
  lengths,
}: {
  readonly id: string;
  readonly drawing: Drawing;
  readonly lengths: LengthSystem;
}) {
  const write = lengthWriter(lengths);
  const rows = dimensionsOn(drawing);
  return (
    <figure className={look.beside}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section className={look.board} tabIndex={0} aria-label={`${drawing.title}, drawing`}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
        <div className={look.sheet} dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id }) }} />
      </section>
      {rows.length > 0 && (
        <figcaption>
          <table className={look.table}>
            <caption>{drawing.title}: the numbers on it</caption>
            <thead className="unseen">
              <tr>
                <th scope="col">What</th>
                <th scope="col">Length</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ of, mm, clearance }) => (
                <tr key={of}>
                  <th scope="row">{of}</th>
                  <td className="number">{mm < 0 && clearance ? `overlap ${write(-mm)}` : write(mm)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </figcaption>
      )}
    </figure>
  );
}
