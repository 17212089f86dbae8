import type { Worked } from "#app/_parts/report/margin-chart.tsx";
import { WORDS } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./doubt.module.css";

/** The same margins as a table, for whoever reads figures sooner than pictures. */
export function MarginTable({
  worked,
  lengths,
}: {
  readonly worked: readonly Worked[];
  readonly lengths: LengthSystem;
}) {
  return (
    <details className={look.table}>
      <summary>The same as a table</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section className="across" tabIndex={0} aria-label="Room to spare as a table">
        <table>
          <caption className="unseen">Room to spare of every question</caption>
          <thead>
            <tr>
              <th scope="col">Question</th>
              <th scope="col">Answer</th>
              <th scope="col" className="number">
                To spare
              </th>
              <th scope="col" className="number">
                Give or take
              </th>
              <th scope="col" className="number">
                At the very worst
              </th>
            </tr>
          </thead>
          <tbody>
            {worked.map((check) => {
              const write = (value: number) => unbroken(writerIn(unitOf(check), lengths)(value));
              return (
                <tr key={check.id}>
                  <th scope="row">{check.id.replaceAll("-", " ")}</th>
                  <td>{WORDS[check.outcome]}</td>
                  <td className="number">{write(check.shown.margin)}</td>
                  <td className="number">{write(check.shown.spread)}</td>
                  <td className="number">{write(check.shown.worst)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </details>
  );
}
