"use client";

import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { formatLength } from "#lib/entry/length-format.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** The owner's own limits in place of common practice, folded away until somebody wants them. */
export function FormLimits({
  texts,
  troubles,
  write,
}: {
  texts: Texts;
  troubles: readonly Trouble[];
  write: (name: string, text: string) => void;
}) {
  const own = Object.keys(texts).some((name) => name.startsWith("limits.") && texts[name] !== "");
  return (
    <details open={own || troubles.some(({ name }) => name.startsWith("limits."))}>
      <summary>Your own limits</summary>
      <p>
        Left empty, a limit is what the trade commonly leaves. Write your own where this hull is known to want
        more, or to be content with less; every report on it then says so.
      </p>
      {Object.entries<Standard>(practiceLimits).map(([key, standard]) => {
        const name = `limits.${key}`;
        const says = troubles.find((trouble) => trouble.name === name)?.says;
        return (
          <div key={key} className="field plainly">
            <div className="field-words">
              <label htmlFor={name}>{sentence(standard.what)}</label>
            </div>
            <div className="field-entry">
              <input
                type="text"
                id={name}
                name={name}
                value={texts[name] ?? ""}
                onChange={(event) => write(name, event.target.value)}
                autoComplete="off"
                placeholder={`usual: ${usual(standard)}`}
                aria-invalid={says ? true : undefined}
                aria-describedby={`${name}-says`}
              />
              <div id={`${name}-says`} aria-live="polite">
                {says && <p className="trouble-words">{says}</p>}
              </div>
            </div>
          </div>
        );
      })}
    </details>
  );
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const usual = ({ value, unit }: Standard): string =>
  unit === "mm" ? `${formatLength(value, "mm")} (${formatLength(value, "in")})` : `${value}°`;
