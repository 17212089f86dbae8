import type { Asked } from "#app/_parts/report/asked.ts";
import { queryFor } from "#app/_parts/report/asked.ts";
import { ABOARD_FIELDS, type TypedAboard } from "#lib/entry/aboard.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { figure, type LengthSystem } from "#lib/quantity/words.ts";
import { ABOARD_KEYS, type AboardKey } from "#lib/rig/afloat/aboard.ts";
import look from "./afloat.module.css";

/** Who and what is aboard besides the motor. It stands in the address; an empty field is as usual. */
export function LoadForm({ load, asked }: { readonly load: TypedAboard; readonly asked: Asked }) {
  const wrong = Object.keys(load.errors).length > 0;
  return (
    <details className={`${look.load} not-printed`} open={wrong || Object.keys(load.texts).length > 0}>
      <summary>Aboard: {aboardWords(load, asked.lengths)}</summary>
      <form method="get" action="#afloat" className={look.loadForm}>
        {kept(asked).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        {ABOARD_KEYS.map((key) => (
          <Field key={key} name={key} load={load} lengths={asked.lengths} />
        ))}
        <button type="submit">Load her so</button>
      </form>
    </details>
  );
}

/** How the report was asked for otherwise, so that nothing of it is lost. */
function kept(asked: Asked): [string, string][] {
  const { aboard: _, ...rest } = asked;
  return [...new URLSearchParams(queryFor(rest))];
}

function Field({ name, load, lengths }: { name: AboardKey; load: TypedAboard; lengths: LengthSystem }) {
  const error = load.errors[name];
  return (
    <div>
      <label htmlFor={`aboard-${name}`}>{ABOARD_FIELDS[name].name}</label>
      <input
        id={`aboard-${name}`}
        name={name}
        type="text"
        inputMode={name === "persons" ? "numeric" : "text"}
        autoComplete="off"
        defaultValue={load.texts[name] ?? ""}
        placeholder={usual(name, load, lengths)}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `aboard-${name}-error` : undefined}
      />
      {error && (
        <p id={`aboard-${name}-error`} className="trouble-words small">
          {error}
        </p>
      )}
    </div>
  );
}

function usual(name: AboardKey, { aboard }: TypedAboard, lengths: LengthSystem): string {
  const value = aboard[name];
  if (value === undefined) return "amidships";
  const { unit } = ABOARD_FIELDS[name];
  return unit === "mm" ? formatLength(value, lengths) : `${figure(value)}${unit === "kg" ? " kg" : ""}`;
}

function aboardWords({ aboard }: TypedAboard, lengths: LengthSystem): string {
  const { persons, personKg, personsForwardMm, fuelKg, fuelForwardMm } = aboard;
  const where =
    personsForwardMm === undefined
      ? "amidships"
      : `${formatLength(personsForwardMm, lengths)} forward of the transom`;
  const people = persons === 0 ? "nobody" : `${persons} of ${figure(personKg)} kg ${where}`;
  return `${people}; ${fuelKg === 0 ? "no fuel" : `${figure(fuelKg)} kg of fuel ${formatLength(fuelForwardMm, lengths)} forward`}`;
}
