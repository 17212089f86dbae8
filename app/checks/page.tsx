import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { AfloatSheet } from "#app/checks/_parts/afloat-sheet.tsx";
import { CheckSheet } from "#app/checks/_parts/check-sheet.tsx";
import { afloatChecks } from "#lib/checks/afloat.ts";
import { checks } from "#lib/checks/index.ts";

export const metadata: Metadata = { title: "Every check and its source" };

/** Every question asked of a pairing: why, from which numbers, against which limit, and where the limit comes from. */
export default function ChecksPage() {
  return (
    <>
      <TitleStrip
        kind="The rules"
        title="Every check and its source"
        particulars={[["Questions", checks.length + afloatChecks.length]]}
      />
      <p>
        These are the questions Sternwright asks of every motor on every stern, in the order a fitter would
        ask them. A limit marked “common practice” is what the trade does; no open standard was found for it,
        so a stern's owner may set another on the stern's own sheet.
      </p>
      <section className="stack-near" aria-labelledby="answers">
        <h2 id="answers" className="drawn">
          The three answers
        </h2>
        <dl className="cells boxed">
          <div>
            <dt>Fits</dt>
            <dd>Room to spare, with the doubt of the measurements taken off.</dd>
          </div>
          <div>
            <dt>Fouls</dt>
            <dd>Short of room, with the doubt of the measurements added on.</dd>
          </div>
          <div>
            <dt>Cannot tell</dt>
            <dd>The doubt is larger than the margin, or a number is missing; it says which to take.</dd>
          </div>
        </dl>
      </section>
      {checks.map((check, at) => (
        <CheckSheet key={check.id} check={check} number={at + 1} />
      ))}
      <section className="stack-near" aria-labelledby="afloat">
        <h2 id="afloat" className="drawn">
          Afloat
        </h2>
        <p>
          These are asked beside the others and never decide whether a motor hangs, steers and tilts: a rule,
          a yardstick or an estimate, each said to be what it is. The hull's capacity label, the local
          authority and licensed surveyors go before them.
        </p>
      </section>
      {afloatChecks.map((check, at) => (
        <AfloatSheet key={check.id} check={check} number={checks.length + at + 1} />
      ))}
      <p>
        Every document a limit is taken from is in <Link href="/checks/sources">the list of sources</Link>.
        How each number is taken is in the <Link href="/measuring">measuring guide</Link>.
      </p>
    </>
  );
}
