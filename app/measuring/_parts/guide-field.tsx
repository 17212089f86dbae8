import { FieldPicture } from "#app/_parts/drawing/field-picture.tsx";
import type { FieldKey } from "#lib/draw/field-picture.ts";
import type { Field } from "#lib/rig/field.ts";

const UNIT_WORDS = {
  mm: "a length",
  deg: "an angle",
  kg: "a mass",
  kW: "a power",
  count: "a count",
} as const;

/** One number of the guide: picture, name, from where to where, the usual mistake, and a line to write it on. */
export function GuideField({ name, field }: { name: FieldKey; field: Field }) {
  return (
    <article className="field guide kept-together" id={name} aria-labelledby={`${name}-name`}>
      <div className="field-picture">
        <FieldPicture name={name} />
      </div>
      <div className="field-words">
        <h4 id={`${name}-name`}>{field.name}</h4>
        <p>{field.take}</p>
        {field.mistake && (
          <p>
            <strong>Usual mistake:</strong> {field.mistake}
          </p>
        )}
      </div>
      <p className="field-entry small">
        <span className="write-here" aria-hidden="true" />
        <span className="soft">{UNIT_WORDS[field.unit]}</span>
      </p>
    </article>
  );
}
