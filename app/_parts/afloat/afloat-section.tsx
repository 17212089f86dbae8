import Link from "next/link";
import { AfloatItem } from "#app/_parts/afloat/afloat-item.tsx";
import { LoadForm } from "#app/_parts/afloat/load-form.tsx";
import type { Asked } from "#app/_parts/report/asked.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { trimSheet } from "#lib/draw/trim-sheet.ts";
import type { TypedAboard } from "#lib/entry/aboard.ts";
import type { ReportAfloat } from "#lib/fit/afloat-report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import look from "./afloat.module.css";

/** The boat afloat with this motor: beside the verdict, never part of it. */
export function AfloatSection({
  found,
  stern,
  load,
  asked,
  two,
}: {
  readonly found: readonly ReportAfloat[];
  readonly stern: SternValues;
  readonly load: TypedAboard;
  readonly asked: Asked;
  /** Where this motor is tried with another on the same stern. */
  readonly two: string;
}) {
  const { lengths } = asked;
  const idle = found.filter(({ outcome }) => outcome === "not asked");
  return (
    <section aria-labelledby="afloat" className="stack-near">
      <h2 id="afloat" className="drawn">
        Afloat
      </h2>
      <p>
        Power, weight and water. These stand beside the verdict and do not change it: the hull's capacity
        label, the local authority and licensed surveyors go before them. Every number leads to its source.
      </p>
      <LoadForm load={load} asked={asked} />
      <p className="small not-printed">
        <Link href={two}>A second motor on this stern</Link>: a pair, or a small auxiliary beside this one.
      </p>
      <TrimDrawing found={found} stern={stern} lengths={lengths} />
      <ol className={`plain ${look.answers}`}>
        {found
          .filter(({ outcome }) => outcome !== "not asked")
          .map((one) => (
            <AfloatItem key={one.id} one={one} lengths={lengths} />
          ))}
      </ol>
      {idle.length > 0 && (
        <ul className="words">
          {idle.map(({ id, question, says }) => (
            <li key={id} id={`afloat-${id}`}>
              {question} <span className="soft">{says}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The boat on the water before and after, where it could be worked out. */
function TrimDrawing({
  found,
  stern,
  lengths,
}: {
  found: readonly ReportAfloat[];
  stern: SternValues;
  lengths: LengthSystem;
}) {
  const trim = found.find((one) => one.trim)?.trim;
  const drawing = trim && trimSheet({ stern, ...trim, lengths });
  if (!drawing) return null;
  return (
    <figure className={look.trim}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
      <section tabIndex={0} aria-label={`${drawing.title}, drawing`}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
        <div dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id: "trim" }) }} />
      </section>
      <figcaption className="small soft">
        How the boat lies without the motor and the load, and with everything aboard.
      </figcaption>
    </figure>
  );
}
