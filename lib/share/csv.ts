/**
 * Motors and sterns as CSV: one row a record, headings in the keys of the vocabulary. What was written
 * reads back as the same records, to the last bit.
 */
import { didYouMean, problems } from "#lib/entry/problem.ts";
import { shown } from "#lib/entry/words.ts";
import { mostCharacters, readCell, writeCell } from "#lib/share/cell.ts";
import { type Column, columnsOf } from "#lib/share/column.ts";
import { fileText } from "#lib/share/file-text.ts";
import { type ImportError, type Imported, MOST_ERRORS, refusedFile } from "#lib/share/imported.ts";
import { type KindName, kinds, type Records } from "#lib/share/kinds.ts";
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

interface Row {
  readonly row: number;
  readonly cells: readonly string[];
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

/** A record put together from the cells of its row, and the cells that cannot be read. */
function recordOf({ row, cells }: Row, columns: readonly (Column | undefined)[], commas: boolean) {
  const record = new Map<string, unknown>();
  const errors: ImportError[] = [];
  cells.forEach((cell, at) => {
    if (cell.trim() === "") return;
    const column = columns[at];
    if (column === undefined)
      errors.push({ row, column: "", says: "This row has more cells than the heading has columns." });
    else put(record, column, cell, commas, (says) => errors.push({ row, column: column.heading, says }));
  });
  return { record: Object.fromEntries([...record].map(([key, value]) => [key, finished(value)])), errors };
}

/** The parts of a measured number gathered from its three columns. */
class Parts {
  value?: unknown;
  plusMinus?: unknown;
  how?: unknown;
}

function put(
  record: Map<string, unknown>,
  { key, kind, part }: Column,
  cell: string,
  commas: boolean,
  fault: (says: string) => void,
): void {
  const most = mostCharacters(key, kind);
  const tooMany = [...cell].length > most;
  const read = tooMany
    ? { says: `This cell has more than ${most} characters.` }
    : readCell(kind, part === "how" ? cell.trim() : cell, commas);
  if ("says" in read) fault(read.says);
  else if (part === undefined) record.set(key, read.value);
  else record.set(key, Object.assign(record.get(key) ?? new Parts(), { [part]: read.value }));
}

/** Three columns as one number; without a how it counts as measured. */
const finished = (value: unknown): unknown =>
  value instanceof Parts ? { ...value, how: value.how ?? "measured" } : value;

/** The heading a pointer of a problem belongs to: `/seatMm/how` is `seatMm how`, `/obstacles/0/label` is `obstacles`. */
function headingAt(pointer: string): string {
  const [key = "", part] = pointer.slice(1).split("/");
  return part === "plusMinus" || part === "how" ? `${key} ${part}` : key;
}

/** Decimal commas are looked for only where semicolons divide the columns. */
function writesCommas(rows: readonly Row[], columns: readonly (Column | undefined)[]): boolean {
  const numeric = (at: number): boolean => columns[at]?.kind === "number" || columns[at]?.kind === "angles";
  return rows.some(({ cells }) =>
    cells.some((cell, at) => numeric(at) && /^[-−\d,\s]*\d,\d[-−\d,\s]*$/.test(cell)),
  );
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
