/** What each record has been found by so far: one term of the query after another. */
export class Tally {
  readonly #total: Float32Array;
  readonly #terms: Uint8Array;
  readonly #best: Float32Array;
  readonly #found: Int32Array;
  readonly #now: Int32Array;
  #foundCount = 0;
  #nowCount = 0;

  constructor(records: number) {
    this.#total = new Float32Array(records);
    this.#terms = new Uint8Array(records);
    this.#best = new Float32Array(records);
    this.#found = new Int32Array(records);
    this.#now = new Int32Array(records);
  }

  /** A record is found by the term in hand, this well; the best way it is found by counts. */
  find(record: number, how: number): void {
    const best = this.#best[record]!;
    if (best === 0) this.#now[this.#nowCount++] = record;
    if (how > best) this.#best[record] = how;
  }

  /** The same for a stretch of packed numbers, each a record and, in its lowest bits, which of `worths` it is found with. */
  findAll(packed: Int32Array, from: number, to: number, bits: number, worths: readonly number[]): void {
    const [bests, now, mask] = [this.#best, this.#now, 2 ** bits - 1];
    let count = this.#nowCount;
    for (let at = from; at < to; at++) {
      const value = packed[at]!;
      const record = value >> bits;
      const how = worths[value & mask]!;
      const best = bests[record]!;
      if (best === 0) now[count++] = record;
      if (how > best) bests[record] = how;
    }
    this.#nowCount = count;
  }

  /** Ends the term in hand. The fewer records it finds, the more it tells (inverse document frequency); gives how many. */
  settle(): number {
    const count = this.#nowCount;
    const [totals, terms, bests, now, found] = [this.#total, this.#terms, this.#best, this.#now, this.#found];
    const tells = Math.log(1 + totals.length / Math.max(count, 1));
    let foundCount = this.#foundCount;
    for (let at = 0; at < count; at++) {
      const record = now[at]!;
      if (terms[record] === 0) found[foundCount++] = record;
      totals[record]! += tells * bests[record]!;
      terms[record]!++;
      bests[record] = 0;
    }
    this.#foundCount = foundCount;
    this.#nowCount = 0;
    return count;
  }

  /** The records found by `needed` terms, or where that is left out by as many as any is; best first, `most` at most, with their totals. Begins anew. */
  best(most: number, needed?: number): [record: number, total: number][] {
    const wanted = needed ?? this.#mostTerms();
    const best = new Best(most);
    const [totals, terms, found] = [this.#total, this.#terms, this.#found];
    for (let at = 0; at < this.#foundCount; at++) {
      const record = found[at]!;
      if (terms[record]! >= wanted) best.offer(record, totals[record]!);
      terms[record] = 0;
      totals[record] = 0;
    }
    this.#foundCount = 0;
    return best.ordered();
  }

  #mostTerms(): number {
    let most = 0;
    for (let at = 0; at < this.#foundCount; at++) most = Math.max(most, this.#terms[this.#found[at]!]!);
    return most;
  }
}

/** The best so many of what is offered: a heap with the worst that is kept on top. At a tie the earlier record is better. */
class Best {
  readonly #most: number;
  readonly #records: number[] = [];
  readonly #totals: number[] = [];

  constructor(most: number) {
    this.#most = most;
  }

  offer(record: number, total: number): void {
    const length = this.#records.length;
    if (length < this.#most) this.#rise(length, record, total);
    else if (length > 0 && this.#worse(0, record, total)) this.#sink(record, total);
  }

  ordered(): [record: number, total: number][] {
    return this.#records
      .map((record, at): [number, number] => [record, this.#totals[at]!])
      .sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  }

  /** Whether what stands at a place is worse than this. */
  #worse(at: number, record: number, total: number): boolean {
    const there = this.#totals[at]!;
    return there < total || (there === total && this.#records[at]! > record);
  }

  #put(at: number, record: number, total: number): void {
    this.#records[at] = record;
    this.#totals[at] = total;
  }

  #rise(from: number, record: number, total: number): void {
    let at = from;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (this.#worse(above, record, total)) break;
      this.#put(at, this.#records[above]!, this.#totals[above]!);
      at = above;
    }
    this.#put(at, record, total);
  }

  #sink(record: number, total: number): void {
    const length = this.#records.length;
    let at = 0;
    for (let below = 1; below < length; below = 2 * at + 1) {
      const right = below + 1;
      if (right < length && this.#worse(right, this.#records[below]!, this.#totals[below]!)) below = right;
      if (!this.#worse(below, record, total)) break;
      this.#put(at, this.#records[below]!, this.#totals[below]!);
      at = below;
    }
    this.#put(at, record, total);
  }
}
