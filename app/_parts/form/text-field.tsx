"use client";

/** A plain text: the label, the notes, a year, a count. */
export function TextField({
  name,
  label,
  hint,
  text,
  trouble,
  lines = 1,
  write,
  ...more
}: {
  name: string;
  label: string;
  hint?: string;
  text: string;
  trouble: string | undefined;
  lines?: number;
  write: (name: string, text: string) => void;
  inputMode?: "numeric" | "text";
  required?: boolean;
}) {
  const box = {
    id: name,
    name,
    value: text,
    autoComplete: "off",
    "aria-invalid": trouble ? true : undefined,
    "aria-describedby": `${name}-says`,
    "aria-required": more.required || undefined,
  } as const;
  return (
    <div className="field plainly">
      <div className="field-words">
        <label htmlFor={name}>{label}</label>
        {hint && <p className="soft">{hint}</p>}
      </div>
      <div className="field-entry">
        {lines > 1 ? (
          <textarea {...box} rows={lines} onChange={(event) => write(name, event.target.value)} />
        ) : (
          <input
            {...box}
            type="text"
            inputMode={more.inputMode}
            onChange={(event) => write(name, event.target.value)}
          />
        )}
        <div id={`${name}-says`} aria-live="polite">
          {trouble && <p className="trouble-words">{trouble}</p>}
        </div>
      </div>
    </div>
  );
}
