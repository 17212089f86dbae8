/** Lists of small whole numbers by row, packed: row r holds `values[starts[r]]` to `values[starts[r + 1]]`. */
export interface Packed {
  readonly starts: Int32Array;
  readonly values: Int32Array;
}

/** Pairs of (row, value) that grow in order of coming. */
export class Pairs {
  #rows = new Int32Array(1024);
  #values = new Int32Array(1024);
  #length = 0;

  add(row: number, value: number): void {
    if (this.#length === this.#rows.length) {
      this.#rows = longer(this.#rows);
      this.#values = longer(this.#values);
    }
    this.#rows[this.#length] = row;
    this.#values[this.#length++] = value;
  }

  /** The pairs by row, each row's values in the order they came. */
  packed(rows: number): Packed {
    const starts = new Int32Array(rows + 1);
    for (let at = 0; at < this.#length; at++) starts[this.#rows[at]! + 1]!++;
    for (let row = 0; row < rows; row++) starts[row + 1]! += starts[row]!;
    const next = starts.slice(0, rows);
    const values = new Int32Array(this.#length);
    for (let at = 0; at < this.#length; at++) values[next[this.#rows[at]!]!++] = this.#values[at]!;
    return { starts, values };
  }
}

/** The same numbers with room for as many again. */
export function longer(numbers: Int32Array): Int32Array<ArrayBuffer> {
  const more = new Int32Array(numbers.length * 2);
  more.set(numbers);
  return more;
}
