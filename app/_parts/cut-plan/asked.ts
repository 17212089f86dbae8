import type { Query } from "#app/_parts/report/asked.ts";
import { MOST_CUT_MOTORS } from "#lib/entry/cut-choices.ts";
import { type CutTexts, isCutName } from "#lib/entry/cut-text.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** Before the names of numbers measured after the saw, so that they stand beside the choices in one address. */
export const BUILT = "built.";

/** What an address asks of a cut plan. All of it stands there, so that a plan can be passed on as it is seen. */
export interface CutAsked {
  readonly motors: readonly string[];
  readonly lengths: LengthSystem;
  /** The choices' boxes, as typed. */
  readonly texts: CutTexts;
  /** Boxes of what was measured after the saw, as typed, by the number's key. */
  readonly built: CutTexts;
}

const one = (value: string | string[] | undefined): string =>
  typeof value === "string" ? value : (value?.[0] ?? "");
const MOST_LETTERS = 200;

/** The ids of an address, `motors=a,b` or `motors=a&motors=b`, each once. */
export function motorIdsFrom(motors: Query[string]): string[] {
  const texts = motors === undefined ? [] : typeof motors === "string" ? [motors] : motors;
  return [...new Set(texts.flatMap((text) => text.split(",")).filter(Boolean))].slice(0, MOST_CUT_MOTORS);
}

/** What an address asks for; empty boxes and names that mean nothing are left out. */
export function cutAskedFrom(query: Query): CutAsked {
  const filled = Object.entries(query)
    .map(([name, value]) => [name, one(value).slice(0, MOST_LETTERS)] as const)
    .filter(([, text]) => text.trim() !== "");
  const built = filled.filter(([name]) => name.startsWith(BUILT));
  return {
    motors: motorIdsFrom(query.motors),
    lengths: query.units === "in" ? "in" : "mm",
    texts: Object.fromEntries(filled.filter(([name]) => isCutName(name))),
    built: Object.fromEntries(built.map(([name, text]) => [name.slice(BUILT.length), text])),
  };
}

/** The query that asks for the same plan, but for the changes; `more` is added as it stands. */
export function cutQuery(
  asked: CutAsked,
  changes: Partial<CutAsked> = {},
  more: Readonly<Record<string, string>> = {},
): string {
  const { motors, lengths, texts, built } = { ...asked, ...changes };
  const query = new URLSearchParams({ motors: motors.join(","), units: lengths, ...texts });
  for (const [key, text] of Object.entries(built)) query.set(`${BUILT}${key}`, text);
  for (const [name, text] of Object.entries(more)) query.set(name, text);
  return `?${query.toString().replaceAll("%2C", ",")}`;
}

/** A plan's name for what is kept of it in this browser: the same stern, motors and choices, in whatever unit it is read. */
export function planKey(stern: string, { motors, texts }: CutAsked): string {
  const choices = Object.entries(texts).sort(([a], [b]) => (a < b ? -1 : 1));
  return `cut-plan:${stern}:${motors.toSorted().join(",")}:${new URLSearchParams(choices)}`;
}
