/** The owner's own limits in place of common practice, and how far each may sanely be moved. */
import { z } from "zod";
import { addImpossible } from "#lib/entry/impossible.ts";
import { numberSchema } from "#lib/entry/measured.ts";
import { notThat } from "#lib/entry/words.ts";
import { type LimitKey, practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

interface Range {
  readonly min: number;
  readonly max: number;
}

const ROOM: Range = { min: 0, max: 1000 };
const TURN: Range = { min: 0, max: 45 };
/** Limits that are heights or whole lengths rather than room to spare. */
const OTHERS: Readonly<Partial<Record<string, Range>>> = {
  plateHighMm: { min: -300, max: 200 },
  plateLowMm: { min: -300, max: 200 },
  skegLiftMm: { min: -500, max: 1000 },
  wellDepthMm: { min: 0, max: 3000 },
};

const limitSchema = (key: string, { what, unit }: Standard) =>
  numberSchema({
    name: `The limit ${key} (${what})`,
    unit: unit === "ratio" ? "count" : unit,
    ...(OTHERS[key] ?? (unit === "deg" ? TURN : ROOM)),
  });

const shape = Object.fromEntries(
  Object.entries<Standard>(practiceLimits).map(([key, standard]) => [
    key,
    limitSchema(key, standard).optional(),
  ]),
) as { readonly [K in LimitKey]: z.ZodOptional<ReturnType<typeof limitSchema>> };

/** Limits by their key in lib/standards, each within a sane range; a key left out stays common practice. */
export const limitsSchema = z
  .strictObject(shape, { error: ({ input }) => notThat("The limits", "a record of numbers", input) })
  .superRefine(({ plateLowMm, plateHighMm }, context) => {
    if (plateLowMm !== undefined && plateHighMm !== undefined && plateLowMm > plateHighMm)
      addImpossible(
        context,
        ["plateLowMm"],
        `The lowest plate (${plateLowMm} mm) lies above the highest (${plateHighMm} mm).`,
      );
  });

/** Limits as parsed. */
export type Limits = z.output<typeof limitsSchema>;
