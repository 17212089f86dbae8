/** One number taken again, as it is sent: which, how much, how well, how, and what its taker has to say. */
import { z } from "zod";
import { measuredListSchema, measuredSchema } from "#lib/entry/measured.ts";
import { notThat } from "#lib/entry/words.ts";
import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";

/** Most characters of a text as typed, and of a comment. */
export const RAW_MOST = 200;
export const COMMENT_MOST = 500;

/** A taking as parsed. */
export interface TakingSent {
  readonly key: string;
  readonly taken: Measured | MeasuredList;
  readonly raw?: string;
  readonly comment?: string;
}

/** Controls, writing-direction marks, joiners, half letters: a keyboard's leavings, dropped; line breaks stay. */
const UNSEEN = /(?!\n)[\p{Cc}\p{Cf}\p{Cs}]/gu;

const short = (name: string, most: number) =>
  z
    .string({ error: ({ input }) => notThat(name, "text", input) })
    .overwrite((text) => text.normalize("NFC").replace(UNSEEN, "").trim())
    .refine((text) => [...text].length <= most, { error: `${name} can have ${most} characters at most.` });

const envelope = (keys: readonly [string, ...string[]]) =>
  z.strictObject(
    {
      key: z.enum(keys, {
        error: ({ input }) =>
          notThat("The key", "a number of the vocabulary, such as “shaftLengthMm”", input),
      }),
      value: z.unknown(),
      plusMinus: z.unknown().optional(),
      how: z.unknown(),
      raw: short("The text as typed", RAW_MOST).optional(),
      comment: short("The comment", COMMENT_MOST).optional(),
    },
    { error: ({ input }) => notThat("The taking", "a record", input) },
  );

/** A taking of one of the numbers of `fields`; each value within the limits of its own field. */
export function takingSchema(fields: Readonly<Record<string, Field>>): z.ZodType<TakingSent> {
  return envelope(Object.keys(fields) as [string, ...string[]]).transform(
    ({ key, value, plusMinus, how, raw, comment }, context): TakingSent => {
      const field = fields[key]!;
      const schema = key === "pinAnglesDeg" ? measuredListSchema(field) : measuredSchema(field);
      const parsed = schema.safeParse({ value, ...(plusMinus === undefined ? {} : { plusMinus }), how });
      if (!parsed.success) context.issues.push(...(parsed.error.issues as typeof context.issues));
      return {
        key,
        taken: (parsed.data ?? { value: 0, how: "estimated" }) as Measured | MeasuredList,
        ...(raw && { raw }),
        ...(comment && { comment }),
      };
    },
  );
}
