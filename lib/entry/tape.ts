/** The tape somebody reads: its class and the smallest division read, as sent and as written in an address. */
import { z } from "zod";
import { numberSchema } from "#lib/entry/measured.ts";
import { notThat } from "#lib/entry/words.ts";
import { inches } from "#lib/quantity/length.ts";
import { TAPE_CLASSES, type Tape } from "#lib/quantity/uncertainty.ts";

/** A division tapes are read to: its text in an address, its words on a page, its length in mm. */
export interface Division {
  readonly text: string;
  readonly words: string;
  readonly mm: number;
}

const metric = (mm: number): Division => ({ text: String(mm), words: `${mm} mm`, mm });
const imperial = (under: number): Division => ({
  text: `1/${under}in`,
  words: `1/${under} in`,
  mm: inches(1 / under),
});

/** The divisions a page offers, as tapes carry them: millimetres from fine to coarse, then inches. */
export const DIVISIONS: readonly Division[] = [...[0.5, 1, 2, 5].map(metric), ...[16, 8, 4].map(imperial)];

/** The classes of tapes, best first. */
export const CLASSES = Object.keys(TAPE_CLASSES) as readonly Tape["tapeClass"][];

const wanted = `{ "tapeClass", "divisionMm" }`;

/** A tape as sent: class I, II or III, and the smallest division read, 0.1 to 50 mm. */
export const tapeSchema = z.strictObject(
  {
    tapeClass: z.enum(CLASSES, {
      error: ({ input }) => notThat("The tape's class", "I, II or III", input),
    }),
    divisionMm: numberSchema({ name: "The tape's division", unit: "mm", min: 0.1, max: 50 }),
  },
  { error: ({ input }) => notThat("The tape", wanted, input) },
);

/** The division within a hundredth of a millimetre of a length, where there is one. */
export const divisionOf = (mm: number): Division | undefined =>
  DIVISIONS.find((division) => Math.abs(division.mm - mm) < 0.01);

/** A tape as text: class, hyphen, division: `II-1`, `III-1/16in`. */
export const tapeText = ({ tapeClass, divisionMm }: Tape): string =>
  `${tapeClass}-${divisionOf(divisionMm)?.text ?? divisionMm}`;

/** Reads `II-1` or `II-1/16in`; capitals do not matter. Undefined where it is no tape and division offered. */
export function tapeFrom(text: string): Tape | undefined {
  const [name = "", ...rest] = text.trim().split("-");
  const tapeClass = CLASSES.find((each) => each === name.toUpperCase());
  const division = DIVISIONS.find((each) => each.text === rest.join("-").toLowerCase());
  return tapeClass && division && { tapeClass, divisionMm: division.mm };
}
