/** A motor and a stern to be tried together: both in full, or both by the id they are kept under. */
import { z } from "zod";
import { limitsSchema } from "#lib/entry/limits.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { idSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";

const limits = limitsSchema.optional();

/** `{ motor, stern, limits? }` or `{ motorId, sternId, limits? }`; the limits go before those of the stern. */
export const fitRequestSchema = z.union(
  [
    z.strictObject({ motor: motorSchema, stern: sternSchema, limits }),
    z.strictObject({ motorId: idSchema, sternId: idSchema, limits }),
  ],
  { error: ({ input }) => notThat("The request", '{ "motor", "stern" } or { "motorId", "sternId" }', input) },
);

/** A request as parsed. */
export type FitRequest = z.output<typeof fitRequestSchema>;
