import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { DoubtList } from "#app/_parts/report/doubt-list.tsx";
import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { OpenEvery } from "#app/_parts/report/open-every.tsx";
import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { clauseOf, JUMPS, marginSentence, restsOnLike } from "#app/_parts/report/plain-words.ts";
import { marginOf, unbroken, unitOf, writerIn } from "#app/_parts/report/writing.ts";
import { checks } from "#lib/checks/index.ts";
import type { Outcome, Report, ReportCheck } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./report.module.css";

const ORDER: readonly Outcome[] = ["fouls", "cannot tell", "fits"];
const WHY = new Map(checks.map(({ id, why }) => [id, why]));

/** Every question with its answer, the troubles first; those that do not arise are named at the end. */
export function CheckList({ report, lengths }: { report: Report; lengths: LengthSystem }) {
  const { checks: found, governs } = report;
  const asked = ORDER.flatMap((outcome) => found.filter((check) => check.outcome === outcome));
  const idle = found.filter(({ outcome }) => outcome === "not asked");
  return (
    <section aria-labelledby="checks" className="stack-near">
      <h2 id="checks" className="drawn">
        Every question
      </h2>
      {found.some(({ restsOn = [] }) => restsOn.length > 0) && <OpenEvery />}
      <ol className={`plain ${look.checks}`}>
        {asked.map((check) => (
          <CheckItem key={check.id} check={check} lengths={lengths} governs={check.id === governs} />
        ))}
      </ol>
      {idle.length > 0 && (
        <>
          <h3>Not asked</h3>
          <ul className="words">
            {idle.map(({ id, question, says }) => (
              <li key={id} id={`check-${id}`}>
                {question} <span className="soft">{says}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function CheckItem({
  check,
  lengths,
  governs,
}: {
  check: ReportCheck;
  lengths: LengthSystem;
  governs: boolean;
}) {
  const margin = marginSentence(check, lengths);
  return (
    <li id={`check-${check.id}`} className={governs ? undefined : "kept-together"}>
      <OutcomeWord outcome={check.outcome} />
      <div className="stack-near">
        <h3>{check.question}</h3>
        <p>
          {unbroken(clauseOf(check, lengths))}
          {margin && <strong> {unbroken(sentence(margin))}</strong>} {restsOnLike(check) && <LikeMark />}
        </p>
        {check.missing && <Missing keys={check.missing} />}
        {check.outcome !== "fits" && <p className="soft small">{WHY.get(check.id)}</p>}
        <Numbers check={check} lengths={lengths} />
        {check.jumps && (
          <p className="small">
            <strong>This one is rough.</strong> {JUMPS}
          </p>
        )}
        <DoubtList check={check} lengths={lengths} printed={governs} />
      </div>
    </li>
  );
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function Missing({ keys }: { keys: readonly string[] }) {
  return (
    <p className="small">
      How to take it:{" "}
      {keys.map((key, i) => (
        <span key={key}>
          {i > 0 && ", "}
          <Link href={`/measuring#${key}`}>{keyName(key).toLowerCase()}</Link>
        </span>
      ))}
      .
    </p>
  );
}

/** Have, need, room to spare, give or take, worst case and where the limit comes from. */
function Numbers({ check, lengths }: { check: ReportCheck; lengths: LengthSystem }) {
  const write = writerIn(unitOf(check), lengths);
  const { margin, spread, worst } = marginOf(check);
  if (margin === undefined || !check.limit) return null;
  const cells: readonly (readonly [string, number | undefined])[] = [
    ["Have", check.have],
    ["Need", check.need],
    [margin < 0 ? "Short by" : "To spare", margin < 0 ? -margin : margin],
    ["Give or take", spread === undefined || spread > 0 ? spread : undefined],
    [
      worst !== undefined && worst < 0 ? "At worst, short by" : "At worst, to spare",
      worst !== undefined && worst < 0 ? -worst : worst,
    ],
  ];
  return (
    <>
      <dl className={`cells ${look.numbers}`}>
        {cells.map(([name, value]) =>
          value === undefined ? null : (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{unbroken(write(value))}</dd>
            </div>
          ),
        )}
      </dl>
      <p className="soft small">
        Limit {unbroken(write(check.limit.value))} ({check.limit.source || check.limit.status}).
      </p>
    </>
  );
}
