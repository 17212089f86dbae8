/**
 * The powering factor of 33 CFR 183.53(a)(1): length in feet times transom width in feet. Kept as an exact
 * fraction, because the bands turn on it: 46 in written as 3.83 ft makes 45.96 of a factor of 46.00, and
 * another power. Lengths are counted in nanometres, in which every sixty-fourth of an inch is whole.
 */
import { MM_PER_FOOT } from "#lib/quantity/length.ts";

const NM_PER_MM = 1_000_000;
const nanometres = (mm: number): bigint => BigInt(Math.round(mm * NM_PER_MM));
const NM_PER_FOOT = nanometres(MM_PER_FOOT);

/** A factor in square feet: an exact fraction, and its value for reading. */
export interface Factor {
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly value: number;
  /** Rounded once to the nearest whole number, a half up. */
  readonly nearest: number;
}

/** The factor of a hull `lengthMm` long and `widthMm` wide at the transom. Throws where either is not above 0. */
export function factor(lengthMm: number, widthMm: number): Factor {
  if (!(lengthMm > 0 && widthMm > 0)) throw new RangeError("a factor needs a length and a width above 0");
  const numerator = nanometres(lengthMm) * nanometres(widthMm);
  const denominator = NM_PER_FOOT * NM_PER_FOOT;
  return {
    numerator,
    denominator,
    value: Number(numerator) / Number(denominator),
    nearest: Number((2n * numerator + denominator) / (2n * denominator)),
  };
}

/** Sign of `factor - tenths / 10`: -1, 0 or 1, without rounding. */
export function compare({ numerator, denominator }: Factor, tenths: number): -1 | 0 | 1 {
  const difference = 10n * numerator - BigInt(tenths) * denominator;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** A straight line of the factor in tenths of a horsepower: hp = (slopeTenths F - lessTenths) / 10. */
export interface Line {
  readonly slopeTenths: number;
  readonly lessTenths: number;
}

/** Horsepower on a line, for reading. */
export const along = ({ value }: Factor, { slopeTenths, lessTenths }: Line): number =>
  (slopeTenths * value - lessTenths) / 10;

/** Horsepower on a line raised to the next multiple of 5; an exact multiple stays. Worked without rounding. */
export function raisedToFive({ numerator, denominator }: Factor, { slopeTenths, lessTenths }: Line): number {
  const over = BigInt(slopeTenths) * numerator - BigInt(lessTenths) * denominator;
  const step = 50n * denominator;
  const fives = over / step;
  return 5 * Number(over % step > 0n ? fives + 1n : fives);
}
