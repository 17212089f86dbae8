/** What is put aboard on top of the load the water was measured with: persons and fuel, besides the motor. */
import { PERSON, PORTABLE_TANK, TANK_FORWARD } from "#lib/standards/afloat-practice.ts";

/** Persons and fuel. Places are level from the transom's foot, plus = forward, mm. */
export interface Aboard {
  readonly persons: number;
  /** Mass of one of them, kg. */
  readonly personKg: number;
  /** Where they sit; absent, halfway along the waterline. */
  readonly personsForwardMm?: number;
  readonly fuelKg: number;
  readonly fuelForwardMm: number;
}

/** Two persons amidships and a full portable tank (common practice, no source). */
export const USUAL_ABOARD: Aboard = {
  persons: 2,
  personKg: PERSON.value,
  fuelKg: PORTABLE_TANK.value,
  fuelForwardMm: TANK_FORWARD.value,
};

/** The keys of a load, in the order they are asked. */
export const ABOARD_KEYS = [
  "persons",
  "personKg",
  "personsForwardMm",
  "fuelKg",
  "fuelForwardMm",
] as const satisfies readonly (keyof Aboard)[];
export type AboardKey = (typeof ABOARD_KEYS)[number];
