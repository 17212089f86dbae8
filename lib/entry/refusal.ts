/** Why typed text was not taken, in the words shown beside the field. Each says what is wrong and what to type. */
export const REFUSALS = {
  empty: "Nothing was typed. Type a number and its unit, for instance 394 mm.",
  "too-long": "That is longer than any measurement. Type one number and its unit, for instance 394 mm.",
  "too-many-digits":
    "That is far too many digits for a measurement. Type it as the tape shows it, for instance 394 mm.",
  "too-large": "That is more than any boat or motor has. Check the number and its unit, for instance 394 mm.",
  "not-a-number": "NaN is no number. Type what the tape shows, for instance 394 mm.",
  infinite: "No measurement is endless. Type what the tape shows, for instance 394 mm.",
  hexadecimal: "Numbers beginning with 0x are not read here. Type ordinary digits, for instance 16 mm.",
  exponent: "Powers of ten such as 1e3 are not read here. Type the number in full, for instance 1000 mm.",
  negative: "This cannot be less than nothing. Type it without the minus, for instance 15 1/2 in.",
  "zero-below": 'A fraction cannot have 0 below its line. Type for instance 15 1/2".',
  "fraction-above-one":
    'The fraction after a whole number must be less than one. Type for instance 16 15/16".',
  "two-fractions": 'There are two fractions here. Type one number with one fraction, for instance 15 1/2".',
  "fraction-metric":
    "Fractions go with inches and feet only. Type decimals, for instance 15.5 mm, or 15 1/2 in.",
  denominator:
    'Tapes divide the inch by 2, 4, 8, 16, 32 or 64 only. Type for instance 15 5/16", or decimals: 15.3 in.',
  "fraction-decimal":
    'A number with decimals cannot have a fraction as well. Type for instance 15.5 in or 15 1/2".',
  "two-lengths": 'Only one length goes here. Type for instance 15".',
  "inches-after-feet":
    "After feet there can be less than twelve inches only. Type for instance 1 ft 3 1/2 in.",
  "feet-whole": "Feet followed by inches must be a whole number. Type for instance 1 ft 3 1/2 in.",
  "number-shape": "The commas and points in this number do not add up. Type for instance 1234.5 mm.",
  "unknown-unit": "This unit is not known here. Use mm, cm, m, in or ft, for instance 39.4 cm.",
  "no-number": "There is no number here. Type a number and its unit, for instance 394 mm.",
  unreadable: 'This cannot be read as a length. Type for instance 394 mm, 39.4 cm or 15 1/2".',
} as const;

/** Why text was refused: a key of {@link REFUSALS}. */
export type RefusalCode = keyof typeof REFUSALS;

/** Text that was not taken: `says` names the fault and an example of what to type. */
export interface Refused {
  readonly kind: "refused";
  readonly text: string;
  readonly code: RefusalCode;
  readonly says: string;
}

/** A refusal of `text`, with the words of `code` or with `says` where the quantity has better ones. */
export const refuse = (text: string, code: RefusalCode, says: string = REFUSALS[code]): Refused => ({
  kind: "refused",
  text,
  code,
  says,
});

/** Most characters a measurement is read from. */
export const MOST_CHARACTERS = 40;

/** Faults that can be named before any grammar is tried; null where there are none. `tidy` is the tidied text. */
export function earlyFault(text: string, tidy: string): RefusalCode | null {
  if (tidy === "") return text.trim() === "" ? "empty" : "unreadable";
  if (/\bnan\b/.test(tidy)) return "not-a-number";
  if (/infin|∞/.test(tidy)) return "infinite";
  if (/^[-+]? ?0[xob]/.test(tidy)) return "hexadecimal";
  if (/\d ?e ?[-+]?\d/.test(tidy)) return "exponent";
  if (/\d.*[x×*].*\d/.test(tidy)) return "two-lengths";
  return /\d/.test(tidy) ? null : "no-number";
}

/** Text too long to be read at all; checked before anything else so that no text costs time. */
export function tooLong(text: string): RefusalCode | null {
  if (text.length <= MOST_CHARACTERS) return null;
  const trimmed = text.trim();
  if (trimmed.length <= 4 * MOST_CHARACTERS && [...trimmed].length <= MOST_CHARACTERS) return null;
  return /^[\p{Nd}.,]+$/u.test(trimmed) ? "too-many-digits" : "too-long";
}
