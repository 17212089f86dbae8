"use client";

import Link from "next/link";
import { type FormEvent, type ReactNode, startTransition, useActionState, useState } from "react";
import { ConflictNotice } from "#app/_parts/form/conflict-notice.tsx";
import { draftKey } from "#app/_parts/form/draft-key.ts";
import { FormFact } from "#app/_parts/form/form-fact.tsx";
import { FormHead } from "#app/_parts/form/form-head.tsx";
import { GroupFields } from "#app/_parts/form/group-fields.tsx";
import { groupsOf } from "#app/_parts/form/groups-of.ts";
import { readForm } from "#app/_parts/form/read-form.ts";
import type { SaveState } from "#app/_parts/form/save-state.ts";
import { StepLinks } from "#app/_parts/form/step-links.tsx";
import { TextField } from "#app/_parts/form/text-field.tsx";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import type { Trouble } from "#app/_parts/form/trouble.ts";
import { TroubleSummary } from "#app/_parts/form/trouble-summary.tsx";
import { useDraft } from "#app/_parts/form/use-draft.ts";
import { useKeypad } from "#app/_parts/form/use-keypad.ts";
import { usePartner, useReport, useRested } from "#app/_parts/form/use-report.ts";
import type { Kind } from "#lib/db/kind.ts";

/** Facts few records have: they stand folded at the end of their group. */
const RARE = ["extraSolids", "obstacles", "limits"];

/** A name to choose from. */
export interface Named {
  readonly id: string;
  readonly label: string;
}

/** The form of a motor or a stern: four groups of numbers in the trade's order, and after each what can be told so far. */
export function RecordForm({
  kind,
  id,
  version,
  initial,
  pictures,
  partners,
  save,
}: {
  kind: Kind;
  /** Absent for a new record. */
  id?: string;
  version?: number;
  initial: Texts;
  /** The picture of each field, by key. */
  pictures: Readonly<Record<string, ReactNode>>;
  /** The other half of the pairing, to be told against. */
  partners: readonly Named[];
  save: (before: SaveState, form: FormData) => Promise<SaveState>;
}) {
  const [state, send, busy] = useActionState(save, { troubles: [] });
  const [own, setOwn] = useState<readonly Trouble[]>();
  const { texts, write, resumed, startAfresh } = useDraft(draftKey(kind, id), state.texts ?? initial);
  useKeypad();
  const rested = useRested(texts);
  const partner = usePartner(kind === "motor" ? "stern" : "motor", texts.partner);
  const report = useReport(kind, rested, partner);
  const troubles = own ?? state.troubles;

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const reading = readForm(kind, id ?? "new", texts);
    setOwn(reading.record ? undefined : reading.troubles);
    const form = new FormData(event.currentTarget);
    if (reading.record) startTransition(() => send(form));
  }

  const shared = { kind, texts, rested, troubles, write };
  const factsOf = (keys: readonly string[], rare: boolean) =>
    keys
      .filter((key) => !(key in fieldsOf(kind)) && RARE.includes(key) === rare)
      .map((key) => <FormFact key={key} name={key} {...shared} />);
  return (
    <form action={send} onSubmit={submit} noValidate className="stack" aria-label={`The ${kind}`}>
      {/* Enter in a box saves: a form's first button is the one it presses, and a choice of readings may come first. */}
      <button type="submit" className="unseen" tabIndex={-1} aria-hidden="true">
        Save
      </button>
      <input type="hidden" name="version" value={state.conflict?.version ?? version ?? ""} />
      {resumed && (
        <div className="notice" role="status">
          <p>Taken up where you left off: what you had typed was still in this browser.</p>
          <button type="button" onClick={startAfresh}>
            Start afresh instead
          </button>
        </div>
      )}
      {state.conflict && <ConflictNotice kind={kind} conflict={state.conflict} texts={texts} />}
      <TroubleSummary troubles={troubles} />
      <FormHead {...shared} partners={partners} />
      <StepLinks kind={kind} texts={texts} />
      {groupsOf(kind).map(({ group, title, buys, keys }, at) => (
        <GroupFields
          key={group}
          {...shared}
          {...{ group, title, buys, pictures, report }}
          number={at + 1}
          facts={factsOf(keys, false)}
          rare={factsOf(keys, true)}
          partner={partners.find((each) => each.id === texts.partner)?.label}
        />
      ))}
      <TextField
        name="notes"
        label="Notes"
        hint="Anything the next person should know. May stay empty."
        lines={3}
        text={texts.notes ?? ""}
        trouble={troubles.find(({ name }) => name === "notes")?.says}
        write={write}
      />
      <div className="save-bar not-printed">
        <button type="submit" className="main" disabled={busy}>
          {state.conflict ? "Save mine over it" : `Save this ${kind}`}
        </button>
        <Link className="button" href={id ? `/${kind}s/${id}` : `/${kind}s`} aria-label="Back without saving">
          Back
        </Link>
        <span className="soft" role="status">
          {busy ? "Saving…" : <Count kind={kind} texts={texts} />}
        </span>
      </div>
    </form>
  );
}

/** "12 of 31 in; the rest can wait". */
function Count({ kind, texts }: { kind: Kind; texts: Texts }) {
  const keys = Object.keys(fieldsOf(kind));
  const filled = keys.filter((key) => texts[key]?.trim()).length;
  return (
    <>
      {filled} of {keys.length} in
      {filled < keys.length && <span className="on-wide">; the rest can wait</span>}
    </>
  );
}
