/**
 * Certified least clearance of one obstacle from several moving parts: best-first branch and bound.
 *
 * The clearance is the least, over all poses, of the greatest gap over all directions. So the distance in
 * any pose is a bound from above, and the gap along any direction, carried through a cell of poses, one
 * from below (bound.ts). All parts' cells wait in one queue; the one with the least bound is looked at:
 * the distance is measured in the pose where the bound expects the least, the direction found there is
 * carried through the cell, once more from the pose expected then, and what is still open is halved.
 * A cell is dropped once its bound is within the tolerance of the least distance met.
 *
 * What is certified in the end is the least of: the bounds of dropped cells, the bounds of cells still
 * waiting, and the least distance met.
 */
import { bound, hullBound, legBound, setCell, steeredBound } from "#lib/geometry/bound.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import * as queue from "#lib/geometry/queue.ts";
import { separate, separation } from "#lib/geometry/separation.ts";

/** How far to go; millimetres. */
export interface Goal {
  readonly within: number;
  readonly withinOverlap: number;
  readonly stopAbove: number;
  readonly stopBelow: number;
}

/** The outcome of the last search: least distance met, certified bound, p and s (radians) and direction (bracket frame) there, number of the part, cells looked at. */
export const outcome = new Float64Array(9);
export const [MET, CERTIFIED, AT_P, AT_S, DIRECTION, PART, NODES] = [0, 1, 2, 3, 4, 7, 8] as const;

const HULL = 0;
const LEG = 1;
const STEERED = 2;

/** Cells looked at before the search gives up and reports the bound it has. */
const MOST_CELLS = 200_000;
/** Widest side of a cell the bounds are made for, radians. */
const WIDEST = Math.PI / 2;
/** Taken off the certificate for rounding, mm. */
const ROUNDING = 1e-8;
/** A pose nearer than this, radians, to the last one teaches nothing new. */
const SAME_POSE = 1e-9;

/** Least bound of the dropped cells. */
const dropped = new Float64Array(1);

/** Searches all cells of poses; angles of each mover's part in degrees, steering as given by `straight`. */
export function search(movers: readonly Mover[], fixed: Fixed, goal: Goal, straight: boolean): void {
  queue.clear();
  outcome[MET] = Number.POSITIVE_INFINITY;
  outcome[NODES] = 0;
  dropped[0] = Number.POSITIVE_INFINITY;
  movers.forEach((mover, k) => {
    addWhole(mover, k, fixed, straight);
  });
  while (queue.leastBound() < threshold(goal) || outcome[NODES] === 0) {
    if (outcome[NODES]! >= MOST_CELLS || outcome[MET]! < goal.stopBelow) break;
    outcome[NODES]!++;
    look(movers, fixed, goal, queue.pop());
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
      boundByFaces(mover, fixed, begin);
      queue.push();
    }
  }
}

/** First bound of a cell: along the obstacle's own faces, held still. */
function boundByFaces(mover: Mover, fixed: Fixed, begin: number): void {
  const cell = queue.records;
  const { normals } = fixed.obstacle.solid;
  setCell(cell[begin]!, cell[begin + 1]!, cell[begin + 2]!, cell[begin + 3]!);
  cell[begin + queue.BOUND] = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < normals.length; k += 3) {
    hullBound(mover, fixed, normals[k]!, normals[k + 1]!, normals[k + 2]!);
    record(begin, HULL, normals[k]!, normals[k + 1]!, normals[k + 2]!);
  }
}

/** Takes over the last bound into the record if it is the greatest yet, with the direction and frame it came from. */
function record(begin: number, frame: number, x: number, y: number, z: number): void {
  const cell = queue.records;
  if (bound[0]! <= cell[begin + queue.BOUND]!) return;
  cell[begin + queue.BOUND] = bound[0]!;
  cell[begin + queue.P] = bound[1]!;
  cell[begin + queue.S] = bound[2]!;
  cell[begin + queue.NX] = x;
  cell[begin + queue.NY] = y;
  cell[begin + queue.NZ] = z;
  cell[begin + queue.FRAME] = frame;
}

