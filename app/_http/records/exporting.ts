import { z } from "zod";
import { readQuery } from "#app/_http/body.ts";
import { found } from "#app/_http/records/paths.ts";
import { route } from "#app/_http/route.ts";
import type { Kind, RecordOf } from "#lib/db/kind.ts";
import { allRecords, getRecord, type Stored } from "#lib/db/records.ts";
import { writeCsv } from "#lib/share/csv.ts";
import { writeCollection, writeRecord } from "#lib/share/json.ts";

const KINDS_OF_FILE = { json: "application/json", csv: "text/csv; charset=utf-8" } as const;
type Format = keyof typeof KINDS_OF_FILE;

/** What an export may be asked for in its address. */
export const exportQuery = z.strictObject({
  format: z.enum(["json", "csv"], { error: "Give json or csv as the format." }).default("json"),
});

/** `GET` all records of a kind as one file. */
export function exporting<K extends Kind>(kind: K) {
  return route({
    async GET(request) {
      const { format } = readQuery(request, exportQuery);
      const records = plain(await allRecords(kind));
      const text = format === "csv" ? writeCsv(kind, records) : `${JSON.stringify(records, null, 2)}\n`;
      return file(`${kind}s`, format, text);
    },
  });
}

/** `GET` one record as a file. */
export function exportingOne<K extends Kind>(kind: K) {
  return route<{ id: string }>({
    async GET(request, { id }) {
      const { format } = readQuery(request, exportQuery);
      const { record } = found(await getRecord(kind, id), kind);
      return file(record.id, format, format === "csv" ? writeCsv(kind, [record]) : writeRecord(record));
    },
  });
}

/** `GET` everything as one JSON file. */
export const exportingAll = () =>
  route({
    async GET() {
      const [motors, sterns] = await Promise.all([allRecords("motor"), allRecords("stern")]);
      return file("sternwright", "json", writeCollection({ motors: plain(motors), sterns: plain(sterns) }));
    },
  });

const plain = <K extends Kind>(items: Stored<RecordOf<K>>[]): RecordOf<K>[] =>
  items.map(({ record }) => record);

const file = (name: string, format: Format, text: string): Response =>
  new Response(text, {
    headers: {
      "Content-Type": KINDS_OF_FILE[format],
      "Content-Disposition": `attachment; filename="${name}.${format}"`,
    },
  });
