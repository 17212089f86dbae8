/**
 * What is taken for granted of a boat afloat where nobody measured it, as the trade does. No open standard
 * was found for any of it; people may put their own figures in place of those about the load.
 */
import { commonPractice, type Standard } from "#lib/standards/standard.ts";

const mass = (value: number, what: string): Standard => ({
  value,
  unit: "kg",
  what,
  source: "common practice, no source",
  status: "common practice",
});

/** One person with what he has on, kg. */
export const PERSON = mass(75, "one person");
/** A full portable tank of some 25 litres with its can, kg. */
export const PORTABLE_TANK = mass(20, "a full portable tank");
/** Where a portable tank stands, mm forward of the transom. */
export const TANK_FORWARD = commonPractice(600, "mm", "portable tank forward of the transom");
/** Where somebody sits who has come aft to the motor, mm forward of the transom. */
export const AT_THE_MOTOR = commonPractice(500, "mm", "a person at the motor, forward of the transom");
/** How far aft of the saddle a motor's mass is taken to hang where its axes were not taken, mm. */
export const MOTOR_AFT = commonPractice(120, "mm", "motor's mass aft of the saddle, axes not taken");
/** Least height of a drain over the water outside, mm: level with it, water neither runs out nor comes in. */
export const DRAIN_ABOVE_WATER = commonPractice(
  0,
  "mm",
  "least height of the well's drains above the water outside",
);
/** Room between two motors however each of them is tilted and steered, mm. */
export const BETWEEN_MOTORS = commonPractice(25.4, "mm", "room between two motors in all their attitudes");
/** Room between the brackets of two motors, and from a bracket to the transom's side, mm. */
export const BESIDE_BRACKET = commonPractice(25.4, "mm", "room beside a bracket on the transom");
/** Least water over the upper blade tips with the boat running, mm: level with it. How well they are covered beyond that is told in words. */
export const TIPS_RUNNING = commonPractice(0, "mm", "least water over the upper blade tips when running");
