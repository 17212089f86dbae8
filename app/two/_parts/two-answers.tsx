import Link from "next/link";
import afloat from "#app/_parts/afloat/afloat.module.css";
import { measuringPlace } from "#app/_parts/afloat/measuring-place.ts";
import { OutcomeMark, OutcomeWord, WORDS } from "#app/_parts/report/outcome-mark.tsx";
import report from "#app/_parts/report/report.module.css";
import { unbroken } from "#app/_parts/report/writing.ts";
import { nameOfKey } from "#lib/checks/key-names.ts";
import type { TwoAnswer, TwoReport } from "#lib/fit/two-report.ts";
import { COMMON_PRACTICE_ID } from "#lib/standards/citation.ts";

/** What the two come to together, and the question that governs it. */
export function TwoVerdict({ found }: { readonly found: TwoReport }) {
  const governing = found.checks.find(({ id }) => id === found.governs);
  return (
    <section
      className={`${report.verdict} ${report[found.verdict.replace(" ", "-")]}`}
      aria-labelledby="two-verdict"
    >
      <OutcomeMark outcome={found.verdict} />
      <h2 id="two-verdict">{WORDS[found.verdict]}</h2>
      <div className="stack-near">
        {governing && (
          <p>
            {governing.question} {unbroken(governing.says)}
          </p>
        )}
        <p className="small">
          Of the two beside each other only; whether each hangs right by itself is on its own report.
        </p>
      </div>
    </section>
  );
}

/** Every question about the two. */
export function TwoAnswers({ checks }: { readonly checks: readonly TwoAnswer[] }) {
  return (
    <ol className={`plain ${afloat.answers}`}>
      {checks.map((one) => (
        <li key={one.id} id={one.id}>
          <OutcomeWord outcome={one.outcome} />
          <div className="stack-near">
            <h3>{one.question}</h3>
            <p>{unbroken(one.says)}</p>
            {one.limit && (
              <p className="small soft">
                Limit:{" "}
                <Link prefetch={false} href={`/checks/sources#${COMMON_PRACTICE_ID}`}>
                  {one.limit.source}
                </Link>
                .
              </p>
            )}
            {one.missing && (
              <p className="small">
                How to take it:{" "}
                {one.missing.map(({ of, key }, i) => (
                  <span key={`${of} ${key}`}>
                    {i > 0 && ", "}
                    <Link prefetch={false} href={measuringPlace(key)}>
                      {nameOfKey(key)}
                    </Link>{" "}
                    ({of})
                  </span>
                ))}
                .
              </p>
            )}
          </div>
        </li>
      ))}
    </ol>
  );
}
