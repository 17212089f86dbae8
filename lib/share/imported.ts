/** What came of reading a file: the records that could be read, and what is wrong with the others. */

/** One fault of a file. */
export interface ImportError {
  /** Row of the table as a spreadsheet numbers it (the heading is row 1), or number of the record in a JSON file from 1; 0 for the file as a whole. */
  readonly row: number;
  /** Heading of the column, or place in the record; empty for the whole row or file. */
  readonly column: string;
  readonly says: string;
}

/** Records read from a file. Nothing is ever half-read: a record with a fault is not among them. */
export interface Imported<T> {
  readonly records: readonly T[];
  readonly errors: readonly ImportError[];
}

/** Most bytes of a file. */
export const MOST_BYTES = 1_048_576;

/** Most faults told at once. */
export const MOST_ERRORS = 200;

/** A file refused as a whole, or because of one row. */
export const refusedFile = <T>(says: string, row = 0, column = ""): Imported<T> => ({
  records: [],
  errors: [{ row, column, says }],
});
