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
import { bound, hullBound, legBound, predict, setCell, steeredBound } from "#lib/geometry/bound.ts";
import { cornersBound, loss } from "#lib/geometry/corners.ts";
import { type Fixed, type Mover, turn } from "#lib/geometry/motion.ts";
import * as queue from "#lib/geometry/queue.ts";
import { separate, separateAgain, separation } from "#lib/geometry/separation.ts";

/** How far to go; millimetres. */
export interface Goal {
  readonly within: number;
  readonly withinOverlap: number;
  readonly stopAbove: number;
  readonly stopBelow: number;
}

/** The outcome of the last search: least distance met, certified bound, p and s (radians) and direction (bracket frame) there, number of the part, cells looked at. */
export const outcome = new Float64Array(9);
export const MET = 0;
export const CERTIFIED = 1;
export const AT_P = 2;
export const AT_S = 3;
export const DIRECTION = 4;
export const PART = 7;
export const NODES = 8;

/** Cells looked at before the search gives up and reports the bound it has. */
const MOST_CELLS = 20_000;
/** Widest side of a cell the bounds are made for, radians. */
const WIDEST = Math.PI / 2;
/** Taken off the certificate for rounding, mm. */
const ROUNDING = 1e-8;
/** A pose nearer than this, radians, to the last one teaches nothing new. */
const SAME_POSE = 1e-9;
/** Rigid directions tried on a whole range before it is measured at its corners. */
const SPL = 0.05;
const TRIES = 2;

/** Least bound of the dropped cells. */
const dropped = new Float64Array(1);

/** Searches all poses of all movers; with `straight` their steering is held at 0. */
export function search(movers: readonly Mover[], fixed: Fixed, goal: Goal, straight: boolean): void {
  queue.clear();
  outcome[MET] = Number.POSITIVE_INFINITY;
  outcome[NODES] = 0;
  dropped[0] = Number.POSITIVE_INFINITY;
  for (let k = 0; k < movers.length; k++) addWhole(movers[k]!, k, fixed, straight);
  while (queue.leastBound() < threshold(goal) || outcome[NODES] === 0) {
    if (outcome[NODES]! >= MOST_CELLS || outcome[MET]! < goal.stopBelow) break;
    outcome[NODES]!++;
    const begin = queue.pop();
    look(movers[queue.records[begin + queue.PART]!]!, fixed, goal, begin);
  }
  outcome[CERTIFIED] = Math.min(outcome[MET]!, dropped[0]!, queue.leastBound()) - ROUNDING;
}

/** Cells with at least this bound need no further look. */
function threshold(goal: Goal): number {
  const met = outcome[MET]!;
  return Math.min(met - (met < 0 ? goal.withinOverlap : goal.within), goal.stopAbove);
}

/** Puts all poses of a part into the queue, cut into cells of a size the bounds are made for. */
function addWhole(mover: Mover, k: number, fixed: Fixed, straight: boolean): void {
  const { faceAngles, steeringAngles, moves } = mover.part;
  const steers = moves === "steered" && !straight;
  const p0 = (faceAngles.from * Math.PI) / 180;
  const p1 = (faceAngles.to * Math.PI) / 180;
  const s0 = steers ? (steeringAngles.from * Math.PI) / 180 : 0;
  const s1 = steers ? (steeringAngles.to * Math.PI) / 180 : 0;
  const rows = Math.max(1, Math.ceil((p1 - p0) / WIDEST));
  const columns = Math.max(1, Math.ceil((s1 - s0) / WIDEST));
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const begin = queue.blank();
      const cell = queue.records;
      cell[begin + queue.P0] = row === 0 ? p0 : p0 + ((p1 - p0) * row) / rows;
      cell[begin + queue.P1] = row === rows - 1 ? p1 : p0 + ((p1 - p0) * (row + 1)) / rows;
      cell[begin + queue.S0] = column === 0 ? s0 : s0 + ((s1 - s0) * column) / columns;
      cell[begin + queue.S1] = column === columns - 1 ? s1 : s0 + ((s1 - s0) * (column + 1)) / columns;
      cell[begin + queue.PART] = k;
      cell[begin + queue.MEASURED] = 0;
      boundByFace(mover, fixed, begin);
      queue.push();
    }
  }
}

const middle = new Float64Array(3);
const middleMoved = new Float64Array(3);

