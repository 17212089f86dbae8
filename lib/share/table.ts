/**
 * Tables as CSV: RFC 4180 with a heading, cells of text and of numbers. Text that a spreadsheet would
 * take for a formula is written with an apostrophe before it, which reading takes away again.
 */
import { CsvError, parse } from "csv-parse/sync";
import { stringify } from "csv-stringify/sync";

/** A cell: numbers stay numbers, undefined is an empty cell. */
export type Cell = string | number | undefined;

/** Most rows below the heading. */
export const MOST_ROWS = 5000;
/** Most columns: a motor has three a number, some 110 in all, so 60 would not do; 150 leaves room for new ones. */
export const MOST_COLUMNS = 150;

/** Beginnings that spreadsheets take for a formula (csv-stringify escapes these), and the apostrophe itself. */
const ESCAPED = /^'['=+\-@\t\r＝＋－＠]/;

const escapeApostrophe = (cell: Cell): Cell =>
  typeof cell === "string" && cell.startsWith("'") ? `'${cell}` : cell;
const unescapeCell = (cell: string): string => (ESCAPED.test(cell) ? cell.slice(1) : cell);

/** The table as CSV text, with a byte-order mark so that spreadsheets see UTF-8. */
export function writeTable(heading: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return stringify(
    [heading, ...rows].map((row) => row.map(escapeApostrophe)),
    { bom: true, escape_formulas: true, record_delimiter: "\r\n", quoted_match: /[\r\n;\t]|^\s|\s$/ },
  );
}

/** A table as read: cells as text, rows in their places (empty ones too); or the fault and its row. */
export type Table =
  | {
      readonly heading: readonly string[];
      readonly rows: readonly (readonly string[])[];
      readonly semicolons: boolean;
    }
  | { readonly says: string; readonly row: number };

const SEPARATORS = [",", ";", "\t"] as const;
type Separator = (typeof SEPARATORS)[number];

/** The separator with which the first line names most of the columns asked for. */
function separatorOf(text: string, known: readonly string[]): Separator {
  const line = text.slice(0, 20_000).split(/[\r\n]/, 1)[0] ?? "";
  const hits = (separator: Separator): number =>
    line.split(separator).filter((name) => known.includes(name.replaceAll('"', "").trim())).length;
  return SEPARATORS.reduce((best, one) => (hits(one) > hits(best) ? one : best));
}

function faultOf(error: unknown): { readonly says: string; readonly row: number } {
  const { code, records } = error instanceof CsvError ? error : { code: "", records: 0 };
  const row = Number(records ?? 0) + 1;
  if (code === "CSV_QUOTE_NOT_CLOSED")
    return {
      row,
      says: "A quotation mark opened in this row is never closed, so nothing after it can be read.",
    };
  if (code === "INVALID_OPENING_QUOTE" || code === "CSV_INVALID_CLOSING_QUOTE")
    return {
      row,
      says: "A quotation mark stands in the middle of a cell. Put the cell in quotation marks and double those within.",
    };
  return { row, says: "This row cannot be read as CSV." };
}

function cellsOf(text: string, delimiter: Separator): readonly (readonly string[])[] {
  return parse(text, {
    delimiter,
    record_delimiter: ["\r\n", "\n", "\r"],
    relax_column_count: true,
    ltrim: true,
    to: MOST_ROWS + 2,
  });
}

const tidyCell = (cell: string): string => unescapeCell(cell.replace(/^\s+/, ""));

/**
 * Reads CSV with commas, semicolons or tabs, whichever names most of the `known` columns in its first
 * line. Leading blanks of a cell are dropped and apostrophes before would-be formulas taken away. At
 * most 5,000 rows and 150 columns. Never throws.
 */
export function readTable(text: string, known: readonly string[]): Table {
  const body = text.replace(/^\s+/, "").replace(/^sep=.\r?\n/i, "");
  const separator = separatorOf(body, known);
  const many = (row: number) => ({ row, says: `There are more than ${MOST_COLUMNS} columns.` });
  try {
    const [heading = [], ...rows] = cellsOf(body, separator).map((row) =>
      row.length > 4 * MOST_COLUMNS ? row : row.map(tidyCell),
    );
    if (heading.length > MOST_COLUMNS) return many(1);
    if (rows.length > MOST_ROWS) return { row: 0, says: `There are more than ${MOST_ROWS} rows.` };
    const wide = rows.findIndex((row) => row.length > MOST_COLUMNS);
    if (wide >= 0) return many(wide + 2);
    return { heading: heading.map((name) => name.trim()), rows, semicolons: separator === ";" };
  } catch (error) {
    return faultOf(error);
  }
}
