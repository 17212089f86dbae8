/**
 * A clearance that holds in a whole cell of poses, from the distances measured at its four corners.
 *
 * A direction carried rigidly loses where the true separating direction turns with the pose, as it does
 * between two edges. So let the direction turn: at corner (a, b) of the cell, p = p_a and s = s_b, the
 * measurement gave the unit direction n_ab; in between take n(p, s), their bilinear mean, in the hull
 * frame. The obstacle's greatest height along n is convex in n, so it is nowhere above the mean H of its
 * values H_ab at the corners. The height of a corner P of the part is h(p, s) = n·P, and between the ends
 * of p it lies below its chord by no more than k 4 t (1 - t), t running from 0 to 1, k = w_p² / 8 times
 * the greatest h_pp or 0; likewise in s. What remains is a parabola over each chord, least in closed form
 * (`lowest`), first along s on either side, then along p.
 *
 * Second derivatives: n is linear in p, so h_pp = 2 n_p·P_p + n·P_pp, and with P = (f, y, v) from the tilt
 * axis P_p = (v, 0, -f), P_pp = (-f, 0, -v); P_s = (-Y cos p, X + c, Y sin p), P_ss = (-(X + c) cos p, -Y,
 * (X + c) sin p) by motion.ts. They are taken at the four corners; inside they exceed the greatest of these
 * by at most w_p²/8 and w_s²/8 times their own second derivatives, which are at most, with R the distance
 * of P from the tilt axis, r from the steering axis, and a_p, a_s, a_ps bounds of |n_p|, |n_s|, |n_ps|:
 *   of h_pp:  R (1 + 4 a_p) in p,   r (1 + 2 a_p + 2 a_s + 4 a_ps) in s;
 *   of h_ss:  r (1 + 2 a_p + 2 a_s + 4 a_ps) in p,   r (1 + 4 a_s) in s.
 *
 * n is no unit vector inside the cell, but never longer than one, and its square is never less than the
 * least product n_ab·n_cd. So a gap along it that is positive is one the solids keep, and a negative one
 * holds divided by that least length.
 */
import { bound, cell } from "#lib/geometry/bound.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import { turn } from "#lib/geometry/motion.ts";

/** The share of the bound lost to the width of the cell in p at [0], in s at [1]: where halving pays. */
export const loss = new Float64Array(2);

/** The part's corners at the four corners of the cell. */
const places = [0, 1, 2, 3].map(() => new Float64Array(24));
/** The obstacle's greatest height at each. */
const heights = new Float64Array(4);
/** n_p on the sides s0 and s1, then n_s on the sides p0 and p1. */
const turning = new Float64Array(12);
/** Bounds of |n_p|, |n_s|, |n_ps|, and of n's least length. */
const a = new Float64Array(4);
/** Where `lowest` last found its least. */
const share = new Float64Array(1);

/**
 * Bound for the cell set by `setCell`, from `n`: at offset `at` direction and distance (4 numbers) for the
 * corners (p0, s0), (p0, s1), (p1, s0), (p1, s1). Writes `bound` and `loss`.
 */
export function cornersBound(mover: Mover, fixed: Fixed, n: Float64Array, at: number): void {
  const wp = cell[1]! - cell[0]!;
  const ws = cell[3]! - cell[2]!;
  place(mover, fixed, n, at);
  turns(n, at, wp, ws);
  bound[0] = Number.POSITIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) oneCorner(mover, k, n, at, (wp * wp) / 8, (ws * ws) / 8);
  if (bound[0]! < 0) bound[0] = a[3]! > 0 ? bound[0]! / a[3]! : Number.NEGATIVE_INFINITY;
}

/** Puts the part into the four poses and takes the obstacle's height along each direction. */
function place(mover: Mover, fixed: Fixed, n: Float64Array, at: number): void {
  const obstacle = fixed.corners;
  for (let c = 0; c < 4; c++) {
    const p = c < 2 ? 4 : 6;
    const s = c % 2 === 0 ? 8 : 10;
    turn(mover.corners, mover.aft, cell[p]!, cell[p + 1]!, cell[s]!, cell[s + 1]!, places[c]!);
    const x = n[at + 4 * c]!;
    const y = n[at + 4 * c + 1]!;
    const z = n[at + 4 * c + 2]!;
    let high = Number.NEGATIVE_INFINITY;
    for (let k = 0; k < 24; k += 3) {
      high = Math.max(high, x * obstacle[k]! + y * obstacle[k + 1]! + z * obstacle[k + 2]!);
    }
    heights[c] = high;
  }
}

