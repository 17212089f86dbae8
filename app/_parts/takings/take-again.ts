"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { fieldsOf, type Texts } from "#app/_parts/form/texts.ts";
import { writtenAll } from "#app/_parts/record/written.ts";
import { readTaking } from "#app/_parts/takings/read-taking.ts";
import { TAKING, type TakingState } from "#app/_parts/takings/taking-state.ts";
import type { Kind } from "#lib/db/kind.ts";
import { takeAgain } from "#lib/db/retake.ts";
import { isStoreError } from "#lib/db/store-error.ts";
import type { Taken } from "#lib/db/takings.ts";

const BOXES = ["key", TAKING, `${TAKING}.how`, `${TAKING}.plusMinus`, "comment"];
const MOST_CHARACTERS = 4000;

/** Takes one number of a record again. Whatever keeps it from being stored comes back with all that was typed; stored, it goes on to the takings. */
export async function takeNumberAgain(
  kind: Kind,
  id: string,
  _before: TakingState,
  form: FormData,
): Promise<TakingState> {
  const texts = textsFrom(form);
  const choice = form.get("choose");
  if (typeof choice === "string" && choice.startsWith(`${TAKING}=`)) {
    return { texts: { ...texts, [TAKING]: choice.slice(TAKING.length + 1) }, troubles: [] };
  }
  const key = texts.key ?? "";
  const { taking, troubles } = readTaking(kind, key, texts);
  if (!taking) return { texts, troubles };
  const trouble = (says: string) => ({ texts, troubles: [{ name: TAKING, label: "Taking", says }] });
  try {
    const done = await takeAgain(kind, id, Number(form.get("version")), taking);
    if (done === null) {
      return trouble(`This ${kind} has been removed meanwhile. Bring it back first, then take it again.`);
    }
    if ("impossible" in done) return trouble(done.impossible[0]?.detail ?? "This is not possible.");
    if ("conflict" in done) {
      const { version, record } = done.current;
      return { texts, troubles: [], conflict: { version, says: stands(kind, key, version, record) } };
    }
  } catch (error) {
    if (!isStoreError(error)) throw error;
    return trouble(error.message);
  }
  revalidatePath("/", "layout");
  redirect(`/${kind}s/${id}?taken=${key}#takings`);
}

/** How the number stands with whoever came first. */
function stands(kind: Kind, key: string, version: number, record: object): string {
  const { name, unit } = fieldsOf(kind)[key]!;
  const now: Taken[1] | undefined = Reflect.get(record, key);
  const number = now ? `${name} stands at ${writtenAll(now.value, unit).main}` : `${name} was taken away`;
  return `Somebody changed this ${kind} meanwhile: it is at version ${version}, and ${number}. Yours is not stored yet. Add it all the same?`;
}

function textsFrom(form: FormData): Texts {
  return Object.fromEntries(
    BOXES.flatMap((name) => {
      const text = form.get(name);
      return typeof text === "string" ? [[name, text.slice(0, MOST_CHARACTERS)]] : [];
    }),
  );
}
