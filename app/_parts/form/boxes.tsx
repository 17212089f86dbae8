"use client";

import { rowsOf } from "#app/_parts/form/box-rows.ts";
import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";

const ENDS = ["fromMm", "toMm"] as const;

/** Anything else in the way, as boxes between two corners. There is always one empty row more, so nothing has to be added first. */
export function Boxes({
  list,
  texts,
  troubles,
  axes,
  hint,
  groups,
  write,
}: {
  list: "extraSolids" | "obstacles";
  texts: Texts;
  troubles: readonly Trouble[];
  /** What the three numbers of a corner are, in words. */
  axes: readonly [string, string, string];
  hint: string;
  groups?: readonly (readonly [value: string, words: string])[];
  write: (name: string, text: string) => void;
}) {
  const rows = [...rowsOf(texts, list), rowsOf(texts, list).length];
  const told = (name: string) => troubles.find((trouble) => trouble.name === name)?.says;
  return (
    <details className="boxes" open={rows.length > 1 || troubles.some(({ name }) => name.startsWith(list))}>
      <summary>Anything else in the way</summary>
      <div className="stack">
        <p>{hint}</p>
        {rows.map((row) => (
          <fieldset key={row} className="box-row">
            <legend>{texts[`${list}.${row}.label`] || `Thing ${row + 1}`}</legend>
            <Box
              name={`${list}.${row}.label`}
              label="What it is"
              {...{ texts, write }}
              says={told(`${list}.${row}.label`)}
            />
            {groups && (
              <label>
                It moves
                <select
                  name={`${list}.${row}.group`}
                  value={texts[`${list}.${row}.group`] ?? groups[0]![0]}
                  onChange={(event) => write(`${list}.${row}.group`, event.target.value)}
                >
                  {groups.map(([value, words]) => (
                    <option key={value} value={value}>
                      {words}
                    </option>
                  ))}
                </select>
              </label>
            )}
            {ENDS.map((end) => (
              <div key={end} className="corners">
                {axes.map((axis, at) => (
                  <Box
                    key={axis}
                    name={`${list}.${row}.${end}.${at}`}
                    label={`${end === "fromMm" ? "From" : "To"}: ${axis}`}
                    {...{ texts, write }}
                    says={told(`${list}.${row}.${end}.${at}`)}
                  />
                ))}
              </div>
            ))}
          </fieldset>
        ))}
      </div>
    </details>
  );
}

function Box({
  name,
  label,
  texts,
  says,
  write,
}: {
  name: string;
  label: string;
  texts: Texts;
  says: string | undefined;
  write: (name: string, text: string) => void;
}) {
  return (
    <div>
      <label htmlFor={name}>{label}</label>
      <input
        type="text"
        id={name}
        name={name}
        value={texts[name] ?? ""}
        autoComplete="off"
        aria-invalid={says ? true : undefined}
        aria-describedby={`${name}-says`}
        onChange={(event) => write(name, event.target.value)}
      />
      <div id={`${name}-says`} aria-live="polite">
        {says && <p className="trouble-words">{says}</p>}
      </div>
    </div>
  );
}
