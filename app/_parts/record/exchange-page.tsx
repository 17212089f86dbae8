import Link from "next/link";
import { bringIn } from "#app/_parts/record/bring-in.ts";
import { BringInForm } from "#app/_parts/record/bring-in-form.tsx";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import type { Kind } from "#lib/db/kind.ts";

/** The way out and the way in of a drawer: plain files that need no Sternwright to be read. */
export function ExchangePage({ kind }: { kind: Kind }) {
  const all = `/api/${kind}s/export`;
  return (
    <>
      <TitleStrip kind={kind === "motor" ? "Motors" : "Sterns"} title="Import and export" />
      <section className="stack-near" aria-labelledby="out">
        <h2 id="out" className="drawn">
          Take {kind}s out
        </h2>
        <p>
          Every number goes along with its ± and how it was come by. CSV opens in any spreadsheet; JSON is
          what other programs take. Either comes back in just as it went out.
        </p>
        <p className="row">
          <a className="button" href={`${all}?format=csv`} download>
            Export all {kind}s as CSV
          </a>
          <a className="button" href={`${all}?format=json`} download>
            Export all {kind}s as JSON
          </a>
        </p>
      </section>
      <section className="stack-near" aria-labelledby="in">
        <h2 id="in" className="drawn">
          Bring {kind}s in
        </h2>
        <p>
          The first row names the columns, as an exported file does; lengths are millimetres. Nothing that
          stands here is written over.
        </p>
        <BringInForm kind={kind} bringIn={bringIn.bind(null, kind)} />
      </section>
      <p>
        <Link href={`/${kind}s`}>Back to the {kind}s</Link>
      </p>
    </>
  );
}
