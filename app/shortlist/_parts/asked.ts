/** What a reader asked of a list. All of it stands in the address, so that the list can be passed on as it is seen. */
import { sieves } from "#app/shortlist/_parts/sieve.ts";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** The values of an address's query. */
export type Query = Readonly<Record<string, string | string[] | undefined>>;

/** Which verdicts are shown. */
export const SHOWN = [
  ["", "All"],
  ["fits", "Those that fit"],
  ["open", "Those that fit or cannot be told"],
] as const;
export type Shown = (typeof SHOWN)[number][0];

export interface ListAsked {
  readonly lengths: LengthSystem;
  /** The motors' gaps are filled from like motors. */
  readonly like: boolean;
  /** "" for the surest first, else the id of a check: the most room in it first. */
  readonly sort: string;
  readonly show: Shown;
  /** Place of the first row on the sheet. */
  readonly from: number;
  /** What the list is narrowed by, by the sieve's name. */
  readonly sieve: Readonly<Record<string, string>>;
}

const one = (value: string | string[] | undefined): string => (typeof value === "string" ? value : "");
const whole = (text: string): number => (/^\d{1,6}$/.test(text) ? Number(text) : 0);

/** What an address asks for of a list of `kind`. Anything not understood is left as if it were not there. */
export function listAskedFrom(kind: Kind, query: Query): ListAsked {
  const sort = one(query.sort);
  const show = SHOWN.find(([value]) => value === one(query.show))?.[0] ?? "";
  const sieve = sieves[kind].flatMap(({ name, choices }) => {
    const wanted = one(query[name]);
    return choices.some(([value]) => value === wanted) ? [[name, wanted]] : [];
  });
  return {
    lengths: query.units === "in" ? "in" : "mm",
    like: query.like === "1",
    sort: checks.some(({ id }) => id === sort) ? sort : "",
    show,
    from: whole(one(query.from)),
    sieve: Object.fromEntries(sieve),
  };
}

/** The query that asks for the same list, but for the changes; a change of what is shown begins at its top. */
export function listQuery(asked: ListAsked, changes: Partial<ListAsked> = {}): string {
  const { lengths, like, sort, show, from, sieve } = { ...asked, from: 0, ...changes };
  const query = new URLSearchParams(sieve);
  if (sort) query.set("sort", sort);
  if (show) query.set("show", show);
  if (like) query.set("like", "1");
  if (lengths === "in") query.set("units", "in");
  if (from > 0) query.set("from", String(from));
  return query.size > 0 ? `?${query}` : "?";
}
