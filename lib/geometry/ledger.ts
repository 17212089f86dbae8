/**
 * What a search has come to so far: the least distance met, the bounds of the cells it dropped, and how
 * far it is meant to go.
 */
import * as queue from "#lib/geometry/queue.ts";
import { separation } from "#lib/geometry/separation.ts";

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

/** Taken off the certificate for rounding, mm. */
const ROUNDING = 1e-8;
/** Least bound of the dropped cells. */
const dropped = new Float64Array(1);

/** A fresh start. */
export function open(): void {
  outcome[MET] = Number.POSITIVE_INFINITY;
  outcome[NODES] = 0;
  dropped[0] = Number.POSITIVE_INFINITY;
}

/** Writes what is certified: the least of the least distance met, the dropped cells' bounds and those still waiting. */
export function close(): void {
  outcome[CERTIFIED] = Math.min(outcome[MET]!, dropped[0]!, queue.leastBound()) - ROUNDING;
}

/** Cells with at least this bound need no further look. */
export function threshold(goal: Goal): number {
  const met = outcome[MET]!;
  return Math.min(met - (met < 0 ? goal.withinOverlap : goal.within), goal.stopAbove);
}

/** Keeps the last distance, of the cell's part in the pose p, s, if it is the least yet. */
export function meet(begin: number, p: number, s: number): void {
  if (separation[3]! >= outcome[MET]!) return;
  outcome[MET] = separation[3]!;
  outcome[AT_P] = p;
  outcome[AT_S] = s;
  outcome[DIRECTION] = separation[0]!;
  outcome[DIRECTION + 1] = separation[1]!;
  outcome[DIRECTION + 2] = separation[2]!;
  outcome[PART] = queue.records[begin + queue.PART]!;
}

/** Drops the cell if its bound is good enough. */
export function isSettled(begin: number, goal: Goal): boolean {
  const reached = queue.records[begin + queue.BOUND]!;
  if (reached < threshold(goal)) return false;
  if (reached < dropped[0]!) dropped[0] = reached;
  return true;
}
