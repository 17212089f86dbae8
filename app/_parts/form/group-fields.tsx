"use client";

import type { ReactNode } from "react";
import { NumberField } from "#app/_parts/form/number-field.tsx";
import { type Reading, readField, readList, usualSpread } from "#app/_parts/form/read-field.ts";
import { usualUnit } from "#app/_parts/form/read-form.ts";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import { Told } from "#app/_parts/form/told.tsx";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { usualHow } from "#app/_parts/form/words.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Report } from "#lib/fit/report.ts";
import type { How } from "#lib/quantity/measured.ts";
import type { Field, Group } from "#lib/rig/field.ts";

/** One group of numbers in the trade's order, and after it what can be told so far. */
export function GroupFields({
  kind,
  group,
  title,
  buys,
  number,
  texts,
  rested,
  troubles,
  pictures,
  report,
  facts,
  rare,
  partner,
  write,
}: {
  kind: Kind;
  group: Group;
  title: string;
  buys: string;
  number: number;
  texts: Texts;
  /** The texts as they were when the typing last paused. */
  rested: Texts;
  troubles: readonly Trouble[];
  pictures: Readonly<Record<string, ReactNode>>;
  report: Report | undefined;
  /** The plain facts of the group, asked before its numbers. */
  facts: ReactNode;
  /** What few records have, folded away after the numbers. */
  rare: ReactNode;
  partner: string | undefined;
  write: (name: string, text: string) => void;
}) {
  const usual = usualUnit(kind, rested);
  const known = new Set(Object.keys(texts).filter((key) => texts[key]?.trim()));
  return (
    <section className="group" id={`group-${group}`} aria-labelledby={`group-${group}-title`}>
      <h2 id={`group-${group}-title`} className="drawn">
        {number}. {title}
      </h2>
      <p className="soft">{buys}</p>
      {facts}
      {Object.entries(fieldsOf(kind))
        .filter(([, field]) => field.group === group)
        .map(([key, field]) => {
          const reading = settled(key, field, texts, rested, usual);
          return (
            <NumberField
              key={key}
              name={key}
              field={field}
              picture={pictures[key]}
              texts={texts}
              reading={reading}
              trouble={troubles.find(({ name }) => name === key)?.says}
              spreadTrouble={troubles.find(({ name }) => name === `${key}.plusMinus`)?.says}
              usualSpread={usualSpread(field.unit, reading, howOf(key, field, texts))}
              write={write}
            />
          );
        })}
      {rare}
      <Told kind={kind} group={group} report={report} known={known} partner={partner} />
    </section>
  );
}

/** How a box is read: at once where that is plain, and only after a pause where there is something to ask or to refuse. */
function settled(
  key: string,
  field: Field,
  texts: Texts,
  rested: Texts,
  usual: ReturnType<typeof usualUnit>,
): Reading {
  const text = texts[key] ?? "";
  const reading = key === "pinAnglesDeg" ? readList(field, text) : readField(field, text, usual);
  const paused = text === (rested[key] ?? "");
  return reading.kind === "value" || paused ? reading : { kind: "empty" };
}

const howOf = (key: string, { unit }: Field, texts: Texts): How =>
  (texts[`${key}.how`] as How | undefined) ?? usualHow(unit, texts.how);
