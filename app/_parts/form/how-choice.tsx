"use client";

import { HOWS, howWords, usualHow } from "#app/_parts/form/words.ts";
import type { Unit } from "#lib/quantity/measured.ts";

/** How one number was come by, one tap, and its ± where somebody knows it better than the usual. */
export function HowChoice({
  name,
  label,
  unit,
  texts,
  trouble,
  usualSpread,
  write,
}: {
  name: string;
  label: string;
  unit: Unit;
  texts: Readonly<Record<string, string>>;
  trouble: string | undefined;
  /** The ± taken where none is written, in words. */
  usualSpread: string | undefined;
  write: (name: string, text: string) => void;
}) {
  const usual = usualHow(unit, texts.how);
  const chosen = texts[`${name}.how`];
  const spreadName = `${name}.plusMinus`;
  return (
    <fieldset className="how">
      <legend>
        How {label.toLowerCase()} was come by
        {!chosen && <>; taken as “{howWords[usual].short.toLowerCase()}” unless you say</>}
      </legend>
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
            {howWords[how].short}
          </label>
        ))}
        <span className="spread">
          <label htmlFor={spreadName} aria-label={`${label}, plus or minus`}>
            ±
          </label>
          <input
            type="text"
            id={spreadName}
            name={spreadName}
            value={texts[spreadName] ?? ""}
            onChange={(event) => write(spreadName, event.target.value)}
            inputMode="decimal"
            autoComplete="off"
            placeholder={usualSpread}
            aria-invalid={trouble ? true : undefined}
            aria-describedby={trouble ? `${spreadName}-says` : undefined}
          />
        </span>
      </div>
      {trouble && (
        <p className="trouble-words" id={`${spreadName}-says`}>
          {trouble}
        </p>
      )}
    </fieldset>
  );
}
