import type { How, Unit } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";

/** How a number was come by, in plain words: long at the head of a form, short beside each number. */
export const howWords: Readonly<Record<How, { readonly long: string; readonly short: string }>> = {
  measured: { long: "Measured, with a tape, on this very one", short: "Measured" },
  declared: { long: "From papers, a label or the seller", short: "Papers or seller" },
  estimated: { long: "Estimated: by eye, from a photo, typical", short: "Estimated" },
};

export const HOWS = ["measured", "declared", "estimated"] as const satisfies readonly How[];

/** How a number is taken to be come by where nobody said: power and mass are read off papers, not taped. */
export function usualHow(unit: Unit, atTheHead: string | undefined): How {
  const head = HOWS.find((how) => how === atTheHead) ?? "measured";
  return head === "measured" && (unit === "kg" || unit === "kW") ? "declared" : head;
}

const EXAMPLES: Readonly<Record<Unit, string>> = {
  mm: "e.g. 20 1/2 in or 520 mm",
  deg: "e.g. 12",
  kg: "e.g. 45 kg or 99 lb",
  kW: "e.g. 7.4 kW or 9.9 hp",
  count: "e.g. 2",
};

/** What may be typed into a box, by an example of the field's own size. */
export function exampleOf(name: string, { unit, max }: Field): string {
  if (name === "pinAnglesDeg") return "e.g. 4, 8, 12, 16";
  return unit === "mm" && max >= 5000 ? "e.g. 4.6 m or 15 ft 2 in" : EXAMPLES[unit];
}

/** A plain fact that is chosen, not measured: what it is called and what it can be. */
export interface Choice {
  readonly label: string;
  readonly hint?: string;
  readonly choices: readonly (readonly [value: string, words: string])[];
}

/** The chosen facts of both kinds, by key. That a fact is not known is a choice every one of them has. */
export const choices: Readonly<Record<string, Choice>> = {
  shaftClass: {
    label: "Shaft class",
    hint: "What the trade calls it, by its nominal length; the measured shaft length counts for more.",
    choices: [
      ["short", "Short, 15 in"],
      ["long", "Long, 20 in"],
      ["extra-long", "Extra-long, 25 in"],
      ["ultra-long", "Ultra-long, 30 in"],
    ],
  },
  steering: {
    label: "Steering",
    choices: [
      ["tiller", "Tiller"],
      ["remote", "Remote"],
    ],
  },
  fixing: {
    label: "How it is held",
    hint: "A motor bolted through the transom has no clamps to ask about.",
    choices: [
      ["clamped", "Clamp screws"],
      ["bolted", "Bolted through"],
    ],
  },
  tillerFolds: {
    label: "Is the tiller folded up before tilting?",
    choices: [
      ["yes", "Yes, folded up first"],
      ["no", "No, it stays down"],
    ],
  },
  strokes: {
    label: "Strokes",
    choices: [
      ["2", "Two-stroke"],
      ["4", "Four-stroke"],
      ["0", "Electric"],
    ],
  },
  hullForm: {
    label: "Hull form at the stern",
    choices: [
      ["flat", "Flat bottom"],
      ["vee", "Vee bottom"],
      ["round", "Round bilge"],
    ],
  },
  hardChine: {
    label: "Hard chine",
    hint: "A corner, not a curve, where the bottom meets the side.",
    choices: [
      ["yes", "Yes"],
      ["no", "No"],
    ],
  },
};
