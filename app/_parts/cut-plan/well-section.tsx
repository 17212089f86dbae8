import { Figures } from "#app/_parts/cut-plan/figures.tsx";
import { PlanFigure } from "#app/_parts/cut-plan/plan-figure.tsx";
import { capital } from "#app/_parts/cut-plan/words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import { onScreen } from "#lib/draw/on-screen.ts";
import { writtenUp } from "#lib/draw/paper/figures.ts";
import { wellView } from "#lib/draw/paper/well-view.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import look from "./cut-plan.module.css";

/** The well as a whole: what is marked on the hull, how it lies, and how its front stands to the sheer. */
export function WellSection({ plan, well }: { readonly plan: CutPlan; readonly well: WellPlan }) {
  const { lengths } = plan;
  const write = (mm: number) => unbroken(lengthWriter(lengths)(mm));
  const { shape, drop, depth, supportLine, front } = well;
  return (
    <section aria-labelledby="well" className="stack-near">
      <h2 id="well" className="drawn">
        The well
      </h2>
      <Figures
        figures={[
          {
            name: "Seat down to the top of the sole",
            value: unbroken(drop.text),
            note: `down the inside face; the motors ask ${write(well.leastDropMm)}`,
          },
          {
            name: "Support line: top of the aft cleat",
            value: unbroken(supportLine.text),
            note: "below the seat, down the inside face",
          },
          {
            name: "Fore and aft along the sole",
            value: unbroken(depth.text),
            note: `the motors ask ${write(well.leastDepthMm)}`,
          },
          {
            name: "Sole to the transom",
            value: inDegrees(shape.soleAngleDeg),
            note: soleWords(shape.soleAngleDeg, shape.rakeDeg),
          },
          {
            name: "Front, square up from the sole",
            value: writtenUp(shape.wellFrontHeightMm, lengths),
            note: unbroken(front.says),
          },
          ...(well.soleAboveWaterMm === undefined
            ? []
            : [
                {
                  name: "Sole above the water, without the motor",
                  value: write(well.soleAboveWaterMm),
                  note: well.soleAboveWaterMm > 0 ? "at the transom" : "below it: the well stands in water",
                },
              ]),
        ]}
      />
      {front.planeOffMm.aftMm > 0 && (
        <p>
          <strong>Plane off.</strong> The front beam's board stands {write(front.planeOffMm.aftMm)} above its
          finished edge on the aft face and {write(front.planeOffMm.foreMm)} on the forward face.
        </p>
      )}
      <PlanFigure id="well-drawing" content={onScreen(wellView(well, lengths))} lengths={lengths} />
      <Marks well={well} lengths={lengths} />
    </section>
  );
}

const soleWords = (soleDeg: number, rakeDeg: number): string =>
  soleDeg === 90
    ? "square to it"
    : soleDeg === 90 + rakeDeg
      ? "level with the keel line"
      : "as the stern's own sole lies";

/** Where the sole meets the sides: marks on the hull. */
function Marks({ well, lengths }: { readonly well: WellPlan; readonly lengths: LengthSystem }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="Marks on the hull, table">
      <table className={look.narrow}>
        <caption>Marks on the hull, where the sole meets the sides</caption>
        <thead>
          <tr>
            <th scope="col">On the</th>
            <th scope="col" className="number">
              From the centreline
            </th>
            <th scope="col" className="number">
              Top of the sole above the datum, plumb
            </th>
            <th scope="col" className="number">
              Its underside
            </th>
            <th scope="col" className="number">
              Below the sheer
            </th>
          </tr>
        </thead>
        <tbody>
          {well.marks.map(({ at, acrossMm, topAboveDatumMm, underAboveDatumMm, belowSheerMm }) => (
            <tr key={at}>
              <th scope="row">{capital(at)}</th>
              <td className="number">{writtenUp(acrossMm, lengths)}</td>
              <td className="number">{writtenUp(topAboveDatumMm, lengths)}</td>
              <td className="number">{writtenUp(underAboveDatumMm, lengths)}</td>
              <td className="number">{unbroken(lengthWriter(lengths)(belowSheerMm))}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
