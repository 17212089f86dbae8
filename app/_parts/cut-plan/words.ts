import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Cautions of the steps named, each once. */
export const cautionsOf = ({ checklist }: CutPlan, ...ids: readonly string[]): string[] => [
  ...new Set(checklist.filter(({ id }) => ids.includes(id)).flatMap(({ cautions }) => cautions)),
];

/** A part's name by its id. */
export const partName = (parts: readonly CutPart[], id: string): string =>
  parts.find((part) => part.id === id)?.name ?? id;
