import { fitting, readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { entryOf, found } from "#app/_http/records/paths.ts";
import { route } from "#app/_http/route.ts";
import { etagOf, seenVersion } from "#app/_http/version.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import {
  type Conflict,
  getRecord,
  historyOf,
  removeRecord,
  restoreRecord,
  type Stored,
  takingsOf,
  updateRecord,
} from "#lib/db/records.ts";
import { applyPatch } from "#lib/entry/patch.ts";

type Path = { id: string };

/** `GET` one record, `PATCH` it, `DELETE` it (which can be undone). */
export function single<K extends Kind>(kind: K) {
  return route<Path>({
    GET: async (_request, { id }) => answer(found(await getRecord(kind, id), kind)),
    async PATCH(request, { id }) {
      const version = seenVersion(request);
      const patch = await readJson(request, entryOf[kind].patch);
      const current = found(await getRecord(kind, id), kind);
      if (current.version !== version) throw changed({ conflict: true, current });
      const wanted = fitting(entryOf[kind].whole, applyPatch(current.record, patch));
      return answer(settled(kind, await updateRecord(kind, id, version, wanted)));
    },
    async DELETE(request, { id }) {
      settled(kind, await removeRecord(kind, id, seenVersion(request)));
      return new Response(null, { status: 204 });
    },
  });
}

/** `POST` brings a removed record back. */
export function restoring(kind: Kind) {
  return route<Path>({
    POST: async (_request, { id }) => answer(found(await restoreRecord(kind, id), kind)),
  });
}

/** `GET` every version of a record and every number ever taken of it, also of a removed one. */
export function history(kind: Kind) {
  return route<Path>({
    async GET(_request, { id }) {
      const versions = await historyOf(kind, id);
      found(versions[0] ?? null, kind);
      return Response.json({ versions, takings: await takingsOf(kind, id) });
    },
  });
}

const answer = ({ record, version }: Stored<{ id: string }>): Response =>
  Response.json(record, { headers: { ETag: etagOf(version), "Cache-Control": "no-cache" } });

function settled<K extends Kind>(
  kind: K,
  outcome: Stored<RecordOf<K>> | Conflict<K> | null,
): Stored<RecordOf<K>> {
  const known = found(outcome, kind);
  if ("conflict" in known) throw changed(known);
  return known;
}

/** The refusal of a change to a version that is no longer the last. */
export const changed = ({ current: { record, version } }: Conflict<Kind>): Refused =>
  new Refused(412, "Somebody else has changed this record since you read it. Nothing was changed.", {
    headers: { ETag: etagOf(version) },
    more: { current: record },
  });
