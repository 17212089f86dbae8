import Link from "next/link";
import { figureWords } from "#app/_parts/afloat/figure-words.ts";
import { measuringPlace } from "#app/_parts/afloat/measuring-place.ts";
import { SourceLink } from "#app/_parts/afloat/source-link.tsx";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import { nameOfKey } from "#lib/checks/key-names.ts";
import type { ReportAfloat, ReportRule } from "#lib/fit/afloat-report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import look from "./afloat.module.css";

/** One answer afloat: what it comes to, what it is, each rule's own answer, and the numbers behind it with their sources. */
export function AfloatItem({ one, lengths }: { readonly one: ReportAfloat; readonly lengths: LengthSystem }) {
  return (
    <li id={`afloat-${one.id}`}>
      <OutcomeWord outcome={one.outcome} />
      <div className="stack-near">
        <h3>{one.question}</h3>
        <p>{unbroken(one.says)}</p>
        <p className="small soft">
          {one.is} <Link href={`/checks#${one.id}`}>Why it is asked</Link>
          {one.limit && (
            <>
              ; the limit: <Limit one={one} lengths={lengths} />
            </>
          )}
          .
        </p>
        {one.missing && <Missing keys={one.missing} />}
        {one.rules && <Rules rules={one.rules} check={one.id} lengths={lengths} />}
        {one.figures.length > 0 && <Figures one={one} lengths={lengths} />}
        <ul className={`words small ${look.notes}`}>
          {one.notes
            .filter(({ id }) => id !== "defers")
            .map(({ id, says }) => (
              <li key={id}>{unbroken(says)}</li>
            ))}
        </ul>
      </div>
    </li>
  );
}

function Limit({ one, lengths }: { one: ReportAfloat; lengths: LengthSystem }) {
  const { value, unit, source, standard } = one.limit!;
  return (
    <SourceLink standard={standard} fromKey={LABEL[one.id]} check={one.id} source={source}>
      {unbroken(figureWords({ value, unit }, lengths))}, {source}
    </SourceLink>
  );
}

/** Where a label's figure is told, when it is the label that governs. */
const LABEL: Readonly<Record<string, string>> = { power: "ratedPowerKw", "motor-mass": "ratedMotorMassKg" };

function Missing({ keys }: { keys: readonly string[] }) {
  return (
    <p className="small">
      How to take it:{" "}
      {keys.map((key, i) => (
        <span key={key}>
          {i > 0 && ", "}
          <Link prefetch={false} href={measuringPlace(key)}>
            {nameOfKey(key)}
          </Link>
        </span>
      ))}
      .
    </p>
  );
}

/** Every named rule: what it asks, for which boats, and how it is kept. */
function Rules({
  rules,
  check,
  lengths,
}: {
  rules: readonly ReportRule[];
  check: string;
  lengths: LengthSystem;
}) {
  const write = lengthWriter(lengths);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="The rules of freeboard, table">
      <table className={look.rules}>
        <caption>The rules, the easiest first</caption>
        <thead>
          <tr>
            <th scope="col">Rule</th>
            <th scope="col">Asks</th>
            <th scope="col">To spare</th>
            <th scope="col">Kept?</th>
          </tr>
        </thead>
        <tbody>
          {rules.map(({ id, rule, binds, least, marginMm = 0, outcome, source, standard }) => (
            <tr key={id}>
              <th scope="row">
                {rule}
                <br />
                <span className="soft small">For {binds}.</span>
              </th>
              <td className="number">
                <SourceLink standard={standard} check={check} source={source}>
                  {unbroken(write(least))}
                </SourceLink>
              </td>
              <td className="number">{unbroken(write(marginMm))}</td>
              <td>{KEPT[outcome]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const KEPT = {
  fits: "kept",
  fouls: "not kept",
  "cannot tell": "too close to tell",
  "not asked": "not asked",
} as const;

/** The numbers behind an answer; each leads to its source. */
function Figures({ one, lengths }: { one: ReportAfloat; lengths: LengthSystem }) {
  return (
    <details className={look.figures}>
      <summary>The numbers and their sources</summary>
      <table>
        <caption className="unseen">{one.question} The numbers</caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">How much</th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {one.figures.map((figure) => (
            <tr key={figure.label}>
              <th scope="row">{figure.label}</th>
              <td className="number">
                <SourceLink
                  standard={figure.standard}
                  fromKey={figure.key}
                  check={one.id}
                  source={figure.source}
                >
                  {unbroken(figureWords(figure, lengths))}
                </SourceLink>
              </td>
              <td className="small soft">{figure.source}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
