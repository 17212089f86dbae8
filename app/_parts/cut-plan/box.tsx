import Link from "next/link";
import { type CutAsked, cutQuery } from "#app/_parts/cut-plan/asked.ts";
import type { FieldAsk } from "#lib/entry/form-field.ts";

/** What is told at a box: a fault in words, or the ways its text can be read. */
export interface Told {
  readonly says?: string | undefined;
  readonly ask?: FieldAsk | undefined;
}

/** One box of the form: its name, what stands where it is left empty, and under it what is told of what was typed. */
export function Box({
  name,
  label,
  hint,
  text,
  usual,
  told: { says, ask },
  hrefWith,
}: {
  readonly name: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly text: string;
  /** What stands where the box is left empty. */
  readonly usual?: string | undefined;
  readonly told: Told;
  /** The page with another text in the box. */
  readonly hrefWith: (text: string) => string;
}) {
  return (
    <div>
      <label htmlFor={name}>{label}</label>
      {hint && (
        <p className="small soft" id={`${name}-hint`}>
          {hint}
        </p>
      )}
      <input
        type="text"
        id={name}
        name={name}
        defaultValue={text}
        placeholder={usual}
        autoComplete="off"
        spellCheck={false}
        maxLength={80}
        aria-invalid={says || ask ? true : undefined}
        aria-describedby={`${hint ? `${name}-hint ` : ""}${name}-says`}
      />
      <div id={`${name}-says`}>
        {says && <p className="trouble-words">{says}</p>}
        {ask && (
          <p className="trouble-words">
            {ask.readings.length === 1 ? "Do you mean this? " : "Which do you mean? "}
            {ask.readings.map(({ text: reading, says: words }, i) => (
              <span key={reading}>
                {i > 0 && " · "}
                <Link href={hrefWith(reading)} scroll={false}>
                  {words}
                </Link>
              </span>
            ))}
          </p>
        )}
      </div>
    </div>
  );
}

/** The page with one box's text changed. */
export const withText =
  (path: string, asked: CutAsked, of: "texts" | "built") =>
  (key: string, text: string): string =>
    `${path}${cutQuery(asked, { [of]: { ...asked[of], [key]: text } })}`;
