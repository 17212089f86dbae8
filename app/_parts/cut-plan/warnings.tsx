import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Warning } from "#lib/fit/cut-plan/nearby.ts";
import type { WellPlan } from "#lib/fit/cut-plan/plan.ts";

/** What is to be heeded before anything else: choices that cannot be built, what stands near the cuts, and what the plan is and is not. */
export function Warnings({ planned: { plan, impossible, reading, motors } }: { readonly planned: Planned }) {
  const named = (text: string) => motors.find(({ record }) => text.startsWith(record.id))?.record.label;
  const heed = [...(plan?.warnings ?? []), ...(plan?.well ? ofWell(plan.well) : [])];
  return (
    <>
      {!reading.ok && (
        <div className="notice trouble" role="alert">
          <p>
            <strong>Not planned yet.</strong> Put right what is told at the boxes below; everything typed is
            still there.
          </p>
        </div>
      )}
      {impossible !== undefined && (
        <div className="notice trouble" role="alert">
          <p>
            <strong>This cannot be built.</strong> {impossible} Change the choices below.
          </p>
        </div>
      )}
      {heed.length > 0 && (
        <section aria-labelledby="heed" className="notice trouble">
          <h2 id="heed">To heed first</h2>
          <ul>
            {heed.map(({ about, says }) => (
              <li key={`${about} ${says}`}>
                {motors.length > 1 && named(about) && <strong>{named(about)}: </strong>}
                {unbroken(says)}
              </li>
            ))}
          </ul>
        </section>
      )}
      {plan && (
        <div className="notice">
          {plan.advice.map((says) => (
            <p key={says}>{says}</p>
          ))}
          {plan.notch && <p>{plan.rounding}</p>}
        </div>
      )}
    </>
  );
}

/** What of a well is to be heeded before it is built. */
const ofWell = ({ front, drain }: WellPlan): Warning[] => [
  ...(front.aboveSheerMm > 0 ? [{ about: "the front", says: front.says }] : []),
  ...(drain.lowest === "front" ? [{ about: "the drains", says: drain.says }] : []),
];
