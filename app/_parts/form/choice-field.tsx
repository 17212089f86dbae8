"use client";

/** A plain fact that is chosen: one tap, and "not known" is a choice like any other. */
export function ChoiceField({
  name,
  label,
  hint,
  choices,
  text,
  write,
}: {
  name: string;
  label: string;
  hint?: string;
  choices: readonly (readonly [value: string, words: string])[];
  text: string;
  write: (name: string, text: string) => void;
}) {
  return (
    <div className="field plainly" role="radiogroup" aria-labelledby={`${name}-asked`}>
      <div className="field-words">
        <p className="asked" id={`${name}-asked`}>
          {label}
        </p>
        {hint && <p className="soft">{hint}</p>}
      </div>
      <div className="choices">
        {[...choices, ["", "Not known"] as const].map(([value, words]) => (
          <label key={value} className="choice">
            <input
              type="radio"
              name={name}
              value={value}
              checked={text === value}
              onChange={() => write(name, value)}
            />
            {words}
          </label>
        ))}
      </div>
    </div>
  );
}
