import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { AsBuiltForm } from "#app/_parts/cut-plan/as-built-form.tsx";
import { cutAskedFrom, planKey } from "#app/_parts/cut-plan/asked.ts";
import { Checklist } from "#app/_parts/cut-plan/checklist.tsx";
import { ChoicesForm } from "#app/_parts/cut-plan/choices-form.tsx";
import { Downloads } from "#app/_parts/cut-plan/downloads.tsx";
import { FasteningSection } from "#app/_parts/cut-plan/fastening-section.tsx";
import { Missing } from "#app/_parts/cut-plan/missing.tsx";
import { NotchSection } from "#app/_parts/cut-plan/notch-section.tsx";
import { OnThisSheet } from "#app/_parts/cut-plan/on-this-sheet.tsx";
import { PartsSection } from "#app/_parts/cut-plan/parts-section.tsx";
import { PickMotors } from "#app/_parts/cut-plan/pick-motors.tsx";
import { PlanHead } from "#app/_parts/cut-plan/plan-head.tsx";
import { planned } from "#app/_parts/cut-plan/planned.ts";
import { printingFrom } from "#app/_parts/cut-plan/printing.ts";
import { StockSection } from "#app/_parts/cut-plan/stock-section.tsx";
import { UnitsLinks } from "#app/_parts/cut-plan/units-links.tsx";
import { Warnings } from "#app/_parts/cut-plan/warnings.tsx";
import { WellSection } from "#app/_parts/cut-plan/well-section.tsx";
import { named, titled } from "#app/_parts/record/named.ts";
import type { Query } from "#app/_parts/report/asked.ts";
import { cutStern } from "#lib/fit/cut-plan/sawn.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<Query>;
}

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const id = params.then(({ stern }) => ({ id: stern }));
  return { title: `Cut plan: ${await titled("stern", id)}` };
}

/** What to saw so that one motor or several suit a stern, and the well to build: marked, drawn, listed and printed. */
export default async function CutPlanPage({ params, searchParams }: Address) {
  const [{ stern: id }, query] = await Promise.all([params, searchParams]);
  const asked = cutAskedFrom(query);
  const found = await planned(id, asked);
  if (!found) notFound();
  const path = `/cut-plan/${id}`;
  const { plan, unknown, motors } = found;
  const pick = <PickMotors path={path} motors={await named("motor")} chosen={asked.motors} />;
  return (
    <>
      <PlanHead kind="Cut plan" planned={found} />
      {unknown.length > 0 && (
        <p className="notice trouble" role="status">
          {unknown.length === 1 ? "One motor" : `${unknown.length} motors`} of this address{" "}
          {unknown.length === 1 ? "is" : "are"} not in the drawer; it may have been removed.
        </p>
      )}
      {motors.length === 0 ? (
        pick
      ) : (
        <>
          <div className="row not-printed">
            <UnitsLinks asked={asked} path={path} />
            {plan && <OnThisSheet plan={plan} />}
          </div>
          <Warnings planned={found} />
          {plan && <Missing plan={plan} planned={found} />}
          <ChoicesForm path={path} asked={asked} planned={found} />
          {plan?.notch && <NotchSection plan={plan} notch={plan.notch} />}
          {plan?.well && (
            <>
              <WellSection plan={plan} well={plan.well} />
              <PartsSection plan={plan} well={plan.well} />
              <FasteningSection plan={plan} well={plan.well} />
              <StockSection plan={plan} well={plan.well} />
            </>
          )}
          {plan?.notch && (
            <>
              <Downloads
                asked={asked}
                planned={found}
                plan={plan}
                printing={printingFrom(query)}
                path={path}
              />
              <Checklist store={planKey(id, asked)} steps={plan.checklist} />
              <section aria-labelledby="as-built" className="stack-near not-printed">
                <h2 id="as-built" className="drawn">
                  After the saw: as built
                </h2>
                <p>
                  Measure again what was cut. The report is made from it, with the room that is left and what
                  may still be trimmed. What is not measured is taken as planned.
                </p>
                <AsBuiltForm
                  path={`${path}/as-built`}
                  asked={asked}
                  sawn={cutStern(plan, found.stern.record)}
                />
              </section>
            </>
          )}
          <details className="not-printed">
            <summary>Cut for another motor, or for several</summary>
            {pick}
          </details>
        </>
      )}
    </>
  );
}
