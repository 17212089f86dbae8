"use client";

import { type FormEvent, startTransition, useActionState, useEffect, useRef } from "react";
import type { BroughtIn } from "#app/_parts/record/bring-in.ts";
import type { Kind } from "#lib/db/kind.ts";

/** Chooses a file and brings it in; its faults are told place by place, and the file stays chosen. */
export function BringInForm({
  kind,
  bringIn,
}: {
  kind: Kind;
  bringIn: (before: BroughtIn, form: FormData) => Promise<BroughtIn>;
}) {
  const [state, send, busy] = useActionState(bringIn, { faults: [] });
  const told = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.says) told.current?.focus();
  }, [state]);

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => send(form));
  }

  return (
    <form action={send} onSubmit={submit} className="stack">
      {state.says && (
        <div
          className={state.faults.length > 0 ? "notice trouble" : "notice"}
          role="alert"
          tabIndex={-1}
          ref={told}
        >
          <h3>{state.says}</h3>
          {state.faults.length > 0 && (
            <ul>
              {state.faults.map(({ place, says }) => (
                <li key={place + says}>
                  <strong>{place}</strong>: {says}
                </li>
              ))}
            </ul>
          )}
        </div>
      )}
      <div>
        <label htmlFor="file">File of {kind}s, CSV or JSON, up to 1 MB</label>
        <input type="file" id="file" name="file" accept=".csv,.json,text/csv,application/json" />
      </div>
      <label className="choice">
        <input type="checkbox" name="sound" value="yes" />
        Bring in the sound ones even where others have faults
      </label>
      <p>
        <button type="submit" className="main" disabled={busy}>
          {busy ? "Reading…" : `Bring in ${kind}s`}
        </button>
      </p>
    </form>
  );
}
