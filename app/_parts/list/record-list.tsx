"use client";

import Link from "next/link";
import { useDeferredValue, useMemo, useState } from "react";
import type { Row } from "#app/_parts/list/row.ts";
import { meshes, type Sieve, sift } from "#app/_parts/list/sift.ts";
import { Tally } from "#app/_parts/record/tally.tsx";
import type { Kind } from "#lib/db/kind.ts";

/** Rows shown at first, and with every "more". */
const STEP = 60;

/** Search as you type and the sieves over a list; what is set stands in the address, so it can be passed on. Without script the form asks the server. */
export function RecordList({ kind, rows, sieve }: { kind: Kind; rows: readonly Row[]; sieve: Sieve }) {
  const [set, setSet] = useState(sieve);
  const [shown, setShown] = useState(STEP);
  const wanted = useDeferredValue(set);
  const found = useMemo(() => sift(kind, rows, wanted), [kind, rows, wanted]);

  function change(name: string, text: string) {
    const next = { ...set, [name]: text };
    setSet(next);
    setShown(STEP);
    const query = new URLSearchParams(Object.entries(next).filter(([, value]) => value !== ""));
    window.history.replaceState(null, "", query.size > 0 ? `?${query}` : window.location.pathname);
  }

  return (
    <div className="stack">
      {/* biome-ignore lint/a11y/useSemanticElements: <search> is not known to every browser a boatyard has */}
      <form
        className="sifting not-printed"
        role="search"
        aria-label="This list"
        action={`/${kind}s`}
        onSubmit={(event) => event.preventDefault()}
      >
        <div className="widest">
          <label htmlFor="query">Search {kind}s</label>
          <input
            type="search"
            id="query"
            name="query"
            value={set.query ?? ""}
            maxLength={64}
            autoComplete="off"
            placeholder={kind === "motor" ? "long shaft tiller" : "plywood dinghy"}
            onChange={(event) => change("query", event.target.value)}
          />
        </div>
        {meshes[kind].map(({ name, label, choices }) => (
          <div key={name}>
            <label htmlFor={name}>{label}</label>
            <select
              id={name}
              name={name}
              value={set[name] ?? ""}
              onChange={(event) => change(name, event.target.value)}
            >
              <option value="">Any</option>
              {choices.map(([value, words]) => (
                <option key={value} value={value}>
                  {words}
                </option>
              ))}
            </select>
          </div>
        ))}
        <noscript>
          <button type="submit">Search</button>
        </noscript>
      </form>
      <p role="status">{countWords(kind, found.length, rows.length)}</p>
      {found.length === 0 && rows.length > 0 && (
        <button
          type="button"
          onClick={() => {
            setSet({});
            window.history.replaceState(null, "", window.location.pathname);
          }}
        >
          Show all {rows.length}
        </button>
      )}
      <ul className="record-list">
        {found.slice(0, shown).map((row) => (
          <Line key={row.record.id} kind={kind} row={row} />
        ))}
      </ul>
      {found.length > shown && (
        <button type="button" onClick={() => setShown(shown + STEP)}>
          Show {Math.min(STEP, found.length - shown)} more
        </button>
      )}
    </div>
  );
}

function Line({ kind, row: { record, facts, howWell, demo } }: { kind: Kind; row: Row }) {
  return (
    <li>
      <Link prefetch={false} className="record-name" href={`/${kind}s/${record.id}`}>
        {record.label}
      </Link>
      <span className="facts">{facts.length > 0 ? facts.join(" · ") : "no facts yet"}</span>
      <Tally counts={howWell} />
      <span>{demo && <span className="demo-mark">invented</span>}</span>
    </li>
  );
}

function countWords(kind: Kind, found: number, all: number): string {
  if (all === 0) return `No ${kind}s yet.`;
  if (found === 0) return `Nothing found among ${all} ${kind}s. Try fewer words, or fewer of the choices.`;
  if (found < all) return `${found} of ${all} ${kind}s.`;
  return all === 1 ? `1 ${kind}.` : `${all} ${kind}s.`;
}
