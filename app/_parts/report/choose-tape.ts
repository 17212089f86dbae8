"use server";

import { cookies } from "next/headers";
import { redirect } from "next/navigation";
import { askedFrom, queryFor } from "#app/_parts/report/asked.ts";
import { tapeFrom, tapeText } from "#lib/entry/tape.ts";

/** Remembers the chosen tape and reopens the report with it; anything that is no tape changes nothing. */
export async function chooseTape(
  [stern, motor]: readonly [stern: string, motor: string],
  query: string,
  form: FormData,
): Promise<void> {
  const tape = tapeFrom(`${form.get("class")}-${form.get("division")}`);
  const asked = askedFrom(Object.fromEntries(new URLSearchParams(query)));
  if (tape) {
    const jar = await cookies();
    jar.set("tape", tapeText(tape), { path: "/", maxAge: 31_536_000, sameSite: "lax" });
  }
  const address = `/fit/${encodeURIComponent(stern)}/${encodeURIComponent(motor)}`;
  redirect(`${address}${queryFor(asked, tape && { tape })}`);
}
