import Link from "next/link";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import { capital } from "#app/_parts/cut-plan/words.ts";
import { keyName, keyOwner } from "#app/_parts/key-name.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";
import type { Motor } from "#lib/rig/motor.ts";

/** The numbers nobody has taken and the plan needs, each with where to enter it and how it is taken. */
export function Missing({ plan, planned }: { readonly plan: CutPlan; readonly planned: Planned }) {
  if (plan.missing.length === 0) return null;
  const lacks = (key: string) =>
    planned.motors.map(({ record }) => record).filter((motor) => motor[key as keyof Motor] === undefined);
  return (
    <section aria-labelledby="missing" className="notice trouble">
      <h2 id="missing">
        To be measured before {plan.notch ? "the rest can be planned" : "anything can be laid out"}
      </h2>
      <ul>
        {plan.missing.map((key) => (
          <li key={key}>
            <strong>{capital(keyName(key))}</strong>:{" "}
            {keyOwner(key) === "stern" ? (
              <Link href={`/sterns/${plan.stern}/edit#${key}`}>enter it for the stern</Link>
            ) : (
              lacks(key).map(({ id, label }, i) => (
                <span key={id}>
                  {i > 0 && ", "}
                  <Link href={`/motors/${id}/edit#${key}`}>enter it for {label}</Link>
                </span>
              ))
            )}
            , or see <Link href={`/measuring#${key}`}>how it is taken</Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
