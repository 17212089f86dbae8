import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { beyond, type MarginAxis, placeOn } from "#app/_parts/report/margin-axis.ts";
import type { Worked } from "#app/_parts/report/margin-chart.tsx";
import { restsOnLike, spareWords } from "#app/_parts/report/plain-words.ts";
import { unbroken, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import type { Outcome } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./doubt.module.css";

/** One question on the scale: its name and margin in words, and the margin drawn with its doubt and its worst case. */
export function MarginRow({
  check,
  axis,
  lengths,
}: {
  readonly check: Worked;
  readonly axis: MarginAxis;
  readonly lengths: LengthSystem;
}) {
  const { margin, spread } = check.shown;
  return (
    <li>
      <p className={look.row}>
        <a href={`#check-${check.id}`}>{check.id.replaceAll("-", " ")}</a>{" "}
        <span className={look.rowWords}>
          {unbroken(spareWords(margin, spread, unitOf(check), lengths))}
          {check.outcome === "cannot tell" && <span className={look.plusMinus}> (cannot tell)</span>}
          {check.outcome === "fouls" && <span className={look.plusMinus}> (fouls)</span>}
        </span>{" "}
        {restsOnLike(check) && <LikeMark />}
      </p>
      <div className={look.track} aria-hidden="true">
        <svg width="100%" height="100%" aria-hidden="true">
          <line
            className={look.zero}
            x1={`${placeOn(axis, 0)}%`}
            x2={`${placeOn(axis, 0)}%`}
            y1="0"
            y2="100%"
          />
          <Whiskers check={check} axis={axis} />
          <Worst check={check} axis={axis} />
          <Dot check={check} axis={axis} lengths={lengths} />
        </svg>
      </div>
    </li>
  );
}

interface Drawn {
  readonly check: Worked;
  readonly axis: MarginAxis;
}

/** A mark at a value, drawn about its place on the middle of the bar. */
function At({
  place,
  className,
  d,
}: {
  readonly place: number;
  readonly className?: string;
  readonly d: string;
}) {
  return (
    <svg x={`${place}%`} y="50%" overflow="visible" aria-hidden="true">
      <path className={className} d={d} />
    </svg>
  );
}

/** The give-or-take: a line with its ends closed; an end beyond the axis goes on as an arrow. */
function Whiskers({ check, axis }: Drawn) {
  const { margin, spread } = check.shown;
  const [low, high] = [margin - spread, margin + spread];
  if (spread === 0 || low > axis.to || high < axis.from) return null;
  return (
    <>
      <line
        className={look.whisker}
        x1={`${placeOn(axis, low)}%`}
        x2={`${placeOn(axis, high)}%`}
        y1="50%"
        y2="50%"
      />
      {[low, high].map((end) => {
        const side = beyond(axis, end);
        const arrow = side === "spare" ? "M-1-5L5 0-1 5" : "M1-5L-5 0 1 5";
        return (
          <At key={end} place={placeOn(axis, end)} className={look.whisker} d={side ? arrow : "M0-6V6"} />
        );
      })}
    </>
  );
}

/** Where the margin would stand with every number off the wrong way: a small open triangle under the line. */
function Worst({ check, axis }: Drawn) {
  if (beyond(axis, check.shown.worst) || beyond(axis, check.shown.margin)) return null;
  return <At place={placeOn(axis, check.shown.worst)} className={look.worst} d="M0 7L5 16H-5z" />;
}

const SHAPES: Record<Exclude<Outcome, "not asked">, { className?: string; d: string }> = {
  fits: { className: look.fits, d: "M-7 0A7 7 0 0 1 7 0 7 7 0 0 1-7 0z" },
  fouls: { className: look.fouls, d: "M0-9L9 0 0 9-9 0z" },
  "cannot tell": { className: look.unsure, d: "M-7-7H7V7H-7z" },
};

/** The margin itself in its verdict's shape; beyond the axis an arrow with the figure. */
function Dot({ check, axis, lengths }: Drawn & { readonly lengths: LengthSystem }) {
  const { margin } = check.shown;
  const { className, d } = SHAPES[check.outcome === "not asked" ? "cannot tell" : check.outcome];
  const side = beyond(axis, margin);
  const inward = side === "spare" ? -1 : 1;
  return (
    <svg x={`${placeOn(axis, margin)}%`} y="50%" overflow="visible" aria-hidden="true">
      {side ? (
        <>
          <path className={className} d={d} transform={`translate(${8 * inward})`} />
          <path className={look.arrow} d={side === "spare" ? "M4-5L10 0 4 5" : "M-4-5L-10 0-4 5"} />
          <text className={look.far} x={22 * inward} y="5" textAnchor={side === "spare" ? "end" : "start"}>
            {unbroken(writerIn(unitOf(check), lengths)(Math.abs(margin)))}
          </text>
        </>
      ) : (
        <path className={className} d={d} />
      )}
    </svg>
  );
}
