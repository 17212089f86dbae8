import Link from "next/link";
import { keyOwner } from "#app/_parts/key-name.ts";
import { OutcomeMark } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Report, Verdict } from "#lib/fit/report.ts";
import look from "./report.module.css";

const HEADLINES: Record<Verdict, string> = {
  fits: "Fits",
  fouls: "Fouls",
  "cannot tell": "Cannot tell yet",
};

/** The verdict in words first, the question that governs it, and the one thing to do next. */
export function VerdictPanel({
  report,
  edit,
}: {
  readonly report: Report;
  readonly edit: Record<"motor" | "stern", string>;
}) {
  const governing = report.checks.find(({ id }) => id === report.governs);
  const next = report.verdict === "cannot tell" ? report.measureNext : undefined;
  const [remedy] = report.remedies;
  return (
    <section
      className={`${look.verdict} ${look[report.verdict.replace(" ", "-")]}`}
      aria-labelledby="verdict"
    >
      <OutcomeMark outcome={report.verdict} />
      <h2 id="verdict">{HEADLINES[report.verdict]}</h2>
      <div className="stack-near">
        {governing && (
          <p className="lead">
            {governing.question} {unbroken(governing.says)}
          </p>
        )}
        <p className="small">
          This question governs:{" "}
          <a href={`#check-${report.governs}`}>{report.governs.replaceAll("-", " ")}</a>
          {report.verdict !== "fits" && <Others report={report} />}
        </p>
        {next && (
          <p>
            <strong>Next.</strong> {unbroken(next.says)} <Link href={edit[keyOwner(next.key)]}>Enter it</Link>
          </p>
        )}
        {remedy && report.verdict !== "fits" && (
          <p>
            <strong>Least change that serves.</strong> {unbroken(remedy.says)}
          </p>
        )}
      </div>
    </section>
  );
}

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
