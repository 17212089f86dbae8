/**
 * Lengths as they are marked on the wood: to the nearest millimetre or sixteenth on the safe side, which
 * is always said. Wood left on can still come off.
 */
import { MM_PER_INCH } from "#lib/quantity/length.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** A length to mark. */
export interface Marked {
  /** As worked out, mm. */
  readonly mm: number;
  /** As marked: on a whole millimetre or sixteenth of an inch. */
  readonly markMm: number;
  /** The mark in the reader's own unit. */
  readonly text: string;
  /** Which way it was rounded. */
  readonly rounded: "up" | "down" | "not at all";
}

/** Finest step of a rule, mm. */
export const stepOf = (system: LengthSystem): number => (system === "in" ? MM_PER_INCH / 16 : 1);

/** A hair of rounding: a length this close to a step stands on it, in steps. */
const HAIR = 1e-6;

/** The length on the step at or above (`up`) or at or below (`down`) it. */
export function marked(mm: number, safe: "up" | "down", system: LengthSystem): Marked {
  const step = stepOf(system);
  const steps = safe === "up" ? Math.ceil(mm / step - HAIR) : Math.floor(mm / step + HAIR);
  const markMm = steps * step + 0;
  const rounded = Math.abs(markMm - mm) < HAIR * step ? "not at all" : safe;
  return { mm, markMm, text: textOf(markMm, system), rounded };
}

/** A mark as people read it: whole millimetres, or inches and sixteenths. */
export const textOf = (markMm: number, system: LengthSystem): string =>
  system === "in" ? lengthWriter("in")(markMm) : `${Math.round(markMm)} mm`;

/** A length that was brought onto its mark before, or is not marked at all: shown to the nearest step. */
export const exactly = (mm: number, rounded: Marked["rounded"], system: LengthSystem): Marked => ({
  mm,
  markMm: mm,
  text: textOf(Math.round(mm / stepOf(system)) * stepOf(system), system),
  rounded,
});

/** How far a cut may stray from its mark and still do, mm; `says` in words. */
export interface Tolerance {
  readonly moreMm: number;
  readonly lessMm: number;
  readonly says: string;
}
