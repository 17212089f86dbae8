import { Figures, type PlanFigureOf } from "#app/_parts/cut-plan/figures.tsx";
import { Mind } from "#app/_parts/cut-plan/mind.tsx";
import { PlanFigure } from "#app/_parts/cut-plan/plan-figure.tsx";
import { capital, cautionsOf } from "#app/_parts/cut-plan/words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import { onScreen } from "#lib/draw/on-screen.ts";
import { boughtSize } from "#lib/draw/paper/figures.ts";
import { notchView } from "#lib/draw/paper/notch-view.ts";
import type { Marked } from "#lib/fit/cut-plan/marked.ts";
import type { NotchPlan } from "#lib/fit/cut-plan/notch.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import look from "./cut-plan.module.css";

const TITLES: Record<NotchPlan["action"], string> = {
  cut: "The notch",
  change: "The notch, to be changed",
  none: "The notch: nothing to saw",
};

/** The notch: its figures and tolerances, what to hook the tape on, where the saw stops, and its drawing. */
export function NotchSection({ plan, notch }: { readonly plan: CutPlan; readonly notch: NotchPlan }) {
  const { lengths } = plan;
  const saws = notch.action !== "none";
  return (
    <section aria-labelledby="notch" className="stack-near">
      <h2 id="notch" className="drawn">
        {TITLES[notch.action]}
      </h2>
      {saws && <Mind title="Before the saw" says={cautionsOf(plan, "prop", "bore-corners", "saw-notch")} />}
      <Figures figures={figuresOf(notch, lengths)} />
      {saws ? (
        <>
          <PlanFigure id="notch-drawing" content={onScreen(notchView(notch, lengths))} lengths={lengths} />
          <Offsets notch={notch} lengths={lengths} />
          <p>
            <strong>Where the saw stops.</strong> {unbroken(notch.stops.cheek.text)} down each cheek, and{" "}
            {unbroken(notch.stops.seat.text)} along the seat either way from the centreline.{" "}
            {notch.stops.says}
          </p>
          <p>
            <strong>How far it may stray.</strong> Depth: {unbroken(notch.tolerance.depth.says)} Half width:{" "}
            {unbroken(notch.tolerance.halfWidth.says)}
          </p>
        </>
      ) : (
        <p>
          {plan.raiseMm === undefined
            ? "Nothing is sawn: seat and cheeks as they are suit the motor."
            : `Nothing is sawn: the seat is built up with a pad or riser ${unbroken(lengthWriter(lengths)(plan.raiseMm))} high, plumb.`}
        </p>
      )}
    </section>
  );
}

const ROUNDED: Record<Marked["rounded"], string> = {
  up: "rounded up",
  down: "rounded down, wood left on",
  "not at all": "not rounded",
};

function figuresOf(notch: NotchPlan, lengths: LengthSystem): PlanFigureOf[] {
  const write = (mm: number) => unbroken(lengthWriter(lengths)(mm));
  const { depth, halfWidth, corner, deeper, widerEachSide } = notch;
  const figures: PlanFigureOf[] = [
    { name: "Seat above the datum, plumb", value: write(notch.seatMm) },
    depth.along.markMm <= 0
      ? { name: "Seat above the uncut top, plumb", value: write(-depth.plumbMm) }
      : {
          name: "Depth down the face, from the uncut top",
          value: unbroken(depth.along.text),
          note: `${ROUNDED[depth.along.rounded]}; plumb it is ${write(depth.plumbMm)}`,
        },
    {
      name: "Half width, centreline to each cheek",
      value: unbroken(halfWidth.text),
      note:
        notch.action === "none"
          ? `the motors ask ${write(notch.leastHalfMm)}`
          : `${ROUNDED[halfWidth.rounded]}; the motors ask ${write(notch.leastHalfMm)}, the rest is room for the give-or-take of the numbers`,
    },
    {
      name: "Inside corners",
      value: `R ${boughtSize(corner.radiusMm, lengths)}`,
      ...(notch.action !== "none" && {
        note: `bored ${boughtSize(corner.boreMm, lengths)} across: a sharp inside corner gathers the strain and cracks (common practice)`,
      }),
    },
  ];
  if (notch.action !== "change") return figures;
  return [
    ...figures,
    { name: "Deeper than the seat that is there", value: unbroken(deeper.text) },
    ...(widerEachSide ? [{ name: "Wider, each side", value: unbroken(widerEachSide.text) }] : []),
  ];
}

/** What a tape is hooked on, port and starboard. */
function Offsets({ notch, lengths }: { readonly notch: NotchPlan; readonly lengths: LengthSystem }) {
  const write = (mm: number) => unbroken(lengthWriter(lengths)(mm));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="What to hook the tape on">
      <table className={look.narrow}>
        <caption>What to hook the tape on</caption>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col">To</th>
            <th scope="col" className="number">
              Length
            </th>
          </tr>
        </thead>
        <tbody>
          {notch.offsets.map(({ from, to, length }) => (
            <tr key={`${from} ${to}`}>
              <th scope="row">{capital(from)}</th>
              <td>{to}</td>
              <td className="number">{unbroken(length.text)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">Centreline</th>
            <td>centre of the corner hole, to port and to starboard</td>
            <td className="number">{write(notch.holes.acrossMm)}</td>
          </tr>
          <tr>
            <th scope="row">Uncut top, down the face</th>
            <td>centre of the corner hole, both sides</td>
            <td className="number">{write(notch.holes.downMm)}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
