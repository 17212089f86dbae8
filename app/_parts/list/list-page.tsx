import Link from "next/link";
import { RecordList } from "#app/_parts/list/record-list.tsx";
import { RemovedNotice } from "#app/_parts/list/removed-notice.tsx";
import { type Row, rowOf } from "#app/_parts/list/row.ts";
import { sieveFrom } from "#app/_parts/list/sift.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords } from "#lib/db/records.ts";

/** A query of an address as Next hands it over. */
export type Query = Promise<Readonly<Record<string, string | string[] | undefined>>>;

/** 2 hp before 10 hp. */
const collator = new Intl.Collator("en-GB", { numeric: true });
const byLabel = (a: Row, b: Row): number => collator.compare(a.record.label, b.record.label);

/** The drawer of a kind: every record, with search, sieves, and the ways in and out. */
export async function ListPage({ kind, searchParams }: { kind: Kind; searchParams: Query }) {
  const query = await searchParams;
  const rows = (await allRecords(kind)).map((stored) => rowOf(kind, stored)).sort(byLabel);
  const removed = typeof query.removed === "string" ? query.removed : undefined;
  const brought = typeof query.brought === "string" ? Number(query.brought) : 0;
  const invented = rows.filter(({ demo }) => demo).length;
  return (
    <>
      {removed && <RemovedNotice kind={kind} id={removed} />}
      {brought > 0 && (
        <p className="notice" role="status">
          {brought === 1 ? `One ${kind} was brought in.` : `${brought} ${kind}s were brought in.`}
        </p>
      )}
      <TitleStrip
        kind="The drawer"
        title={kind === "motor" ? "Motors" : "Sterns"}
        particulars={[
          ["Kept", rows.length],
          ["Of them invented", invented],
        ]}
      />
      <p className="row not-printed">
        <Link className="button main" href={`/${kind}s/new`}>
          Enter a {kind}
        </Link>
        <Link className="button" href={`/${kind}s/exchange`}>
          Import or export
        </Link>
      </p>
      {rows.length === 0 ? (
        <Empty kind={kind} />
      ) : (
        <RecordList kind={kind} rows={rows} sieve={sieveFrom(kind, query)} />
      )}
    </>
  );
}

function Empty({ kind }: { kind: Kind }) {
  return (
    <p>
      No {kind}s yet. Enter one with a tape in hand: a few numbers are enough to begin with, and the{" "}
      <Link href="/measuring">measuring guide</Link> shows how each is taken.
    </p>
  );
}
