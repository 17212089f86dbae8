import { TidyForm } from "#app/_parts/cut-plan/tidy-form.tsx";
import { MOST_CUT_MOTORS } from "#lib/entry/cut-choices.ts";
import look from "./cut-plan.module.css";

/** Picks the motors a stern is to be cut for: one, or several that are to share it. */
export function PickMotors({
  path,
  motors,
  chosen,
}: {
  readonly path: string;
  readonly motors: readonly { readonly id: string; readonly label: string }[];
  readonly chosen: readonly string[];
}) {
  return (
    <TidyForm action={path} label="Motors to cut for" className="stack-near">
      <fieldset>
        <legend className={look.legend}>For which motor is it cut?</legend>
        <p>One, or up to {MOST_CUT_MOTORS} that are to hang on it in turn: the cut then suits them all.</p>
        <div className={look.motors}>
          {motors.map(({ id, label }) => (
            <label key={id} className="choice">
              <input type="checkbox" name="motors" value={id} defaultChecked={chosen.includes(id)} />
              {label}
            </label>
          ))}
        </div>
      </fieldset>
      <p>
        <button type="submit" className="main">
          Plan the cuts
        </button>
      </p>
    </TidyForm>
  );
}
