/**
 * A number somebody took off a motor or a hull, and how far it may be trusted.
 */

/** `measured` with a tape on this very object; `declared` by a label, a handbook or the seller; `estimated` by eye, from a photo or from the class. */
export type How = "measured" | "declared" | "estimated";

/** The units of the vocabulary: millimetres, degrees, kilograms, kilowatts, or none (a plain count). */
export type Unit = "mm" | "deg" | "kg" | "kW" | "count";

/** One number as taken. `plusMinus` is the half-width within which the true value is believed to lie; absent, it follows from `how`. */
export interface Measured {
  readonly value: number;
  readonly plusMinus?: number;
  readonly how: How;
}

/** Several numbers taken the same way (the angles of the trim-pin holes): one half-width for all of them. */
export interface MeasuredList {
  readonly value: readonly number[];
  readonly plusMinus?: number;
  readonly how: How;
}
