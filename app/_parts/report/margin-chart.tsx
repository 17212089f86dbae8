import { type Margin, type MarginAxis, marginAxis, placeOn } from "#app/_parts/report/margin-axis.ts";
import { MarginRow } from "#app/_parts/report/margin-row.tsx";
import { MarginTable } from "#app/_parts/report/margin-table.tsx";
import { type MarginUnit, marginOf, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import type { ReportCheck } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./doubt.module.css";

/** A question whose margin could be worked out. */
export type Worked = ReportCheck & { readonly shown: Margin };

/** Every margin on one scale: what is close stands out, what is far off is told by an arrow and its figure. */
export function MarginChart({ found, lengths }: { found: readonly ReportCheck[]; lengths: LengthSystem }) {
  const worked = found.flatMap((check): Worked[] => {
    const { margin, spread, worst } = marginOf(check);
    if (margin === undefined || check.outcome === "not asked") return [];
    return [{ ...check, shown: { margin, spread: spread ?? 0, worst: worst ?? margin } }];
  });
  const off = found.filter(
    (check) => check.outcome === "cannot tell" && marginOf(check).margin === undefined,
  );
  if (worked.length === 0) return null;
  return (
    <section aria-labelledby="margins" className="stack-near">
      <h2 id="margins" className="drawn">
        Room to spare, all on one scale
      </h2>
      <Scale unit="mm" worked={worked} lengths={lengths} />
      <Scale unit="deg" worked={worked} lengths={lengths} />
      <Legend />
      {off.length > 0 && (
        <p className="small">
          Not on the scale, for want of a number:{" "}
          {off.map(({ id }, i) => (
            <span key={id}>
              {i > 0 && ", "}
              <a href={`#check-${id}`}>{id.replaceAll("-", " ")}</a>
            </span>
          ))}
          .
        </p>
      )}
      <MarginTable worked={worked} lengths={lengths} />
    </section>
  );
}

function Scale({
  unit,
  worked,
  lengths,
}: {
  readonly unit: MarginUnit;
  readonly worked: readonly Worked[];
  readonly lengths: LengthSystem;
}) {
  const rows = worked
    .filter((check) => unitOf(check) === unit)
    .toSorted((a, b) => a.shown.margin - a.shown.spread - (b.shown.margin - b.shown.spread));
  if (rows.length === 0) return null;
  const axis = marginAxis(
    rows.map(({ shown }) => shown),
    unit,
    lengths,
  );
  return (
    <div className={look.scale}>
      <AxisHead axis={axis} unit={unit} lengths={lengths} />
      <ul className={`plain ${look.rows}`}>
        {rows.map((check) => (
          <MarginRow key={check.id} check={check} axis={axis} lengths={lengths} />
        ))}
      </ul>
    </div>
  );
}

/** The head of an axis: which side is which, nought, and a few figures. */
function AxisHead({
  axis,
  unit,
  lengths,
}: {
  readonly axis: MarginAxis;
  readonly unit: MarginUnit;
  readonly lengths: LengthSystem;
}) {
  const write = writerIn(unit, lengths);
  const zero = placeOn(axis, 0);
  return (
    <div className={look.head} aria-hidden="true">
      <svg width="100%" height="62" aria-hidden="true">
        <text className={look.atLimit} x={`${zero}%`} y="13" textAnchor="middle">
          at the limit
        </text>
        <text className={look.side} x={`${zero}%`} dx="-8" y="31" textAnchor="end">
          ← short
        </text>
        <text className={look.side} x={`${zero}%`} dx="8" y="31">
          to spare →
        </text>
        <line className={look.zero} x1={`${zero}%`} x2={`${zero}%`} y1="18" y2="62" />
        {axis.ticks.map((tick) => (
          <g key={tick}>
            <line
              className={look.tick}
              x1={`${placeOn(axis, tick)}%`}
              x2={`${placeOn(axis, tick)}%`}
              y1="55"
              y2="62"
            />
            <text className={look.tickWords} x={`${placeOn(axis, tick)}%`} y="51" textAnchor="middle">
              {write(Math.abs(tick))}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}

/** The signs of the scale, each with its word. */
function Legend() {
  return (
    <p className={`small ${look.legend}`}>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.zero} d="M0-12V12" />
        </svg>
        at the limit
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <circle className={look.fits} r="6" />
        </svg>
        fits
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.fouls} d="M0-8L8 0 0 8-8 0z" />
        </svg>
        fouls
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.unsure} d="M-6-6H6V6H-6z" />
        </svg>
        cannot tell
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.whisker} d="M-11 0H11M-11-5V5M11-5V5" />
        </svg>
        give or take
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.worst} d="M0-5L5 5H-5z" />
        </svg>
        at the very worst
      </span>
      <span>
        <svg className={look.sign} viewBox="-12 -12 24 24" aria-hidden="true">
          <path className={look.arrow} d="M-3-5L3 0-3 5" />
        </svg>
        further off than the scale
      </span>
    </p>
  );
}
