/**
 * A clearance that holds in a whole cell of poses, from the distances measured at its four corners.
 *
 * A direction carried rigidly loses where the true separating direction turns with the pose, as it does
 * between two edges. So let the direction turn: at corner (a, b) of the cell, p = p_a and s = s_b, the
 * measurement gave the unit direction n_ab; in between take n(p, s), their bilinear mean, in the hull
 * frame. The obstacle's greatest height along n is convex in n, so it is nowhere above the mean of its
 * values H_ab at the corners. The height of a corner P of the part is h = n·P. Between the ends of p it
 * lies below its chord by no more than 4 k t (1 - t), t running from 0 to 1, k = w_p²/8 times the greatest
 * h_pp (or 0); likewise in s. What remains is a parabola on each chord, least in closed form (`lowest`):
 * first along s on either side of the cell, then along p.
 *
 * Second derivatives. n is linear in p and in s, so h_pp = 2 n_p·P_p + n·P_pp, h_ss = 2 n_s·P_s + n·P_ss.
 * Along X, y and Z of the leg, with motion.ts,
 *   P = (X, Y, z),  P_p = (z, 0, -X),  P_pp = (-X, 0, -z),  P_s = (-Y, X + c, 0),  P_ss = (-X - c, -Y, 0).
 * With m, y, k for the shares of n along these, t_m, t_k for those of n_p and u_m, u_y for those of n_s:
 *   h    = m X + y Y + k z,
 *   h_pp = (2 t_m - k) z - (2 t_k + m) X,
 *   h_ss = (2 u_y - m) (X + c) - (2 u_m + y) Y.
 * They are taken at the four corners. Inside they exceed the greatest of these by at most w_p²/8 and
 * w_s²/8 times their own second derivatives, which are at most, with R the distance of P from the tilt
 * axis, r from the steering axis, and a_p, a_s, a_ps the greatest lengths of n_p, n_s, n_ps:
 *   of h_pp:  R (1 + 4 a_p) in p,   r (1 + 2 a_p + 2 a_s + 4 a_ps) in s;
 *   of h_ss:  r (1 + 2 a_p + 2 a_s + 4 a_ps) in p,   r (1 + 4 a_s) in s.
 *
 * n is no unit vector inside the cell, but never longer than one, and its square is never less than the
 * least of the products n_ab·n_cd. So a gap along it that is positive is one the solids keep, and a
 * negative one is so once divided by that least length.
 */
import { bound } from "#lib/geometry/bound.ts";
import { cell } from "#lib/geometry/cell.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";

/** What the width of the cell in p [0] and in s [1] costs the last bound, mm: where halving pays. */
export const loss = new Float64Array(2);

/** For each corner of the cell: m, y, k and H, then 2 t_m - k, 2 t_k + m, 2 u_y - m, 2 u_m + y. */
const at = new Float64Array(32);
/** Greatest lengths of n_p, n_s, n_ps; least length of n. */
const lengths = new Float64Array(4);
/** Where `lowest` last found its least, as a share of the way. */
const way = new Float64Array(1);

/**
 * Bound for the cell set by `setCell`. From offset `from` of `n`: direction and distance (4 numbers) at the
 * corners (p0, s0), (p0, s1), (p1, s0), (p1, s1). Writes `bound`, with the pose expected least, and `loss`.
 */
export function cornersBound(mover: Mover, fixed: Fixed, n: Float64Array, from: number): void {
  const { corners, aft } = mover;
  const wp = cell[1]! - cell[0]!;
  const ws = cell[3]! - cell[2]!;
  measureTurning(n, from, wp, ws);
  for (let c = 0; c < 4; c++) prepareCorner(fixed, n, from, c, wp, ws);
  const wideP = (wp * wp) / 8;
  const wideS = (ws * ws) / 8;
  bound[0] = Number.POSITIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) lower(corners[k]!, corners[k + 1]!, corners[k + 2]!, aft, wideP, wideS);
  if (bound[0]! >= 0) return;
  // Halfway between two unit vectors whose difference is d the mean is shorter than 1 by about d² / 8.
  loss[0]! -= (bound[0]! * (lengths[0]! * wp) ** 2) / 8;
  loss[1]! -= (bound[0]! * (lengths[1]! * ws) ** 2) / 8;
  bound[0] = lengths[3]! > 0 ? bound[0]! / lengths[3]! : Number.NEGATIVE_INFINITY;
}

/** How fast the direction turns over the cell, and how short its mean can get. */
function measureTurning(n: Float64Array, from: number, wp: number, ws: number): void {
  const alongP = Math.max(chord(n, from, from + 8), chord(n, from + 4, from + 12));
  const alongS = Math.max(chord(n, from, from + 4), chord(n, from + 8, from + 12));
  let twist = 0;
  for (let k = from; k < from + 3; k++) twist += (n[k]! - n[k + 4]! - n[k + 8]! + n[k + 12]!) ** 2;
  lengths[0] = wp > 0 ? Math.sqrt(alongP) / wp : 0;
  lengths[1] = ws > 0 ? Math.sqrt(alongS) / ws : 0;
  lengths[2] = wp > 0 && ws > 0 ? Math.sqrt(twist) / (wp * ws) : 0;
  // Of two unit vectors the product is 1 - (length of their difference)² / 2.
  const across = Math.max(chord(n, from, from + 12), chord(n, from + 4, from + 8));
  lengths[3] = Math.sqrt(Math.max(0, 1 - Math.max(alongP, alongS, across) / 2));
}

