import { notFound } from "next/navigation";
import { RecordForm } from "#app/_parts/form/record-form.tsx";
import { asTyped } from "#app/_parts/record/as-typed.ts";
import { named } from "#app/_parts/record/named.ts";
import { pictures } from "#app/_parts/record/pictures.tsx";
import { saveRecord } from "#app/_parts/record/save.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord } from "#lib/db/records.ts";

/** A record's form, its numbers as they were typed. */
export async function EditPage({ kind, params }: { kind: Kind; params: Promise<{ id: string }> }) {
  const { id } = await params;
  const stored = await getRecord(kind, id);
  if (!stored) notFound();
  return (
    <>
      <TitleStrip
        kind={`Edit this ${kind}`}
        title={stored.record.label}
        particulars={[["Version", stored.version]]}
      />
      <RecordForm
        kind={kind}
        id={id}
        version={stored.version}
        initial={await asTyped(kind, stored.record)}
        pictures={pictures(kind)}
        partners={await named(kind === "motor" ? "stern" : "motor")}
        save={saveRecord.bind(null, kind, id)}
      />
    </>
  );
}
