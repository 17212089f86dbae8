import { assertKind, assertShallow, IMPORT_LIMIT, readBytes } from "#app/_http/body.ts";
import { type Fault, Refused } from "#app/_http/problem.ts";
import { route } from "#app/_http/route.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { createRecords, type Draft, getRecord } from "#lib/db/records.ts";
import { sameRecord } from "#lib/db/same.ts";
import { readCsv } from "#lib/share/csv.ts";
import type { Imported } from "#lib/share/imported.ts";
import { readCollection, readJson } from "#lib/share/json.ts";

/**
 * `POST` a file of records: JSON or CSV, up to 1 MB. All of it is stored or nothing. A record that stands
 * here already, just as it is, is passed over; another one of the same id refuses the file.
 */
export function importing<K extends Kind>(kind: K) {
  return route({
    async POST(request) {
      const type = assertKind(request, ["application/json", "text/csv"]);
      const bytes = await readBytes(request, IMPORT_LIMIT);
      if (type === "text/csv") return store(drafts(kind, readCsv(kind, bytes), "csv"));
      assertShallow(new TextDecoder().decode(bytes));
      return store(drafts(kind, readJson(kind, bytes), "json"));
    },
  });
}

/** `POST` a JSON file of motors and sterns together. */
export const importingAll = () =>
  route({
    async POST(request) {
      assertKind(request, ["application/json"]);
      const bytes = await readBytes(request, IMPORT_LIMIT);
      assertShallow(new TextDecoder().decode(bytes));
      const { motors, sterns } = readCollection(bytes);
      return store([
        ...drafts("motor", motors, "json", "/motors"),
        ...drafts("stern", sterns, "json", "/sterns"),
      ]);
    },
  });

/** The records of a file, each to be stored; throws 422 with every fault, told by its place in the file. */
function drafts<K extends Kind>(
  kind: K,
  { records, errors }: Imported<RecordOf<K>>,
  format: "csv" | "json",
  within = "",
): Draft<K>[] {
  if (errors.length === 0) return records.map((record) => ({ kind, record }));
  const faults = errors.map(({ row, column, says }): Fault & { row: number } => {
    const place = format === "csv" ? `/${row}/${column}` : `${within}/${row - 1}${column}`;
    return { pointer: row === 0 ? within : place, detail: says, code: "not-allowed", row };
  });
  throw new Refused(422, `Nothing was stored: ${faults[0]?.detail}`, { errors: faults });
}

async function store(all: readonly Draft[]): Promise<Response> {
  const fresh: Draft[] = [];
  for (const draft of all) {
    const standing = await getRecord(draft.kind, draft.record.id);
    if (!standing || !sameRecord(standing.record, draft.record)) fresh.push(draft);
  }
  await createRecords(fresh);
  return Response.json({ stored: fresh.length, unchanged: all.length - fresh.length }, { status: 201 });
}
