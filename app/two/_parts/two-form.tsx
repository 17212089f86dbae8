import type { AskedMotor, AskedTwo } from "#app/two/_parts/asked-two.ts";
import look from "./two.module.css";

interface Named {
  readonly id: string;
  readonly label: string;
}

/** Which two motors, and where each sits. It stands in the address. */
export function TwoForm({ asked, motors }: { readonly asked: AskedTwo; readonly motors: readonly Named[] }) {
  return (
    <form method="get" className={`${look.form} not-printed`} aria-label="Two motors on this stern">
      <input type="hidden" name="units" value={asked.lengths} />
      <Choice name="first" words="First motor" asked={asked.motors[0]} motors={motors} usual="300" />
      <Choice name="second" words="Second motor" asked={asked.motors[1]} motors={motors} usual="−300" />
      <button type="submit" className="main">
        Try the two
      </button>
    </form>
  );
}

function Choice({
  name,
  words,
  asked,
  motors,
  usual,
}: {
  name: string;
  words: string;
  asked: AskedMotor;
  motors: readonly Named[];
  usual: string;
}) {
  return (
    <fieldset className="stack-near">
      <legend>{words}</legend>
      <label htmlFor={`${name}-motor`}>Which motor</label>
      <select id={`${name}-motor`} name={name} defaultValue={asked.id} required>
        <option value="">Pick a motor</option>
        {motors.map(({ id, label }) => (
          <option key={id} value={id}>
            {label}
          </option>
        ))}
      </select>
      <label htmlFor={`${name}-at`}>Its middle from the centreline, plus to port</label>
      <input
        id={`${name}-at`}
        name={`${name}At`}
        type="text"
        autoComplete="off"
        defaultValue={asked.text}
        placeholder={`for instance ${usual} mm`}
        aria-invalid={asked.error ? true : undefined}
        aria-describedby={asked.error ? `${name}-error` : undefined}
      />
      {asked.error && (
        <p id={`${name}-error`} className="trouble-words small">
          {asked.error}
        </p>
      )}
    </fieldset>
  );
}
