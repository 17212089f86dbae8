import { z } from "zod";
import { PAGE } from "#lib/db/reading.ts";
import { SHAFT_CLASSES, STEERINGS } from "#lib/rig/motor.ts";
import { HULL_FORMS } from "#lib/rig/stern.ts";

/** A number in an address: digits and one point, so that neither "0x10" nor "" nor "1e3" passes for one. */
const numberText = z
  .string()
  .regex(/^\d{1,6}(\.\d{1,6})?$/, { error: "Give a plain number, such as 7.5." })
  .transform(Number)
  .meta({ description: "A plain number in digits." });

const page = {
  query: z.string().max(1000, { error: "A search has at most 1,000 characters." }).optional(),
  limit: numberText
    .refine((rows) => Number.isInteger(rows) && rows >= 1 && rows <= PAGE.most, {
      error: `Give a limit from 1 to ${PAGE.most}.`,
    })
    .optional(),
  cursor: z.string().max(1000, { error: "This cursor is not one this list gave out." }).optional(),
};

/** What each list may be asked for in its address. */
export const querySchemas = {
  motor: z.strictObject({
    ...page,
    shaftClass: z.enum(SHAFT_CLASSES, { error: `Give one of ${SHAFT_CLASSES.join(", ")}.` }).optional(),
    steering: z.enum(STEERINGS, { error: `Give one of ${STEERINGS.join(", ")}.` }).optional(),
    strokes: z
      .enum(["0", "2", "4"], { error: "Give 0, 2 or 4." })
      .transform((text) => Number(text) as 0 | 2 | 4)
      .optional(),
    powerKwMin: numberText.optional(),
    powerKwMax: numberText.optional(),
  }),
  stern: z.strictObject({
    ...page,
    hullForm: z.enum(HULL_FORMS, { error: `Give one of ${HULL_FORMS.join(", ")}.` }).optional(),
  }),
};
