import Link from "next/link";
import { FieldPicture } from "#app/_parts/drawing/field-picture.tsx";
import { keyName, keyOwner } from "#app/_parts/key-name.ts";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { Report, ReportCheck } from "#lib/fit/report.ts";
import { inDegrees, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";
import look from "./doubt.module.css";

/** The one measurement that would settle most: what it is, how it is taken, and how well it would have to be. */
export function MeasureNext({
  report,
  lengths,
  edit,
}: {
  readonly report: Report;
  readonly lengths: LengthSystem;
  readonly edit: Record<"motor" | "stern", string>;
}) {
  const { measureNext: next } = report;
  const governing = report.checks.find(({ id }) => id === report.governs);
  if (report.verdict !== "cannot tell" || !next || !governing) return null;
  const fact = next.key === "steering" || next.key === "shaftClass";
  const enter = (
    <Link href={`${edit[keyOwner(next.key)]}#${next.key}`} className="button main not-printed">
      Enter it
    </Link>
  );
  if (fact) {
    return (
      <section aria-labelledby="next" className={`notice ${look.next}`}>
        <div className="stack-near">
          <h2 id="next">Find out next</h2>
          <p>{next.says}</p>
          {enter}
        </div>
      </section>
    );
  }
  const { take, mistake } = fieldOf(next.key as RigKey);
  return (
    <section aria-labelledby="next" className={`notice ${look.next}`}>
      <FieldPicture name={next.key as RigKey} />
      <div className="stack-near">
        <h2 id="next">Measure this next: {lower(keyName(next.key))}</h2>
        <p>{unbroken(whyNext(next.key, governing))}</p>
        <p>{take}</p>
        {mistake && (
          <p className="small">
            <strong>Usual mistake:</strong> {mistake}
          </p>
        )}
        <p>{unbroken(howWell(next, governing, lengths))}</p>
        <Others governing={governing} but={next.key} />
        {enter}
      </div>
    </section>
  );
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** Why this one: nobody took it, or it weighs most. */
function whyNext(key: string, { restsOn = [], missing = [] }: ReportCheck): string {
  if (missing.includes(key)) return "Nobody has taken it yet, and the answer hangs on it.";
  const line = restsOn.find((each) => each.key === key);
  const share = line ? ` (${Math.round(line.share * 100)} % of it)` : "";
  if (line?.fromLike) {
    return `Nobody took it on this motor: the figure in use comes from like motors, and makes the largest part of the doubt${share}.`;
  }
  const how = { measured: "was measured", declared: "is somebody's word", estimated: "was put down by eye" };
  return `It ${how[line?.how ?? "measured"]}, and makes the largest part of the doubt${share}. Take it again, with care.`;
}

function howWell(
  next: NonNullable<Report["measureNext"]>,
  { missing = [] }: ReportCheck,
  lengths: LengthSystem,
): string {
  const { unit } = fieldOf(next.key as RigKey);
  const write = unit === "deg" ? inDegrees : lengthWriter(lengths);
  if (next.goodEnough !== undefined) return `To within ${write(next.goodEnough)} either way would do.`;
  return missing.includes(next.key)
    ? "Take it as well as it can easily be taken; how well it must be will show once it is there."
    : "Nothing else does more to settle the question.";
}

/** What else the same question wants. */
function Others({ governing, but }: { readonly governing: ReportCheck; readonly but: string }) {
  const others = (governing.missing ?? []).filter((key) => key !== but);
  if (others.length === 0) return null;
  return (
    <p className="small">
      The same question also wants:{" "}
      {others.map((key, i) => (
        <span key={key}>
          {i > 0 && ", "}
          <Link href={`/measuring#${key}`}>{lower(keyName(key))}</Link>
        </span>
      ))}
      .
    </p>
  );
}