/** First bound of a whole: along the obstacle's face that the part's middle stands off most in the middle pose. */
function boundByFace(mover: Mover, fixed: Fixed, begin: number): void {
  const cell = queue.records;
  const { normals } = fixed.obstacle.solid;
  const p = (cell[begin + queue.P0]! + cell[begin + queue.P1]!) / 2;
  const s = (cell[begin + queue.S0]! + cell[begin + queue.S1]!) / 2;
  // Opposite corners of a box meet in its middle; for the choice of a face this serves any solid.
  for (let k = 0; k < 3; k++) middle[k] = (mover.corners[k]! + mover.corners[21 + k]!) / 2;
  turn(middle, mover.aft, Math.cos(p), Math.sin(p), Math.cos(s), Math.sin(s), middleMoved);
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 18; k += 3) {
    // Corner 0 lies on the low faces, corner 7 on the high ones.
    const on = (k / 3) % 2 === 0 ? 0 : 21;
    let height = 0;
    for (let axis = 0; axis < 3; axis++) {
      height += normals[k + axis]! * (middleMoved[axis]! - fixed.corners[on + axis]!);
    }
    if (height <= most) continue;
    most = height;
    best = k;
  }
  setCell(cell[begin]!, cell[begin + 1]!, cell[begin + 2]!, cell[begin + 3]!);
  cell[begin + queue.BOUND] = Number.NEGATIVE_INFINITY;
  const x = normals[best]!;
  const y = normals[best + 1]!;
  const z = normals[best + 2]!;
  hullBound(mover, fixed, x, y, z);
  predict();
  cell[begin + queue.BOUND] = bound[0]!;
  expect(begin, x, y, z);
}

/** Notes in the record where the last bound expects the least, and the direction (bracket frame) to begin a measurement with. */
function expect(begin: number, x: number, y: number, z: number): void {
  const cell = queue.records;
  cell[begin + queue.P] = bound[1]!;
  cell[begin + queue.S] = bound[2]!;
  cell[begin + queue.NX] = x;
  cell[begin + queue.NY] = y;
  cell[begin + queue.NZ] = z;
}

/** Looks at a cell: measures, bounds, and drops or halves it. */
function look(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const cell = queue.records;
  if (cell[begin + queue.MEASURED] === 0) {
    setCell(cell[begin]!, cell[begin + 1]!, cell[begin + 2]!, cell[begin + 3]!);
    for (let time = 0; time < TRIES; time++) {
      const p = cell[begin + queue.P]!;
      const s = cell[begin + queue.S]!;
      tryRigid(mover, fixed, begin, p, s);
      if (isSettled(begin, goal)) return;
      if (Math.abs(cell[begin + queue.P]! - p) + Math.abs(cell[begin + queue.S]! - s) < SAME_POSE) break;
    }
    for (let c = 0; c < 4; c++) measureCorner(mover, fixed, begin, c);
    boundByCorners(mover, fixed, begin);
    if (isSettled(begin, goal)) return;
  }
  halve(mover, fixed, goal, begin);
}

/** Drops the cell if its bound is good enough. */
function isSettled(begin: number, goal: Goal): boolean {
  const reached = queue.records[begin + queue.BOUND]!;
  if (reached < threshold(goal)) return false;
  if (reached < dropped[0]!) dropped[0] = reached;
  return true;
}

/** Measures in the pose expected to be the tightest and carries the direction found. */
function tryRigid(mover: Mover, fixed: Fixed, begin: number, p: number, s: number): void {
  const cell = queue.records;
  separate(mover, fixed, p, s, cell[begin + queue.NX]!, cell[begin + queue.NY]!, cell[begin + queue.NZ]!);
  meet(begin, p, s);
  boundRigidly(mover, fixed, begin, p, s, separation[0]!, separation[1]!, separation[2]!);
}

/** Carries the direction (f, y, v) of the bracket frame, met in the pose p, s, through the cell in each of the three frames. */
function boundRigidly(
  mover: Mover,
  fixed: Fixed,
  begin: number,
  p: number,
  s: number,
  f: number,
  y: number,
  v: number,
): void {
  hullBound(mover, fixed, f, y, v);
  take(begin, f, y, v);
  const cosP = Math.cos(p);
  const sinP = Math.sin(p);
  const x = f * cosP - v * sinP;
  const z = f * sinP + v * cosP;
  legBound(mover, fixed, x, y, z);
  take(begin, f, y, v);
  if (mover.part.moves === "tilting") return;
  const cosS = Math.cos(s);
  const sinS = Math.sin(s);
  steeredBound(mover, fixed, x * cosS + y * sinS, y * cosS - x * sinS, z);
  take(begin, f, y, v);
}

/** Takes over the last rigid bound if it is the greatest yet. */
function take(begin: number, f: number, y: number, v: number): void {
  const cell = queue.records;
  if (bound[0]! <= cell[begin + queue.BOUND]!) return;
  cell[begin + queue.BOUND] = bound[0]!;
  predict();
  expect(begin, f, y, v);
}

