import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { OutcomeMark } from "#app/_parts/report/outcome-mark.tsx";
import { afterWords, clauseOf, marginSentence, restsOnLike } from "#app/_parts/report/plain-words.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Report, Verdict } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import look from "./report.module.css";

const HEADLINES: Record<Verdict, string> = {
  fits: "Fits",
  fouls: "Fouls",
  "cannot tell": "Cannot tell yet",
};

/** The verdict in words first, by how much and how surely, the question that governs it, and the least change that serves. */
export function VerdictPanel({
  report,
  lengths,
}: {
  readonly report: Report;
  readonly lengths: LengthSystem;
}) {
  const governing = report.checks.find(({ id }) => id === report.governs);
  const [remedy] = report.remedies;
  const margin = governing && marginSentence(governing, lengths);
  return (
    <section
      className={`${look.verdict} ${look[report.verdict.replace(" ", "-")]}`}
      aria-labelledby="verdict"
    >
      <OutcomeMark outcome={report.verdict} />
      <h2 id="verdict">{HEADLINES[report.verdict]}</h2>
      <div className="stack-near">
        {governing && (
          <>
            {margin && (
              <p className="lead">
                <strong>{unbroken(sentence(margin))}</strong> {restsOnLike(governing) && <LikeMark />}
              </p>
            )}
            <p>
              {governing.question} {unbroken(clauseOf(governing, lengths))}
            </p>
          </>
        )}
        <p className="small">
          This question governs:{" "}
          <a href={`#check-${report.governs}`}>{report.governs.replaceAll("-", " ")}</a>
          {report.verdict !== "fits" && <Others report={report} />}
        </p>
        {remedy && report.verdict !== "fits" && (
          <p>
            <strong>Least change that serves.</strong> {unbroken(remedy.says)} Then it{" "}
            {unbroken(afterWords(remedy, lengths))}.
          </p>
        )}
      </div>
    </section>
  );
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** How many other questions stand the same way. */
function Others({ report }: { report: Report }) {
  const same = report.checks.filter(({ id, outcome }) => outcome === report.verdict && id !== report.governs);
  if (same.length === 0) return <>; no other question stands so.</>;
  return (
    <>
      ; {same.length === 1 ? "one other stands" : `${same.length} others stand`} so:{" "}
      {same.map(({ id }, i) => (
        <span key={id}>
          {i > 0 && ", "}
          <a href={`#check-${id}`}>{id.replaceAll("-", " ")}</a>
        </span>
      ))}
      .
    </>
  );
}
