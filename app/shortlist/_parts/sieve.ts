/** What a list of motors or sterns can be narrowed by. A record whose fact is not known passes no sieve on that fact. */
import { choices } from "#app/_parts/form/words.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import type { Motor } from "#lib/rig/motor.ts";

/** One way to narrow a list: its name in the address, its words, its choices. */
export interface Sieve {
  readonly name: string;
  readonly label: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
}

const WELL: Sieve = {
  name: "well",
  label: "How well measured",
  choices: [
    ["5", "5 numbers or more with a tape"],
    ["15", "15 or more"],
    ["25", "25 or more"],
  ],
};

/** The sieves of each kind's list. */
export const sieves: Readonly<Record<Kind, readonly Sieve[]>> = {
  motor: [
    { name: "shaftClass", label: "Shaft", choices: choices.shaftClass!.choices },
    {
      name: "power",
      label: "Power",
      choices: [
        ["0-3", "up to 3 hp"],
        ["3-6", "3 to 6 hp"],
        ["6-10", "6 to 10 hp"],
        ["10-20", "10 to 20 hp"],
        ["20-40", "20 to 40 hp"],
        ["40-", "40 hp and over"],
      ],
    },
    {
      name: "mass",
      label: "Mass",
      choices: [
        ["0-20", "up to 20 kg"],
        ["0-30", "up to 30 kg"],
        ["0-50", "up to 50 kg"],
        ["0-80", "up to 80 kg"],
        ["0-120", "up to 120 kg"],
      ],
    },
    { name: "steering", label: "Steering", choices: choices.steering!.choices },
    { name: "strokes", label: "Strokes", choices: choices.strokes!.choices },
    WELL,
  ],
  stern: [{ name: "hullForm", label: "Hull form", choices: choices.hullForm!.choices }, WELL],
};

/** Whether a record passes every sieve that is set. */
export function passes<K extends Kind>(record: RecordOf<K>, set: Readonly<Record<string, string>>): boolean {
  return Object.entries(set).every(([name, wanted]) => {
    if (name === "well") return measured(record) >= Number(wanted);
    if (name === "power") return within(horsepower(record as Motor), wanted);
    if (name === "mass") return within((record as Motor).massKg?.value, wanted);
    return String((record as unknown as Record<string, unknown>)[name]) === wanted;
  });
}

const horsepower = ({ powerKw }: Motor): number | undefined =>
  powerKw && (powerKw.value * 1000) / WATTS_PER_HORSEPOWER;

/** A hair of rounding: 14.9140 kW is 20 hp. */
const HAIR = 0.005;

function within(value: number | undefined, range: string): boolean {
  if (value === undefined) return false;
  const [least, most] = range.split("-");
  return value >= Number(least) - HAIR && (!most || value <= Number(most) + HAIR);
}

/** How many of a record's numbers were taken with a tape or a level on the very thing. */
const measured = (record: object): number =>
  Object.values(record).filter((entry) => (entry as { how?: unknown } | undefined)?.how === "measured")
    .length;
