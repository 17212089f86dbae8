import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { queryFor } from "#app/_parts/report/writing.ts";
import type { Report } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import { motorFields } from "#lib/rig/motor.ts";

/** Numbers of the motor nobody took: offers to fill them from like motors, or says that this was done and how to undo it. */
export function LikeNotice({
  report,
  lengths,
  like,
}: {
  report: Report;
  lengths: LengthSystem;
  like: boolean;
}) {
  if (!like) {
    const gaps = report.checks.some(({ missing }) => missing?.some((key) => key in motorFields));
    if (!gaps) return null;
    return (
      <p className="not-printed">
        <Link className="button" href={queryFor(lengths, true)} scroll={false}>
          Fill the motor's gaps from like motors
        </Link>
      </p>
    );
  }
  const estimated = report.estimated ?? [];
  return (
    <div className="notice">
      <p>
        {estimated.length === 0 ? (
          "No like motors are recorded that could fill a gap."
        ) : (
          <>
            <strong>Gaps filled.</strong>{" "}
            {estimated.length === 1 ? "One number was" : `${estimated.length} numbers were`} not taken on this
            motor and come from motors of like power, shaft, strokes and steering, with their spread. Nothing
            of it is stored.
          </>
        )}
      </p>
      {estimated.length > 0 && (
        <details>
          <summary>Which numbers</summary>
          <p>{estimated.map(({ key }) => keyName(key)).join("; ")}.</p>
        </details>
      )}
      <p className="not-printed">
        <Link href={queryFor(lengths, false)} scroll={false}>
          Only what was taken on this motor
        </Link>
      </p>
    </div>
  );
}
