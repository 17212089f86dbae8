import { cookies } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { within } from "#app/_work/listing.ts";
import { type ListAsked, listAskedFrom, listQuery, type Query } from "#app/shortlist/_parts/asked.ts";
import { type Candidates, candidates, ranked } from "#app/shortlist/_parts/ranked.ts";
import { RowList } from "#app/shortlist/_parts/row-list.tsx";
import { SettlesMost } from "#app/shortlist/_parts/settles-most.tsx";
import look from "#app/shortlist/_parts/shortlist.module.css";
import { sieves } from "#app/shortlist/_parts/sieve.ts";
import { SieveForm } from "#app/shortlist/_parts/sieve-form.tsx";
import { Waiting } from "#app/shortlist/_parts/waiting.tsx";
import { checks } from "#lib/checks/index.ts";
import type { Kind } from "#lib/db/kind.ts";
import { tapeFrom } from "#lib/entry/tape.ts";
import type { Row } from "#lib/fit/shortlist.ts";

/** A list that is not done within this is shown with how far it is, ms. */
const PATIENCE_MS = 450;
/** Questions a list can be ordered by, in words. */
const ORDERS = checks.map(({ id }) => [id, `Most room: ${id.replaceAll("-", " ")}`] as const);
/** Rows on a sheet. */
const SHEET = 40;

/** Every motor against one stern, best first; or every stern against one motor. */
export async function ShortlistPage({
  kind,
  id,
  query,
}: {
  /** The kind of those listed. */
  readonly kind: Kind;
  readonly id: string;
  readonly query: Query;
}) {
  const asked = listAskedFrom(kind, query);
  const tape = tapeFrom((await cookies()).get("tape")?.value ?? "");
  const found = await candidates(kind, id, asked, tape ? { tape } : {});
  if (!found) notFound();
  const rows = await within(found.work, PATIENCE_MS);
  const path = kind === "motor" ? `/shortlist/${id}` : `/motors/${id}/sterns`;
  return (
    <>
      <TitleStrip
        kind={
          kind === "motor"
            ? "Shortlist: which motor suits this stern?"
            : "Shortlist: which stern suits this motor?"
        }
        title={found.one.record.label}
        particulars={[
          [kind === "motor" ? "Stern" : "Motor", <NumbersLink key="numbers" kind={kind} id={id} />],
          [kind === "motor" ? "Motors tried" : "Sterns tried", found.others.length.toLocaleString("en-GB")],
        ]}
      />
      {found.one.demo && (
        <p>
          <span className="demo-mark">invented</span> This {kind === "motor" ? "stern" : "motor"} was made up
          to show how Sternwright works.
        </p>
      )}
      {found.kept === 0 ? (
        <NoneKept kind={kind} />
      ) : (
        <>
          <SieveForm kind={kind} path={path} asked={asked} sieves={sieves[kind]} orders={ORDERS} />
          {rows ? (
            <Sheet found={found} rows={rows} asked={asked} path={path} id={id} />
          ) : (
            <Waiting total={found.work.total} done={found.work.done()} />
          )}
        </>
      )}
    </>
  );
}

function NumbersLink({ kind, id }: { readonly kind: Kind; readonly id: string }) {
  return <Link href={kind === "motor" ? `/sterns/${id}` : `/motors/${id}`}>its numbers</Link>;
}

function NoneKept({ kind }: { readonly kind: Kind }) {
  return (
    <p>
      No {kind}s are kept yet. <Link href={`/${kind}s/new`}>Enter one</Link>
      {kind === "motor" && (
        <>
          , or type the few numbers you have into the <Link href="/sale">quick check at a sale</Link>
        </>
      )}
      .
    </p>
  );
}

async function Sheet({
  found,
  rows,
  asked,
  path,
  id,
}: {
  readonly found: Candidates;
  readonly rows: readonly (Row | null)[];
  readonly asked: ListAsked;
  readonly path: string;
  readonly id: string;
}) {
  const list = ranked(found, rows, asked);
  const from = asked.from < list.length ? asked.from : 0;
  const entries = await list.rows(from, from + SHEET);
  return (
    <>
      <Counts kind={found.kind} counts={list.counts} all={found.others.length} kept={found.kept} />
      <SettlesMost settles={list.settles} stern={found.kind === "motor"} id={id} />
      {asked.like && (
        <p className="notice">
          <strong>Gaps filled.</strong> Where nobody took a number on a motor, one from like motors stands in,
          with its spread; rows that rest on such numbers say so. Nothing of it is stored.{" "}
          <Link className="not-printed" href={`${path}${listQuery(asked, { like: false })}`}>
            Only what was taken
          </Link>
        </p>
      )}
      {list.length === 0 ? (
        <p role="status">
          {found.others.length === 0
            ? `None of the ${found.kept} ${found.kind}s passes what is chosen above. `
            : `None of the ${found.others.length} is one of ${asked.show === "fits" ? "those that fit" : "those that may fit"}. `}
          <Link href={path}>Show all</Link>
        </p>
      ) : (
        <RowList kind={found.kind} one={found.one} entries={entries} asked={asked} from={from} path={path} />
      )}
      <Pages length={list.length} from={from} asked={asked} path={path} />
      <p className={`row not-printed ${look.after}`}>
        <a
          className="button"
          href={`/api/${found.kind === "motor" ? "sterns" : "motors"}/${id}/${found.kind === "motor" ? "shortlist" : "sterns"}${withFormat(listQuery(asked))}`}
          download
        >
          Export as CSV
        </a>
        {!asked.like && found.kind === "motor" && (
          <Link className="button" href={`${path}${listQuery(asked, { like: true })}`} scroll={false}>
            Fill gaps from like motors
          </Link>
        )}
      </p>
    </>
  );
}

const withFormat = (query: string): string => (query === "?" ? "?format=csv" : `${query}&format=csv`);

/** "5 fit, 7 cannot be told yet, 31 foul." */
function Counts({
  kind,
  counts,
  all,
  kept,
}: {
  readonly kind: Kind;
  readonly counts: Readonly<Record<Row["verdict"], number>>;
  readonly all: number;
  readonly kept: number;
}) {
  const verb = (count: number, word: string) => `${count.toLocaleString("en-GB")} ${word}`;
  return (
    <p className={look.counts} role="status">
      <strong>{verb(counts.fits, counts.fits === 1 ? "fits" : "fit")}</strong>,{" "}
      {verb(counts["cannot tell"], "cannot be told yet")},{" "}
      {verb(counts.fouls, counts.fouls === 1 ? "fouls" : "foul")}
      {all < kept ? `, of the ${verb(all, `${kind}s`)} chosen out of ${verb(kept, "kept")}.` : "."}
    </p>
  );
}

function Pages({
  length,
  from,
  asked,
  path,
}: {
  readonly length: number;
  readonly from: number;
  readonly asked: ListAsked;
  readonly path: string;
}) {
  if (length <= SHEET) return null;
  const to = Math.min(from + SHEET, length);
  const at = (place: number) => `${path}${listQuery(asked, { from: place })}`;
  return (
    <nav className="row not-printed" aria-label="Sheets of the list">
      {from > 0 && (
        <Link className="button" href={at(Math.max(0, from - SHEET))}>
          Better ones
        </Link>
      )}
      <span>
        {(from + 1).toLocaleString("en-GB")} to {to.toLocaleString("en-GB")} of{" "}
        {length.toLocaleString("en-GB")}
      </span>
      {to < length && (
        <Link className="button" href={at(to)}>
          Next {Math.min(SHEET, length - to)}
        </Link>
      )}
    </nav>
  );
}
