import { choices } from "#app/_parts/form/words.ts";
import type { Row } from "#app/_parts/list/row.ts";
import { horsepowerOf } from "#app/_parts/record/written.ts";
import type { Kind } from "#lib/db/kind.ts";
import { searchRecords } from "#lib/search/records.ts";

/** What a list is narrowed by, as it stands in the address; an empty text narrows nothing. */
export type Sieve = Readonly<Record<string, string>>;

/** A way to narrow a list: its name in the address, its words, its choices. */
export interface Mesh {
  readonly name: string;
  readonly label: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
}

const POWERS = [
  ["0-3", "up to 3 hp"],
  ["3-6", "3 to 6 hp"],
  ["6-10", "6 to 10 hp"],
  ["10-20", "10 to 20 hp"],
  ["20-", "20 hp and over"],
] as const;

/** The ways each kind's list can be narrowed. */
export const meshes: Readonly<Record<Kind, readonly Mesh[]>> = {
  motor: [
    { name: "shaftClass", label: "Shaft", choices: choices.shaftClass!.choices },
    { name: "power", label: "Power", choices: POWERS },
    { name: "steering", label: "Steering", choices: choices.steering!.choices },
  ],
  stern: [{ name: "hullForm", label: "Hull form", choices: choices.hullForm!.choices }],
};

/** The part of an address's query that narrows a list of this kind. */
export function sieveFrom(kind: Kind, query: Readonly<Record<string, string | string[] | undefined>>): Sieve {
  const names = ["query", ...meshes[kind].map(({ name }) => name)];
  return Object.fromEntries(
    names.flatMap((name) => (typeof query[name] === "string" ? [[name, query[name]]] : [])),
  );
}

/** The rows that pass every mesh and are found by the query, best first. */
export function sift(kind: Kind, rows: readonly Row[], sieve: Sieve): readonly Row[] {
  const passing = rows.filter((row) =>
    meshes[kind].every(({ name }) => passes(row, name, sieve[name] ?? "")),
  );
  return searchRecords(passing, sieve.query ?? "");
}

/** A record whose fact is not known passes no mesh on that fact. */
function passes({ record }: Row, name: string, wanted: string): boolean {
  if (wanted === "") return true;
  const facts = record as unknown as Readonly<Record<string, unknown>>;
  if (name !== "power") return facts[name] === wanted;
  const power = facts.powerKw as { value: number } | undefined;
  if (!power) return false;
  const [least, most] = wanted.split("-");
  const horsepower = horsepowerOf(power.value);
  return horsepower >= Number(least) && (!most || horsepower <= Number(most));
}
