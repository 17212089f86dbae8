import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { DrawingSheet } from "#app/_parts/drawing/drawing-sheet.tsx";
import { Cautions } from "#app/_parts/report/cautions.tsx";
import { CheckList } from "#app/_parts/report/check-list.tsx";
import { ClearanceTable } from "#app/_parts/report/clearance-table.tsx";
import { FourFigures } from "#app/_parts/report/four-figures.tsx";
import { LikeNotice } from "#app/_parts/report/like-notice.tsx";
import { PoseBench } from "#app/_parts/report/pose-bench.tsx";
import { benchPoses } from "#app/_parts/report/poses.ts";
import { Remedies } from "#app/_parts/report/remedies.tsx";
import look from "#app/_parts/report/report.module.css";
import { UnitsSwitch } from "#app/_parts/report/units-switch.tsx";
import { VerdictPanel } from "#app/_parts/report/verdict-panel.tsx";
import { lengthsFrom } from "#app/_parts/report/writing.ts";
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
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
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
  const lengths = lengthsFrom(query.units);
  const like = query.like === "1";
  const estimates = like ? estimatesFor(motor.record, await motorsKept()) : [];
  const report = assess(motor.record, stern.record, {}, { lengths, estimates });
  const rig = { motor: motorValues(filledIn(motor.record, estimates)), stern: sternValues(stern.record) };
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
      <VerdictPanel
        report={report}
        edit={{ motor: `/motors/${motorId}/edit`, stern: `/sterns/${sternId}/edit` }}
      />
      <UnitsSwitch lengths={lengths} like={like} />
      <LikeNotice report={report} lengths={lengths} like={like} />
      <FourFigures report={report} stern={rig.stern} lengths={lengths} />
      <Remedies remedies={report.remedies} />
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
          {...rig}
          {...bench}
          lengths={lengths}
          sheets={viewsOf({ profile: drawings.profile, plan: drawings.plan })}
        />
      )}
      <ClearanceTable clearances={report.clearances} lengths={lengths} />
      <CheckList found={report.checks} lengths={lengths} />
    </>
  );
}
