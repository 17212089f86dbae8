"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { readForm } from "#app/_parts/form/read-form.ts";
import type { SaveState } from "#app/_parts/form/save-state.ts";
import { fieldsOf, type Texts, textsOf } from "#app/_parts/form/texts.ts";
import { freshId } from "#app/_parts/record/fresh-id.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { createRecord, updateRecord } from "#lib/db/records.ts";
import { isStoreError } from "#lib/db/store-error.ts";

/** Most boxes a form can have, and most characters in one, far above what the forms send. */
const MOST_BOXES = 600;
const MOST_CHARACTERS = 4000;

/**
 * Saves a form: a new record where `id` is null, else the next version of that one. Whatever keeps it from
 * being saved comes back with all that was typed. Saved, it goes on to the record's sheet.
 */
export async function saveRecord(
  kind: Kind,
  id: string | null,
  _before: SaveState,
  form: FormData,
): Promise<SaveState> {
  const texts = textsFrom(form);
  const chosen = chosenReading(form);
  if (chosen) return { texts: { ...texts, ...chosen }, troubles: [] };
  const made = id ?? (await freshId(kind, texts.label ?? ""));
  const { record, troubles } = readForm(kind, made, texts);
  if (!record) return { texts, troubles };
  try {
    const raw = rawOf(kind, texts);
    if (id === null) await createRecord(kind, record, raw);
    else {
      const trouble = await change(kind, record, Number(form.get("version")), raw);
      if (trouble) return { texts, ...trouble };
    }
  } catch (error) {
    if (!isStoreError(error)) throw error;
    return { texts, troubles: [{ name: "label", label: "Store", says: error.message }] };
  }
  revalidatePath("/", "layout");
  redirect(`/${kind}s/${made}?saved=1`);
}

async function change<K extends Kind>(
  kind: K,
  record: RecordOf<K>,
  version: number,
  raw: Readonly<Record<string, string>>,
): Promise<SaveState | undefined> {
  const done = await updateRecord(kind, record.id, version, record, raw);
  if (done === null) {
    const says = `This ${kind} has been removed meanwhile. Bring it back from its history, then save again.`;
    return { troubles: [{ name: "label", label: "Record", says }] };
  }
  if (!("conflict" in done)) return undefined;
  const { version: now, record: theirs } = done.current;
  return { troubles: [], conflict: { version: now, texts: textsOf(kind, theirs) } };
}

/** The texts of a form as they were sent; files and oversized boxes are not part of any form of ours. */
function textsFrom(form: FormData): Texts {
  const entries = [...form.entries()].slice(0, MOST_BOXES).flatMap(([name, text]) => {
    const ours = typeof text === "string" && !name.startsWith("$") && name !== "version" && name !== "choose";
    return ours ? [[name, text.slice(0, MOST_CHARACTERS)] as const] : [];
  });
  return Object.fromEntries(entries);
}

/** One of the readings of a box that can be read two ways, chosen without script: the box's new text. */
function chosenReading(form: FormData): Texts | undefined {
  const choice = form.get("choose");
  if (typeof choice !== "string") return undefined;
  const at = choice.indexOf("=");
  return at > 0 ? { [choice.slice(0, at)]: choice.slice(at + 1, at + 1 + MOST_CHARACTERS) } : undefined;
}

/** What was typed for each number, kept beside it. */
function rawOf(kind: Kind, texts: Texts): Readonly<Record<string, string>> {
  const keys = Object.keys(fieldsOf(kind)).filter((key) => texts[key]?.trim());
  return Object.fromEntries(keys.map((key) => [key, texts[key]!.trim()]));
}
