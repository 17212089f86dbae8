/**
 * The cells of poses still to be looked at, least bound first: a binary heap over records kept in one
 * typed array that grows as needed and is used again by the next search.
 */

/** Numbers a cell is recorded with. */
export const SLOTS = 30;
/** The rectangle, radians; the certified bound; number of the part. */
export const P0 = 0;
export const P1 = 1;
export const S0 = 2;
export const S1 = 3;
export const BOUND = 4;
export const PART = 5;
/** The pose where the least is expected, and the direction to measure along there, bracket frame. */
export const P = 6;
export const S = 7;
export const NX = 8;
export const NY = 9;
export const NZ = 10;
/** 1 when the corners have been measured, else 0; then for (p0, s0), (p0, s1), (p1, s0), (p1, s1) the direction found there, bracket frame, and the distance, mm. */
export const MEASURED = 11;
export const CORNERS = 12;
/** Side to halve it across: 0 for p, 1 for s. */
export const CUT = 28;
/** Where the corners' bound expects the least on that side, radians. */
export const AT = 29;

/** The records; cell number n begins at n * SLOTS. */
export let records = new Float64Array(512 * SLOTS);
let heap = new Int32Array(512);
/** Cells recorded since `clear`, and cells in the heap. */
const counts = new Int32Array(2);

/** Forgets all cells. */
export function clear(): void {
  counts[0] = 0;
  counts[1] = 0;
}

/** Room for one more cell: where its record begins. Fill it in, then `push` it, or leave it to be used again. */
export function blank(): number {
  const begin = counts[0]! * SLOTS;
  if (begin + SLOTS > records.length) {
    const larger = new Float64Array(2 * records.length);
    larger.set(records);
    records = larger;
    const deeper = new Int32Array(2 * heap.length);
    deeper.set(heap);
    heap = deeper;
  }
  return begin;
}

/** Puts the record made by the last `blank` into the queue. */
export function push(): void {
  const begin = counts[0]! * SLOTS;
  const bound = records[begin + BOUND]!;
  let at = counts[1]!;
  counts[0]!++;
  counts[1]!++;
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (records[heap[above]! + BOUND]! <= bound) break;
    heap[at] = heap[above]!;
    at = above;
  }
  heap[at] = begin;
}

/** The least bound in the queue; infinite when it is empty. */
export function leastBound(): number {
  return counts[1] === 0 ? Number.POSITIVE_INFINITY : records[heap[0]! + BOUND]!;
}

/** Takes the cell with the least bound out of the queue, which must not be empty; its record stays where it is. */
export function pop(): number {
  const top = heap[0]!;
  const size = --counts[1]!;
  const last = heap[size]!;
  const bound = records[last + BOUND]!;
  let at = 0;
  for (let below = 1; below < size; below = 2 * at + 1) {
    if (below + 1 < size && records[heap[below + 1]! + BOUND]! < records[heap[below]! + BOUND]!) below++;
    if (records[heap[below]! + BOUND]! >= bound) break;
    heap[at] = heap[below]!;
    at = below;
  }
  heap[at] = last;
  return top;
}
