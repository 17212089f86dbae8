import Link from "next/link";
import { notFound } from "next/navigation";
import { draftKey } from "#app/_parts/form/draft-key.ts";
import { ForgetDraft } from "#app/_parts/form/forget-draft.tsx";
import { groupsOf } from "#app/_parts/form/groups-of.ts";
import type { Query } from "#app/_parts/list/list-page.tsx";
import { PickPair } from "#app/_parts/pairing/pick-pair.tsx";
import { day } from "#app/_parts/record/day.ts";
import { FactList } from "#app/_parts/record/fact-list.tsx";
import { howWell } from "#app/_parts/record/how-well.ts";
import { InTheWay } from "#app/_parts/record/in-the-way.tsx";
import { named } from "#app/_parts/record/named.ts";
import { NumberTable } from "#app/_parts/record/number-table.tsx";
import { RecordNotices } from "#app/_parts/record/record-notices.tsx";
import { remove } from "#app/_parts/record/remove.ts";
import { Tally } from "#app/_parts/record/tally.tsx";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { WaysOn } from "#app/shortlist/_parts/ways-on.tsx";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord } from "#lib/db/records.ts";

/** One record's sheet: what is known of it, how well, and what it can be tried against. */
export async function RecordPage({
  kind,
  params,
  searchParams,
}: {
  kind: Kind;
  params: Promise<{ id: string }>;
  searchParams: Query;
}) {
  const [{ id }, query] = await Promise.all([params, searchParams]);
  const stored = await getRecord(kind, id);
  if (!stored) notFound();
  const { record, version, updatedAt, demo } = stored;
  const other = kind === "motor" ? "stern" : "motor";
  const others = await named(other);
  return (
    <>
      <RecordNotices kind={kind} query={query} />
      {query.saved && <ForgetDraft names={[draftKey(kind, undefined), draftKey(kind, id)]} />}
      <TitleStrip
        kind={kind === "motor" ? "Motor" : "Stern"}
        title={record.label}
        particulars={[
          ["Version", version],
          ["Last changed", day(updatedAt)],
          ["Numbers", <Tally key="tally" counts={howWell(kind, record)} />],
        ]}
      />
      {demo && (
        <p>
          <span className="demo-mark">invented</span> This {kind} was made up to show how Sternwright works.
          No such {kind} exists.
        </p>
      )}
      {others.length > 0 && (
        <PickPair {...(kind === "motor" ? { sterns: others, motor: id } : { motors: others, stern: id })} />
      )}
      {others.length > 0 && <WaysOn kind={kind} id={id} />}
      {record.notes && <p className="notes">{record.notes}</p>}
      <FactList kind={kind} record={record} />
      {groupsOf(kind).map((group) => (
        <NumberTable key={group.group} kind={kind} group={group} record={record} />
      ))}
      <InTheWay kind={kind} record={record} />
      <div className="row not-printed">
        <Link className="button main" href={`/${kind}s/${id}/edit`}>
          Edit
        </Link>
        <Link className="button" href={`/${kind}s/${id}/history`}>
          History
        </Link>
        {kind === "stern" && (
          <Link className="button" href={`/cut-plan/${id}`}>
            Cut plan
          </Link>
        )}
        <a className="button" href={`/api/${kind}s/${id}/export`} download>
          Export this {kind}
        </a>
        <form action={remove.bind(null, kind, id, version)}>
          <button type="submit">Remove</button>
        </form>
      </div>
    </>
  );
}
