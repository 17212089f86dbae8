/**
 * From a half-width to a margin's spread, after the Guide to the expression of uncertainty in
 * measurement (JCGM 100:2008, the GUM) and its conformance companion (JCGM 106:2012).
 */
import type { How, Unit } from "#lib/quantity/measured.ts";

/** Coverage factor of the expanded uncertainty: about 95 % for a normal law. */
export const COVERAGE_FACTOR = 2;

/** Standard uncertainty of a number believed to lie anywhere within ± halfWidth, rectangular law (JCGM 100:2008, 4.3.7). */
export const standardUncertainty = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** Independent contributions combined: the root of the sum of squares (JCGM 100:2008, 5.1.2). */
export const combined = (contributions: readonly number[]): number => Math.hypot(...contributions);

/** An estimate that goes into a model: its value and standard uncertainty. */
export interface Estimate {
  readonly value: number;
  readonly u: number;
}

/**
 * Standard uncertainty of `model(values)` for independent inputs: the law of propagation (JCGM 100:2008,
 * 5.1.2) with sensitivities by central differences over a thousandth of each u.
 */
export function propagated(
  model: (values: readonly number[]) => number,
  inputs: readonly Estimate[],
): number {
  const values = inputs.map(({ value }) => value);
  return combined(
    inputs.map(({ value, u }, i) => {
      const step = u / 1000;
      return u === 0
        ? 0
        : ((model(values.with(i, value + step)) - model(values.with(i, value - step))) / (2 * step)) * u;
    }),
  );
}

/** A tape as the law classes it: greatest error a + b L mm, L in metres rounded up, + c where an end is a hook or a butt. */
export interface TapeClass {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** UK SI 2016/1153, Schedule 1I, paragraph 2 (mirrors Directive 2014/32/EU, Annex X). */
export const TAPE_CLASSES = {
  I: { a: 0.1, b: 0.1, c: 0.1 },
  II: { a: 0.3, b: 0.2, c: 0.2 },
  III: { a: 0.6, b: 0.4, c: 0.3 },
} as const satisfies Record<string, TapeClass>;

/** The tape a person reads and the smallest division they read it to. */
export interface Tape {
  readonly tapeClass: keyof typeof TAPE_CLASSES;
  readonly divisionMm: number;
}

/** What most people carry: a class II tape read to the millimetre. */
export const USUAL_TAPE: Tape = { tapeClass: "II", divisionMm: 1 };

/** Finding the edge of a greasy bracket, a rounded keel, a painted corner: ± mm (common practice, no source). */
const EDGE_FINDING_MM = 2;

/** Greatest error of a tape over a length, mm, hooked or butted at one end. */
export function tapeError(lengthMm: number, tapeClass: keyof typeof TAPE_CLASSES): number {
  const { a, b, c } = TAPE_CLASSES[tapeClass];
  return a + b * Math.max(1, Math.ceil(Math.abs(lengthMm) / 1000)) + c;
}

/**
 * Half-width of a number whose taker gave none, from how it was taken, in the number's own unit. Lengths:
 * measured = tape's error, half the division and edge finding combined; declared 6 mm; estimated 25 mm or
 * 5 %, the larger. Angles 1, 2 and 5 degrees. Masses and powers 2, 5 and 20 %. Counts are exact.
 * (Common practice, no source, but for the tape.)
 */
export function defaultHalfWidth(value: number, unit: Unit, how: How, tape: Tape = USUAL_TAPE): number {
  const size = Math.abs(value);
  switch (unit) {
    case "mm": {
      const taped = combined([tapeError(size, tape.tapeClass), tape.divisionMm / 2, EDGE_FINDING_MM]);
      return { measured: taped, declared: 6, estimated: Math.max(25, 0.05 * size) }[how];
    }
    case "deg":
      return { measured: 1, declared: 2, estimated: 5 }[how];
    case "kg":
    case "kW":
      return size * { measured: 0.02, declared: 0.05, estimated: 0.2 }[how];
    case "count":
      return 0;
  }
}

/** The normal law's share below z: a power series near 0, a continued fraction in the tail; absolute error under 1e-13. */
export function normalShareBelow(z: number): number {
  if (z === Number.POSITIVE_INFINITY) return 1;
  if (z === Number.NEGATIVE_INFINITY) return 0;
  const x = Math.abs(z);
  const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  const tail = x < 4 ? 0.5 - density * seriesToTail(x) : density / continuedFraction(x);
  return z > 0 ? 1 - tail : tail;
}

/** x + x^3/3 + x^5/(3·5) + …: (Phi(x) - 1/2) / density. */
function seriesToTail(x: number): number {
  let term = x;
  let sum = x;
  for (let odd = 3; term > 1e-17 * sum; odd += 2) {
    term *= (x * x) / odd;
    sum += term;
  }
  return sum;
}

/** x + 1/(x + 2/(x + 3/(x + …))): density / tail, for large x. */
function continuedFraction(x: number): number {
  let value = x;
  for (let step = 60; step >= 1; step -= 1) value = x + step / value;
  return value;
}

/**
 * Chance that a quantity estimated as `value` with standard uncertainty `u` lies within the limits
 * (JCGM 106:2012, 7): Phi((upper - value)/u) - Phi((lower - value)/u). With u = 0 it is 0 or 1.
 */
export function conformance(
  value: number,
  u: number,
  lower = Number.NEGATIVE_INFINITY,
  upper = Number.POSITIVE_INFINITY,
): number {
  if (u === 0) return value >= lower && value <= upper ? 1 : 0;
  return normalShareBelow((upper - value) / u) - normalShareBelow((lower - value) / u);
}
