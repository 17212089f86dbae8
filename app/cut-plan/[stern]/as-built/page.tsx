import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { AsBuiltForm } from "#app/_parts/cut-plan/as-built-form.tsx";
import { AsBuiltResult, KeepIt } from "#app/_parts/cut-plan/as-built-result.tsx";
import { AsMeasured } from "#app/_parts/cut-plan/as-measured.tsx";
import { type CutAsked, cutAskedFrom, cutQuery } from "#app/_parts/cut-plan/asked.ts";
import { builtFrom } from "#app/_parts/cut-plan/built.ts";
import { PlanHead } from "#app/_parts/cut-plan/plan-head.tsx";
import { planned } from "#app/_parts/cut-plan/planned.ts";
import { UnitsLinks } from "#app/_parts/cut-plan/units-links.tsx";
import { titled } from "#app/_parts/record/named.ts";
import type { Query } from "#app/_parts/report/asked.ts";
import { asBuilt } from "#lib/fit/cut-plan/sawn.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<Query>;
}

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const id = params.then(({ stern }) => ({ id: stern }));
  return { title: `As built: ${await titled("stern", id)}` };
}

/** A stern measured after the saw: the report again, with the room that is left and what may still be trimmed. */
export default async function AsBuiltPage({ params, searchParams }: Address) {
  const [{ stern: id }, query] = await Promise.all([params, searchParams]);
  const asked = cutAskedFrom(query);
  const found = await planned(id, asked);
  if (!found) notFound();
  const path = `/cut-plan/${id}/as-built`;
  const { plan } = found;
  return (
    <>
      <PlanHead kind="As built" planned={found} />
      <p className="not-printed">
        <Link href={`/cut-plan/${id}${cutQuery(asked, { built: {} })}`}>Back to the cut plan</Link>
      </p>
      {plan?.notch ? (
        <Measured asked={asked} path={path} planned={{ ...found, plan }} />
      ) : (
        <p className="notice trouble">
          There is no plan yet to measure against: go back and see what it lacks.
        </p>
      )}
    </>
  );
}

function Measured({
  asked,
  path,
  planned: { plan, stern, motors },
}: {
  readonly asked: CutAsked;
  readonly path: string;
  readonly planned: Parameters<typeof builtFrom>[1];
}) {
  const { sawn, reading, told } = builtFrom(asked, { plan, stern, motors });
  const typed = Object.keys(asked.built).length > 0;
  return (
    <>
      <div className="row not-printed">
        <UnitsLinks asked={asked} path={path} />
      </div>
      <p>What is not measured is taken as planned. Nothing is written over.</p>
      <AsBuiltForm path={path} asked={asked} sawn={sawn} told={told} />
      {typed && reading.ok && (
        <>
          <AsMeasured sawn={sawn} measured={reading.value} lengths={asked.lengths} />
          {motors.map(({ record }) => (
            <AsBuiltResult
              key={record.id}
              motor={record}
              result={asBuilt(record, sawn, reading.value, asked.lengths)}
              lengths={asked.lengths}
            />
          ))}
          <KeepIt stern={stern.record.id} />
        </>
      )}
    </>
  );
}
