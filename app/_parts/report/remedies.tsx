import Link from "next/link";
import { type Asked, queryFor, triedBy } from "#app/_parts/report/asked.ts";
import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { OutcomeMark } from "#app/_parts/report/outcome-mark.tsx";
import { afterWords } from "#app/_parts/report/plain-words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Report, ReportRemedy } from "#lib/fit/report.ts";
import look from "./doubt.module.css";

/** What would serve, the least change first, each with what the whole pairing then comes to. */
export function Remedies({
  report: { remedies, estimated = [] },
  asked,
  pins,
}: {
  readonly report: Report;
  readonly asked: Asked;
  /** Leg angle in each trim-pin hole, lowest first. */
  readonly pins: readonly number[];
}) {
  if (remedies.length === 0) return null;
  return (
    <section aria-labelledby="remedies" className="stack-near">
      <h2 id="remedies" className="drawn">
        What would serve
      </h2>
      <p className="soft small">
        The least change first. Each was put in place and every question asked again.
        {estimated.length > 0 && " They rest on numbers from like motors: take those before you saw."}
      </p>
      <ol className={`plain ${look.remedies}`}>
        {remedies.map((remedy) => (
          <RemedyItem
            key={remedy.says}
            remedy={remedy}
            asked={asked}
            pins={pins}
            like={estimated.length > 0}
          />
        ))}
      </ol>
    </section>
  );
}

function RemedyItem({
  remedy,
  asked,
  pins,
  like,
}: {
  readonly remedy: ReportRemedy;
  readonly asked: Asked;
  readonly pins: readonly number[];
  readonly like: boolean;
}) {
  const tried = triedBy([remedy, ...(remedy.also ?? [])], pins);
  return (
    <li className="kept-together">
      <p>
        <strong>{unbroken(remedy.says)}</strong> {like && <LikeMark />}
      </p>
      <p className={look.then}>
        <OutcomeMark outcome={remedy.verdictAfter} />
        <span>Then it {unbroken(afterWords(remedy, asked.lengths))}.</span>
      </p>
      {tried && (
        <p className="not-printed small">
          <Link href={queryFor(asked, tried)} scroll={false}>
            Try it on this page
          </Link>
        </p>
      )}
    </li>
  );
}
