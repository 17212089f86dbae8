/** A stern as it is sent: strict, with every message in the words of the measuring guide. */
import { z } from "zod";
import { obstaclesSchema } from "#lib/entry/box.ts";
import { asAWhole, between, type Impossible, valuesOf } from "#lib/entry/impossible.ts";
import { limitsSchema } from "#lib/entry/limits.ts";
import { measuredShape, numberSchema } from "#lib/entry/measured.ts";
import { type Patch, patchShape } from "#lib/entry/patch.ts";
import { idSchema, labelSchema, notesSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";
import { HULL_FORMS, type Stern, type SternKey, sternFields } from "#lib/rig/stern.ts";

/** How far above the uncut transom a riser may lift the seat, mm. */
const RISER_MM = 150;
/** How far two lengths taken on different days may contradict each other, mm, before one of them is a slip. */
const DAYS_APART_MM = 50;
const MOST_DRAINS = 20;

const shape = {
  label: labelSchema(),
  notes: notesSchema.optional(),
  hullForm: z
    .enum(HULL_FORMS, { error: ({ input }) => notThat("The hull form", HULL_FORMS.join(", "), input) })
    .optional(),
  hardChine: z
    .boolean({ error: ({ input }) => notThat("Whether the chine is hard", "true or false", input) })
    .optional(),
  drainCount: numberSchema({ name: "The number of drains", unit: "count", min: 0, max: MOST_DRAINS })
    .refine(Number.isInteger, { error: "The number of drains must be a whole number." })
    .meta({ type: "integer" })
    .optional(),
  obstacles: obstaclesSchema.optional(),
  limits: limitsSchema.optional(),
  ...measuredShape<SternKey>(sternFields),
};

/** The part of a hull cannot be larger than the whole by more than tapes explain. */
const part = (
  value: (key: SternKey) => number | undefined,
  keys: readonly [SternKey, SternKey],
): Impossible[] =>
  between(
    value,
    keys,
    (inner, outer) => inner > outer + DAYS_APART_MM,
    (inner, outer) =>
      `${sternFields[keys[0]].name} (${inner} mm) cannot be more than ${sternFields[keys[1]].name.toLowerCase()} (${outer} mm).`,
  );

/** What no stern can be. */
export function impossibleStern(stern: Partial<Omit<Stern, "id" | "label">>): readonly Impossible[] {
  const value = valuesOf<SternKey>(stern);
  return [
    ...between(
      value,
      ["seatMm", "transomTopMm"],
      (seat, top) => seat > top + RISER_MM,
      (seat, top) =>
        `The seat (${seat} mm) lies more than ${RISER_MM} mm above the top of the transom (${top} mm); no riser lifts it so far.`,
    ),
    ...between(
      value,
      ["plateLowMm", "plateHighMm"],
      (low, high) => low > high,
      (low, high) => `The lowest plate (${low} mm) lies above the highest (${high} mm).`,
    ),
    ...between(
      value,
      ["notchWidthMm", "transomWidthMm"],
      (notch, transom) => notch > transom,
      (notch, transom) => `The notch (${notch} mm) is wider than the transom (${transom} mm).`,
    ),
    ...between(
      value,
      ["notchCornerRadiusMm", "notchWidthMm"],
      (radius, width) => 2 * radius > width,
      (radius, width) => `Two corners of radius ${radius} mm do not go into a notch ${width} mm wide.`,
    ),
    ...between(
      value,
      ["keelDepthMm", "transomTopMm"],
      (keel, top) => keel >= top,
      (keel, top) => `The keel (${keel} mm deep) would reach above the top of the transom (${top} mm).`,
    ),
    ...part(value, ["transomWidthMm", "beamMm"]),
    ...part(value, ["waterlineBeamMm", "beamMm"]),
    ...part(value, ["waterlineLengthMm", "lengthOverallMm"]),
  ];
}

/** A whole stern. Parsing gives exactly a {@link Stern}: every number with how it was taken, absent keys absent. */
export const sternSchema = z
  .strictObject({ id: idSchema, ...shape }, { error: ({ input }) => notThat("The stern", "a record", input) })
  .transform(asAWhole(impossibleStern));

/** A stern sent to be tried and not kept: it may come without id and label. */
export const sternAsSentSchema = z
  .strictObject(
    { id: idSchema.default("stern"), ...shape, label: shape.label.default("Stern as sent") },
    { error: ({ input }) => notThat("The stern", "a record", input) },
  )
  .transform(asAWhole(impossibleStern));

/** Changes to a stern: any key; null takes the number away. Merged with `applyPatch`, the result goes through {@link sternSchema}. */
export const sternPatchSchema = z.strictObject(patchShape(shape), {
  error: ({ input }) => notThat("The changes", "a record", input),
});
export type SternPatch = Patch<Stern>;

sternSchema satisfies z.ZodType<Stern>;
sternPatchSchema satisfies z.ZodType<SternPatch>;
sternAsSentSchema satisfies z.ZodType<Stern>;
