import { restore } from "#app/_parts/record/remove.ts";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord, historyOf } from "#lib/db/records.ts";

/** Says what was just removed, and undoes it with one tap. Nothing is said of a record that stands, or never did. */
export async function RemovedNotice({ kind, id }: { kind: Kind; id: string }) {
  const [standing, history] = await Promise.all([getRecord(kind, id), historyOf(kind, id)]);
  const last = history.at(-1);
  if (standing || !last) return null;
  return (
    <div className="notice" role="status">
      <form action={restore.bind(null, kind, id)} className="row">
        <p>Removed: {last.record.label}.</p>
        <button type="submit">Undo</button>
      </form>
    </div>
  );
}
