"use client";

import { type ReactNode, useRef } from "react";
import { Chips } from "#app/_parts/form/chips.tsx";
import { HowChoice, Spread } from "#app/_parts/form/how-choice.tsx";
import type { Reading } from "#app/_parts/form/read-field.ts";
import type { Texts } from "#app/_parts/form/texts.ts";
import { exampleOf } from "#app/_parts/form/words.ts";
import type { Field } from "#lib/rig/field.ts";

/** One number: its picture and how it is taken, the box, the echo in both systems, and where its text can be read two ways, the choice. */
export function NumberField({
  name,
  field,
  picture,
  texts,
  reading,
  trouble,
  spreadTrouble,
  usualSpread,
  write,
}: {
  name: string;
  field: Field;
  picture: ReactNode;
  texts: Texts;
  /** What the box's text comes to, once the typing has paused. */
  reading: Reading;
  /** Words at the field, where saving was refused. */
  trouble: string | undefined;
  spreadTrouble: string | undefined;
  usualSpread: string | undefined;
  write: (name: string, text: string) => void;
}) {
  const box = useRef<HTMLInputElement>(null);
  const text = texts[name] ?? "";
  const inches = /["'″′½¼¾⅛]|in|f/i.test(text);
  const says = reading.kind === "refused" ? reading.says : trouble;
  const wrong = says !== undefined && reading.kind !== "value" && text !== "";
  return (
    <div className="field">
      <div className="field-picture">{picture}</div>
      <div className="field-words">
        <label htmlFor={name}>{field.name}</label>
        <p id={`${name}-take`}>{field.take}</p>
        {field.mistake && (
          <p className="soft">
            <strong>Usual mistake:</strong> {field.mistake}
          </p>
        )}
      </div>
      <div className="field-entry">
        <input
          ref={box}
          type="text"
          id={name}
          name={name}
          value={text}
          onChange={(event) => write(name, event.target.value)}
          // The number pad until an inch sign is typed: a pad has no slash and no inch mark.
          inputMode={inches ? "text" : "decimal"}
          autoComplete="off"
          spellCheck={false}
          placeholder={exampleOf(name, field)}
          aria-describedby={`${name}-take ${name}-says`}
          aria-invalid={wrong || undefined}
        />
        {field.unit === "mm" && <Chips box={box} label={field.name} write={(put) => write(name, put)} />}
        <div className="says">
          <div id={`${name}-says`} aria-live="polite">
            {wrong && <p className="trouble-words">{says}</p>}
            {reading.kind === "value" && <p className="echo">{reading.echo}</p>}
          </div>
          {reading.kind !== "ask" && reading.kind !== "refused" && (
            <Spread
              {...{ name, texts, write }}
              label={field.name}
              trouble={spreadTrouble}
              usual={usualSpread}
            />
          )}
        </div>
        {reading.kind === "ask" && (
          <Readings name={name} label={field.name} reading={reading} write={write} />
        )}
        <HowChoice {...{ name, texts, write }} label={field.name} unit={field.unit} />
      </div>
    </div>
  );
}

/** The ways a text can be read, likeliest first; one tap writes it out. Without script the tap sends the form and comes back. */
function Readings({
  name,
  label,
  reading,
  write,
}: {
  name: string;
  label: string;
  reading: Extract<Reading, { kind: "ask" }>;
  write: (name: string, text: string) => void;
}) {
  return (
    <fieldset className="readings">
      <legend>
        {label}: {reading.readings.length === 1 ? "do you mean this?" : "which do you mean?"}
      </legend>
      <div>
        {reading.readings.map(({ says, text }) => (
          <button
            key={text}
            type="submit"
            name="choose"
            value={`${name}=${text}`}
            onClick={(event) => {
              event.preventDefault();
              write(name, text);
            }}
          >
            {says}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
