import Link from "next/link";
import { fieldsOf } from "#app/_parts/form/texts.ts";
import { moment } from "#app/_parts/record/day.ts";
import { howShort, writtenAll } from "#app/_parts/record/written.ts";
import { PartMark } from "#app/_parts/takings/part-mark.tsx";
import { agreed, beyondClaims } from "#app/_parts/takings/taking-words.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { NumberTaken } from "#lib/db/takings.ts";
import type { Unit } from "#lib/quantity/measured.ts";
import look from "./takings.module.css";

/** One number with everything ever taken of it: what the takings come to in words, then each of them. Nothing is left out. */
export function NumberTakings({ kind, id, number }: { kind: Kind; id: string; number: NumberTaken }) {
  const { key, takings, agreement } = number;
  const { name, unit } = fieldsOf(kind)[key]!;
  const corrected = takings.filter(({ part }) => part === "corrected").length;
  const outlying = takings.filter(({ part }) => part === "outlying").length;
  return (
    <section aria-labelledby={`taken-${key}`} className="stack-near kept-together">
      <h3 id={`taken-${key}`}>{name}</h3>
      {agreement && (
        <p>
          {agreed(agreement, unit)} {beyondClaims(agreement, unit)}
        </p>
      )}
      {outlying > 0 && (
        <p>
          {outlying === 1 ? "One taking, marked" : `${outlying} takings, marked`} <PartMark part="outlying" />
          , {outlying === 1 ? "lies" : "lie"} further from the others than their spreads explain. Nothing is
          left out: look at it once more.
        </p>
      )}
      {corrected > 0 && (
        <p className="soft">
          {agreement
            ? "An edit corrected this number and began it afresh."
            : "An edit took this number away."}{" "}
          {corrected === 1 ? "The taking" : `The ${corrected} takings`} before it{" "}
          {corrected === 1 ? "is" : "are"} kept and {corrected === 1 ? "counts" : "count"} no more.
        </p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: on a phone the table scrolls, and keys must reach it */}
      <section className="across" tabIndex={0} aria-label={`Takings of ${name.toLowerCase()}`}>
        <table className={look.takings}>
          <caption className="unseen">Takings of {name.toLowerCase()}</caption>
          <thead>
            <tr>
              <th scope="col" className="number">
                Value
              </th>
              <th scope="col">Part in the number</th>
              <th scope="col">How</th>
              <th scope="col">As typed</th>
              <th scope="col">When</th>
            </tr>
          </thead>
          <tbody>
            {takings.map((taking) => (
              <TakingRow key={taking.sequence} taking={taking} unit={unit} />
            ))}
          </tbody>
        </table>
      </section>
      {agreement && (
        <p className="not-printed">
          <Link
            href={`/${kind}s/${id}?take=${key}#take-again`}
            aria-label={`Take ${name.toLowerCase()} again`}
          >
            Take it again
          </Link>
        </p>
      )}
    </section>
  );
}

function TakingRow({ taking, unit }: { taking: NumberTaken["takings"][number]; unit: Unit }) {
  const { value, plusMinus, how, raw, comment, by, takenAt, part } = taking;
  const { main, beside } = writtenAll(value, unit);
  return (
    <tr data-part={part}>
      <th scope="row" className="number">
        {main}
        {plusMinus !== undefined && ` ± ${writtenAll(Number(plusMinus.toPrecision(2)), unit).main}`}
        {beside && <span className="beside">{beside}</span>}
      </th>
      <td>
        <PartMark part={part} />
      </td>
      <td>
        {howShort[how]}
        {plusMinus === undefined && ", usual ±"}
      </td>
      <td>
        {raw ? <q>{raw}</q> : <span className="soft">not typed by hand</span>}
        {comment && <p className={`notes ${look.comment}`}>{comment}</p>}
      </td>
      <td>
        <time dateTime={takenAt}>{moment(takenAt)}</time>
        {by && `, ${by}`}
      </td>
    </tr>
  );
}