/** How fast the direction turns, and how short it can get. */
function turns(n: Float64Array, at: number, wp: number, ws: number): void {
  let alongP = 0;
  let alongS = 0;
  let twist = 0;
  const squares = [0, 0, 0, 0];
  for (let k = 0; k < 3; k++) {
    const [n00, n01, n10, n11] = [n[at + k]!, n[at + 4 + k]!, n[at + 8 + k]!, n[at + 12 + k]!];
    turning[k] = wp > 0 ? (n10 - n00) / wp : 0;
    turning[3 + k] = wp > 0 ? (n11 - n01) / wp : 0;
    turning[6 + k] = ws > 0 ? (n01 - n00) / ws : 0;
    turning[9 + k] = ws > 0 ? (n11 - n10) / ws : 0;
    for (let side = 0; side < 4; side++) squares[side]! += turning[3 * side + k]! ** 2;
    if (wp > 0) twist += ((turning[9 + k]! - turning[6 + k]!) / wp) ** 2;
  }
  alongP = Math.max(squares[0]!, squares[1]!);
  alongS = Math.max(squares[2]!, squares[3]!);
  a[0] = Math.sqrt(alongP);
  a[1] = Math.sqrt(alongS);
  a[2] = Math.sqrt(twist);
  let product = 1;
  for (let c = 0; c < 16; c += 4) {
    for (let d = c + 4; d < 16; d += 4) {
      product = Math.min(
        product,
        n[at + c]! * n[at + d]! + n[at + c + 1]! * n[at + d + 1]! + n[at + c + 2]! * n[at + d + 2]!,
      );
    }
  }
  a[3] = Math.sqrt(Math.max(0, product));
}

/** Lowers the bound to what the part's corner at offset `k` allows; `wp` and `ws` are squares of the widths, over 8. */
function oneCorner(mover: Mover, k: number, n: Float64Array, at: number, wp: number, ws: number): void {
  const x = mover.corners[k]!;
  const y = mover.corners[k + 1]!;
  const z = mover.corners[k + 2]!;
  const r = Math.sqrt(x * x + y * y);
  const across = r + Math.abs(mover.aft);
  const mixed = r * (1 + 2 * a[0]! + 2 * a[1]! + 4 * a[2]!);
  const reach = Math.sqrt(across * across + z * z);
  const slackP = reach * (1 + 4 * a[0]!) * wp + mixed * ws;
  const slackS = mixed * wp + r * (1 + 4 * a[1]!) * ws;
  const h00 = heightOf(0, k, n, at);
  const h01 = heightOf(1, k, n, at);
  const h10 = heightOf(2, k, n, at);
  const h11 = heightOf(3, k, n, at);
  const most = wp * (reach * (1 + 2 * a[0]!) + slackP) + ws * (r * (1 + 2 * a[1]!) + slackS);
  if (Math.min(h00, h01, h10, h11) - most >= bound[0]!) return;
  let curveP = Number.NEGATIVE_INFINITY;
  let curveS = Number.NEGATIVE_INFINITY;
  for (let c = 0; c < 4; c++) {
    const f = places[c]![k]!;
    const side = places[c]![k + 1]!;
    const v = places[c]![k + 2]!;
    const cosP = cell[c < 2 ? 4 : 6]!;
    const sinP = cell[c < 2 ? 5 : 7]!;
    const nf = n[at + 4 * c]!;
    const ny = n[at + 4 * c + 1]!;
    const nv = n[at + 4 * c + 2]!;
    const out = f * cosP - v * sinP + mover.aft;
    const inP = 3 * (c % 2);
    const inS = c < 2 ? 6 : 9;
    const pp = 2 * (turning[inP]! * v - turning[inP + 2]! * f) - nf * f - nv * v;
    const ss =
      2 * (turning[inS + 1]! * out - side * (turning[inS]! * cosP - turning[inS + 2]! * sinP)) -
      out * (nf * cosP - nv * sinP) -
      ny * side;
    if (pp > curveP) curveP = pp;
    if (ss > curveS) curveS = ss;
  }
  const lossP = wp * Math.max(0, curveP + slackP);
  const lossS = ws * Math.max(0, curveS + slackS);
  const first = lowest(h00, h01, lossS);
  const firstShare = share[0]!;
  const second = lowest(h10, h11, lossS);
  const secondShare = share[0]!;
  const low = lowest(first, second, lossP);
  if (low >= bound[0]!) return;
  bound[0] = low;
  const t = share[0]!;
  bound[1] = cell[0]! + (cell[1]! - cell[0]!) * t;
  bound[2] = cell[2]! + (cell[3]! - cell[2]!) * (firstShare + (secondShare - firstShare) * t);
  loss[0] = lossP;
  loss[1] = lossS;
}

/** Height of the part's corner over the obstacle along the direction of corner c of the cell. */
function heightOf(c: number, k: number, n: Float64Array, at: number): number {
  const place = places[c]!;
  const i = at + 4 * c;
  return n[i]! * place[k]! + n[i + 1]! * place[k + 1]! + n[i + 2]! * place[k + 2]! - heights[c]!;
}

/** Least of (1 - t) from + t to - 4 k t (1 - t) for t from 0 to 1; `share` says where. */
function lowest(from: number, to: number, k: number): number {
  const rise = to - from;
  if (Math.abs(rise) >= 4 * k) {
    share[0] = rise < 0 ? 1 : 0;
    return rise < 0 ? to : from;
  }
  share[0] = 0.5 - rise / (8 * k);
  return (from + to) / 2 - k - (rise * rise) / (16 * k);
}
