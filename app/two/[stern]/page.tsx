import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import afloat from "#app/_parts/afloat/afloat.module.css";
import { AfloatItem } from "#app/_parts/afloat/afloat-item.tsx";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { askedTwo, type TwoQuery } from "#app/two/_parts/asked-two.ts";
import look from "#app/two/_parts/two.module.css";
import { TwoAnswers, TwoVerdict } from "#app/two/_parts/two-answers.tsx";
import { TwoForm } from "#app/two/_parts/two-form.tsx";
import { allRecords, getRecord } from "#lib/db/records.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { twoPlan } from "#lib/draw/two-plan.ts";
import { assessTwo } from "#lib/fit/two-motors.ts";
import type { TwoReport } from "#lib/fit/two-report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<TwoQuery>;
}

const sternOf = cache(async (id: string) => {
  const stern = await getRecord("stern", id);
  if (!stern) notFound();
  return stern;
});

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const { record } = await sternOf((await params).stern);
  return { title: `Two motors on ${record.label}` };
}

/** Two motors on one stern: a pair, or a main motor and an auxiliary. */
export default async function TwoPage({ params, searchParams }: Address) {
  const [{ stern: id }, query] = await Promise.all([params, searchParams]);
  const stern = await sternOf(id);
  const asked = askedTwo(query);
  const kept = (await allRecords("motor")).map(({ record }) => record);
  const [one, other] = asked.motors.map((motor) => kept.find((each) => each.id === motor.id));
  const [at, otherAt] = asked.motors.map(({ offsetMm }) => offsetMm);
  const ready = one && other && at !== undefined && otherAt !== undefined;
  return (
    <>
      <TitleStrip
        kind="Two motors"
        title={stern.record.label}
        particulars={[
          [
            "Stern",
            <Link key="stern" href={`/sterns/${id}`}>
              its numbers
            </Link>,
          ],
        ]}
      />
      <p>
        A pair, or a main motor and a small auxiliary: do their brackets find room, and do they clear each
        other however each is tilted and steered? Every combination of both tilts and both steering angles is
        covered, not a sample of them.
      </p>
      <TwoForm asked={asked} motors={kept} />
      {ready ? (
        <Found motors={[one, other]} stern={stern.record} offsetsMm={[at, otherAt]} lengths={asked.lengths} />
      ) : (
        <p className="soft">Pick two motors and say where each sits.</p>
      )}
    </>
  );
}

function Found({
  motors,
  stern,
  offsetsMm,
  lengths,
}: {
  motors: readonly [Motor, Motor];
  stern: Stern;
  offsetsMm: readonly [number, number];
  lengths: LengthSystem;
}) {
  const found = assessTwo(motors, stern, { offsetsMm, lengths });
  return (
    <>
      <TwoVerdict found={found} />
      <Plan found={found} motors={motors} stern={stern} lengths={lengths} />
      <section className="stack-near" aria-labelledby="questions">
        <h2 id="questions" className="drawn">
          Every question
        </h2>
        <TwoAnswers checks={found.checks} />
      </section>
      <Alone found={found} motors={motors} stern={stern} lengths={lengths} />
      <section className="stack-near" aria-labelledby="together">
        <h2 id="together" className="drawn">
          Afloat, both together
        </h2>
        <ol className={`plain ${afloat.answers}`}>
          {found.afloat.map((each) => (
            <AfloatItem key={each.id} one={each} lengths={lengths} />
          ))}
        </ol>
      </section>
    </>
  );
}

interface Pair {
  readonly found: TwoReport;
  readonly motors: readonly [Motor, Motor];
  readonly stern: Stern;
  readonly lengths: LengthSystem;
}

function Plan({ found, motors, stern, lengths }: Pair) {
  const drawing = twoPlan({
    motors: [motorValues(motors[0]), motorValues(motors[1])],
    berths: found.motors,
    between: found.between,
    stern: sternValues(stern),
    lengths,
  });
  if (!drawing) return null;
  return (
    <figure className={look.plan}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section tabIndex={0} aria-label={`${drawing.title}, drawing`}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
        <div dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id: "two" }) }} />
      </section>
      {found.between && (
        <figcaption className="small soft">
          Certified, not sampled: over every tilt and steering of both{" "}
          {found.between.mm < 0
            ? "they strike each other."
            : `the least room is ${unbroken(lengthWriter(lengths)(found.between.mm))}.`}
        </figcaption>
      )}
    </figure>
  );
}

/** What each comes to by itself on its seat. */
function Alone({ found, motors, stern, lengths }: Pair) {
  return (
    <section className="stack-near" aria-labelledby="alone">
      <h2 id="alone" className="drawn">
        Each by itself
      </h2>
      <ul className={`plain ${afloat.answers}`}>
        {found.motors.map(({ id, seatMm, alone }, i) => (
          <li key={`${id} ${String(i)}`}>
            <OutcomeWord outcome={alone.verdict} />
            <p>
              <Link href={`/fit/${stern.id}/${id}`}>{motors[i]!.label}</Link>
              {seatMm === undefined ? "" : `, on a seat of ${unbroken(lengthWriter(lengths)(seatMm))}`}
              {alone.verdict === "fits" ? "" : `; what governs: ${alone.governs.replaceAll("-", " ")}`}.
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
