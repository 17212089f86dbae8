import type { Metadata } from "next";
import { groupsOf } from "#app/_parts/form/groups-of.ts";
import { fieldsOf } from "#app/_parts/form/texts.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { GuideField } from "#app/measuring/_parts/guide-field.tsx";
import type { Kind } from "#lib/db/kind.ts";
import type { FieldKey } from "#lib/draw/field-picture.ts";

export const metadata: Metadata = { title: "Measuring guide" };

const objects: readonly { id: Kind; title: string; tools: string }[] = [
  {
    id: "motor",
    title: "The motor",
    tools:
      "Hang it on an upright board. You want a tape, a straightedge, a square and a digital level; a second pair of hands for the tilt.",
  },
  {
    id: "stern",
    title: "The stern",
    tools:
      "Prop the hull with its keel line level. You want a tape, a plumb line, a straightedge, a bevel gauge and a digital level.",
  },
];

/** Every number, from where to where, with its picture and the usual mistake; made to be printed and taken outside. */
export default function MeasuringPage() {
  return (
    <>
      <TitleStrip kind="To print and take outside" title="Measuring guide" />
      <p>
        Take what you can and leave out the rest: every check says which numbers it wants. Read the tape as it
        comes, in inches or millimetres, and write the unit. Say how each number was come by; a guess that is
        called a guess still helps.
      </p>
      <ol className="words">
        <li>
          <strong>Saddle:</strong> the underside of the clamp bracket, where it sits on the transom.
        </li>
        <li>
          <strong>Saddle corner:</strong> where the saddle meets the bracket face that lies against the
          outside of the transom.
        </li>
        <li>
          <strong>Seat:</strong> the top edge of the transom under the saddle; the bottom of the notch, where
          there is one.
        </li>
        <li>
          <strong>Plate:</strong> the anti-ventilation plate, the flat one just above the propeller.
        </li>
        <li>
          <strong>Datum:</strong> the underside of the keel at the transom, or of the bottom where there is no
          keel, on the centreline.
        </li>
      </ol>
      {objects.map(({ id, title, tools }) => (
        <section key={id} aria-labelledby={`the-${id}`} className="stack">
          <div className="strip">
            <div className="strip-title">
              <h2 id={`the-${id}`}>{title}</h2>
              <p>{tools}</p>
            </div>
          </div>
          {groupsOf(id).map(({ group, title: groupTitle, buys, keys }) => (
            <div key={group}>
              <h3 id={`${id}-${group}`} className="drawn">
                {groupTitle}
              </h3>
              <p className="soft">{buys}</p>
              {keys
                .filter((key) => key in fieldsOf(id))
                .map((key) => (
                  <GuideField key={key} name={key as FieldKey} field={fieldsOf(id)[key]!} />
                ))}
            </div>
          ))}
        </section>
      ))}
    </>
  );
}
