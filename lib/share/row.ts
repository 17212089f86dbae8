/** One row of a table made into a record, three cells to a measured number. */
import { mostCharacters, readCell } from "#lib/share/cell.ts";
import type { Column } from "#lib/share/column.ts";
import type { ImportError } from "#lib/share/imported.ts";

/** A row of a table; `row` is its number in a spreadsheet, the heading being row 1. */
export interface Row {
  readonly row: number;
  readonly cells: readonly string[];
}

/** A record put together from the cells of its row, and the cells that cannot be read. */
export function recordOf(
  { row, cells }: Row,
  columns: readonly (Column | undefined)[],
  commas: boolean,
): { readonly record: Readonly<Record<string, unknown>>; readonly errors: readonly ImportError[] } {
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
export function headingAt(pointer: string): string {
  const [key = "", part] = pointer.slice(1).split("/");
  return part === "plusMinus" || part === "how" ? `${key} ${part}` : key;
}
