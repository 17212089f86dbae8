"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { createRecords, historyOf } from "#lib/db/records.ts";
import { sameRecord } from "#lib/db/same.ts";
import { isStoreError } from "#lib/db/store-error.ts";
import { readCsv } from "#lib/share/csv.ts";
import { type Imported, MOST_BYTES } from "#lib/share/imported.ts";
import { readJson } from "#lib/share/json.ts";

/** What came of a file that was not brought in: where in it, and why. */
export interface BroughtIn {
  readonly says?: string;
  readonly faults: readonly { readonly place: string; readonly says: string }[];
}

/**
 * Brings in a file of records, JSON or CSV. With a fault in it nothing is brought in and every fault is
 * told, unless the sender asked to have the sound ones. What stands here already just the same is passed over.
 */
export async function bringIn(kind: Kind, _before: BroughtIn, form: FormData): Promise<BroughtIn> {
  const file = form.get("file");
  if (!(file instanceof File) || file.size === 0) return { says: "Choose a file first.", faults: [] };
  if (file.size > MOST_BYTES)
    return { says: "The file is larger than 1 MB, the most that is read at once.", faults: [] };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const read = isJson(file, bytes) ? readJson(kind, bytes) : readCsv(kind, bytes);
  const { fresh, clashes, same } = await sorted(kind, read);
  const faults = [...read.errors.map(placed), ...clashes];
  if (faults.length > 0 && form.get("sound") !== "yes") return { says: "Nothing was brought in.", faults };
  if (fresh.length === 0)
    return {
      says: same > 0 ? `All ${same} stand here already, just the same.` : "There was nothing to bring in.",
      faults,
    };
  try {
    await createRecords(fresh.map((record) => ({ kind, record })));
  } catch (error) {
    if (!isStoreError(error)) throw error;
    return { says: error.message, faults: [] };
  }
  revalidatePath("/", "layout");
  redirect(`/${kind}s?brought=${fresh.length}`);
}

/** A file whose name says nothing is JSON when it begins like JSON. */
function isJson(file: File, bytes: Uint8Array): boolean {
  if (/\.json$/i.test(file.name) || file.type === "application/json") return true;
  if (/\.(csv|tsv|txt)$/i.test(file.name)) return false;
  return /^\s*[[{]/.test(new TextDecoder().decode(bytes.slice(0, 200)));
}

const placed = ({ row, column, says }: Imported<unknown>["errors"][number]) => ({
  place: [row > 0 ? `Row ${row}` : "The file", column].filter(Boolean).join(", "),
  says,
});

/** A file's records as they meet what stands here: new ones, those just the same, and those whose id another has or had. */
async function sorted<K extends Kind>(kind: K, { records }: Imported<RecordOf<K>>) {
  const fresh: RecordOf<K>[] = [];
  const clashes: { place: string; says: string }[] = [];
  let same = 0;
  for (const record of records) {
    const last = (await historyOf(kind, record.id)).at(-1);
    if (!last) fresh.push(record);
    else if (last.action !== "remove" && sameRecord(last.record, record)) same += 1;
    else clashes.push({ place: record.label, says: clashWords(kind, record.id, last.action === "remove") });
  }
  return { fresh, clashes, same };
}

const clashWords = (kind: Kind, id: string, removed: boolean): string =>
  removed
    ? `A ${kind} with the id ${id} was removed here. Bring it back from its history, or give this one another id.`
    : `Another ${kind} with the id ${id} stands here. Give this one another id, or edit the one here.`;
