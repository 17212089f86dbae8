"use server";

import { redirect } from "next/navigation";

/** Goes on to the report of the motor and the stern that were picked; with one of them missing, stays. */
export async function goToReport(form: FormData): Promise<void> {
  const [motor, stern] = [form.get("motor"), form.get("stern")];
  if (typeof motor !== "string" || typeof stern !== "string" || !motor || !stern) redirect("/?pick=both");
  redirect(`/fit/${encodeURIComponent(stern)}/${encodeURIComponent(motor)}`);
}
