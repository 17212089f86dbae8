import { type CutAsked, cutQuery } from "#app/_parts/cut-plan/asked.ts";
import { stampOf } from "#app/_parts/cut-plan/paper.ts";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import type { Printing } from "#app/_parts/cut-plan/printing.ts";
import { rulerFrom } from "#app/_parts/cut-plan/ruler.ts";
import { TidyForm } from "#app/_parts/cut-plan/tidy-form.tsx";
import type { PaperSize } from "#lib/draw/paper/paper.ts";
import { allPages } from "#lib/draw/paper/plan-pages.ts";
import type { RulerCorrection } from "#lib/draw/paper/ruler.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import look from "./cut-plan.module.css";

const PAPER: Record<PaperSize, string> = { a4: "A4", letter: "Letter" };

/** The plan on paper: files to print, the question after the ruler, and files for other programs. */
export function Downloads({
  asked,
  planned,
  plan,
  printing,
  path,
}: {
  readonly asked: CutAsked;
  readonly planned: Planned;
  readonly plan: CutPlan;
  readonly printing: Printing;
  readonly path: string;
}) {
  const { paper, shown, owner: typed, ownerSays } = printing;
  const owner = ownerSays === undefined ? typed : "";
  const ruler = shown === "" ? undefined : rulerFrom(shown);
  const corrected = ruler?.factor !== undefined && !ruler.good;
  const more = { paper, ...(owner && { owner }), ...(corrected && { shown }) };
  const href = (kind: string, rest: Record<string, string>) =>
    `/api/cut-plan/${plan.stern}/${kind}${cutQuery(asked, { built: {} }, { ...more, ...rest })}`;
  const sheets = allPages(plan, paper, stampOf(planned, plan, { owner })).map(({ title }, i) => ({
    title,
    number: String(i + 1),
  }));
  const parts = ["notch", ...(plan.well?.parts.map(({ id }) => id) ?? [])];
  const name = (id: string) => plan.well?.parts.find((part) => part.id === id)?.name ?? "Notch";
  return (
    <section aria-labelledby="paper" className="stack-near not-printed">
      <h2 id="paper" className="drawn">
        On paper
      </h2>
      <p>
        {sheets.length} sheets of {PAPER[paper]}: a check page, the drawings to scale, the plan in words with
        its list to tick, and full-size templates to tape together.
      </p>
      <div className="row">
        <a className="button main" href={href("pdf", {})} download>
          Everything in one PDF, {PAPER[paper]}
          {corrected && ", corrected"}
        </a>
        <a className="button" href={href("pdf", { of: "drawings" })} download>
          Drawings only
        </a>
        <a className="button" href={href("pdf", { of: "templates" })} download>
          Templates only
        </a>
        <a className="button" href={href("pdf", { of: "check" })} download>
          Check page only
        </a>
      </div>
      <TidyForm action={`${path}#paper`} label="Paper" className={look.choices}>
        <Carried asked={asked} />
        <div>
          <label htmlFor="paper-size">Paper</label>
          <p className="small soft">What your printer holds.</p>
          <select id="paper-size" name="paper" defaultValue={paper}>
            <option value="a4">A4</option>
            <option value="letter">US Letter</option>
          </select>
        </div>
        <div>
          <label htmlFor="owner">Owner, for the title block</label>
          <p className="small soft">Left empty, to be written in by hand.</p>
          <input type="text" id="owner" name="owner" defaultValue={typed} maxLength={80} autoComplete="off" />
          {ownerSays && <p className="trouble-words">{ownerSays}</p>}
        </div>
        <div>
          <label htmlFor="shown">What did your rule show?</label>
          <p className="small soft" id="shown-hint">
            On the check page's 100 mm bar, in millimetres.
          </p>
          <input
            type="text"
            id="shown"
            name="shown"
            defaultValue={shown}
            placeholder="100 mm"
            maxLength={40}
            autoComplete="off"
            aria-describedby="shown-hint shown-says"
            aria-invalid={ruler && !ruler.good ? true : undefined}
          />
        </div>
        <button type="submit">Set</button>
        <div id="shown-says" className={look.wide}>
          {ruler && <RulerSays ruler={ruler} />}
        </div>
      </TidyForm>
      <details>
        <summary>For other programs: DXF by the part, SVG by the sheet</summary>
        <div className="stack-near">
          <p>DXF full size in millimetres:</p>
          <ul className={look.files}>
            <li>
              <a href={href("dxf", { part: "all" })} download>
                All parts side by side
              </a>
            </li>
            {parts.map((part) => (
              <li key={part}>
                <a href={href("dxf", { part })} download>
                  {name(part)}
                </a>
              </li>
            ))}
          </ul>
          <p>SVG, a sheet each:</p>
          <ol className={look.files}>
            {sheets.map(({ title, number }) => (
              <li key={number}>
                <a href={href("svg", { sheet: number })} download>
                  {number}. {title}
                </a>
              </li>
            ))}
          </ol>
        </div>
      </details>
    </section>
  );
}

/** What of the address is carried on by a form that asks for something else. */
export function Carried({ asked: { motors, lengths, texts } }: { readonly asked: CutAsked }) {
  return (
    <>
      <input type="hidden" name="motors" value={motors.join(",")} />
      <input type="hidden" name="units" value={lengths} />
      {Object.entries(texts).map(([name, text]) => (
        <input key={name} type="hidden" name={name} value={text} />
      ))}
    </>
  );
}

function RulerSays({ ruler }: { readonly ruler: RulerCorrection }) {
  return (
    <p className={ruler.good ? "notice" : "notice trouble"} role="status">
      {ruler.says}
      {!ruler.good && ruler.factor !== undefined && " The files above are now the corrected ones."}
    </p>
  );
}
