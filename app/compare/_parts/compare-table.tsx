import Link from "next/link";
import { OutcomeMark, OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import look from "#app/compare/_parts/compare.module.css";
import { type Compared, differs, linesOf } from "#app/compare/_parts/compared.ts";
import { letterOf } from "#lib/draw/compared-profile.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** The motors side by side, a column each; with `only`, only the lines on which they differ. */
export function CompareTable({
  all,
  lengths,
  only,
  stern,
  query,
}: {
  readonly all: readonly Compared[];
  readonly lengths: LengthSystem;
  readonly only: boolean;
  readonly stern: string;
  readonly query: string;
}) {
  const groups = linesOf(all, lengths)
    .map(({ name, lines }) => ({ name, lines: only ? lines.filter(differs) : lines }))
    .filter(({ lines }) => lines.length > 0);
  return (
    <section className="across" aria-label="The motors side by side">
      <table className={look.table}>
        <thead>
          <tr>
            <td />
            {all.map(({ motor }, place) => (
              <th key={motor.id} scope="col">
                <span className={look.letter}>{letterOf(place)}</span>{" "}
                <Link href={`/fit/${stern}/${motor.id}${query}`} prefetch={false}>
                  {motor.label}
                </Link>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Verdict</th>
            {all.map(({ motor, report }) => (
              <td key={motor.id}>
                <OutcomeWord outcome={report.verdict} />
                <span className="small soft"> {report.governs.replaceAll("-", " ")} governs</span>
              </td>
            ))}
          </tr>
        </tbody>
        {groups.map(({ name, lines }) => (
          <tbody key={name}>
            <tr>
              <th scope="rowgroup" colSpan={all.length + 1} className={look.group}>
                {name}
              </th>
            </tr>
            {lines.map((line) => (
              <tr key={line.name}>
                <th scope="row">{line.name}</th>
                {line.cells.map(({ words, outcome }, place) => (
                  <td key={all[place]!.motor.id}>
                    {outcome && outcome !== "not asked" ? (
                      <span className={look.cell}>
                        <OutcomeMark outcome={outcome} />
                        <span>
                          <span className="unseen">{outcome}: </span>
                          {unbroken(words)}
                        </span>
                      </span>
                    ) : (
                      unbroken(words)
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
      {groups.length === 0 && <p>They differ in nothing that is known.</p>}
    </section>
  );
}
