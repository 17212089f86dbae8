"use client";

import { useRouter } from "next/navigation";
import type { ListAsked } from "#app/shortlist/_parts/asked.ts";
import look from "#app/shortlist/_parts/shortlist.module.css";
import type { Sieve } from "#app/shortlist/_parts/sieve.ts";
import type { Kind } from "#lib/db/kind.ts";

const SHOW = [
  ["fits", "Those that fit"],
  ["open", "Those that may fit"],
] as const;

/** Narrows and orders the list; what is set stands in the address. Without script the form asks the server. */
export function SieveForm({
  kind,
  path,
  asked,
  sieves,
  orders,
}: {
  readonly kind: Kind;
  readonly path: string;
  readonly asked: ListAsked;
  readonly sieves: readonly Sieve[];
  /** Questions the list can be ordered by. */
  readonly orders: Sieve["choices"];
}) {
  const router = useRouter();
  const set = Object.keys(asked.sieve).length + Number(asked.like) + Number(asked.lengths === "in");
  function ask(form: HTMLFormElement) {
    const chosen = [...new FormData(form)].flatMap(([name, value]) =>
      value === "" ? [] : [[name, String(value)]],
    );
    const query = new URLSearchParams(chosen);
    router.replace(query.size > 0 ? `${path}?${query}` : path, { scroll: false });
  }
  return (
    <form
      className={`not-printed ${look.narrowing}`}
      action={path}
      aria-label={`Narrow the ${kind}s`}
      onChange={(event) => ask(event.currentTarget)}
      onSubmit={(event) => {
        event.preventDefault();
        ask(event.currentTarget);
      }}
    >
      <div className="sifting">
        <Choose name="show" label="Show" empty="All" value={asked.show} choices={SHOW} />
        <Choose name="sort" label="Order" empty="Surest fit first" value={asked.sort} choices={orders} />
      </div>
      <details open={set > 0}>
        <summary>{set === 0 ? "Narrow the list, fill gaps, inches" : `Narrow the list (${set} set)`}</summary>
        <div className="sifting">
          {sieves.map(({ name, label, choices }) => (
            <Choose
              key={name}
              name={name}
              label={label}
              empty="Any"
              value={asked.sieve[name] ?? ""}
              choices={choices}
            />
          ))}
          <Choose
            name="like"
            label="Numbers nobody took"
            empty="Left open"
            value={asked.like ? "1" : ""}
            choices={[["1", "Filled from like motors"]]}
          />
          <Choose
            name="units"
            label="Lengths in"
            empty="Millimetres"
            value={asked.lengths === "in" ? "in" : ""}
            choices={[["in", "Inches"]]}
          />
        </div>
      </details>
      <noscript>
        <button type="submit">Show</button>
      </noscript>
    </form>
  );
}

function Choose({
  name,
  label,
  empty,
  value,
  choices,
}: {
  readonly name: string;
  readonly label: string;
  readonly empty: string;
  readonly value: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
}) {
  return (
    <div>
      <label htmlFor={`sieve-${name}`}>{label}</label>
      <select key={value} id={`sieve-${name}`} name={name} defaultValue={value}>
        <option value="">{empty}</option>
        {choices.map(([each, words]) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}