/** Looks at a cell: measures twice, bounds, and drops or halves it. */
function look(movers: readonly Mover[], fixed: Fixed, goal: Goal, begin: number): void {
  const cell = queue.records;
  const mover = movers[cell[begin + queue.PART]!]!;
  setCell(cell[begin]!, cell[begin + 1]!, cell[begin + 2]!, cell[begin + 3]!);
  for (let time = 0; time < 2; time++) {
    const p = cell[begin + queue.P]!;
    const s = cell[begin + queue.S]!;
    measure(mover, fixed, begin, p, s);
    if (cell[begin + queue.BOUND]! >= threshold(goal)) {
      drop(begin);
      return;
    }
    if (Math.abs(cell[begin + queue.P]! - p) + Math.abs(cell[begin + queue.S]! - s) < SAME_POSE) break;
  }
  halve(mover, fixed, goal, begin);
}

/** Measures in the pose and carries the direction found through the cell, in each of the three frames. */
function measure(mover: Mover, fixed: Fixed, begin: number, p: number, s: number): void {
  const cell = queue.records;
  let x = cell[begin + queue.NX]!;
  let y = cell[begin + queue.NY]!;
  let z = cell[begin + queue.NZ]!;
  const frame = cell[begin + queue.FRAME]!;
  const cosP = Math.cos(p);
  const sinP = Math.sin(p);
  const cosS = Math.cos(s);
  const sinS = Math.sin(s);
  if (frame === STEERED) [x, y] = [x * cosS - y * sinS, x * sinS + y * cosS];
  if (frame !== HULL) [x, z] = [x * cosP + z * sinP, z * cosP - x * sinP];
  separate(mover, fixed, p, s, x, y, z);
  if (separation[3]! < outcome[MET]!) {
    outcome[MET] = separation[3]!;
    outcome[AT_P] = p;
    outcome[AT_S] = s;
    outcome[DIRECTION] = separation[0]!;
    outcome[DIRECTION + 1] = separation[1]!;
    outcome[DIRECTION + 2] = separation[2]!;
    outcome[PART] = cell[begin + queue.PART]!;
  }
  const f = separation[0]!;
  y = separation[1]!;
  const v = separation[2]!;
  hullBound(mover, fixed, f, y, v);
  record(begin, HULL, f, y, v);
  x = f * cosP - v * sinP;
  z = f * sinP + v * cosP;
  legBound(mover, fixed, x, y, z);
  record(begin, LEG, x, y, z);
  if (mover.part.moves === "tilting") return;
  const turned = y * cosS - x * sinS;
  x = x * cosS + y * sinS;
  steeredBound(mover, fixed, x, turned, z);
  record(begin, STEERED, x, turned, z);
}

function drop(begin: number): void {
  dropped[0] = Math.min(dropped[0]!, queue.records[begin + queue.BOUND]!);
}

/** Cuts the cell across its longer side and puts both halves back, each bounded anew along the direction that served the whole best. */
function halve(mover: Mover, fixed: Fixed, goal: Goal, begin: number): void {
  const parent = queue.records.slice(begin, begin + queue.SLOTS);
  const side = parent[queue.P1]! - parent[queue.P0]! >= parent[queue.S1]! - parent[queue.S0]! ? 0 : 2;
  const middle = (parent[side]! + parent[side + 1]!) / 2;
  for (let half = 0; half < 2; half++) {
    const child = queue.blank();
    queue.records.set(parent, child);
    queue.records[child + side + (half === 0 ? 1 : 0)] = middle;
    carry(mover, fixed, child);
    if (queue.records[child + queue.BOUND]! >= threshold(goal)) drop(child);
    else queue.push();
  }
}

/** Bounds a fresh half along its parent's direction; a half is never bounded worse than the whole. */
function carry(mover: Mover, fixed: Fixed, child: number): void {
  const cell = queue.records;
  const x = cell[child + queue.NX]!;
  const y = cell[child + queue.NY]!;
  const z = cell[child + queue.NZ]!;
  setCell(cell[child]!, cell[child + 1]!, cell[child + 2]!, cell[child + 3]!);
  const frame = cell[child + queue.FRAME]!;
  if (frame === HULL) hullBound(mover, fixed, x, y, z);
  else if (frame === LEG) legBound(mover, fixed, x, y, z);
  else steeredBound(mover, fixed, x, y, z);
  cell[child + queue.BOUND] = Math.max(cell[child + queue.BOUND]!, bound[0]!);
  cell[child + queue.P] = bound[1]!;
  cell[child + queue.S] = bound[2]!;
}
