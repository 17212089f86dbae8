"use client";

import { useEffect } from "react";
import { forgetDraft } from "#app/_parts/form/use-draft.ts";

/** Forgets the drafts of a form that has just been saved. */
export function ForgetDraft({ names }: { names: readonly string[] }) {
  useEffect(() => names.forEach(forgetDraft), [names]);
  return null;
}
