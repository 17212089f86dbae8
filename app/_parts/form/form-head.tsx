"use client";

import type { Named } from "#app/_parts/form/record-form.tsx";
import { TextField } from "#app/_parts/form/text-field.tsx";
import type { Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { HOWS, howWords } from "#app/_parts/form/words.ts";
import type { Kind } from "#lib/db/kind.ts";

/** The head of the form: what to call it, whom to tell against, and how most numbers were come by. */
export function FormHead({
  kind,
  texts,
  troubles,
  partners,
  write,
}: {
  kind: Kind;
  texts: Texts;
  troubles: readonly Trouble[];
  partners: readonly Named[];
  write: (name: string, text: string) => void;
}) {
  const other = kind === "motor" ? "stern" : "motor";
  return (
    <section aria-labelledby="head">
      <h2 id="head" className="drawn">
        The {kind}
      </h2>
      <TextField
        name="label"
        text={texts.label ?? ""}
        trouble={troubles.find(({ name }) => name === "label")?.says}
        write={write}
        label="Label"
        required
        hint={
          kind === "motor"
            ? "A few generic words by which you will know it again, such as: grey long-shaft from the harbour."
            : "A few generic words by which you will know it again, such as: plywood dinghy, raked transom."
        }
      />
      <div className="field plainly">
        <div className="field-words">
          <label htmlFor="partner">Tell me as I go, against this {other}</label>
          <p className="soft">May stay empty: then it says which questions your numbers can answer.</p>
        </div>
        <select
          id="partner"
          name="partner"
          value={texts.partner ?? ""}
          onChange={(event) => write("partner", event.target.value)}
        >
          <option value="">None yet</option>
          {partners.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </select>
      </div>
      <div className="field plainly" role="radiogroup" aria-labelledby="how-asked">
        <div className="field-words">
          <p className="asked" id="how-asked">
            How most of these numbers were come by
          </p>
          <p className="soft">Each number may say otherwise.</p>
        </div>
        <div className="choices long">
          {HOWS.map((how) => (
            <label key={how} className="choice">
              <input
                type="radio"
                name="how"
                value={how}
                checked={(texts.how ?? "measured") === how}
                onChange={() => write("how", how)}
              />
              {howWords[how].long}
            </label>
          ))}
        </div>
      </div>
    </section>
  );
}
