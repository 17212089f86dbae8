/**
 * Motors and sterns as CSV: one row a record, headings in the keys of the vocabulary. What was written
 * reads back as the same records, to the last bit.
 */
import { didYouMean, problems } from "#lib/entry/problem.ts";
import { shown } from "#lib/entry/words.ts";
import { writeCell } from "#lib/share/cell.ts";
import { type Column, columnsOf } from "#lib/share/column.ts";
import { fileText } from "#lib/share/file-text.ts";
import { type ImportError, type Imported, MOST_ERRORS, refusedFile } from "#lib/share/imported.ts";
import { type KindName, kinds, type Records } from "#lib/share/kinds.ts";
import { headingAt, type Row, recordOf } from "#lib/share/row.ts";
import { readTable, writeTable } from "#lib/share/table.ts";

type Loose = Readonly<Record<string, unknown>>;

function valueAt(record: Loose, { key, part }: Column): unknown {
  const value = record[key];
  return part === undefined || value === undefined ? value : (value as Loose)[part];
}

/** Records as CSV text, every column of their kind, one row a record. */
export function writeCsv<K extends KindName>(kind: K, records: readonly Records[K][]): string {
  const columns = columnsOf(kind);
  return writeTable(
    columns.map(({ heading }) => heading),
    records.map((record) => columns.map((column) => writeCell(column.kind, valueAt({ ...record }, column)))),
  );
}

/** Faults of the heading: each makes every row unsafe to read. */
function headingFaults(
  heading: readonly string[],
  known: readonly string[],
  rows: readonly Row[],
): ImportError[] {
  const faults = heading.flatMap((name, at) => {
    const fault = (says: string): ImportError[] => [{ row: 1, column: name, says }];
    if (name === "")
      return rows.some(({ cells }) => (cells[at] ?? "") !== "")
        ? fault(`Column ${at + 1} has no heading.`)
        : [];
    if (!known.includes(name))
      return fault(`There is no column called ${shown(name)}.${didYouMean(name, known)}`);
    return heading.indexOf(name) === at ? [] : fault(`There are two columns called ${shown(name)}.`);
  });
  const missing = ["id", "label"].filter((name) => !heading.includes(name));
  return [
    ...faults,
    ...missing.map((column) => ({ row: 1, column, says: `The column ${column} is needed.` })),
  ];
}

/** Decimal commas are looked for only where semicolons divide the columns. */
function writesCommas(rows: readonly Row[], columns: readonly (Column | undefined)[]): boolean {
  const numeric = (at: number): boolean => columns[at]?.kind === "number" || columns[at]?.kind === "angles";
  return rows.some(({ cells }) => cells.some((cell, at) => numeric(at) && /\d,\d/.test(cell)));
}

/**
 * Reads motors or sterns from CSV as written here, or as a spreadsheet saved it since: commas,
 * semicolons (then decimal commas too) or tabs. A row with a fault is told and left out; a fault of the
 * file or its heading leaves nothing. Never throws.
 */
export function readCsv<K extends KindName>(kind: K, input: string | Uint8Array): Imported<Records[K]> {
  const file = fileText(input);
  if ("says" in file) return refusedFile(file.says);
  const all = columnsOf(kind);
  const known = all.map(({ heading }) => heading);
  const table = readTable(file.text, known);
  if ("says" in table) return refusedFile(table.says, table.row);
  if (table.heading.every((name) => !known.includes(name)))
    return refusedFile(
      "The first row must name the columns, as an exported file does: id, label and so on.",
      1,
    );
  const rows = table.rows
    .map((cells, at): Row => ({ row: at + 2, cells }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const faults = headingFaults(table.heading, known, rows);
  if (faults.length > 0) return { records: [], errors: faults };
  const columns = table.heading.map((name) => all.find(({ heading }) => heading === name));
  return readRows(kind, rows, columns, table.semicolons && writesCommas(rows, columns));
}

function readRows<K extends KindName>(
  kind: K,
  rows: readonly Row[],
  columns: readonly (Column | undefined)[],
  commas: boolean,
): Imported<Records[K]> {
  const records: Records[K][] = [];
  const errors: ImportError[] = [];
  const seen = new Map<string, number>();
  for (const one of rows) {
    const read = recordOf(one, columns, commas);
    const parsed = kinds[kind].schema.safeParse(read.record);
    const told = new Set(read.errors.map(({ column }) => column));
    const more = parsed.success
      ? []
      : problems(parsed.error).map(({ pointer, detail }) => ({
          row: one.row,
          column: headingAt(pointer),
          says: detail,
        }));
    const faults = [...read.errors, ...more.filter(({ column }) => !told.has(column))];
    const before = parsed.success ? seen.get(parsed.data.id) : undefined;
    if (before !== undefined)
      faults.push({ row: one.row, column: "id", says: `Row ${before} has the same id.` });
    errors.push(...faults);
    if (parsed.success && faults.length === 0) {
      seen.set(parsed.data.id, one.row);
      records.push(parsed.data);
    }
  }
  return { records, errors: errors.slice(0, MOST_ERRORS) };
}
