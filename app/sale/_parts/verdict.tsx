import Link from "next/link";
import { keyName, keyOwner } from "#app/_parts/key-name.ts";
import { OutcomeMark, OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { ComesTo } from "#app/sale/_parts/come-to.ts";
import look from "#app/sale/_parts/sale.module.css";
import { inDegrees, inMillimetres } from "#lib/quantity/words.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";

const HEADLINES = {
  fits: "Fits",
  fouls: "Fouls",
  "cannot tell": "Cannot tell yet",
  "not asked": "Cannot tell yet",
};

/** The verdict of the few numbers, what governs it, and the next thing to measure on the spot. */
export function SaleVerdict({ found, stern }: { readonly found: ComesTo; readonly stern: string }) {
  const { governing, others, next, estimates } = found;
  return (
    <>
      <a className={`${look.brief} not-printed`} href="#comes-to">
        <OutcomeWord outcome={governing.outcome} /> {governing.check.id.replaceAll("-", " ")}
      </a>
      <section
        className={`${look.panel} ${look[governing.outcome.replace(" ", "-")]}`}
        aria-labelledby="comes-to"
      >
        <div className={look.head}>
          <OutcomeMark outcome={governing.outcome} />
          <h2 id="comes-to">{HEADLINES[governing.outcome]}</h2>
        </div>
        <p>
          {governing.check.question} {unbroken(governing.says)}
        </p>
        {next && <Next next={next} stern={stern} />}
        {others.length > 0 && (
          <details>
            <summary>
              {others.length} more {others.length === 1 ? "question does" : "questions do"} not fit yet
            </summary>
            <ul className="plain stack-near">
              {others.map(({ check, outcome, says }) => (
                <li key={check.id}>
                  <OutcomeWord outcome={outcome} /> <strong>{check.id.replaceAll("-", " ")}</strong>:{" "}
                  {unbroken(says)}
                </li>
              ))}
            </ul>
          </details>
        )}
        <Filled estimates={estimates} />
      </section>
    </>
  );
}

function Next({ next, stern }: { readonly next: NonNullable<ComesTo["next"]>; readonly stern: string }) {
  const { key, goodEnough } = next;
  if (key === "steering" || key === "shaftClass") {
    return (
      <p>
        <strong>Find out next: {keyName(key).toLowerCase()}.</strong>
      </p>
    );
  }
  const { take, unit } = fieldOf(key);
  const write = unit === "deg" ? inDegrees : inMillimetres;
  return (
    <p>
      <strong>Measure next: {keyName(key).toLowerCase()}.</strong> {take}
      {goodEnough !== undefined && unbroken(` To within ${write(goodEnough)} would do.`)}{" "}
      {keyOwner(key) === "stern" && <Link href={`/sterns/${stern}/edit#${key}`}>Enter it on your stern</Link>}
    </p>
  );
}

/** What was filled in from like motors, and with what doubt. */
function Filled({ estimates }: Pick<ComesTo, "estimates">) {
  if (estimates.length === 0) {
    return (
      <p className="small">
        Nothing was filled in from like motors: they are found by the power, so type that first.
      </p>
    );
  }
  return (
    <details>
      <summary>
        {estimates.length} {estimates.length === 1 ? "number comes" : "numbers come"} from like motors
      </summary>
      <ul className="small">
        {estimates.map(({ key, value, plusMinus, few }) => (
          <li key={key}>
            {keyName(key)}: {written(key, value)}, give or take {written(key, plusMinus)}
            {few && " (few like motors)"}
          </li>
        ))}
      </ul>
    </details>
  );
}

function written(key: RigKey, value: number | readonly number[]): string {
  const { unit } = fieldOf(key);
  const one = (each: number) =>
    unit === "deg"
      ? inDegrees(each)
      : unit === "mm"
        ? inMillimetres(each)
        : `${Number(each.toPrecision(2))} ${unit}`;
  return typeof value === "number" ? one(value) : value.map(one).join(", ");
}
