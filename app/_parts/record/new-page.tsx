import { RecordForm } from "#app/_parts/form/record-form.tsx";
import { named } from "#app/_parts/record/named.ts";
import { pictures } from "#app/_parts/record/pictures.tsx";
import { saveRecord } from "#app/_parts/record/save.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import type { Kind } from "#lib/db/kind.ts";

/** A new record's form. */
export async function NewPage({ kind }: { kind: Kind }) {
  return (
    <>
      <TitleStrip kind={`New ${kind}`} title={`Enter a ${kind}`}>
        <p>
          Write lengths as your tape shows them: 20 1/2 in, 520 mm, 1' 8 1/2". Leave out what you do not know.
        </p>
      </TitleStrip>
      <RecordForm
        kind={kind}
        initial={{}}
        pictures={pictures(kind)}
        partners={await named(kind === "motor" ? "stern" : "motor")}
        save={saveRecord.bind(null, kind, null)}
      />
    </>
  );
}
