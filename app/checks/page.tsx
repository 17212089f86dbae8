import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { CheckSheet } from "#app/checks/_parts/check-sheet.tsx";
import { checks } from "#lib/checks/index.ts";

export const metadata: Metadata = { title: "Every check and its source" };

/** Every question asked of a pairing: why, from which numbers, against which limit, and where the limit comes from. */
export default function ChecksPage() {
  return (
    <>
      <TitleStrip
        kind="The rules"
        title="Every check and its source"
        particulars={[["Questions", checks.length]]}
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
      <p>
        How each number is taken is in the <Link href="/measuring">measuring guide</Link>.
      </p>
    </>
  );
}