/** Square of the length of the difference of two directions. */
function chord(n: Float64Array, i: number, j: number): number {
  return (n[i]! - n[j]!) ** 2 + (n[i + 1]! - n[j + 1]!) ** 2 + (n[i + 2]! - n[j + 2]!) ** 2;
}

/** Fills in `at` for corner c. */
function prepareCorner(fixed: Fixed, n: Float64Array, from: number, c: number, wp: number, ws: number): void {
  const obstacle = fixed.corners;
  const own = from + 4 * c;
  const f = n[own]!;
  const y = n[own + 1]!;
  const v = n[own + 2]!;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) {
    const height = f * obstacle[k]! + y * obstacle[k + 1]! + v * obstacle[k + 2]!;
    if (height > high) high = height;
  }
  const cosP = cell[c < 2 ? 4 : 6]!;
  const sinP = cell[c < 2 ? 5 : 7]!;
  const m = f * cosP - v * sinP;
  const k = f * sinP + v * cosP;
  // The corners across the cell in p and in s; differences run from the low end to the high one.
  const inP = from + 4 * (c ^ 2);
  const inS = from + 4 * (c ^ 1);
  const perP = wp > 0 ? (c < 2 ? 2 : -2) / wp : 0;
  const perS = ws > 0 ? (c % 2 === 0 ? 2 : -2) / ws : 0;
  const pf = (n[inP]! - f) * perP;
  const pv = (n[inP + 2]! - v) * perP;
  const sf = (n[inS]! - f) * perS;
  const sv = (n[inS + 2]! - v) * perS;
  at[8 * c] = m;
  at[8 * c + 1] = y;
  at[8 * c + 2] = k;
  at[8 * c + 3] = high;
  at[8 * c + 4] = pf * cosP - pv * sinP - k;
  at[8 * c + 5] = pf * sinP + pv * cosP + m;
  at[8 * c + 6] = (n[inS + 1]! - y) * perS - m;
  at[8 * c + 7] = sf * cosP - sv * sinP + y;
}

/** Lowers the bound to what the part's corner (x, y, z) allows; `wideP` and `wideS` are the squares of the cell's widths over 8. */
function lower(x: number, y: number, z: number, aft: number, wideP: number, wideS: number): void {
  const x0 = x * cell[8]! - y * cell[9]!;
  const y0 = x * cell[9]! + y * cell[8]!;
  const x1 = x * cell[10]! - y * cell[11]!;
  const y1 = x * cell[11]! + y * cell[10]!;
  const h00 = at[0]! * (x0 - aft) + at[1]! * y0 + at[2]! * z - at[3]!;
  const h01 = at[8]! * (x1 - aft) + at[9]! * y1 + at[10]! * z - at[11]!;
  const h10 = at[16]! * (x0 - aft) + at[17]! * y0 + at[18]! * z - at[19]!;
  const h11 = at[24]! * (x1 - aft) + at[25]! * y1 + at[26]! * z - at[27]!;
  const r = Math.sqrt(x * x + y * y);
  const across = r + Math.abs(aft);
  const reach = Math.sqrt(across * across + z * z);
  const a = lengths[0]!;
  const b = lengths[1]!;
  const mixed = r * (1 + 2 * a + 2 * b + 4 * lengths[2]!);
  const slackP = reach * (1 + 4 * a) * wideP + mixed * wideS;
  const slackS = mixed * wideP + r * (1 + 4 * b) * wideS;
  // Not even the steepest curve could bring this corner below the others.
  const most = wideP * (reach * (1 + 2 * a) + slackP) + wideS * (r * (1 + 2 * b) + slackS);
  if (Math.min(h00, h01, h10, h11) - most >= bound[0]!) return;
  const curveP = Math.max(
    at[4]! * z - at[5]! * (x0 - aft),
    at[12]! * z - at[13]! * (x1 - aft),
    at[20]! * z - at[21]! * (x0 - aft),
    at[28]! * z - at[29]! * (x1 - aft),
  );
  const curveS = Math.max(
    at[6]! * x0 - at[7]! * y0,
    at[14]! * x1 - at[15]! * y1,
    at[22]! * x0 - at[23]! * y0,
    at[30]! * x1 - at[31]! * y1,
  );
  const lossP = wideP * Math.max(0, curveP + slackP);
  const lossS = wideS * Math.max(0, curveS + slackS);
  const first = lowest(h00, h01, lossS);
  const firstWay = way[0]!;
  const second = lowest(h10, h11, lossS);
  const secondWay = way[0]!;
  const least = lowest(first, second, lossP);
  if (least >= bound[0]!) return;
  const t = way[0]!;
  bound[0] = least;
  bound[1] = cell[0]! + (cell[1]! - cell[0]!) * t;
  bound[2] = cell[2]! + (cell[3]! - cell[2]!) * (firstWay + (secondWay - firstWay) * t);
  loss[0] = lossP;
  loss[1] = lossS;
}

/** Least of (1 - t) from + t to - 4 k t (1 - t) for t from 0 to 1. */
function lowest(from: number, to: number, k: number): number {
  const rise = to - from;
  if (Math.abs(rise) >= 4 * k) {
    way[0] = rise < 0 ? 1 : 0;
    return rise < 0 ? to : from;
  }
  way[0] = 0.5 - rise / (8 * k);
  return (from + to) / 2 - k - (rise * rise) / (16 * k);
}
