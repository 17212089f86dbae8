import Link from "next/link";
import { OutcomeMark, OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { marginOf, unbroken, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import type { AsBuiltReport, Trim } from "#lib/fit/cut-plan/sawn.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Motor } from "#lib/rig/motor.ts";
import look from "./cut-plan.module.css";

const HEADLINES = {
  fits: "Fits as built",
  fouls: "Fouls as built",
  "cannot tell": "Cannot tell yet",
} as const;

/** One motor on the stern as it was measured: the answer, what may still come off, and every margin that is left. */
export function AsBuiltResult({
  motor,
  result: { report, trim },
  lengths,
}: {
  readonly motor: Motor;
  readonly result: AsBuiltReport;
  readonly lengths: LengthSystem;
}) {
  const governing = report.checks.find(({ id }) => id === report.governs);
  const worked = report.checks.filter((check) => marginOf(check).margin !== undefined);
  return (
    <section aria-labelledby={`built-${motor.id}`} className="stack-near">
      <h2 id={`built-${motor.id}`} className="drawn">
        <OutcomeMark outcome={report.verdict} />
        <span>
          {HEADLINES[report.verdict]}: {motor.label}
        </span>
      </h2>
      {governing && (
        <p className="lead">
          {governing.question} {unbroken(governing.says)}
        </p>
      )}
      <h3>What can still be trimmed</h3>
      <ul className="words">
        {trim.map((each) => (
          <li key={each.cut}>
            {each.says} {unbroken(trimWords(each, lengths))}
          </li>
        ))}
        {trim.length === 0 && <li>Seat and notch have to be measured to tell.</li>}
      </ul>
      {report.verdict !== "fits" && report.remedies.length > 0 && (
        <>
          <h3>What would serve</h3>
          <ul className="words">
            {report.remedies.map(({ says }) => (
              <li key={says}>{unbroken(says)}</li>
            ))}
          </ul>
        </>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section className="across" tabIndex={0} aria-label={`Room left, ${motor.label}`}>
        <table className={look.saw}>
          <caption>The room that is left</caption>
          <thead>
            <tr>
              <th scope="col">Question</th>
              <th scope="col">Answer</th>
              <th scope="col" className="number">
                To spare
              </th>
              <th scope="col" className="number">
                Give or take
              </th>
              <th scope="col" className="number">
                At the very worst
              </th>
            </tr>
          </thead>
          <tbody>
            {worked.map((check) => {
              const { margin, spread, worst } = marginOf(check);
              const write = (value: number | undefined) =>
                value === undefined ? "–" : unbroken(writerIn(unitOf(check), lengths)(value));
              return (
                <tr key={check.id}>
                  <th scope="row">{check.question}</th>
                  <td>
                    <OutcomeWord outcome={check.outcome} />
                  </td>
                  <td className="number">{write(margin)}</td>
                  <td className="number">{write(spread)}</td>
                  <td className="number">{write(worst)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </section>
  );
}

/** The stretch in which a cut may still be moved, in a sentence. */
function trimWords({ cut, fromMm, toMm }: Trim, lengths: LengthSystem): string {
  const write = lengthWriter(lengths);
  if (cut === "cheeks") {
    return fromMm > 0
      ? `At least ${write(fromMm)} each side.`
      : `It is ${write(-fromMm)} wider each side than it must be.`;
  }
  if (toMm === undefined) return "";
  if (toMm < 0) return `The pad is ${write(-toMm)} thick at least.`;
  if (fromMm > 0) return `Take off ${write(fromMm)} at least and ${write(toMm)} at most, down the face.`;
  return `At most ${write(toMm)} more may come off, down the face.`;
}

/** How to keep what was measured. */
export function KeepIt({ stern }: { readonly stern: string }) {
  return (
    <p className="not-printed">
      Nothing is kept by looking. Print this sheet, and{" "}
      <Link href={`/sterns/${stern}/edit`}>enter the measured numbers on the stern's own sheet</Link>, so that
      every later report rests on them.
    </p>
  );
}