/** Keeps the last distance, of the cell's part in the pose p, s, if it is the least yet. */
function meet(begin: number, p: number, s: number): void {
  if (separation[3]! >= outcome[MET]!) return;
  outcome[MET] = separation[3]!;
  outcome[AT_P] = p;
  outcome[AT_S] = s;
  outcome[DIRECTION] = separation[0]!;
  outcome[DIRECTION + 1] = separation[1]!;
  outcome[DIRECTION + 2] = separation[2]!;
  outcome[PART] = queue.records[begin + queue.PART]!;
}

/** Measures at corner c of the cell: bit 2 for the end of p, bit 1 for that of s. */
function measureCorner(mover: Mover, fixed: Fixed, begin: number, c: number): void {
  const cell = queue.records;
  const p = cell[begin + (c < 2 ? queue.P0 : queue.P1)]!;
  const s = cell[begin + (c % 2 === 0 ? queue.S0 : queue.S1)]!;
  separateAgain(mover, fixed, p, s);
  meet(begin, p, s);
  const at = begin + queue.CORNERS + 4 * c;
  for (let k = 0; k < 4; k++) cell[at + k] = separation[k]!;
}

/** Bounds a cell with measured corners; sets which side to cut it across, if need be. */
function boundByCorners(mover: Mover, fixed: Fixed, begin: number): void {
  const cell = queue.records;
  cell[begin + queue.MEASURED] = 1;
  cornersBound(mover, fixed, cell, begin + queue.CORNERS);
  cell[begin + queue.CUT] = loss[0]! >= loss[1]! ? 0 : 1;
  cell[begin + queue.AT] = loss[0]! >= loss[1]! ? bound[1]! : bound[2]!;
  cell[begin + queue.BOUND] = Math.max(cell[begin + queue.BOUND]!, bound[0]!);
}

/** Directions and distances at the two ends of the last cut. */
const onCut = new Float64Array(8);

/** Cuts the cell across the side that costs its bound most, and puts back what is not settled. */
function halve(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const cut = queue.records[begin + queue.CUT]!;
  const from = begin + 2 * cut;
  const lo = queue.records[from]!;
  const hi = queue.records[from + 1]!;
  const at0 = (queue.records[begin + queue.AT]! - lo) / (hi - lo);
  const halfway = at0 > SPL && at0 < 1 - SPL ? queue.records[begin + queue.AT]! : (lo + hi) / 2;
  for (let end = 0; end < 2; end++) {
    const other = queue.records[begin + 2 - 2 * cut + end]!;
    const p = cut === 0 ? halfway : other;
    const s = cut === 0 ? other : halfway;
    const at = begin + queue.CORNERS + 4 * end * (cut === 0 ? 1 : 2);
    const cell = queue.records;
    if (end === 0) separate(mover, fixed, p, s, cell[at]!, cell[at + 1]!, cell[at + 2]!);
    else separateAgain(mover, fixed, p, s);
    meet(begin, p, s);
    for (let k = 0; k < 4; k++) onCut[4 * end + k] = separation[k]!;
  }
  for (let half = 0; half < 2; half++) {
    const child = queue.blank();
    const cell = queue.records;
    cell.copyWithin(child, begin, begin + queue.SLOTS);
    cell[child + 2 * cut + 1 - half] = halfway;
    // On the cut lie corners 2 and 3, or 1 and 3, of the first half; 0 and 1, or 0 and 2, of the second.
    const first = child + queue.CORNERS + (half === 1 ? 0 : 8 - 4 * cut);
    const second = first + 4 + 4 * cut;
    for (let k = 0; k < 4; k++) {
      cell[first + k] = onCut[k]!;
      cell[second + k] = onCut[4 + k]!;
    }
    keepUnlessSettled(mover, fixed, goal, child);
  }
}

/** Bounds a fresh half and puts it into the queue if that does not settle it. */
function keepUnlessSettled(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const cell = queue.records;
  setCell(cell[begin]!, cell[begin + 1]!, cell[begin + 2]!, cell[begin + 3]!);
  boundByCorners(mover, fixed, begin);
  if (isSettled(begin, goal)) return;
  boundFromLowestCorner(mover, fixed, begin);
  if (!isSettled(begin, goal)) queue.push();
}

/** Carries the direction of the tightest corner rigidly. */
function boundFromLowestCorner(mover: Mover, fixed: Fixed, begin: number): void {
  const cell = queue.records;
  let at = begin + queue.CORNERS;
  let lowest = 0;
  for (let c = 1; c < 4; c++) {
    if (cell[at + 4 * c + 3]! < cell[at + 4 * lowest + 3]!) lowest = c;
  }
  at += 4 * lowest;
  const p = cell[begin + (lowest < 2 ? queue.P0 : queue.P1)]!;
  const s = cell[begin + (lowest % 2 === 0 ? queue.S0 : queue.S1)]!;
  boundRigidly(mover, fixed, begin, p, s, cell[at]!, cell[at + 1]!, cell[at + 2]!);
}
