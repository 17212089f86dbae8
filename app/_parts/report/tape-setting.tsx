"use client";

import { useRouter } from "next/navigation";
import type { FormEvent } from "react";
import { type Asked, queryFor, tapeCookie, tapeWords } from "#app/_parts/report/asked.ts";
import { chooseTape } from "#app/_parts/report/choose-tape.ts";
import { CLASSES, DIVISIONS, divisionOf, tapeFrom } from "#lib/entry/tape.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import look from "./doubt.module.css";

/** Which tape the lengths were read from. It stands in the address and is remembered. Without script the form does the same by a round trip. */
export function TapeSetting({
  asked,
  tape,
  path,
}: {
  readonly asked: Asked;
  readonly tape: Tape;
  readonly path: readonly [stern: string, motor: string];
}) {
  const router = useRouter();
  const choose = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const chosen = tapeFrom(`${form.get("class")}-${form.get("division")}`);
    if (!chosen) return;
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store API is not in every browser a boatyard has
    document.cookie = tapeCookie(chosen);
    router.replace(queryFor(asked, { tape: chosen }), { scroll: false });
  };
  return (
    <details className={look.tape}>
      <summary>Tape: {tapeWords(tape)}</summary>
      <form action={chooseTape.bind(null, path, queryFor(asked))} onSubmit={choose} className={look.tapeForm}>
        <label>
          Class, printed on the tape in an oval
          <select name="class" defaultValue={tape.tapeClass} key={tape.tapeClass}>
            {CLASSES.map((each) => (
              <option key={each} value={each}>
                {each === "II" ? "II, or not known" : each}
              </option>
            ))}
          </select>
        </label>
        <label>
          Smallest division you read
          <select
            name="division"
            defaultValue={divisionOf(tape.divisionMm)?.text}
            key={divisionOf(tape.divisionMm)?.text}
          >
            {DIVISIONS.map(({ text, words }) => (
              <option key={text} value={text}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">Reckon with this tape</button>
        <p className="soft small">
          Counts for lengths that were measured and have no ± of their own. Finding the edge of a rounded
          bracket weighs more than the tape, and is reckoned in: 2 mm.
        </p>
      </form>
    </details>
  );
}
