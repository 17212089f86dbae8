/**
 * The three texts of a record: id, label, notes. One spelling of every letter (NFC), nothing that
 * cannot be seen, nothing that turns the writing direction round.
 */
import { z } from "zod";
import { notThat, shown } from "#lib/entry/words.ts";

/** Letters that look like nothing, and marks that hide or reorder what stands beside them. */
const UNSEEN =
  /\p{Cc}|\p{Cf}|\p{Cs}|\p{Zl}|\p{Zp}|\u034f|\u115f|\u1160|\u17b4|\u17b5|[\u180b-\u180f\u2800\u3164\uffa0]/u;
/** The same with line breaks and tabs allowed. */
const UNSEEN_IN_NOTES = new RegExp(`(?![\\n\\t])(?:${UNSEEN.source})`, "u");
const VISIBLE = /[\p{L}\p{N}\p{P}\p{S}]/u;

/** Most characters of a label and of notes, as people count them (code points). */
export const LABEL_MOST = 80;
export const NOTES_MOST = 2000;

const length = (text: string): number => [...text].length;
const tidyLabel = (text: string): string => text.normalize("NFC").trim();
const tidyNotes = (text: string): string => tidyLabel(text.replace(/\r\n?/g, "\n"));

/** A short name in generic words, 1 to 80 characters on one line; `name` is what the message calls it. */
export const labelSchema = (name = "The label") =>
  z
    .string({ error: ({ input }) => notThat(name, "text", input) })
    .overwrite(tidyLabel)
    .refine((text) => text !== "", { error: `${name} is needed: a few generic words.`, abort: true })
    .refine((text) => length(text) <= LABEL_MOST, {
      error: ({ input }) =>
        `${name} can have ${LABEL_MOST} characters at most; this has ${length(String(input))}.`,
      abort: true,
    })
    .refine((text) => !UNSEEN.test(text), {
      error: `${name} holds a character that cannot be seen (a line break, a control or a writing-direction mark). Type it again without.`,
      abort: true,
    })
    .refine((text) => VISIBLE.test(text), { error: `${name} must have something to read in it.` })
    .meta({ minLength: 1, maxLength: LABEL_MOST });

/** Notes of any number of lines, up to 2,000 characters. Line breaks are kept, as `\n`. */
export const notesSchema = z
  .string({ error: ({ input }) => notThat("Notes", "text", input) })
  .overwrite(tidyNotes)
  .refine((text) => length(text) <= NOTES_MOST, {
    error: ({ input }) =>
      `Notes can have ${NOTES_MOST} characters at most; these have ${length(String(input))}.`,
    abort: true,
  })
  .refine((text) => !UNSEEN_IN_NOTES.test(text), {
    error:
      "The notes hold a character that cannot be seen (a control or a writing-direction mark). Type them again without.",
  })
  .meta({ maxLength: NOTES_MOST });

/** The name of a record in addresses and files: small letters, digits and single hyphens, 1 to 80. */
export const idSchema = z
  .string({ error: ({ input }) => notThat("The id", "text", input) })
  .max(LABEL_MOST, { error: `The id can have ${LABEL_MOST} characters at most.`, abort: true })
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
    error: ({ input }) =>
      `The id must be small letters a to z, digits and single hyphens, such as “long-shaft-15”; you gave ${shown(input)}.`,
  });
