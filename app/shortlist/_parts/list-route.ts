import { readQuery } from "#app/_http/body.ts";
import { noSuch } from "#app/_http/records/paths.ts";
import { route } from "#app/_http/route.ts";
import { listAskedFrom } from "#app/shortlist/_parts/asked.ts";
import { listCsv } from "#app/shortlist/_parts/list-csv.ts";
import { listQuerySchema, ROWS } from "#app/shortlist/_parts/list-query.ts";
import { candidates, type Entry, ranked } from "#app/shortlist/_parts/ranked.ts";
import type { Kind } from "#lib/db/kind.ts";
import { ENGINE_VERSION } from "#lib/fit/report.ts";

/** `GET` the records of `kind` against one of the other kind, best first, as JSON in pages or as one CSV file. */
export function listRoute(kind: Kind) {
  const schema = listQuerySchema(kind);
  const other = kind === "motor" ? "stern" : "motor";
  return route<{ id: string }>({
    async GET(request, { id }) {
      const { format, from = 0, limit = ROWS.usual, ...query } = readQuery(request, schema);
      const asked = listAskedFrom(kind, query as Record<string, string>);
      const found = await candidates(kind, id, asked, { whole: format === "csv" });
      if (!found) throw noSuch(other);
      const list = ranked(found, await found.work.rows, asked);
      if (format === "csv") return csv(kind, id, await list.rows(0, list.length));
      return Response.json({
        engine: ENGINE_VERSION,
        [other]: id,
        counts: list.counts,
        settlesMost: list.settles,
        items: (await list.rows(from, from + limit)).map(itemOf),
        ...(from + limit < list.length && { next: from + limit }),
      });
    },
  });
}

const itemOf = ({ row, other, estimated }: Entry) => ({
  ...rounded(row),
  label: other.record.label,
  ...(estimated.length > 0 && { estimated }),
});

/** Every number to 0.01, as in a report. */
function rounded<T>(value: T): T {
  if (typeof value === "number") return (Math.round(value * 100) / 100) as T;
  if (Array.isArray(value) || value === null || typeof value !== "object") return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, rounded(each)])) as T;
}

const csv = (kind: Kind, id: string, entries: readonly Entry[]): Response =>
  new Response(listCsv(kind, entries), {
    headers: {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": `attachment; filename="${kind}s-for-${id}.csv"`,
    },
  });
