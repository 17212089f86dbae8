/** Boxes in the way: what else moves with a motor, what else stands on a stern. */
import { z } from "zod";
import { addImpossible } from "#lib/entry/impossible.ts";
import { numberSchema } from "#lib/entry/measured.ts";
import { labelSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";
import type { Corner, ExtraSolid } from "#lib/rig/motor.ts";
import type { Obstruction } from "#lib/rig/stern.ts";

/** Most boxes of one record. */
export const MOST_BOXES = 20;
/** How far from its origin a corner may lie, mm. */
export const FARTHEST_CORNER_MM = 3000;
/** Least size of a box each way, mm: thinner, it is a sheet and not a thing that can be struck. */
const THINNEST_MM = 0.1;
const AXES = ["fore and aft", "athwart", "up and down"] as const;

const coordinate = numberSchema({
  name: "A corner's coordinate",
  unit: "mm",
  min: -FARTHEST_CORNER_MM,
  max: FARTHEST_CORNER_MM,
});
const cornerSchema = z.tuple([coordinate, coordinate, coordinate], {
  error: ({ input }) => notThat("A corner", "three numbers: fore and aft, athwart, up", input),
});

interface Box {
  readonly label: string;
  readonly fromMm: Corner;
  readonly toMm: Corner;
}

/** The direction in which a box has no thickness, or undefined. */
const flat = ({ fromMm, toMm }: Box): (typeof AXES)[number] | undefined =>
  AXES.find((_, axis) => Math.abs(fromMm[axis]! - toMm[axis]!) < THINNEST_MM);

function listOf<T extends z.ZodType<Box>>(box: T) {
  const solid = box.superRefine((given, context) => {
    const way = flat(given);
    if (way !== undefined)
      addImpossible(context, ["toMm"], `The box “${given.label}” has no thickness ${way}.`);
  });
  return z
    .array(solid, { error: ({ input }) => notThat("The boxes", "a list", input) })
    .max(MOST_BOXES, { error: `${MOST_BOXES} boxes at most.`, abort: true })
    .superRefine((boxes, context) => {
      const labels = boxes.map(({ label }) => label);
      const twice = labels.findIndex((label, at) => labels.indexOf(label) !== at);
      if (twice >= 0) addImpossible(context, [twice, "label"], `Two boxes are called “${labels[twice]}”.`);
    });
}

const aBox = { error: ({ input }: { readonly input?: unknown }) => notThat("A box", "a record", input) };
const shape = { label: labelSchema("The box's label"), fromMm: cornerSchema, toMm: cornerSchema };
const groupSchema = z.enum(["tilting", "steered"], {
  error: ({ input }) => notThat("The box's group", "tilting or steered", input),
});

/** Boxes that move with a motor: x and y in leg or steered coordinates, heights above the saddle, mm. Labels are unique. */
export const extraSolidsSchema = listOf(
  z.strictObject({ ...shape, group: groupSchema }, aBox) satisfies z.ZodType<ExtraSolid>,
);
/** Boxes in the way on a stern, corners [f, y, v] of the bracket frame, mm. Labels are unique. */
export const obstaclesSchema = listOf(z.strictObject(shape, aBox) satisfies z.ZodType<Obstruction>);
