"use client";

import { useRouter } from "next/navigation";
import { type ReactNode, useActionState, useEffect, useRef, useState, useTransition } from "react";
import { ChoiceField } from "#app/_parts/form/choice-field.tsx";
import { NumberField } from "#app/_parts/form/number-field.tsx";
import { readField, readList, usualSpread } from "#app/_parts/form/read-field.ts";
import { usualUnit } from "#app/_parts/form/read-form.ts";
import type { SaveState } from "#app/_parts/form/save-state.ts";
import type { Texts } from "#app/_parts/form/texts.ts";
import { useRested } from "#app/_parts/form/use-report.ts";
import { choices, usualHow } from "#app/_parts/form/words.ts";
import { saveRecord } from "#app/_parts/record/save.ts";
import look from "#app/sale/_parts/sale.module.css";
import { FACTS, saleQuery, typedKeys } from "#app/sale/_parts/typed.ts";
import type { How } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import { motorFields } from "#lib/rig/motor.ts";

const NOTHING_YET: SaveState = { troubles: [] };
const fields: Readonly<Record<string, Field>> = motorFields;

/** The few boxes, and beside them what they come to, worked out again whenever the typing rests. Saved only when asked to. */
export function SaleForm({
  sterns,
  stern,
  initial,
  shown,
  next,
  pictures,
  children,
}: {
  readonly sterns: readonly { readonly id: string; readonly label: string }[];
  readonly stern: string;
  readonly initial: Texts;
  /** Keys of the numbers that have a box. */
  readonly shown: readonly string[];
  /** The number that would settle most: its box stands first. */
  readonly next: string | undefined;
  readonly pictures: Readonly<Record<string, ReactNode>>;
  /** The verdict, from the server. */
  readonly children: ReactNode;
}) {
  const router = useRouter();
  const [texts, setTexts] = useState(initial);
  const [chosen, setChosen] = useState(stern);
  const [waiting, startWaiting] = useTransition();
  const [state, save] = useActionState(saveRecord.bind(null, "motor", null), NOTHING_YET);
  const write = (name: string, text: string) => setTexts((now) => ({ ...now, [name]: text }));
  const query = saleQuery(chosen, texts);
  const rested = useRested(query);
  const asked = useRef(saleQuery(stern, initial));
  useEffect(() => {
    if (rested === asked.current) return;
    asked.current = rested;
    startWaiting(() => router.replace(`/sale${rested}`, { scroll: false }));
  }, [rested, router]);
  const usual = usualUnit("motor", texts);
  const boxes = useBoxes([...(next && fields[next] ? [next] : []), ...shown, ...typedKeys(texts)]);
  return (
    <div className={look.sale}>
      <form className={look.form} action="/sale" aria-label="The motor at the sale">
        <div className="field plainly">
          <label htmlFor="sale-stern">Your stern</label>
          <select
            id="sale-stern"
            name="stern"
            value={chosen}
            onChange={(event) => setChosen(event.target.value)}
          >
            <option value="">Pick a stern</option>
            {sterns.map(({ id, label }) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </div>
        {FACTS.filter((name) => name !== "tillerFolds" || texts.steering === "tiller").map((name) => (
          <ChoiceField
            key={name}
            name={name}
            label={choices[name]!.label}
            choices={choices[name]!.choices}
            text={texts[name] ?? ""}
            write={write}
          />
        ))}
        {boxes.map((key) => {
          const field = fields[key]!;
          const text = texts[key] ?? "";
          const reading = key === "pinAnglesDeg" ? readList(field, text) : readField(field, text, usual);
          const how = (texts[`${key}.how`] as How | undefined) ?? usualHow(field.unit, texts.how);
          return (
            <div key={key} className={key === next ? look.next : undefined}>
              {key === next && <p className={look.nextWords}>Would tell most now</p>}
              <NumberField
                name={key}
                field={field}
                picture={pictures[key]}
                texts={texts}
                reading={reading}
                trouble={state.troubles.find(({ name }) => name === key)?.says}
                spreadTrouble={state.troubles.find(({ name }) => name === `${key}.plusMinus`)?.says}
                usualSpread={usualSpread(field.unit, reading, how)}
                write={write}
              />
            </div>
          );
        })}
        <noscript>
          <button type="submit">What does it come to?</button>
        </noscript>
      </form>
      <div className={look.verdict} aria-live="polite" aria-busy={waiting}>
        {children}
      </div>
      <form action={save} className={look.keep} aria-label="Keep this motor">
        {Object.entries(texts).map(([name, text]) => (
          <input key={name} type="hidden" name={name} value={text} />
        ))}
        <div>
          <label htmlFor="keep-label">Its name, if you want to keep it</label>
          <input type="text" id="keep-label" name="label" maxLength={80} autoComplete="off" required />
        </div>
        <button type="submit">Keep this motor</button>
        {state.troubles.length > 0 && (
          <p className="trouble-words" role="alert">
            Not kept yet. {state.troubles.map(({ label, says }) => `${label}: ${says}`).join(" ")}
          </p>
        )}
        <p className="small soft">Only what you typed is kept, nothing of what was taken from like motors.</p>
      </form>
    </div>
  );
}

/** The boxes in the order they first came, the newest first: whatever is being typed into never moves. */
function useBoxes(wanted: readonly string[]): readonly string[] {
  const [order, setOrder] = useState<readonly string[]>([]);
  const fresh = [...new Set(wanted)].filter((key) => !order.includes(key));
  const boxes = [...fresh, ...order.filter((key) => wanted.includes(key))];
  const names = boxes.join(" ");
  useEffect(() => setOrder(names.split(" ")), [names]);
  return boxes;
}
