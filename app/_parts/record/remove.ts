"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import type { Kind } from "#lib/db/kind.ts";
import { removeRecord, restoreRecord } from "#lib/db/records.ts";

/** Removes a record and goes on to its drawer, where it can be undone. One that was changed meanwhile stays, and its sheet says so. */
export async function remove(kind: Kind, id: string, version: number): Promise<void> {
  const done = await removeRecord(kind, id, version);
  if (done && "conflict" in done) redirect(`/${kind}s/${id}?changed=1`);
  revalidatePath("/", "layout");
  redirect(`/${kind}s?removed=${encodeURIComponent(id)}`);
}

/** Brings a removed record back as it was, and goes on to its sheet. */
export async function restore(kind: Kind, id: string): Promise<void> {
  const back = await restoreRecord(kind, id);
  revalidatePath("/", "layout");
  redirect(back ? `/${kind}s/${id}?restored=1` : `/${kind}s`);
}
