/** A motor as it is sent: strict, with every message in the words of the measuring guide. */
import { z } from "zod";
import { extraSolidsSchema } from "#lib/entry/box.ts";
import { asAWhole, between, type Impossible, valuesOf } from "#lib/entry/impossible.ts";
import { measuredListSchema, measuredShape, numberSchema } from "#lib/entry/measured.ts";
import { type Patch, patchShape } from "#lib/entry/patch.ts";
import { idSchema, labelSchema, notesSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";
import {
  FIXINGS,
  type Motor,
  type MotorNumberKey,
  motorFields,
  SHAFT_CLASSES,
  STEERINGS,
  STROKES,
} from "#lib/rig/motor.ts";

/** Years a motor may have been built in. */
const YEARS = { min: 1900, max: 2100 };
const { pinAnglesDeg, ...numberFields } = motorFields;

const facts = {
  shaftClass: z.enum(SHAFT_CLASSES, {
    error: ({ input }) => notThat("The shaft class", SHAFT_CLASSES.join(", "), input),
  }),
  steering: z.enum(STEERINGS, {
    error: ({ input }) => notThat("The steering", STEERINGS.join(" or "), input),
  }),
  fixing: z.enum(FIXINGS, {
    error: ({ input }) => notThat("How it is held", FIXINGS.join(" or "), input),
  }),
  strokes: z.literal(STROKES, {
    error: ({ input }) => notThat("The strokes", "2 or 4, or 0 for an electric motor", input),
  }),
  year: numberSchema({ name: "The year built", unit: "count", ...YEARS })
    .refine(Number.isInteger, {
      error: "The year built must be a whole number.",
    })
    .meta({ type: "integer" }),
  tillerFolds: z.boolean({
    error: ({ input }) => notThat("Whether the tiller folds", "true or false", input),
  }),
  extraSolids: extraSolidsSchema,
};

const shape = {
  label: labelSchema(),
  notes: notesSchema.optional(),
  shaftClass: facts.shaftClass.optional(),
  steering: facts.steering.optional(),
  fixing: facts.fixing.optional(),
  strokes: facts.strokes.optional(),
  year: facts.year.optional(),
  tillerFolds: facts.tillerFolds.optional(),
  extraSolids: facts.extraSolids.optional(),
  ...measuredShape<MotorNumberKey>(numberFields),
  pinAnglesDeg: measuredListSchema(pinAnglesDeg).optional(),
};

/** What no motor can be. */
export function impossibleMotor(motor: Partial<Omit<Motor, "id" | "label">>): readonly Impossible[] {
  const value = valuesOf<MotorNumberKey>(motor);
  const none = (
    front: "cowlFrontMm" | "midsectionFrontMm",
    aft: "cowlAftMm" | "midsectionAftMm",
    name: string,
  ) =>
    between(
      value,
      [front, aft],
      (a, b) => a + b < 1,
      () => `The ${name} cannot have no length fore and aft.`,
    );
  return [
    ...between(
      value,
      ["clampOpeningMinMm", "clampOpeningMaxMm"],
      (least, most) => least > most,
      (least, most) =>
        `The thinnest transom the clamps hold (${least} mm) is thicker than the thickest (${most} mm).`,
    ),
    ...between(
      value,
      ["cowlBottomMm", "cowlTopMm"],
      (bottom, top) => bottom >= top,
      (bottom, top) => `The cowl's bottom (${bottom} mm) must lie below its top (${top} mm).`,
    ),
    ...between(
      value,
      ["cowlBottomMm", "shaftLengthMm"],
      (bottom, shaft) => bottom <= -shaft,
      (bottom, shaft) => `The cowl's bottom (${bottom} mm) would lie below the plate (${-shaft} mm).`,
    ),
    ...between(
      value,
      ["plateToPropCentreMm", "plateToSkegMm"],
      (centre, skeg) => centre >= skeg,
      (centre, skeg) => `The propeller's centre (${centre} mm) would lie below the skeg's tip (${skeg} mm).`,
    ),
    ...none("cowlFrontMm", "cowlAftMm", "cowl"),
    ...none("midsectionFrontMm", "midsectionAftMm", "leg"),
    ...pinsBeyondArc(motor),
  ];
}

/** A pin hole beyond the full-up stop cannot be reached. */
function pinsBeyondArc({ pinAnglesDeg: pins, tiltArcDeg }: Partial<Motor>): Impossible[] {
  const [first = 0] = pins?.value ?? [];
  const span = (pins?.value.at(-1) ?? 0) - first;
  if (tiltArcDeg === undefined || span <= tiltArcDeg.value) return [];
  const says = `The highest hole lies ${span} degrees above the lowest, beyond the full-up stop at ${tiltArcDeg.value}.`;
  return [{ at: "pinAnglesDeg", says }];
}

/** A whole motor. Parsing gives exactly a {@link Motor}: every number with how it was taken, absent keys absent. */
export const motorSchema = z
  .strictObject({ id: idSchema, ...shape }, { error: ({ input }) => notThat("The motor", "a record", input) })
  .transform(asAWhole(impossibleMotor));

/** A motor sent to be tried and not kept: it may come without id and label. */
export const motorAsSentSchema = z
  .strictObject(
    { id: idSchema.default("motor"), ...shape, label: shape.label.default("Motor as sent") },
    { error: ({ input }) => notThat("The motor", "a record", input) },
  )
  .transform(asAWhole(impossibleMotor));

/** Changes to a motor: any key; null takes the number away. Merged with `applyPatch`, the result goes through {@link motorSchema}. */
export const motorPatchSchema = z.strictObject(patchShape(shape), {
  error: ({ input }) => notThat("The changes", "a record", input),
});
export type MotorPatch = Patch<Motor>;

motorSchema satisfies z.ZodType<Motor>;
motorPatchSchema satisfies z.ZodType<MotorPatch>;
motorAsSentSchema satisfies z.ZodType<Motor>;
