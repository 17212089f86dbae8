"use client";

import { type FormEvent, startTransition, useActionState, useEffect, useRef, useState } from "react";
import { NumberField } from "#app/_parts/form/number-field.tsx";
import { usualSpread } from "#app/_parts/form/read-field.ts";
import { TextField } from "#app/_parts/form/text-field.tsx";
import { fieldsOf } from "#app/_parts/form/texts.ts";
import { TroubleSummary } from "#app/_parts/form/trouble-summary.tsx";
import { HOWS, usualHow } from "#app/_parts/form/words.ts";
import { readTaking } from "#app/_parts/takings/read-taking.ts";
import { TAKING, type TakingState } from "#app/_parts/takings/taking-state.ts";
import type { Kind } from "#lib/db/kind.ts";
import look from "./takings.module.css";

/** One number of a record, taken once more: which, how much, how well, and what there is to say about it. */
export function TakeAgainForm({
  kind,
  version,
  keys,
  chosen,
  takeAgain,
}: {
  kind: Kind;
  version: number;
  /** The numbers the record has. */
  keys: readonly string[];
  /** The one to begin with, where one was asked for. */
  chosen: string | undefined;
  takeAgain: (before: TakingState, form: FormData) => Promise<TakingState>;
}) {
  const [state, send, busy] = useActionState(takeAgain, { troubles: [] });
  const [texts, setTexts] = useState(state.texts ?? { key: chosen ?? keys[0] ?? "" });
  const [own, setOwn] = useState<TakingState["troubles"]>();
  const conflict = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.conflict) conflict.current?.focus();
  }, [state]);

  const fields = fieldsOf(kind);
  const key = keys.find((each) => each === texts.key) ?? keys[0]!;
  const field = fields[key]!;
  const { reading } = readTaking(kind, key, texts);
  const troubles = own ?? state.troubles;
  const troubleAt = (name: string) => troubles.find((each) => each.name === name)?.says;
  const how = HOWS.find((each) => each === texts[`${TAKING}.how`]) ?? usualHow(field.unit, undefined);
  const write = (name: string, text: string) => setTexts((now) => ({ ...now, [name]: text }));

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const { taking, troubles: found } = readTaking(kind, key, texts);
    setOwn(taking ? undefined : found);
    const form = new FormData(event.currentTarget);
    if (taking) startTransition(() => send(form));
  }

  return (
    <form
      action={send}
      onSubmit={submit}
      noValidate
      className={`stack ${look.again}`}
      aria-label="Take a number again"
    >
      {/* Enter in a box stores: a form's first button is the one it presses, and a choice of readings may come first. */}
      <button type="submit" className="unseen" tabIndex={-1} aria-hidden="true">
        Add this taking
      </button>
      <input type="hidden" name="version" value={state.conflict?.version ?? version} />
      {state.conflict && (
        <div className="notice trouble" role="alert" tabIndex={-1} ref={conflict}>
          <p>{state.conflict.says}</p>
        </div>
      )}
      <TroubleSummary troubles={troubles} />
      <div className="field plainly">
        <div className="field-words">
          <label htmlFor="key">Number</label>
        </div>
        <select
          id="key"
          name="key"
          value={key}
          onChange={(event) => write("key", event.target.value)}
          aria-describedby={troubleAt("key") ? "key-says" : undefined}
        >
          {keys.map((each) => (
            <option key={each} value={each}>
              {fields[each]!.name}
            </option>
          ))}
        </select>
        {troubleAt("key") && (
          <p className="trouble-words" id="key-says">
            {troubleAt("key")}
          </p>
        )}
      </div>
      <NumberField
        name={TAKING}
        field={field}
        picture={null}
        texts={texts}
        reading={reading}
        trouble={troubleAt(TAKING)}
        spreadTrouble={troubleAt(`${TAKING}.plusMinus`)}
        usualSpread={usualSpread(field.unit, reading, how)}
        write={write}
      />
      <TextField
        name="comment"
        label="Comment"
        hint="How it went, who held the other end, what was in the way. May stay empty."
        lines={2}
        text={texts.comment ?? ""}
        trouble={troubleAt("comment")}
        write={write}
      />
      <p>
        <button type="submit" className="main" disabled={busy}>
          {busy ? "Adding…" : "Add this taking"}
        </button>
      </p>
    </form>
  );
}
