import Link from "next/link";
import { notFound } from "next/navigation";
import { changesBetween } from "#app/_parts/record/changes.ts";
import { moment } from "#app/_parts/record/day.ts";
import { restore } from "#app/_parts/record/remove.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import type { Kind } from "#lib/db/kind.ts";
import { historyOf, type Revision } from "#lib/db/records.ts";

const ACTIONS = {
  create: "Entered",
  edit: "Changed",
  remove: "Removed",
  restore: "Brought back",
} as const satisfies Record<Revision<Kind>["action"], string>;

/** Every version of a record, newest first, with what each changed. Nothing is ever written over. */
export async function HistoryPage({ kind, params }: { kind: Kind; params: Promise<{ id: string }> }) {
  const { id } = await params;
  const history = await historyOf(kind, id);
  const last = history.at(-1);
  if (!last) notFound();
  const gone = last.action === "remove";
  return (
    <>
      <TitleStrip
        kind={`History of this ${kind}`}
        title={last.record.label}
        particulars={[["Versions", history.length]]}
      />
      {gone && (
        <form className="notice row" action={restore.bind(null, kind, id)}>
          <p>This {kind} has been removed.</p>
          <button type="submit">Bring it back</button>
        </form>
      )}
      <ol className="revisions" reversed>
        {history
          .map((revision, at) => ({ revision, before: history[at - 1] }))
          .reverse()
          .map(({ revision, before }) => (
            <li key={revision.version} value={revision.version}>
              <Version kind={kind} revision={revision} before={before} />
            </li>
          ))}
      </ol>
      {!gone && (
        <p>
          <Link className="button" href={`/${kind}s/${id}`}>
            Back to the {kind}
          </Link>
        </p>
      )}
    </>
  );
}

function Version({
  kind,
  revision,
  before,
}: {
  kind: Kind;
  revision: Revision<Kind>;
  before?: Revision<Kind>;
}) {
  const changes = revision.action === "edit" ? changesBetween(kind, before?.record, revision.record) : [];
  return (
    <section className="stack-near" aria-labelledby={`version-${revision.version}`}>
      <h2 id={`version-${revision.version}`} className="drawn">
        Version {revision.version}: {ACTIONS[revision.action].toLowerCase()}
      </h2>
      <p className="soft">{moment(revision.at)}</p>
      {changes.length > 0 && (
        <div className="across">
          <table>
            <caption className="unseen">What version {revision.version} changed</caption>
            <thead>
              <tr>
                <th scope="col">Entry</th>
                <th scope="col">Before</th>
                <th scope="col">After</th>
              </tr>
            </thead>
            <tbody>
              {changes.map(({ name, was, now }) => (
                <tr key={name}>
                  <th scope="row">{name}</th>
                  <td>{was}</td>
                  <td>{now}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}
