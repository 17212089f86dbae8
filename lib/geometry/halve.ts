/** Cutting a cell in two. */
import { setCell } from "#lib/geometry/cell.ts";
import { type Goal, isSettled, meet } from "#lib/geometry/ledger.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import { boundByCorners, boundFromLowestCorner } from "#lib/geometry/node.ts";
import * as queue from "#lib/geometry/queue.ts";
import { separate, separateAgain, separation } from "#lib/geometry/separation.ts";

/** A cut nearer than this share of the side to one of its ends would be a sliver: the middle is taken instead. */
const SLIVER = 0.05;

/** Directions and distances at the two ends of the last cut. */
const onCut = new Float64Array(8);

/**
 * Cuts a cell with measured corners across the side that costs its bound most, where the least is expected
 * (a corner there serves the bound best), and puts back into the queue what is not settled.
 */
export function halve(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const cut = queue.records[begin + queue.CUT]!;
  const where = placeOfCut(begin, cut);
  measureOnCut(mover, fixed, begin, cut, where);
  for (let half = 0; half < 2; half++) {
    const child = queue.blank();
    const record = queue.records;
    record.copyWithin(child, begin, begin + queue.SLOTS);
    record[child + 2 * cut + 1 - half] = where;
    // On the cut lie corners 2 and 3, or 1 and 3, of the first half; 0 and 1, or 0 and 2, of the second.
    const first = child + queue.CORNERS + (half === 1 ? 0 : 8 - 4 * cut);
    const second = first + 4 + 4 * cut;
    for (let k = 0; k < 4; k++) {
      record[first + k] = onCut[k]!;
      record[second + k] = onCut[4 + k]!;
    }
    keepUnlessSettled(mover, fixed, goal, child);
  }
}

/** Where the least is expected on the side to be cut (0: p, 1: s), or its middle. */
function placeOfCut(begin: number, cut: number): number {
  const from = queue.records[begin + 2 * cut]!;
  const to = queue.records[begin + 2 * cut + 1]!;
  const expected = queue.records[begin + queue.AT]!;
  const share = (expected - from) / (to - from);
  return share > SLIVER && share < 1 - SLIVER ? expected : (from + to) / 2;
}

/** Measures at both ends of the cut; the first measurement starts along the direction of the old corner beside it. */
function measureOnCut(mover: Mover, fixed: Fixed, begin: number, cut: number, where: number): void {
  const record = queue.records;
  for (let end = 0; end < 2; end++) {
    const along = record[begin + 2 - 2 * cut + end]!;
    const p = cut === 0 ? where : along;
    const s = cut === 0 ? along : where;
    const old = begin + queue.CORNERS;
    if (end === 0) separate(mover, fixed, p, s, record[old]!, record[old + 1]!, record[old + 2]!);
    else separateAgain(mover, fixed, p, s);
    meet(begin, p, s);
    for (let k = 0; k < 4; k++) onCut[4 * end + k] = separation[k]!;
  }
}

/** Bounds a fresh half and puts it into the queue if that does not settle it. */
function keepUnlessSettled(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const record = queue.records;
  setCell(record[begin]!, record[begin + 1]!, record[begin + 2]!, record[begin + 3]!);
  boundByCorners(mover, fixed, begin);
  if (isSettled(begin, goal)) return;
  boundFromLowestCorner(mover, fixed, begin);
  if (!isSettled(begin, goal)) queue.push();
}
