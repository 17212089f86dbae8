"use client";

import { useEffect, useState } from "react";
import type { Step } from "#lib/fit/cut-plan/checklist.ts";
import look from "./cut-plan.module.css";

/** What is kept of a list in this browser; nothing where the browser keeps nothing. */
function kept(store: string): readonly string[] {
  try {
    const ids: unknown = JSON.parse(window.localStorage.getItem(store) ?? "[]");
    return Array.isArray(ids) ? ids.filter((id) => typeof id === "string") : [];
  } catch {
    return [];
  }
}

function keep(store: string, ids: readonly string[]): void {
  try {
    if (ids.length === 0) window.localStorage.removeItem(store);
    else window.localStorage.setItem(store, JSON.stringify(ids));
  } catch {
    // A browser that keeps nothing still shows what was ticked until the page is left.
  }
}

/** The work in building order, to be ticked off; ticks are kept in this browser for this very plan. Without script the boxes can be ticked and printed, and nothing is kept. */
export function Checklist({ store, steps }: { readonly store: string; readonly steps: readonly Step[] }) {
  const [done, setDone] = useState<readonly string[]>([]);
  const [ready, setReady] = useState(false);
  useEffect(() => {
    setDone(kept(store));
    setReady(true);
  }, [store]);
  const change = (ids: readonly string[]) => {
    setDone(ids);
    keep(store, ids);
  };
  const count = steps.filter(({ id }) => done.includes(id)).length;
  return (
    <section aria-labelledby="work" className={`stack-near ${look.work}`} data-printed="work">
      <h2 id="work" className="drawn">
        The work in building order
      </h2>
      <ol className={look.steps}>
        {steps.map(({ id, says, cautions }) => (
          <li key={id} className="kept-together">
            <label>
              <input
                type="checkbox"
                checked={done.includes(id)}
                onChange={({ target }) =>
                  change(target.checked ? [...done, id] : done.filter((each) => each !== id))
                }
              />
              <span>{says}</span>
            </label>
            {cautions.length > 0 && (
              <p className={look.caution}>
                <strong>Caution.</strong> {cautions.join(" ")}
              </p>
            )}
          </li>
        ))}
      </ol>
      {ready && (
        <p className="row not-printed">
          <span role="status">
            {count} of {steps.length} done
          </span>
          <button type="button" onClick={printList}>
            Print this list
          </button>
          {count > 0 && (
            <button type="button" onClick={() => change([])}>
              Begin again
            </button>
          )}
        </p>
      )}
    </section>
  );
}

/** Prints the list by itself; the sheet's own style leaves out the rest while this mark stands. */
function printList(): void {
  const root = document.documentElement;
  root.dataset.printing = "work";
  window.addEventListener("afterprint", () => delete root.dataset.printing, { once: true });
  window.print();
}
