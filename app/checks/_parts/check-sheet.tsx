import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import type { Check } from "#lib/checks/check.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** One question: what goes wrong without it, what it needs, its limit and the limit's source. */
export function CheckSheet({ check, number }: { check: Check; number: number }) {
  // With nothing known of either, a check names everything it can need.
  const needs = check.needs({ motor: {}, stern: {} });
  return (
    <section className="stack-near kept-together" id={check.id} aria-labelledby={`${check.id}-question`}>
      <h2 id={`${check.id}-question`} className="drawn">
        {number}. {check.question}
      </h2>
      <div className="check">
        <div className="stack-near">
          <p>{check.why}</p>
          {check.leavesOut && <p className="soft">Leaves out: {lowered(check.leavesOut)}</p>}
          <p className="small">
            Needs:{" "}
            {needs.map((key, at) => (
              <span key={key}>
                {at > 0 && ", "}
                <Link prefetch={false} href={`/measuring#${key}`}>
                  {keyName(key).toLowerCase()}
                </Link>
              </span>
            ))}
            .
          </p>
        </div>
        <div className="limits">
          {check.limits.map((key) => (
            <Limit key={key} limit={practiceLimits[key]} />
          ))}
        </div>
      </div>
    </section>
  );
}

/** A limit's value, what it is and where it comes from. */
function Limit({ limit }: { limit: Standard }) {
  return (
    <p className="limit">
      <strong>{written(limit)}</strong> {limit.what}{" "}
      <span className="soft">({limit.status === "published" ? limit.source : sourceless(limit)})</span>
    </p>
  );
}

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const sourceless = ({ source, status }: Standard): string =>
  source.startsWith(status) ? source : `${status}: ${source}`;

function written({ value, unit }: Standard): string {
  if (unit === "mm") return `${formatLength(value, "mm")} (${formatLength(value, "in")})`;
  return unit === "deg" ? `${value}°` : `${value} ${unit}`;
}
