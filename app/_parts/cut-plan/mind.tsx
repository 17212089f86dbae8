import look from "./cut-plan.module.css";

/** Cautions beside the work they belong to. */
export function Mind({ title, says }: { readonly title: string; readonly says: readonly string[] }) {
  if (says.length === 0) return null;
  return (
    <div className={`notice kept-together ${look.mind}`} role="note" aria-label={title}>
      <p>
        <strong>{title}</strong>
      </p>
      <ul>
        {says.map((each) => (
          <li key={each}>{each}</li>
        ))}
      </ul>
    </div>
  );
}
