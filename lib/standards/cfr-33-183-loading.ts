/**
 * What a hull may carry, and how many persons that leaves: 33 CFR 183.35, 183.37, 183.41 and 183.43.
 * Masses in kilograms; the rules' own constants are pounds. The capacity label governs where there is one.
 */
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import type { Citation } from "#lib/standards/citation.ts";

const loading = (clause: string, rest: Partial<Citation> = {}): Citation => ({
  ...horsepowerCapacity,
  clause,
  edition: "as in force from 1 June 2018",
  url: `https://www.law.cornell.edu/cfr/text/33/${clause.slice(0, 6)}`,
  ...rest,
});

/** Weight capacity of a boat for more than 2 hp. */
export const weightOverTwoHp = loading("183.35", { read: "in a secondary text" });
/** Weight capacity of a boat for oars or for 2 hp at most. */
export const weightUpToTwoHp = loading("183.37");
/** Persons' capacity of an outboard boat. */
export const personsOutboard = loading("183.41");
/** Persons' capacity of a boat for oars or for 2 hp at most. */
export const personsUpToTwoHp = loading("183.43", { edition: "45 FR 2031, 10 January 1980" });

/** What drives the boat, as the loading rules part it. */
export type Propulsion = "manual" | "up to 2 hp" | "over 2 hp";

/** Maximum displacement is the water displaced at the greatest level immersion without water coming aboard; boat weight is hull, deck, superstructure and what cannot be taken off without tools. */
export interface HullWeights {
  readonly maxDisplacementKg: number;
  readonly boatKg: number;
}

/** Maximum weight capacity, kg: a fifth of the difference (183.35) over 2 hp, three tenths (183.37) otherwise; never below 0. */
export function weightCapacityKg({ maxDisplacementKg, boatKg }: HullWeights, propulsion: Propulsion): number {
  const difference = Math.max(0, maxDisplacementKg - boatKg);
  return propulsion === "over 2 hp" ? difference / 5 : (difference * 3) / 10;
}

/** Below this persons' weight an outboard boat is also tested for list and trim (183.41(a)(2)): 550 lb. */
export const TESTED_UNDER_KG = 550 * KG_PER_POUND;

/** Weight left for persons, kg, and whether the list and trim test has to be made too. */
export interface PersonsWeight {
  readonly kg: number;
  readonly testToo: boolean;
  readonly limitedBy: "weight" | "test";
}

/**
 * Persons' weight of an outboard boat over 2 hp (183.41(a)): capacity less motor, controls, battery and
 * tank; under 550 lb also at most A / 0.6, where A is the weight put along one side in the test.
 */
export function personsWeight(
  weightCapacity: number,
  allowanceKg: number,
  testedSideKg?: number,
): PersonsWeight {
  const left = Math.max(0, weightCapacity - allowanceKg);
  const testToo = left < TESTED_UNDER_KG;
  const byTest = testToo && testedSideKg !== undefined ? testedSideKg / 0.6 : Number.POSITIVE_INFINITY;
  return { kg: Math.min(left, byTest), testToo, limitedBy: byTest < left ? "test" : "weight" };
}

/** Persons' weight of a boat for oars, or for 2 hp at most (183.43), kg: nine tenths of the capacity, less 25 lb for the motor. */
export const personsWeightUpToTwoHp = (weightCapacity: number, propulsion: "manual" | "up to 2 hp"): number =>
  Math.max(0, 0.9 * weightCapacity - (propulsion === "manual" ? 0 : 25 * KG_PER_POUND));

/** Persons a persons' weight allows (183.41(b), 183.43(b)): (lb + 32) / 141 to the nearest whole number, a half up. */
export function persons(personsKg: number): number {
  // To a millionth of a pound, so that a weight given in pounds rounds as it was given.
  const pounds = Math.round((personsKg / KG_PER_POUND) * 1e6) / 1e6;
  return Math.floor((pounds + 32) / 141 + 0.5);
}
