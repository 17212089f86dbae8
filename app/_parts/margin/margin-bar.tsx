import { beyond, type MarginAxis, placeOn } from "#app/_parts/report/margin-axis.ts";
import { spareWords } from "#app/_parts/report/plain-words.ts";
import { type MarginUnit, unbroken, writerIn } from "#app/_parts/report/writing.ts";
import type { Outcome } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./margin.module.css";

/** Half the height of the bar, px. */
const MIDDLE = 11;
/** A degree is drawn as so many mm, so that one axis serves both: what it moves the end of a leg some 570 mm long. */
export const MM_PER_DEGREE = 10;

/** A margin of a list: room to spare (plus) or short (minus) with its give-or-take; absent where it could not be worked out. */
export interface Barred {
  readonly margin?: number;
  readonly spread?: number;
  readonly unit: MarginUnit;
  readonly outcome: Outcome;
}

/** A margin as it stands on the common axis, mm. */
export const onAxis = ({ margin = 0, spread = 0, unit }: Barred) => {
  const per = unit === "deg" ? MM_PER_DEGREE : 1;
  return { margin: margin * per, spread: spread * per, worst: (margin - spread) * per };
};

/** One margin on the common axis: nought as an upright line, the verdict's shape, whiskers for the give-or-take, and the same in words. */
export function MarginBar({
  bar,
  axis,
  lengths,
  without = "not known yet",
}: {
  readonly bar: Barred;
  readonly axis: MarginAxis;
  readonly lengths: LengthSystem;
  /** Said where there is no margin. */
  readonly without?: string;
}) {
  const { margin, spread = 0, unit } = bar;
  return (
    <div className={look.bar}>
      <svg className={look.track} width="100%" height={2 * MIDDLE} aria-hidden="true">
        <line
          className={look.zero}
          x1={`${placeOn(axis, 0)}%`}
          x2={`${placeOn(axis, 0)}%`}
          y1="0"
          y2="100%"
        />
        {margin !== undefined && <Whiskers bar={bar} axis={axis} />}
        {margin !== undefined && <Sign bar={bar} axis={axis} />}
      </svg>
      <span className={look.words}>
        {margin === undefined ? without : unbroken(spareWords(margin, spread, unit, lengths))}
      </span>
    </div>
  );
}

interface Drawn {
  readonly bar: Barred;
  readonly axis: MarginAxis;
}

function Whiskers({ bar, axis }: Drawn) {
  const { margin, spread } = onAxis(bar);
  const ends = [margin - spread, margin + spread] as const;
  const [low, high] = ends.map((end) => `${placeOn(axis, end)}%`);
  if (spread === 0) return null;
  return (
    <>
      <line className={look.whisker} x1={low} x2={high} y1={MIDDLE} y2={MIDDLE} />
      {ends.map((end) =>
        beyond(axis, end) ? null : (
          <line
            key={end}
            className={look.whisker}
            x1={`${placeOn(axis, end)}%`}
            x2={`${placeOn(axis, end)}%`}
            y1={MIDDLE - 5}
            y2={MIDDLE + 5}
          />
        ),
      )}
    </>
  );
}

const SHAPES: Record<Outcome, { readonly className?: string; readonly d: string }> = {
  fits: { className: look.fits, d: "M-6 0A6 6 0 0 1 6 0 6 6 0 0 1-6 0z" },
  fouls: { className: look.fouls, d: "M0-8L8 0 0 8-8 0z" },
  "cannot tell": { className: look.unsure, d: "M-6-6H6V6H-6z" },
  "not asked": { className: look.unsure, d: "M-3 0H3" },
};

/** The margin itself; beyond the axis an arrow at its end. */
function Sign({ bar, axis }: Drawn) {
  const { margin } = onAxis(bar);
  const { className, d } = SHAPES[bar.outcome];
  const side = beyond(axis, margin);
  return (
    <svg x={`${placeOn(axis, margin)}%`} y={MIDDLE} overflow="visible" aria-hidden="true">
      <path
        className={className}
        d={d}
        transform={side ? `translate(${side === "spare" ? -9 : 9})` : undefined}
      />
      {side && <path className={look.arrow} d={side === "spare" ? "M2-5L8 0 2 5" : "M-2-5L-8 0-2 5"} />}
    </svg>
  );
}

/** The head of the common axis: which side is which, nought, and a figure or two. */
export function AxisHead({ axis, lengths }: { readonly axis: MarginAxis; readonly lengths: LengthSystem }) {
  const write = writerIn("mm", lengths);
  const zero = placeOn(axis, 0);
  const shown = [axis.ticks[0], axis.ticks.at(-1)].filter((tick) => tick !== undefined);
  return (
    <svg className={look.head} width="100%" height="40" aria-hidden="true">
      <text x={`${zero}%`} dx="-6" y="13" textAnchor="end">
        ← short
      </text>
      <text x={`${zero}%`} dx="6" y="13">
        to spare →
      </text>
      <line className={look.zero} x1={`${zero}%`} x2={`${zero}%`} y1="0" y2="40" />
      {[...new Set(shown)].map((tick) => (
        <g key={tick}>
          <line
            className={look.tick}
            x1={`${placeOn(axis, tick)}%`}
            x2={`${placeOn(axis, tick)}%`}
            y1="33"
            y2="40"
          />
          <text
            x={`${placeOn(axis, tick)}%`}
            y="31"
            textAnchor={tick < 0 ? "start" : "end"}
            dx={tick < 0 ? -8 : 8}
          >
            {write(Math.abs(tick))}
          </text>
        </g>
      ))}
    </svg>
  );
}
