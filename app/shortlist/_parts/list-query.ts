import { z } from "zod";
import { SHOWN } from "#app/shortlist/_parts/asked.ts";
import { sieves } from "#app/shortlist/_parts/sieve.ts";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";

/** Rows of one answer. */
export const ROWS = { usual: 50, most: 1000 };

const count = (least: number, most: number) =>
  z
    .string()
    .regex(/^\d{1,6}$/, { error: "Give a whole number." })
    .transform(Number)
    .refine((rows) => rows >= least && rows <= most, { error: `Give a number from ${least} to ${most}.` })
    .meta({ description: `A whole number from ${least} to ${most}.` });

const oneOf = (values: readonly string[]) => z.enum(values, { error: `Give one of ${values.join(", ")}.` });

/** What a list of `kind` may be asked for in the address of the API: the same words as on the page. */
export function listQuerySchema(kind: Kind) {
  const narrowing = sieves[kind].map(({ name, choices }) => [
    name,
    oneOf(choices.map(([value]) => value)).optional(),
  ]);
  return z.strictObject({
    ...(Object.fromEntries(narrowing) as Record<string, z.ZodOptional<ReturnType<typeof oneOf>>>),
    sort: oneOf(checks.map(({ id }) => id)).optional(),
    show: oneOf(SHOWN.map(([value]) => value).filter((value) => value !== "")).optional(),
    like: oneOf(["1"]).optional(),
    units: oneOf(["mm", "in"]).optional(),
    format: oneOf(["json", "csv"]).optional(),
    from: count(0, 999_999).optional(),
    limit: count(1, ROWS.most).optional(),
  });
}
