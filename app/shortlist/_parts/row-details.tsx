import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { OutcomeMark, WORDS } from "#app/_parts/report/outcome-mark.tsx";
import { spareWords } from "#app/_parts/report/plain-words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import look from "#app/shortlist/_parts/shortlist.module.css";
import { checks } from "#lib/checks/index.ts";
import type { AfloatWord } from "#lib/fit/afloat-word.ts";
import type { Row } from "#lib/fit/shortlist.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** What a row leaves out: every question with its room, all that is not known, how well it was measured. */
export function RowDetails({
  row,
  lengths,
  report,
  afloat,
  well,
}: {
  readonly row: Row;
  readonly lengths: LengthSystem;
  readonly report: string;
  readonly afloat: AfloatWord;
  readonly well: string;
}) {
  const asked = checks.filter(({ id }) => row.answers[id] && row.answers[id].outcome !== "not asked");
  const left = checks.some(({ id }) => row.answers[id] === undefined);
  return (
    <details className={look.details}>
      <summary>Every question</summary>
      <ul className={`plain ${look.answers}`}>
        {asked.map(({ id, unit }) => {
          const { outcome, margin, expandedUncertainty = 0 } = row.answers[id]!;
          return (
            <li key={id}>
              <OutcomeMark outcome={outcome} />
              <span>
                <strong>{id.replaceAll("-", " ")}</strong>: {WORDS[outcome].toLowerCase()}
                {margin !== undefined &&
                  `, ${unbroken(spareWords(margin, expandedUncertainty, unit, lengths))}`}
              </span>
            </li>
          );
        })}
      </ul>
      <p className="small">
        <OutcomeMark outcome={afloat.outcome} /> <strong>Afloat</strong>:{" "}
        {WORDS[afloat.outcome].toLowerCase()}
        {afloat.outcome !== "fits" &&
          afloat.ids.length > 0 &&
          ` (${afloat.ids.map((id) => id.replaceAll("-", " ")).join(", ")})`}
        . Beside the verdict, not part of it.
      </p>
      {left && <p className="small">It fouls as it hangs, so the moving motor was not tried.</p>}
      {row.missing.length > 0 && (
        <p className="small">Not known: {row.missing.map((key) => keyName(key).toLowerCase()).join(", ")}.</p>
      )}
      <p className="small soft">Its numbers: {well}.</p>
      <p className="not-printed">
        <Link href={report} prefetch={false}>
          The whole report, with drawings
        </Link>
      </p>
    </details>
  );
}
