"use client";

import { checksClosedBy, ownNeeds } from "#app/_parts/form/told-by.ts";
import { keyName } from "#app/_parts/key-name.ts";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Report } from "#lib/fit/report.ts";
import type { Group } from "#lib/rig/field.ts";

const WORDS = {
  fits: "Fits",
  fouls: "Fouls",
  "cannot tell": "Cannot tell",
  "not asked": "Not asked",
} as const;

/** What can be told once a group of numbers is in: against the other half of the pairing where one is chosen, else which questions it answers. */
export function Told({
  kind,
  group,
  report,
  known,
  partner,
}: {
  kind: Kind;
  group: Group;
  /** The report against the chosen partner; absent while none is chosen or nothing can be worked out. */
  report: Report | undefined;
  /** Keys of this form that have a number. */
  known: ReadonlySet<string>;
  partner: string | undefined;
}) {
  const ids = checksClosedBy(kind, group);
  if (ids.length === 0) return null;
  return (
    <aside className="told" aria-label={`What can be told so far, ${group}`}>
      <p>
        <strong>{report && partner ? `So far, against ${partner}` : "What these numbers answer"}</strong>
      </p>
      <ul className="plain">
        {report && partner
          ? report.checks
              .filter(({ id }) => ids.includes(id))
              .map(({ id, outcome, question, says }) => (
                <li key={id}>
                  <span className="word" data-outcome={outcome}>
                    {WORDS[outcome]}
                  </span>
                  <span>
                    {question} {says}
                  </span>
                </li>
              ))
          : ids.map((id) => <Open key={id} kind={kind} id={id} known={known} />)}
      </ul>
    </aside>
  );
}

/** A question without a partner: whether this half of its numbers is complete, and what it still wants. */
function Open({ kind, id, known }: { kind: Kind; id: string; known: ReadonlySet<string> }) {
  const check = checks.find((each) => each.id === id)!;
  const wanting = ownNeeds(kind, id).filter((key) => !known.has(key));
  return (
    <li>
      <span className="word">{wanting.length === 0 ? "Can be told" : "Not yet"}</span>
      <span>
        {check.question}
        {wanting.length > 0 && ` Still wants ${wanting.map((key) => keyName(key).toLowerCase()).join(", ")}.`}
      </span>
    </li>
  );
}
