/** Angles, masses, powers and counts: their units, and how they are spoken of. */
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { WATTS_PER_HORSEPOWER, WATTS_PER_METRIC_HORSEPOWER } from "#lib/quantity/power.ts";

/** The units masses and powers are typed in. */
export type MassUnit = "kg" | "lb";
export type PowerUnit = "kW" | "W" | "hp" | "PS";
/** Every unit that is not a length. */
export type QuantityUnit = MassUnit | PowerUnit | "deg" | "count";

/** A unit, the words it is typed with (tidied), and its size. */
export interface QuantityUnitOf {
  readonly name: QuantityUnit;
  readonly words: RegExp;
  /** How many of the vocabulary's unit one of these is. */
  readonly factor: number;
}

/** What is measured. */
export interface Quantity {
  readonly units: readonly QuantityUnitOf[];
  /** Most of the vocabulary's unit anybody can mean: a second reading beyond it is dropped. */
  readonly most: number;
  /** Least of it worth asking about. */
  readonly least: number;
  /** A number alone is in the only unit there is. */
  readonly plain: boolean;
  readonly noun: string;
  readonly example: string;
}

export const ANGLE: Quantity = {
  units: [{ name: "deg", words: /^(°|º|˚|(deg|degs|degrees?)\.?)$/, factor: 1 }],
  most: 360,
  least: 0,
  plain: true,
  noun: "an angle in degrees",
  example: "12.5 or 12.5°",
};
export const MASS: Quantity = {
  units: [
    { name: "kg", words: /^(kg|kgs|kilos?|kilograms?|kilogrammes?)\.?$/, factor: 1 },
    { name: "lb", words: /^(lb|lbs|pounds?)\.?$/, factor: KG_PER_POUND },
  ],
  most: 1000,
  least: 0,
  plain: false,
  noun: "a mass",
  example: "25 kg or 55 lb",
};
export const POWER: Quantity = {
  units: [
    { name: "kW", words: /^(kw|kilowatts?)$/, factor: 1 },
    { name: "W", words: /^(w|watts?)$/, factor: 0.001 },
    { name: "hp", words: /^(hp|horsepower)$/, factor: WATTS_PER_HORSEPOWER / 1000 },
    { name: "PS", words: /^ps$/, factor: WATTS_PER_METRIC_HORSEPOWER / 1000 },
  ],
  most: 500,
  least: 0.1,
  plain: false,
  noun: "a power",
  example: "4.4 kW, 6 hp or 6 PS",
};
export const COUNT: Quantity = {
  units: [],
  most: 1_000_000,
  least: 0,
  plain: true,
  noun: "a whole number",
  example: "2",
};
