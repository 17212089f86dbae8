import { chance } from "#app/_command/chance.ts";
import { generatedMotor } from "#app/_command/generated-motors.ts";
import { generatedStern } from "#app/_command/generated-sterns.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** A generated record and its kind. */
export type Generated =
  | { readonly kind: "motor"; readonly record: Motor }
  | { readonly kind: "stern"; readonly record: Stern };

/** How many records of each kind, and the seed they all come from. */
export interface Wanted {
  readonly motors: number;
  readonly sterns: number;
  readonly seed: number;
}

/** Plausible records that say of themselves that they are generated. One seed gives the same ones every time, however many are asked for. */
export function* generatedRecords({ motors, sterns, seed }: Wanted): Generator<Generated> {
  for (let number = 1; number <= motors; number++) {
    yield { kind: "motor", record: generatedMotor(seed, number, chance(seed * 2_000_003 + number)) };
  }
  for (let number = 1; number <= sterns; number++) {
    yield { kind: "stern", record: generatedStern(seed, number, chance(seed * 2_000_003 - number)) };
  }
}
