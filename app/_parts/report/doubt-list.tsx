import Link from "next/link";
import { keyName } from "#app/_parts/key-name.ts";
import { LikeMark } from "#app/_parts/report/like-mark.tsx";
import { doubtWords, effectWords, howWords, shareWords } from "#app/_parts/report/plain-words.ts";
import {
  type MarginUnit,
  marginOf,
  plusMinusWords,
  takenWords,
  unbroken,
  unitOf,
  writerIn,
} from "#app/_parts/report/writing.ts";
import type { ReportBudgetLine, ReportCheck } from "#lib/fit/report.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";
import look from "./doubt.module.css";

interface Shown {
  readonly check: ReportCheck;
  readonly lengths: LengthSystem;
  /** Printed even where it was not opened. */
  readonly printed: boolean;
}

/** What the give-or-take of one question is made of: every number it rests on, the one that weighs most first. */
export function DoubtList({ check, lengths, printed }: Shown) {
  const { restsOn = [] } = check;
  const { spread = 0 } = marginOf(check);
  if (restsOn.length === 0) return null;
  const unit = unitOf(check);
  const whole = `${doubtWords(spread, unit, lengths)}${unit === "mm" && lengths === "mm" ? " mm" : ""}`;
  return (
    <details className={`${look.doubt} ${printed ? look.printed : ""}`} data-doubt="">
      <summary>What the doubt is made of</summary>
      <div className="stack-near">
        <p className="small">
          No number is exact: each may be off by the ± beside it. This is how much each of them can do to the
          room, and how large its part is in the give or take of {unbroken(whole)}.
        </p>
        <ol className={`plain ${look.lines}`}>
          {restsOn.map((line) => (
            <DoubtLine key={line.key} line={line} unit={unit} lengths={lengths} />
          ))}
        </ol>
        <Together check={check} whole={whole} lengths={lengths} />
      </div>
    </details>
  );
}

function DoubtLine({
  line,
  unit,
  lengths,
}: {
  readonly line: ReportBudgetLine;
  readonly unit: MarginUnit;
  readonly lengths: LengthSystem;
}) {
  const field = fieldOf(line.key as RigKey);
  return (
    <li>
      <p className={look.what}>
        <Link href={`/measuring#${line.key}`}>{keyName(line.key)}</Link>{" "}
        <strong>{unbroken(takenWords(line.value, field.unit, lengths))}</strong>{" "}
        <span className={look.plusMinus}>
          {unbroken(plusMinusWords(line.plusMinus, field.unit, lengths))}
        </span>{" "}
        {line.fromLike && <LikeMark said="from like motors" />}
      </p>
      <p className={`soft small ${look.does}`}>
        {unbroken(effectWords(line.sensitivity, field.unit, unit, lengths))}. {sentence(howWords(line))}.
      </p>
      <p className={look.part}>
        {/* Next to nothing is told in words alone. */}
        <svg
          className={line.share < 0.01 ? look.noBar : look.bar}
          width="100%"
          height="12"
          aria-hidden="true"
        >
          <rect className={look.barAll} width="100%" height="12" />
          <rect className={look.barPart} width={`${line.share * 100}%`} height="12" />
        </svg>
        <span>
          {unbroken(shareWords(line.share))}
          <span className="unseen"> of the doubt</span>
        </span>
      </p>
    </li>
  );
}

/** What the parts come to together, and what they would come to at the very worst. */
function Together({ check, whole, lengths }: Omit<Shown, "printed"> & { readonly whole: string }) {
  const { worst } = marginOf(check);
  const { restsOn = [] } = check;
  const unit = unitOf(check);
  const write = writerIn(unit, lengths);
  const estimated = restsOn.some(({ fromLike }) => fromLike);
  return (
    <>
      <p className="small">
        {restsOn.length > 1 && "They seldom all err the same way at once. "}
        {unbroken(whole.charAt(0).toUpperCase() + whole.slice(1))} is twice the error to be expected of{" "}
        {restsOn.length > 1 ? "them together" : "it"}: in about 19 cases out of 20 the room is no further off
        than that.
        {worst !== undefined &&
          unbroken(
            ` Even with ${restsOn.length > 1 ? "every one" : "it"} off the wrong way by its full ±, it would be ${write(Math.abs(worst))} ${worst < 0 ? "short" : "to spare"}.`,
          )}
      </p>
      {estimated && (
        <p className="small">
          Numbers from like motors count for more: the answer must hold even at the far end of theirs.
        </p>
      )}
    </>
  );
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
