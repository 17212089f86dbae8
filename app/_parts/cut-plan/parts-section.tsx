import { Mind } from "#app/_parts/cut-plan/mind.tsx";
import { PlanFigure } from "#app/_parts/cut-plan/plan-figure.tsx";
import { capital, cautionsOf } from "#app/_parts/cut-plan/words.ts";
import { onScreen } from "#lib/draw/on-screen.ts";
import { boughtSize, writtenUp } from "#lib/draw/paper/figures.ts";
import { partView } from "#lib/draw/paper/part-view.ts";
import { sawWords } from "#lib/draw/saw-words.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./cut-plan.module.css";

/** Every part of the well: its drawing, its lengths, and how the saw is set for each of its cuts. */
export function PartsSection({ plan, well }: { readonly plan: CutPlan; readonly well: WellPlan }) {
  return (
    <section aria-labelledby="parts" className="stack">
      <h2 id="parts" className="drawn">
        Parts and saw settings
      </h2>
      <Mind title="At the saw" says={cautionsOf(plan, "cut-parts")} />
      <p>
        Blade: how far it is tilted from square. Table: how the cut's line runs on the marked face, as you
        look at that face. The same stands as rise over run for a bevel gauge. Wide lines are the marked face,
        dashed ones its back.
      </p>
      {well.parts.map((part) => (
        <Part key={part.id} part={part} lengths={plan.lengths} />
      ))}
    </section>
  );
}

function Part({ part, lengths }: { readonly part: CutPart; readonly lengths: LengthSystem }) {
  const { id, name, stock, face, overallMm, round, notes } = part;
  const size = (mm: number) => boughtSize(mm, lengths);
  const up = (mm: number) => writtenUp(mm, lengths);
  const from =
    stock.kind === "sheet"
      ? `from sheet ${size(stock.thicknessMm)} thick`
      : `from a board ${size(stock.thicknessMm)} by ${size(stock.widthMm ?? 0)}`;
  return (
    <article aria-labelledby={`part-${id}`} className={`stack-near ${look.part}`}>
      <h3 id={`part-${id}`}>{name}</h3>
      <p>
        {capital(from)}; {up(overallMm[0])} {stock.kind === "sheet" ? `by ${up(overallMm[1])}` : "long"} over
        all. Marked face: {face}.{round.length > 0 && ` Notched round ${round.join(", ")}.`} {notes.join(" ")}
      </p>
      <PlanFigure id={`drawing-${id}`} content={onScreen(partView(part, lengths))} lengths={lengths} />
      <Saw part={part} lengths={lengths} />
    </article>
  );
}

function Saw({ part, lengths }: { readonly part: CutPart; readonly lengths: LengthSystem }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label={`Saw settings, ${part.name}`}>
      <table className={look.saw}>
        <caption className="unseen">Saw settings, {part.name}</caption>
        <thead>
          <tr>
            <th scope="col">Cut</th>
            <th scope="col">It lies against</th>
            <th scope="col">Blade from square</th>
            <th scope="col">Left longer</th>
            <th scope="col">Table</th>
            <th scope="col" className="number">
              Cut, marked face
            </th>
          </tr>
        </thead>
        <tbody>
          {part.cuts.map((cut) => {
            const says = sawWords(cut, lengths);
            return (
              <tr key={cut.id}>
                <th scope="row">{capital(cut.id)}</th>
                <td>{cut.against}</td>
                <td>
                  <strong>{says.blade}</strong>
                  {says.bladeSlope && <span className={look.slope}>{says.bladeSlope}</span>}
                </td>
                <td>{says.longFace}</td>
                <td>
                  <strong>{says.table}</strong>
                  {says.tableSlope && <span className={look.slope}>{says.tableSlope}</span>}
                </td>
                <td className="number">{says.length}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
