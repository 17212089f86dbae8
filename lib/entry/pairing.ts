/** A motor and a stern to be tried together: both in full, or both by the id they are kept under. */
import { z } from "zod";
import { aboardSchema } from "#lib/entry/aboard.ts";
import { limitsSchema } from "#lib/entry/limits.ts";
import { motorAsSentSchema } from "#lib/entry/motor.ts";
import { sternAsSentSchema } from "#lib/entry/stern.ts";
import { tapeSchema } from "#lib/entry/tape.ts";
import { idSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";

/** How the pairing is to be looked at; all of it may be left out. */
const how = {
  limits: limitsSchema.optional(),
  tape: tapeSchema.optional(),
  aboard: aboardSchema.optional(),
  estimateMissing: z
    .boolean({ error: ({ input }) => notThat("Whether to estimate what is missing", "true or false", input) })
    .optional()
    .meta({ description: "Fill the motor's gaps from the motors kept here, marked as estimated." }),
};

/**
 * `{ motor, stern, … }` or `{ motorId, sternId, … }`. `limits` go before those of the stern; `tape` is what
 * the measured lengths were read from; `estimateMissing` fills the motor's gaps from like motors.
 */
export const fitRequestSchema = z.union(
  [
    z.strictObject({ motor: motorAsSentSchema, stern: sternAsSentSchema, ...how }),
    z.strictObject({ motorId: idSchema, sternId: idSchema, ...how }),
  ],
  { error: ({ input }) => notThat("The request", '{ "motor", "stern" } or { "motorId", "sternId" }', input) },
);

/** A request as parsed. */
export type FitRequest = z.output<typeof fitRequestSchema>;
