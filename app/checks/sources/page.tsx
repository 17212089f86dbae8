import type { Metadata } from "next";
import Link from "next/link";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { type Citation, COMMON_PRACTICE_ID, citationId } from "#lib/standards/citation.ts";
import { CITED } from "#lib/standards/cited.ts";

export const metadata: Metadata = { title: "Sources" };

/** Every document a number is taken from: clause, edition, how it was read, and whom it binds. */
export default function SourcesPage() {
  return (
    <>
      <TitleStrip kind="The rules" title="Sources" particulars={[["Documents", CITED.length]]} />
      <p>
        The documents behind the questions about a boat afloat. Only figures are taken from them, no text.
        Most bind other boats than the one in hand; each says which. Where a document was read in a later work
        that gives its figures and not in the text itself, that is said: look it up before you rely on it.
      </p>
      {CITED.map((one) => (
        <Source key={citationId(one)} one={one} />
      ))}
      <section className="stack-near kept-together" id={COMMON_PRACTICE_ID} aria-labelledby="practice">
        <h2 id="practice" className="drawn">
          Common practice, no source
        </h2>
        <p>
          What the trade does, for which no open standard was found. A stern's owner may set other limits of
          room and height; the <Link href="/checks">list of questions</Link> names every one.
        </p>
      </section>
    </>
  );
}

function Source({ one }: { one: Citation }) {
  const { document, clause, edition, read, binds, url } = one;
  return (
    <section
      className="stack-near kept-together"
      id={citationId(one)}
      aria-labelledby={`${citationId(one)}-name`}
    >
      <h2 id={`${citationId(one)}-name`} className="drawn">
        {document}, {clause}
      </h2>
      <dl className="cells boxed">
        <div>
          <dt>Edition</dt>
          <dd>{edition}</dd>
        </div>
        <div>
          <dt>Read</dt>
          <dd>{read}</dd>
        </div>
        <div>
          <dt>Written for</dt>
          <dd>{binds}</dd>
        </div>
      </dl>
      {url && (
        <p className="small">
          <a href={url} rel="noreferrer noopener">
            {url}
          </a>
        </p>
      )}
    </section>
  );
}
