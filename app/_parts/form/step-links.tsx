"use client";

import { groupsOf } from "#app/_parts/form/groups-of.ts";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import type { Kind } from "#lib/db/kind.ts";

/** The four groups at a glance, with how many of each one's numbers are in. */
export function StepLinks({ kind, texts }: { kind: Kind; texts: Texts }) {
  return (
    <nav className="step-links not-printed" aria-label="Groups of numbers">
      {groupsOf(kind).map(({ group, title }, at) => {
        const keys = Object.entries(fieldsOf(kind)).filter(([, field]) => field.group === group);
        const filled = keys.filter(([key]) => texts[key]?.trim()).length;
        return (
          <a key={group} href={`#group-${group}`}>
            <strong>
              {at + 1}. {title}
            </strong>
            <span className="small">
              {filled} of {keys.length} in
            </span>
          </a>
        );
      })}
    </nav>
  );
}
