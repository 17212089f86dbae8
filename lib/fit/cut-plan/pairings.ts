/**
 * What the motors of a plan ask of one stern: the greatest of their needs, with room for the spread of
 * the numbers they rest on.
 */
import { examine } from "#lib/fit/examine.ts";
import { COVERAGE_FACTOR } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { type Mounting, mount } from "#lib/rig/mounting.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** A need of one motor: what its limits ask, and what they ask with the spread on top. */
export interface Need {
  readonly least: number;
  readonly withSpread: number;
}

/** A motor hung on a stern. */
export const hung = (motor: Motor, stern: Stern): Mounting =>
  mount({ motor: motorValues(motor), stern: sternValues(stern) });

/** The greatest expanded uncertainty of the margins of some questions, mm; 0 where none could be worked out. */
export function spreadOf(motor: Motor, stern: Stern, questions: readonly string[]): number {
  const { answers } = examine(motor, stern, { only: questions });
  return answers.reduce((most, { ruling }) => Math.max(most, COVERAGE_FACTOR * (ruling?.u ?? 0)), 0);
}

/**
 * The greatest need of several motors. `need` asks it of a mounting for so much room beyond the limits;
 * `put` sets a figure into the stern; `questions` are those whose spread is added. Undefined where it
 * cannot be told for one of them.
 */
export function greatestNeed(
  motors: readonly Motor[],
  stern: Stern,
  need: (mounting: Mounting, beyondMm: number) => number | undefined,
  put: (figure: number) => Stern,
  questions: readonly string[],
): Need | undefined {
  const needs = motors.map((motor) => {
    const mounting = hung(motor, stern);
    const least = need(mounting, 0);
    if (least === undefined) return undefined;
    const spread = spreadOf(motor, put(least), questions);
    return { least, withSpread: need(mounting, spread) ?? least };
  });
  if (!needs.every((one) => one !== undefined) || needs.length === 0) return undefined;
  return {
    least: Math.max(...needs.map((one) => one.least)),
    withSpread: Math.max(...needs.map((one) => one.withSpread)),
  };
}
