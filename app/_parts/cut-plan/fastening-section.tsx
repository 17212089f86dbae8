import { Figures } from "#app/_parts/cut-plan/figures.tsx";
import { Mind } from "#app/_parts/cut-plan/mind.tsx";
import { capital, cautionsOf } from "#app/_parts/cut-plan/words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import { boughtSize, writtenDown, writtenUp } from "#lib/draw/paper/figures.ts";
import type { ScrewJoint } from "#lib/fit/cut-plan/fasteners.ts";
import type { CutPlan, WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import look from "./cut-plan.module.css";

/** Screws, drains and fillets. */
export function FasteningSection({ plan, well }: { readonly plan: CutPlan; readonly well: WellPlan }) {
  const { lengths } = plan;
  const { drain, fillets } = well;
  const write = (mm: number) => unbroken(lengthWriter(lengths)(mm));
  return (
    <section aria-labelledby="fastening" className="stack-near">
      <h2 id="fastening" className="drawn">
        Screws, drains and fillets
      </h2>
      <Screws joints={well.fasteners} lengths={lengths} />
      <h3>Drains</h3>
      <p>{drain.says}</p>
      <Figures
        figures={[
          {
            name: "Holes, one to port and one to starboard",
            value: unbroken(drain.hole.text),
            note: `for a tube ${boughtSize(drain.tubeOutsideMm, lengths)} outside, bedded`,
          },
          { name: "Centre from the centreline", value: writtenUp(drain.acrossMm, lengths) },
          {
            name: "Centre above the sole",
            value: writtenUp(drain.aboveSoleMm, lengths),
            ...(drain.belowSeatMm !== undefined && {
              note: `square to it; on the transom ${write(drain.belowSeatMm)} below the seat, down the inside face`,
            }),
          },
          {
            name: "Sole, keel line level",
            value: drain.lowest === "level" ? "level" : inDegrees(Math.abs(drain.riseDeg)),
            note: { transom: "rises forward", front: "falls forward", level: "sheds no water of itself" }[
              drain.lowest
            ],
          },
        ]}
      />
      <h3>Fillets</h3>
      <Mind title="At the epoxy" says={cautionsOf(plan, "fillets")} />
      <p>
        Radius {boughtSize(fillets.radiusMm, lengths)} in every inside corner;{" "}
        {Math.ceil(fillets.millilitres / 10) * 10}&nbsp;ml of filler in all, before waste:{" "}
        {fillets.corners
          .map(({ along, lengthMm, cornerDeg }) => `${along} ${write(lengthMm)} (${inDegrees(cornerDeg)})`)
          .join(", ")}
        .
      </p>
    </section>
  );
}

function Screws({
  joints,
  lengths,
}: {
  readonly joints: readonly ScrewJoint[];
  readonly lengths: LengthSystem;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="Screws, table">
      <table className={look.saw}>
        <caption>Screws: the longest that stays inside the wood it holds</caption>
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">Screws</th>
            <th scope="col">Stack, and left over the point</th>
            <th scope="col">Pilot, and where the bit stops</th>
            <th scope="col">From the left end of the cleat as drawn</th>
          </tr>
        </thead>
        <tbody>
          {joints.map((joint) => (
            <tr key={joint.id}>
              <th scope="row">{capital(joint.says)}</th>
              <td>
                {joint.screw
                  ? `${joint.count} of ${unbroken(joint.screw.text)}, ${joint.gauge.replace(" ", "\u00a0")}`
                  : "none is short enough: glue only"}
              </td>
              <td>
                {writtenDown(joint.stackMm, lengths)}
                {joint.coverMm !== undefined && `; ${writtenDown(joint.coverMm, lengths)} left`}
              </td>
              <td>
                {joint.pilot.pointMm.toFixed(1)}&nbsp;mm point, {joint.pilot.shankMm.toFixed(1)}&nbsp;mm
                shank; stop at {writtenDown(joint.pilot.stopMm, lengths)}
              </td>
              <td>{joint.positionsMm.map((mm) => writtenUp(mm, lengths)).join(", ")}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
