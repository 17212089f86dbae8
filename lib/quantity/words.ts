/**
 * Quantities as people read them in a sentence. Figures for reading, not for sawing: millimetres to one
 * (a tenth below ten), inches to the nearest sixteenth.
 */
import { MM_PER_INCH } from "#lib/quantity/length.ts";

/** Writes a length given in millimetres, sign and unit included. */
export type LengthWriter = (mm: number) => string;
/** The two systems people read lengths in. */
export type LengthSystem = "mm" | "in";

const MINUS = "\u2212";
const signed = (negative: boolean, text: string): string => (negative ? `${MINUS}${text}` : text);

/** A number to one unit, or to a tenth when it is below ten; no trailing zero, a true minus sign. */
export function figure(value: number): string {
  const size = Math.abs(value);
  const text = size < 9.95 ? String(Number(size.toFixed(1))) : size.toFixed(0);
  return signed(value < 0 && text !== "0", text);
}

/** "43 mm". */
export const inMillimetres: LengthWriter = (mm) => `${figure(mm)} mm`;

/** "1 11/16 in", to the nearest sixteenth. */
export const inInches: LengthWriter = (mm) => {
  const sixteenths = Math.round((Math.abs(mm) / MM_PER_INCH) * 16);
  const whole = Math.floor(sixteenths / 16);
  let [over, under] = [sixteenths % 16, 16];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const parts = [whole > 0 || over === 0 ? String(whole) : "", over > 0 ? `${over}/${under}` : ""];
  return `${signed(mm < 0 && sixteenths > 0, parts.filter(Boolean).join(" "))} in`;
};

/** The writer of a system. */
export const lengthWriter = (system: LengthSystem): LengthWriter =>
  system === "in" ? inInches : inMillimetres;

/** "12°", "2.5°". */
export const inDegrees = (degrees: number): string => `${figure(degrees)}°`;
