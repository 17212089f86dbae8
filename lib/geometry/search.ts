/**
 * Certified least clearance of one obstacle from several moving parts: best-first branch and bound.
 *
 * The clearance is the least, over all poses, of the greatest gap over all directions. So the distance in
 * any pose bounds it from above, and the gap along any direction, carried through a cell of poses, from
 * below. All parts' cells wait in one queue, and the one with the least bound is looked at. A cell is
 * dropped once its bound is within the tolerance of the least distance met.
 *
 * A whole range of poses is first bounded along the obstacle's own face. Then the distance is measured in
 * the pose where that bound expects the least, and the direction found there carried rigidly (bound.ts);
 * again from the pose expected then. Most least clearances lie at the end of a range, where this settles
 * the whole at once. What it does not settle is measured at its corners (corners.ts) and halved, until the
 * corners settle it.
 *
 * What is certified in the end is the least of: the bounds of dropped cells, the bounds of cells still
 * waiting, and the least distance met.
 */
import { setCell } from "#lib/geometry/cell.ts";
import { halve } from "#lib/geometry/halve.ts";
import { close, type Goal, isSettled, MET, NODES, open, outcome, threshold } from "#lib/geometry/ledger.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import { boundByCorners, measureCorner, tryRigid } from "#lib/geometry/node.ts";
import * as queue from "#lib/geometry/queue.ts";
import { addWhole } from "#lib/geometry/whole.ts";

/** Cells looked at before the search gives up and reports the bound it has. */
const MOST_CELLS = 20_000;
/** A pose nearer than this, radians, to the last one teaches nothing new. */
const SAME_POSE = 1e-9;
/** Rigid directions tried on a whole range before it is measured at its corners. */
const TRIES = 2;

/** Searches all poses of all movers; with `straight` their steering is held at 0. */
export function search(movers: readonly Mover[], fixed: Fixed, goal: Goal, straight: boolean): void {
  queue.clear();
  open();
  for (let k = 0; k < movers.length; k++) addWhole(movers[k]!, k, fixed, straight);
  while (queue.leastBound() < threshold(goal) || outcome[NODES] === 0) {
    if (outcome[NODES]! >= MOST_CELLS || outcome[MET]! < goal.stopBelow) break;
    outcome[NODES]!++;
    const begin = queue.pop();
    look(movers[queue.records[begin + queue.PART]!]!, fixed, goal, begin);
  }
  close();
}

/** Looks at a cell: measures, bounds, and drops or halves it. */
function look(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const record = queue.records;
  if (record[begin + queue.MEASURED] === 0) {
    setCell(record[begin]!, record[begin + 1]!, record[begin + 2]!, record[begin + 3]!);
    for (let time = 0; time < TRIES; time++) {
      const p = record[begin + queue.P]!;
      const s = record[begin + queue.S]!;
      tryRigid(mover, fixed, begin, p, s);
      if (isSettled(begin, goal)) return;
      if (Math.abs(record[begin + queue.P]! - p) + Math.abs(record[begin + queue.S]! - s) < SAME_POSE) break;
    }
    for (let c = 0; c < 4; c++) measureCorner(mover, fixed, begin, c);
    boundByCorners(mover, fixed, begin);
    if (isSettled(begin, goal)) return;
  }
  halve(mover, fixed, goal, begin);
}
