/**
 * A clearance that holds in a whole cell of poses: all face angles p and steering angles s of a rectangle.
 *
 * Any unit direction n gives a gap the solids certainly keep: the least n·a of the part minus the greatest
 * n·b of the obstacle. Here one direction is carried along rigidly while the motor moves, in one of three
 * frames, and the gap along it is minimised over the cell.
 *
 * Leg frame. Steering moves only the part, tilting only the obstacle (backwards), and each corner's height
 * along n is A + B cos t + C sin t in its own angle t. Minimum of the part's and maximum of the obstacle's
 * corners separate: closed form, exact.
 *
 * Hull frame. The obstacle is still; a corner of the part has the height
 *   h(p, s) = n_y Y + (n_f X + n_v z) cos p + (n_f z - n_v X) sin p,  X and Y as in motion.ts.
 * For s held at either end of the cell the least over p is in closed form. Between the ends, with h_ss the
 * second derivative in s and w the width of the cell in s, h lies above its chord by no less than
 * -w²/8 max(0, max h_ss); where h rises or falls throughout in s, the ends are all that matters.
 * With m = n_f cos p - n_v sin p (n along X):  h_s = -m Y + n_y (X + c),  h_ss = -(m (X + c) + n_y Y).
 * Over the cell these differ from their values at its four corners by no more than r (w_p² + w_s²)/8, r
 * the corner's distance from the steering axis, for the same reason.
 *
 * Steered frame. The same with the roles changed: the part is still, the obstacle's corners move, and
 *   g(p, s) = a c + b Y + (a F + n_z V) cos p + (n_z F - a V) sin p,  a = n_x cos s - n_y sin s,
 *   b = n_x sin s + n_y cos s,  with X = F cos p - V sin p:
 *   g_s = -b (X + c) + a Y,  -g_ss = a (X + c) + b Y.
 */
import { cell } from "#lib/geometry/cell.ts";
import { hump, sag } from "#lib/geometry/curvature.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import { greatestOf, leastAt, leastOf } from "#lib/geometry/sinusoid.ts";

/** The bound last computed at [0]; after `predict` the pose where it expects the least gap: p at [1], s at [2], radians. */
export const bound = new Float64Array(3);
/** The sinusoids whose least values make the bound: B and C in p, B and C in s; or, at [4], s itself where it is an end of the cell, else NaN. */
const valley = new Float64Array(5);

/** Works out the pose where the last bound expects the least gap. Apart, for few bounds need it. */
export function predict(): void {
  bound[1] = leastAt(valley[0]!, valley[1]!, cell[0]!, cell[1]!);
  bound[2] = Number.isNaN(valley[4]!) ? leastAt(valley[2]!, valley[3]!, cell[2]!, cell[3]!) : valley[4]!;
}

/** Bound with the direction (nx, ny, nz) carried in the leg frame. */
export function legBound(mover: Mover, fixed: Fixed, nx: number, ny: number, nz: number): void {
  const { corners, aft } = mover;
  const obstacle = fixed.corners;
  const cp0 = cell[4]!;
  const sp0 = cell[5]!;
  const cp1 = cell[6]!;
  const sp1 = cell[7]!;
  const cs0 = cell[8]!;
  const ss0 = cell[9]!;
  const cs1 = cell[10]!;
  const ss1 = cell[11]!;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let i = 0;
  let j = 0;
  for (let k = 0; k < 24; k += 3) {
    const x = corners[k]!;
    const y = corners[k + 1]!;
    const height = nz * corners[k + 2]! + leastOf(nx * x + ny * y, ny * x - nx * y, cs0, ss0, cs1, ss1);
    if (height < low) {
      low = height;
      i = k;
    }
    const f = obstacle[k]!;
    const v = obstacle[k + 2]!;
    const g = ny * obstacle[k + 1]! + greatestOf(nx * f + nz * v, nz * f - nx * v, cp0, sp0, cp1, sp1);
    if (g > high) {
      high = g;
      j = k;
    }
  }
  bound[0] = low - nx * aft - high;
  const x = corners[i]!;
  const y = corners[i + 1]!;
  const f = obstacle[j]!;
  const v = obstacle[j + 2]!;
  valley[0] = -(nx * f + nz * v);
  valley[1] = -(nz * f - nx * v);
  valley[2] = nx * x + ny * y;
  valley[3] = ny * x - nx * y;
  valley[4] = Number.NaN;
}

