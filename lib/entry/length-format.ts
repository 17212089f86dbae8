/** Lengths as people read them: `394 mm`, `15 1/2 in`. Minus is the true minus sign, which is read back too. */
import { MM_PER_INCH } from "#lib/quantity/length.ts";

/** The two ways lengths are shown. */
export type LengthSystem = "mm" | "in";

/** How finely a length is shown. */
export interface LengthFormat {
  /** Decimals of the millimetre; 1 where not given. Noughts at the end are left out. */
  readonly decimals?: 0 | 1 | 2;
  /** Finest division of the inch; 16 where not given. Fractions are reduced. */
  readonly division?: 1 | 2 | 4 | 8 | 16 | 32 | 64;
}

/** A tie is taken as one when it is within this share of a step: 0.25 mm shown to 0.1 mm is 0.3 mm. */
const TIE = 1e-9;

/** Whole steps in a size, nearest; a tie goes away from zero. */
const steps = (size: number, step: number): number => Math.floor(size / step + 0.5 + TIE);

const divide = (a: number, b: number): number => (b === 0 ? a : divide(b, a % b));

function inchText(sixteenths: number, division: number): string {
  const whole = Math.floor(sixteenths / division);
  const rest = sixteenths % division;
  if (rest === 0) return `${whole} in`;
  const shared = divide(rest, division);
  return `${whole > 0 ? `${whole} ` : ""}${rest / shared}/${division / shared} in`;
}

/** The length (mm) a format shows it as: `mm` rounded to the nearest step, ties away from zero. */
export function shownMm(mm: number, system: LengthSystem, format: LengthFormat = {}): number {
  const { decimals = 1, division = 16 } = format;
  const sign = mm < 0 ? -1 : 1;
  if (system === "in")
    return (
      sign * Number(((steps(Math.abs(mm), MM_PER_INCH / division) * MM_PER_INCH) / division).toPrecision(14))
    );
  return sign * Number((steps(Math.abs(mm), 10 ** -decimals) / 10 ** decimals).toFixed(decimals));
}

/**
 * A length (mm) as text: `394 mm`, or inches with a reduced fraction, `15 1/2 in`. Rounded to the nearest
 * step of the format, ties away from zero.
 */
export function formatLength(mm: number, system: LengthSystem, format: LengthFormat = {}): string {
  const { division = 16 } = format;
  const shown = Math.abs(shownMm(mm, system, format));
  const text =
    system === "mm" ? `${shown} mm` : inchText(Math.round((shown * division) / MM_PER_INCH), division);
  return `${mm < 0 && shown > 0 ? "−" : ""}${text}`;
}

const isExact = (mm: number, shown: number): boolean => Math.abs(mm - shown) < 1e-6;

/** A length (mm) in both systems, for the line under a field: `393.7 mm = 15 1/2 in`; "about" stands before a side that was rounded. */
export function bothSystems(mm: number, format: LengthFormat = {}): string {
  const side = (system: LengthSystem): string =>
    `${isExact(mm, shownMm(mm, system, format)) ? "" : "about "}${formatLength(mm, system, format)}`;
  return `${side("mm")} = ${side("in")}`;
}
