/** A builder's choices for a cut plan, and numbers measured after the saw, as they are sent: strict, in the trade's words. */
import { z } from "zod";
import { obstaclesSchema } from "#lib/entry/box.ts";
import { type CutField, type CutKey, cutFields } from "#lib/entry/cut-fields.ts";
import { limitsSchema } from "#lib/entry/limits.ts";
import { measuredSchema, numberSchema } from "#lib/entry/measured.ts";
import { motorSchema } from "#lib/entry/motor.ts";
import { sternSchema } from "#lib/entry/stern.ts";
import { idSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";
import { type SternKey, sternFields } from "#lib/rig/stern.ts";

/** Most motors one stern is cut for at once: more never share a seat. */
export const MOST_CUT_MOTORS = 6;

const lengthShape = Object.fromEntries(
  Object.entries<CutField>(cutFields).map(([key, field]) => [
    key,
    numberSchema(field).meta({ title: field.name, description: field.hint }).optional(),
  ]),
) as { readonly [K in CutKey]: z.ZodOptional<ReturnType<typeof numberSchema>> };

function oneOf<const Words extends readonly [string, ...string[]]>(name: string, words: Words) {
  return z.enum(words, { error: ({ input }) => notThat(name, words.join(" or "), input) });
}

/** The choices of a cut plan; every one may be left out. Boxes stand in the bracket frame of the stern as recorded. */
export const cutChoicesSchema = z.strictObject(
  {
    lengths: oneOf("The unit of marks", ["mm", "in"]).optional(),
    limits: limitsSchema.optional(),
    well: oneOf("The well", ["build", "leave"]).optional(),
    soleLies: oneOf("How the sole lies", ["square", "level"]).optional(),
    underSides: oneOf("What holds the sole's sides", ["cleats", "fillets"]).optional(),
    wood: oneOf("The wood", ["hard", "soft"]).optional(),
    posts: obstaclesSchema.optional(),
    frames: obstaclesSchema.optional(),
    ...lengthShape,
  },
  { error: ({ input }) => notThat("The choices", "a record", input) },
);

/** Choices as parsed. */
export type CutChoicesSent = z.output<typeof cutChoicesSchema>;

/** Numbers of a stern that can be measured after the saw, in the order one comes to them. */
export const AS_BUILT_KEYS = [
  "seatMm",
  "notchWidthMm",
  "notchCornerRadiusMm",
  "soleDropMm",
  "soleAngleDeg",
  "wellDepthMm",
  "wellFrontHeightMm",
  "wellWidthAftMm",
  "wellWidthFrontMm",
  "sideFlareDeg",
] as const satisfies readonly SternKey[];
export type AsBuiltKey = (typeof AS_BUILT_KEYS)[number];

const builtShape = Object.fromEntries(
  AS_BUILT_KEYS.map((key) => [key, measuredSchema(sternFields[key]).optional()]),
) as { readonly [K in AsBuiltKey]: z.ZodOptional<ReturnType<typeof measuredSchema>> };

/** What was measured after the saw. */
export const asBuiltSchema = z.strictObject(builtShape, {
  error: ({ input }) => notThat("What was measured", "a record of numbers", input),
});

const how = { choices: cutChoicesSchema.optional() };
const several = <T extends z.ZodType>(one: T) =>
  z
    .array(one, { error: ({ input }) => notThat("The motors", "a list", input) })
    .min(1, { error: "At least one motor is needed." })
    .max(MOST_CUT_MOTORS, { error: `${MOST_CUT_MOTORS} motors at most.` });

/** One motor or several and a stern, in full or by the ids they are kept under, with the builder's choices. */
export const cutRequestSchema = z.union(
  [
    z.strictObject({ motor: motorSchema, stern: sternSchema, ...how }),
    z.strictObject({ motorId: idSchema, sternId: idSchema, ...how }),
    z.strictObject({ motorIds: several(idSchema), sternId: idSchema, ...how }),
    z.strictObject({ motors: several(motorSchema), stern: sternSchema, ...how }),
    z.strictObject({ motorId: idSchema, stern: sternSchema, ...how }),
    z.strictObject({ motorIds: several(idSchema), stern: sternSchema, ...how }),
    z.strictObject({ motor: motorSchema, sternId: idSchema, ...how }),
    z.strictObject({ motors: several(motorSchema), sternId: idSchema, ...how }),
  ],
  {
    error: ({ input }) =>
      notThat("The request", '{ "motor" or "motorId" or "motorIds", "stern" or "sternId" }', input),
  },
);

/** A request as parsed. */
export type CutRequest = z.output<typeof cutRequestSchema>;
