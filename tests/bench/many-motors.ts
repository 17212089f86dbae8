/** Motors and sterns by the thousand for the benches and for tests of long lists: always the same ones. */
import { generatedRecords } from "#app/_command/generated-records.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** So many generated motors. */
export const manyMotors = (count: number): Motor[] =>
  [...generatedRecords({ motors: count, sterns: 0, seed: 4 })].map(({ record }) => record as Motor);

/** So many generated sterns. */
export const manySterns = (count: number): Stern[] =>
  [...generatedRecords({ motors: 0, sterns: count, seed: 4 })].map(({ record }) => record as Stern);
