/** Two motors to be tried on one stern: all in full, or all by the id they are kept under. */
import { z } from "zod";
import { aboardSchema } from "#lib/entry/aboard.ts";
import { numberSchema } from "#lib/entry/measured.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { tapeSchema } from "#lib/entry/tape.ts";
import { idSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";

/** How far a motor may sit from the centreline, mm. */
export const OFFSET = { min: -2500, max: 2500 } as const;
/** Where a seat may stand above the datum, mm. */
const SEAT = { min: 100, max: 1500 } as const;

const offset = numberSchema({ name: "A motor's place from the centreline", unit: "mm", ...OFFSET });
const seat = numberSchema({ name: "A motor's seat", unit: "mm", ...SEAT }).nullable();

const pairOf = <T extends z.ZodType>(one: T, what: string) =>
  z.tuple([one, one], { error: ({ input }) => notThat(what, "a list of two", input) });

const how = {
  offsetsMm: pairOf(offset, "The places").meta({
    description: "Middles from the centreline, plus = to port.",
  }),
  seatsMm: pairOf(seat, "The seats")
    .optional()
    .meta({ description: "Seats above the datum; null or absent, the notch's or the uncut top's." }),
  aboard: aboardSchema.optional(),
  tape: tapeSchema.optional(),
};

/** `{ motors, stern, offsetsMm, … }` or `{ motorIds, sternId, offsetsMm, … }`. */
export const twoRequestSchema = z.union(
  [
    z.strictObject({ motors: pairOf(motorSchema, "The motors"), stern: sternSchema, ...how }),
    z.strictObject({ motorIds: pairOf(idSchema, "The motors' ids"), sternId: idSchema, ...how }),
  ],
  {
    error: ({ input }) =>
      notThat(
        "The request",
        '{ "motors", "stern", "offsetsMm" } or { "motorIds", "sternId", "offsetsMm" }',
        input,
      ),
  },
);

/** A request as parsed. */
export type TwoRequest = z.output<typeof twoRequestSchema>;
