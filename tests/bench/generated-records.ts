/**
 * Motors of invented words, for measuring searches: labels of two words out of 20,000 and a number, a class, a
 * power, a year, notes of five to twelve words. And queries on them of the kinds people type, each with the
 * record that is meant.
 */
import { type Chance, chance } from "#app/_command/chance.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { type Motor, SHAFT_CLASSES, STEERINGS } from "#lib/rig/motor.ts";

const HEADS = "b,br,c,ch,d,dr,f,fl,g,gr,h,j,k,l,m,n,p,pl,r,s,sh,st,t,tr,v,w".split(",");
const HEARTS = "a,e,i,o,u,ai,ea,ou,oo".split(",");
const TAILS = "n,r,l,st,ck,m,nd,t,sk,rn,lt,p".split(",");
const POWERS_HP = [2, 2.5, 4, 5, 6, 8, 9.9, 15, 20, 25, 30, 40, 60];

const syllable = ({ pick }: Chance): string => pick(HEADS) + pick(HEARTS) + pick(TAILS);
const word = (luck: Chance): string =>
  syllable(luck) + syllable(luck) + (luck.share() < 0.3 ? syllable(luck) : "");

function vocabulary(size: number): string[] {
  const luck = chance(7);
  const words = new Set<string>();
  while (words.size < size) words.add(word(luck));
  return [...words];
}

/** The same records every time for one number of them. */
export function inventedMotors(count: number): Motor[] {
  const words = vocabulary(20_000);
  const luck = chance(count);
  const { pick, between } = luck;
  return Array.from({ length: count }, (_, at): Motor => {
    const hp = pick(POWERS_HP);
    const notes = Array.from({ length: Math.floor(between(5, 13)) }, () => pick(words));
    return {
      id: `m-${at}`,
      label: `${pick(words)} ${pick(words)} ${Math.floor(between(1, 1000))}`,
      notes: notes.join(" "),
      shaftClass: pick(SHAFT_CLASSES),
      steering: pick(STEERINGS),
      year: Math.floor(between(1970, 2026)),
      powerKw: { value: Number(((hp * WATTS_PER_HORSEPOWER) / 1000).toFixed(1)), how: "declared" },
    };
  });
}

/** A query, the kind of it, and what its answer must hold: one record, or five with a word that begins so. */
export interface Asked {
  readonly kind: "exact" | "prefix" | "typo" | "cross" | "typeahead";
  readonly query: string;
  readonly wanted: string;
}

const KINDS = ["exact", "prefix", "typo", "cross", "typeahead"] as const;

/** One slip somewhere in a word: a letter dropped, doubled, changed, or swapped with its neighbour. */
function slipped(text: string, { pick, between }: Chance): string {
  const at = Math.floor(between(0, text.length - 1));
  const [head, letter, next, tail] = [text.slice(0, at), text[at]!, text[at + 1]!, text.slice(at + 2)];
  const made = [
    head + next + tail,
    head + letter + letter + next + tail,
    `${head}${pick([..."aeioulnrst"])}${next}${tail}`,
    head + next + letter + tail,
  ];
  return pick(made);
}

/** Queries on these records, the kinds in turn. */
export function queriesOn(motors: readonly Motor[], count: number): Asked[] {
  const luck = chance(count + 99);
  return Array.from({ length: count }, (_, at): Asked => {
    const { label, id, shaftClass, powerKw } = luck.pick(motors);
    const [one = "", two = "", number = ""] = label.split(" ");
    const hp = POWERS_HP.find(
      (each) => Math.abs((each * WATTS_PER_HORSEPOWER) / 1000 - powerKw!.value) < 0.06,
    );
    const kind = KINDS[at % KINDS.length]!;
    const query = {
      exact: () => `${one} ${two} ${number}`,
      prefix: () => `${one} ${two.slice(0, 3)}`,
      typo: () => `${slipped(one, luck)} ${two}`,
      cross: () => `${slipped(one, luck)} ${shaftClass} ${hp} hp`,
      typeahead: () => one.slice(0, luck.share() < 0.5 ? 3 : 4),
    }[kind]();
    return { kind, query, wanted: kind === "typeahead" ? query : id };
  });
}
