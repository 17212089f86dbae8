/** What is done to one cell of a search: measuring in a pose of it and bounding it from what was found. */
import { bound, hullBound, legBound, predict, steeredBound } from "#lib/geometry/bound.ts";
import { cornersBound, loss } from "#lib/geometry/corners.ts";
import { meet } from "#lib/geometry/ledger.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import * as queue from "#lib/geometry/queue.ts";
import { separate, separateAgain, separation } from "#lib/geometry/separation.ts";

/** Notes in the record where the last bound expects the least, and the direction (bracket frame) to begin a measurement with. */
export function foresee(begin: number, x: number, y: number, z: number): void {
  const record = queue.records;
  record[begin + queue.P] = bound[1]!;
  record[begin + queue.S] = bound[2]!;
  record[begin + queue.NX] = x;
  record[begin + queue.NY] = y;
  record[begin + queue.NZ] = z;
}

/** Measures in the pose expected to be the tightest and carries the direction found. */
export function tryRigid(mover: Mover, fixed: Fixed, begin: number, p: number, s: number): void {
  const record = queue.records;
  separate(
    mover,
    fixed,
    p,
    s,
    record[begin + queue.NX]!,
    record[begin + queue.NY]!,
    record[begin + queue.NZ]!,
  );
  meet(begin, p, s);
  boundRigidly(mover, fixed, begin, p, s, separation[0]!, separation[1]!, separation[2]!);
}

/** Carries the direction (f, y, v) of the bracket frame, met in the pose p, s, through the cell in each of the three frames. */
export function boundRigidly(
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
  const record = queue.records;
  if (bound[0]! <= record[begin + queue.BOUND]!) return;
  record[begin + queue.BOUND] = bound[0]!;
  predict();
  foresee(begin, f, y, v);
}

/** Measures at corner c of the cell: bit 2 for the end of p, bit 1 for that of s. */
export function measureCorner(mover: Mover, fixed: Fixed, begin: number, c: number): void {
  const record = queue.records;
  const p = record[begin + (c < 2 ? queue.P0 : queue.P1)]!;
  const s = record[begin + (c % 2 === 0 ? queue.S0 : queue.S1)]!;
  separateAgain(mover, fixed, p, s);
  meet(begin, p, s);
  const at = begin + queue.CORNERS + 4 * c;
  for (let k = 0; k < 4; k++) record[at + k] = separation[k]!;
}

/** Bounds a cell with measured corners; notes the side that costs the bound most, and where on it the least is expected. */
export function boundByCorners(mover: Mover, fixed: Fixed, begin: number): void {
  const record = queue.records;
  record[begin + queue.MEASURED] = 1;
  cornersBound(mover, fixed, record, begin + queue.CORNERS);
  const cut = sideToCut(record[begin + 1]! - record[begin]!, record[begin + 3]! - record[begin + 2]!);
  record[begin + queue.CUT] = cut;
  record[begin + queue.AT] = bound[1 + cut]!;
  record[begin + queue.BOUND] = Math.max(record[begin + queue.BOUND]!, bound[0]!);
}

/** A side shorter than this share of the other is not cut: cells that keep some shape must shrink to a pose in the end. */
const THIN = 1 / 64;

/** The side, p (0) or s (1), whose width costs the last bound by the corners most. */
function sideToCut(wideP: number, wideS: number): number {
  if (wideP <= THIN * wideS) return 1;
  if (wideS <= THIN * wideP) return 0;
  return loss[0]! >= loss[1]! ? 0 : 1;
}

/** Carries the direction of the tightest corner rigidly. */
export function boundFromLowestCorner(mover: Mover, fixed: Fixed, begin: number): void {
  const record = queue.records;
  let at = begin + queue.CORNERS;
  let lowest = 0;
  for (let c = 1; c < 4; c++) {
    if (record[at + 4 * c + 3]! < record[at + 4 * lowest + 3]!) lowest = c;
  }
  at += 4 * lowest;
  const p = record[begin + (lowest < 2 ? queue.P0 : queue.P1)]!;
  const s = record[begin + (lowest % 2 === 0 ? queue.S0 : queue.S1)]!;
  boundRigidly(mover, fixed, begin, p, s, record[at]!, record[at + 1]!, record[at + 2]!);
}
