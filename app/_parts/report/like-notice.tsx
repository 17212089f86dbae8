import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { type Asked, queryFor } from "#app/_parts/report/asked.ts";
import { plusMinusWords, takenWords, unbroken } from "#app/_parts/report/writing.ts";
import type { Report, ReportEstimate } from "#lib/fit/report.ts";
import { motorFields } from "#lib/rig/motor.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";
import look from "./doubt.module.css";

/** Numbers of the motor nobody took: offers to fill them from like motors, or says which were filled, from which records, and how to undo it. */
export function LikeNotice({
  report,
  asked,
  labels,
}: {
  readonly report: Report;
  readonly asked: Asked;
  /** The labels of the motors kept, by id. */
  readonly labels: ReadonlyMap<string, string>;
}) {
  if (!asked.like) return <Offer report={report} asked={asked} />;
  const estimated = report.estimated ?? [];
  return (
    <section className="notice" aria-labelledby="like">
      <h2 id="like">From like motors</h2>
      <p>{said(estimated.length)}</p>
      {estimated.length > 0 && (
        <details className={`${look.doubt} ${look.printed}`}>
          <summary>Which numbers, and from which motors</summary>
          <ul className={`plain ${look.lines}`}>
            {estimated.map((each) => (
              <Estimate key={each.key} estimate={each} asked={asked} labels={labels} />
            ))}
          </ul>
        </details>
      )}
      <p className="not-printed">
        <Link href={queryFor(asked, { like: false })} scroll={false}>
          Only what was taken on this motor
        </Link>
      </p>
    </section>
  );
}

function Offer({ report, asked }: { readonly report: Report; readonly asked: Asked }) {
  const gaps = report.checks.some(({ missing }) => missing?.some((key) => key in motorFields));
  if (!gaps) return null;
  return (
    <p className="not-printed">
      <Link className="button" href={queryFor(asked, { like: true })} scroll={false}>
        Fill the motor's gaps from like motors
      </Link>
    </p>
  );
}

function said(count: number): string {
  if (count === 0) return "No like motors are recorded that could fill a gap.";
  const were = count === 1 ? "One number was" : `${count} numbers were`;
  return `${were} not taken on this motor. What stands for them here was read off motors of like power, shaft, strokes and steering: the true figure lies within the ± in nine cases of ten. A verdict resting on them is given only where even the far end of the ± would not change it. Nothing of it is stored.`;
}

function Estimate({
  estimate: { key, value, plusMinus, from, few },
  asked: { lengths },
  labels,
}: {
  readonly estimate: ReportEstimate;
  readonly asked: Asked;
  readonly labels: ReadonlyMap<string, string>;
}) {
  const { unit } = fieldOf(key as RigKey);
  return (
    <li>
      <p className={look.what}>
        <Link href={`/measuring#${key}`}>{keyName(key)}</Link>{" "}
        <strong>about {unbroken(takenWords(rough(value), unit, lengths))}</strong>{" "}
        <span className={look.plusMinus}>{unbroken(plusMinusWords(plusMinus, unit, lengths))}</span>
      </p>
      <p className="soft small">
        {from.length === 1 ? "From the likest: " : "Mostly from: "}
        {from.map((id, i) => (
          <span key={id}>
            {i > 0 && "; "}
            <Link href={`/motors/${id}`}>{labels.get(id) ?? id}</Link>
          </span>
        ))}
        .{few && " Few motors have this number, so the ± is a wide guess: twice the worst miss among them."}
      </p>
    </li>
  );
}

/** An estimate is not read to a tenth. */
const rough = (value: number | readonly number[]): number | readonly number[] =>
  typeof value === "number" ? Math.round(value) : value;
