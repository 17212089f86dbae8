import { type Packed, Pairs } from "#lib/search/columns.ts";
import type { Wish } from "#lib/search/query.ts";

/** Amounts of one kind and the records that have them; a record may have several. There are far fewer amounts than records. */
export class Sizes {
  readonly #places = new Map<number, number>();
  readonly #pairs = new Pairs();
  #recordsOf: Packed | undefined;
  #ordered: readonly number[] = [];

  add(value: number, record: number): void {
    let place = this.#places.get(value);
    if (place === undefined) {
      place = this.#places.size;
      this.#places.set(value, place);
    }
    this.#pairs.add(place, record);
  }

  /** Visits the records with an amount as wished, with a likeness from 1 (just that) down to 0.8 (as far off as is still meant). */
  meet({ value, tolerance }: Wish, visit: (record: number, likeness: number) => void): void {
    const { starts, values } = this.#settled();
    for (let at = this.#from(value - tolerance); at < this.#ordered.length; at++) {
      const amount = this.#ordered[at]!;
      if (amount > value + tolerance) return;
      const likeness = 1 - (0.2 * Math.abs(amount - value)) / tolerance;
      const place = this.#places.get(amount)!;
      for (let each = starts[place]!; each < starts[place + 1]!; each++) visit(values[each]!, likeness);
    }
  }

  #settled(): Packed {
    if (!this.#recordsOf) {
      this.#recordsOf = this.#pairs.packed(this.#places.size);
      this.#ordered = [...this.#places.keys()].sort((a, b) => a - b);
    }
    return this.#recordsOf;
  }

  /** The first place in the order whose amount is not below. */
  #from(amount: number): number {
    let [low, high] = [0, this.#ordered.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#ordered[middle]! < amount) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