/** Bound with the direction (nf, ny, nv) carried in the hull (bracket) frame. */
export function hullBound(
  mover: Mover,
  fixed: Pick<Fixed, "corners">,
  nf: number,
  ny: number,
  nv: number,
): void {
  const { corners, aft } = mover;
  const obstacle = fixed.corners;
  const cp0 = cell[4]!;
  const sp0 = cell[5]!;
  const cp1 = cell[6]!;
  const sp1 = cell[7]!;
  const cs0 = cell[8]!;
  const ss0 = cell[9]!;
  const cs1 = cell[10]!;
  const ss1 = cell[11]!;
  const m0 = nf * cp0 - nv * sp0;
  const m1 = nf * cp1 - nv * sp1;
  const ws = (cell[3]! - cell[2]!) ** 2 / 8;
  const both = (cell[1]! - cell[0]!) ** 2 / 8 + ws;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let b = 0;
  let c = 0;
  let s = cell[2]!;
  for (let k = 0; k < 24; k += 3) {
    const g = nf * obstacle[k]! + ny * obstacle[k + 1]! + nv * obstacle[k + 2]!;
    if (g > high) high = g;
    const x = corners[k]!;
    const y = corners[k + 1]!;
    const z = corners[k + 2]!;
    const x0 = x * cs0 - y * ss0;
    const y0 = x * ss0 + y * cs0;
    const x1 = x * cs1 - y * ss1;
    const y1 = x * ss1 + y * cs1;
    const b0 = nf * (x0 - aft) + nv * z;
    const c0 = nf * z - nv * (x0 - aft);
    const b1 = nf * (x1 - aft) + nv * z;
    const c1 = nf * z - nv * (x1 - aft);
    const h0 = ny * y0 + leastOf(b0, c0, cp0, sp0, cp1, sp1);
    const h1 = ny * y1 + leastOf(b1, c1, cp0, sp0, cp1, sp1);
    let h = Math.min(h0, h1);
    if (ws > 0) {
      const r = Math.sqrt(x * x + y * y);
      if (h - r * ws < low) h -= ws * sag(m0, m1, ny, x0, y0, x1, y1, r * both, r);
    }
    if (h >= low) continue;
    low = h;
    b = h0 < h1 ? b0 : b1;
    c = h0 < h1 ? c0 : c1;
    s = h0 < h1 ? cell[2]! : cell[3]!;
  }
  bound[0] = low - high;
  valley[0] = b;
  valley[1] = c;
  valley[4] = s;
}

/**
 * Bound with the direction (nx, ny, nz) carried in the steered frame. With a negative result of the same
 * shape as `hullBound`: minus the obstacle's greatest height is the least of minus its height.
 */
export function steeredBound(mover: Mover, fixed: Fixed, nx: number, ny: number, nz: number): void {
  const { corners, aft } = mover;
  const obstacle = fixed.corners;
  const cp0 = cell[4]!;
  const sp0 = cell[5]!;
  const cp1 = cell[6]!;
  const sp1 = cell[7]!;
  const cs0 = cell[8]!;
  const ss0 = cell[9]!;
  const cs1 = cell[10]!;
  const ss1 = cell[11]!;
  const a0 = nx * cs0 - ny * ss0;
  const b0 = nx * ss0 + ny * cs0;
  const a1 = nx * cs1 - ny * ss1;
  const b1 = nx * ss1 + ny * cs1;
  const ws = (cell[3]! - cell[2]!) ** 2 / 8;
  const both = (cell[1]! - cell[0]!) ** 2 / 8 + ws;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let b = 0;
  let c = 0;
  let s = cell[2]!;
  for (let k = 0; k < 24; k += 3) {
    const h = nx * corners[k]! + ny * corners[k + 1]! + nz * corners[k + 2]!;
    if (h < low) low = h;
    const f = obstacle[k]!;
    const y = obstacle[k + 1]!;
    const v = obstacle[k + 2]!;
    const g0 = a0 * aft + b0 * y + greatestOf(a0 * f + nz * v, nz * f - a0 * v, cp0, sp0, cp1, sp1);
    const g1 = a1 * aft + b1 * y + greatestOf(a1 * f + nz * v, nz * f - a1 * v, cp0, sp0, cp1, sp1);
    let g = Math.max(g0, g1);
    const across = Math.sqrt(f * f + v * v) + Math.abs(aft);
    const r = Math.sqrt(across * across + y * y);
    if (g + r * ws > high && ws > 0) {
      const x0 = f * cp0 - v * sp0 + aft;
      const x1 = f * cp1 - v * sp1 + aft;
      g += ws * hump(a0, b0, a1, b1, x0, x1, y, r * both, r);
    }
    if (g <= high) continue;
    high = g;
    const a = g0 > g1 ? a0 : a1;
    b = a * f + nz * v;
    c = nz * f - a * v;
    s = g0 > g1 ? cell[2]! : cell[3]!;
  }
  bound[0] = low - high;
  valley[0] = -b;
  valley[1] = -c;
  valley[4] = s;
}
