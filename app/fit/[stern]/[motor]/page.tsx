import type { Metadata } from "next";
import { cookies } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { AfloatSection } from "#app/_parts/afloat/afloat-section.tsx";
import { loadFrom } from "#app/_parts/afloat/load.ts";
import { DrawingSheet } from "#app/_parts/drawing/drawing-sheet.tsx";
import {
  askedFrom,
  handlingOf,
  motorAsTried,
  type Query,
  tapeInForce,
  tapeWords,
} from "#app/_parts/report/asked.ts";
import { Cautions } from "#app/_parts/report/cautions.tsx";
import { CheckList } from "#app/_parts/report/check-list.tsx";
import { ClearanceTable } from "#app/_parts/report/clearance-table.tsx";
import doubt from "#app/_parts/report/doubt.module.css";
import { FourFigures } from "#app/_parts/report/four-figures.tsx";
import { LikeNotice } from "#app/_parts/report/like-notice.tsx";
import { MarginChart } from "#app/_parts/report/margin-chart.tsx";
import { MeasureNext } from "#app/_parts/report/measure-next.tsx";
import { NumbersBehind, sortedByHow } from "#app/_parts/report/numbers-behind.tsx";
import { PoseBench } from "#app/_parts/report/pose-bench.tsx";
import { benchPoses } from "#app/_parts/report/poses.ts";
import { Remedies } from "#app/_parts/report/remedies.tsx";
import look from "#app/_parts/report/report.module.css";
import { TapeSetting } from "#app/_parts/report/tape-setting.tsx";
import { Tried } from "#app/_parts/report/tried.tsx";
import { UnitsSwitch } from "#app/_parts/report/units-switch.tsx";
import { VerdictPanel } from "#app/_parts/report/verdict-panel.tsx";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { allRecords, getRecord } from "#lib/db/records.ts";
import { reportDrawings } from "#lib/draw/report-drawings.ts";
import { viewsOf } from "#lib/draw/views-of.ts";
import { assess } from "#lib/fit/assess.ts";
import { estimatesFor, filledIn } from "#lib/fit/like-motors.ts";
import { mount } from "#lib/rig/mounting.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string; motor: string }>;
  readonly searchParams: Promise<Query>;
}

/** Both records of an address; a 404 where either is not kept. */
const pairOf = cache(async (sternId: string, motorId: string) => {
  const [stern, motor] = await Promise.all([getRecord("stern", sternId), getRecord("motor", motorId)]);
  if (!stern || !motor) notFound();
  return { stern, motor };
});

const motorsKept = async () => (await allRecords("motor")).map(({ record }) => record);

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const { stern: sternId, motor: motorId } = await params;
  const { stern, motor } = await pairOf(sternId, motorId);
  return { title: `${motor.record.label} on ${stern.record.label}` };
}

/** The report of one pairing: the verdict first, the figures people ask for, the drawings, and every question behind them. */
export default async function ReportPage({ params, searchParams }: Address) {
  const [{ stern: sternId, motor: motorId }, query] = await Promise.all([params, searchParams]);
  const { stern, motor } = await pairOf(sternId, motorId);
  const asked = askedFrom(query);
  const { lengths, like } = asked;
  const tape = tapeInForce(asked, (await cookies()).get("tape")?.value);
  const handling = handlingOf(asked, motor.record);
  const kept = like ? await motorsKept() : [];
  const tried = motorAsTried(asked, motor.record);
  const estimates = estimatesFor(tried, kept);
  const load = loadFrom(query, lengths);
  const report = assess(tried, stern.record, {}, { lengths, estimates, tape, handling, aboard: load.aboard });
  const filled = filledIn(tried, estimates);
  const rig = { motor: motorValues(filled), stern: sternValues(stern.record), handling };
  const [motorLabel, sternLabel] = [motor.record.label, stern.record.label];
  const drawings = reportDrawings({ mounting: mount(rig), report, motorLabel, sternLabel, lengths });
  const bench = benchPoses(rig, report);
  return (
    <>
      <div className={look.pairing}>
        <TitleStrip
          kind="Will it suit?"
          title={`${motorLabel} on ${sternLabel}`}
          particulars={[
            [
              "Motor",
              <Link key="motor" href={`/motors/${motorId}`}>
                its numbers
              </Link>,
            ],
            [
              "Stern",
              <Link key="stern" href={`/sterns/${sternId}`}>
                its numbers
              </Link>,
            ],
          ]}
        />
      </div>
      {(motor.demo || stern.demo) && (
        <p>
          <span className="demo-mark">invented</span> Made up to show how Sternwright works; no such{" "}
          {motor.demo && stern.demo ? "motor or stern" : motor.demo ? "motor" : "stern"} exists.
        </p>
      )}
      <Tried asked={asked} />
      <VerdictPanel report={report} lengths={lengths} />
      <MeasureNext
        report={report}
        lengths={lengths}
        edit={{ motor: `/motors/${motorId}/edit`, stern: `/sterns/${sternId}/edit` }}
      />
      <div className="row not-printed">
        <UnitsSwitch asked={asked} />
        <TapeSetting asked={asked} tape={tape} path={[sternId, motorId]} />
      </div>
      <p className={`${doubt.printedOnly} small`}>
        Measured lengths reckoned with a tape of {tapeWords(tape)}.
      </p>
      <LikeNotice report={report} asked={asked} labels={new Map(kept.map(({ id, label }) => [id, label]))} />
      <MarginChart found={report.checks} lengths={lengths} />
      <FourFigures report={report} stern={rig.stern} lengths={lengths} />
      <Remedies report={report} asked={asked} pins={rig.motor.pinAnglesDeg ?? []} />
      <p className="not-printed">
        <Link className="button" href={`/cut-plan/${sternId}?motors=${motorId}&units=${lengths}`}>
          Cut plan: what to saw, full size
        </Link>
      </p>
      <NumbersBehind
        sorted={sortedByHow(rig, filled, stern.record, new Set(estimates.map(({ key }) => key)))}
      />
      <Cautions />
      <section aria-labelledby="drawings" className="stack">
        <h2 id="drawings" className="drawn">
          Drawings
        </h2>
        <DrawingSheet id="profile" drawing={drawings.profile} lengths={lengths} />
        <DrawingSheet id="plan" drawing={drawings.plan} lengths={lengths} />
        <DrawingSheet id="elevation" drawing={drawings.elevation} lengths={lengths} />
      </section>
      {bench && (
        <PoseBench
          motor={rig.motor}
          stern={rig.stern}
          like={estimates.length > 0}
          {...bench}
          lengths={lengths}
          sheets={viewsOf({ profile: drawings.profile, plan: drawings.plan })}
        />
      )}
      <ClearanceTable clearances={report.clearances} lengths={lengths} like={estimates.length > 0} />
      <CheckList report={report} lengths={lengths} />
      <AfloatSection
        found={report.afloat}
        stern={rig.stern}
        load={load}
        asked={asked}
        two={`/two/${sternId}?units=${lengths}&first=${motorId}`}
      />
    </>
  );
}
