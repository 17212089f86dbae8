"use client";

import { HOWS, howWords, usualHow } from "#app/_parts/form/words.ts";
import type { Unit } from "#lib/quantity/measured.ts";

interface Asked {
  readonly name: string;
  readonly label: string;
  readonly texts: Readonly<Record<string, string>>;
  readonly write: (name: string, text: string) => void;
}

/** How one number was come by, one tap; what it is taken as where nobody taps is marked as the usual. */
export function HowChoice({ name, label, unit, texts, write }: Asked & { readonly unit: Unit }) {
  const usual = usualHow(unit, texts.how);
  const chosen = texts[`${name}.how`];
  return (
    <fieldset className="how">
      <legend className="unseen">How {label.toLowerCase()} was come by</legend>
      <div>
        {HOWS.map((how) => (
          <label key={how} className={how === usual && !chosen ? "choice usual" : "choice"}>
            <input
              type="radio"
              name={`${name}.how`}
              value={how}
              checked={chosen === how}
              onChange={() => write(`${name}.how`, how)}
            />
            <span>
              {howWords[how].short}
              {how === usual && !chosen && <> (taken as)</>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** The ± of one number, where somebody knows it better than the usual. */
export function Spread({
  name,
  label,
  texts,
  trouble,
  usual,
  write,
}: Asked & {
  readonly trouble: string | undefined;
  /** The ± taken where none is written, in words. */
  readonly usual: string | undefined;
}) {
  const spread = `${name}.plusMinus`;
  return (
    <div className="spread">
      <label htmlFor={spread} aria-label={`${label}, plus or minus`}>
        ±
      </label>
      <input
        type="text"
        id={spread}
        name={spread}
        value={texts[spread] ?? ""}
        onChange={(event) => write(spread, event.target.value)}
        inputMode="decimal"
        autoComplete="off"
        placeholder={usual}
        aria-invalid={trouble ? true : undefined}
        aria-describedby={trouble ? `${spread}-says` : undefined}
      />
      {trouble && (
        <p className="trouble-words" id={`${spread}-says`}>
          {trouble}
        </p>
      )}
    </div>
  );
}
