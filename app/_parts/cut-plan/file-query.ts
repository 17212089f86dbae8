import { z } from "zod";
import { FILES } from "#app/_parts/cut-plan/files.ts";
import { labelSchema } from "#lib/entry/text.ts";
import { notThat } from "#lib/entry/words.ts";

const MOST_LETTERS = 40;

/** What a file of a cut plan may be asked for in its address, beside motors, units and choices. */
export const fileQuerySchema = z.strictObject({
  paper: z
    .enum(["a4", "letter"], { error: ({ input }) => notThat("The paper", "a4 or letter", input) })
    .default("a4"),
  of: z
    .enum(FILES, { error: ({ input }) => notThat("What the file holds", FILES.join(", "), input) })
    .default("all"),
  sheet: z
    .string()
    .regex(/^[1-9]\d{0,3}$/, { error: "The sheet is a number from 1." })
    .transform(Number)
    .default(1),
  part: z
    .string()
    .max(MOST_LETTERS)
    .regex(/^[a-z0-9-]+$/, { error: "The part is one of the plan's, such as sole." })
    .default("all"),
  shown: z.string().max(MOST_LETTERS, { error: "Type what the rule showed, for instance 99.4." }).optional(),
  owner: labelSchema("The owner").optional(),
  approval: labelSchema("Who approves").optional(),
});

/** A file's query as parsed. */
export type FileQuery = z.output<typeof fileQuerySchema>;
