import Link from "next/link";
import { measuringPlace } from "#app/_parts/afloat/measuring-place.ts";
import type { AfloatCheck } from "#lib/checks/afloat-check.ts";
import { nameOfKey } from "#lib/checks/key-names.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { type Citation, COMMON_PRACTICE_ID, citationId, sourceOf } from "#lib/standards/citation.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** One question afloat: what it is, what it needs, and the documents it rests on. */
export function AfloatSheet({ check, number }: { check: AfloatCheck; number: number }) {
  const documents = check.standards.filter(isCitation);
  const listed = documents.filter(
    (one, at) => documents.findIndex((other) => citationId(other) === citationId(one)) === at,
  );
  return (
    <section className="stack-near kept-together" id={check.id} aria-labelledby={`${check.id}-question`}>
      <h2 id={`${check.id}-question`} className="drawn">
        {number}. {check.question}
      </h2>
      <div className="check">
        <div className="stack-near">
          <p>{check.why}</p>
          <p>{check.is}</p>
          <p className="soft">Leaves out: {lowered(check.leavesOut)}</p>
          <p className="small">
            Needs:{" "}
            {[...new Set(check.needs)].map((key, at) => (
              <span key={key}>
                {at > 0 && ", "}
                <Link prefetch={false} href={measuringPlace(key)}>
                  {nameOfKey(key)}
                </Link>
              </span>
            ))}
            .
          </p>
        </div>
        <div className="limits">
          {listed.map((one) => (
            <p key={citationId(one)} className="limit">
              <Link prefetch={false} href={`/checks/sources#${citationId(one)}`}>
                {sourceOf(one)}
              </Link>
            </p>
          ))}
          {check.standards.filter(isStandard).map((one) => (
            <p key={one.what} className="limit">
              <strong>{written(one)}</strong> {one.what}{" "}
              <span className="soft">
                (
                <Link prefetch={false} href={`/checks/sources#${COMMON_PRACTICE_ID}`}>
                  {one.source}
                </Link>
                )
              </span>
            </p>
          ))}
        </div>
      </div>
    </section>
  );
}

const isCitation = (one: Citation | Standard): one is Citation => "document" in one;
const isStandard = (one: Citation | Standard): one is Standard => "value" in one;
const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const written = ({ value, unit }: Standard): string => {
  if (unit === "mm") return `${formatLength(value, "mm")} (${formatLength(value, "in")})`;
  return unit === "ratio" ? String(value) : `${value} ${unit}`;
};
