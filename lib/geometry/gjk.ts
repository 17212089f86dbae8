/**
 * Distance between two convex solids that lie apart (the method of Gilbert, Johnson and Keerthi).
 *
 * All differences a - b of a point of the part and a point of the obstacle form a convex body; the solids
 * are as far apart as that body is from the origin. A corner of the body in any direction is a corner of
 * one solid minus a corner of the other, so the nearest point v is found by growing a simplex of such
 * corners: take the corner w lowest along v, keep the smallest face of the simplex that holds the point
 * nearest to the origin, and repeat. For every v, v·w / |v| is a distance the solids certainly keep and
 * |v| one they certainly do not exceed; the search ends when the two meet.
 *
 * Corners may be 20 m away while the answer is wanted to a millionth of a millimetre, so on a triangle v
 * is taken from its plane (normal times height), never summed up from shares of far corners.
 *
 * The state lives in typed arrays: plain numbers outside a function would be boxed on every write.
 */

/** What the last call of `nearest` found: v at [0..2], from obstacle to part, and its length at [3]. */
export const found = new Float64Array(4);
/** Corners that carry v: how many at [0], then (as offsets into the 24 coordinates) the part's at [1..3] and the obstacle's at [4..6]. */
export const carriers = new Int32Array(7);
/** Share of each carrier in v. */
export const shares = new Float64Array(3);

/** Up to four corners of the difference body, the newest last, and the corners of part and obstacle that made them. */
const w = new Float64Array(12);
const ofPart = new Int32Array(4);
const ofObstacle = new Int32Array(4);
/** Best point of the simplex: squared length, v, shares; and the simplex corners that carry it, their number first. */
const best = new Float64Array(7);
const kept = new Int32Array(4);

const STEPS = 60;
/** Closer than this, mm, the solids count as touching. */
const TOUCHING = 1e-7;
/** Least gap, mm, left between the certain and the attained distance. */
const ACCURACY = 1e-9;
/** A tetrahedron flatter than this share of its size counts as flat. */
const FLAT = 1e-12;

/**
 * Nearest points of two solids of eight corners each (24 coordinates, both in the same frame), starting
 * along (x, y, z), the expected direction from obstacle to part. True when they lie apart: `found`,
 * `carriers` and `shares` hold the answer. False when they touch or overlap.
 */
export function nearest(
  part: Float64Array,
  obstacle: Float64Array,
  x: number,
  y: number,
  z: number,
): boolean {
  addCorner(part, obstacle, 0, x, y, z);
  best[0] = Number.POSITIVE_INFINITY;
  tryPoint(0);
  return approach(part, obstacle);
}

/** The same, starting from the corners that carried the last answer: quick when the solids have moved little since. */
export function nearestAgain(part: Float64Array, obstacle: Float64Array): boolean {
  const count = carriers[0]!;
  for (let k = 0; k < count; k++) setCorner(part, obstacle, k, carriers[k + 1]!, carriers[k + 4]!);
  best[0] = Number.POSITIVE_INFINITY;
  if (count === 1) tryPoint(0);
  else if (count === 2) trySegment(0, 1);
  else tryTriangle(0, 1, 2);
  return approach(part, obstacle);
}

/** Grows and shrinks the simplex until its nearest point is that of the whole body. */
function approach(part: Float64Array, obstacle: Float64Array): boolean {
  for (let step = 0; step < STEPS; step++) {
    keep();
    const count = kept[0]!;
    const squared = best[0]!;
    if (squared <= TOUCHING * TOUCHING) return false;
    const height = addCorner(part, obstacle, count, best[1]!, best[2]!, best[3]!);
    if (squared - height <= ACCURACY * found[3]! || isRepeated(count)) break;
    kept[0] = 0;
    if (count === 1) trySegment(0, 1);
    else if (count === 2) tryTriangle(0, 1, 2);
    else if (!tryTetrahedron()) return false;
    if (kept[0] === 0) break;
  }
  return true;
}

/** Puts into `slot` the corner of the difference body lowest along (x, y, z); returns its height there times the length of (x, y, z). */
function addCorner(
  part: Float64Array,
  obstacle: Float64Array,
  slot: number,
  x: number,
  y: number,
  z: number,
): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let i = 0;
  let j = 0;
  for (let k = 0; k < 24; k += 3) {
    const a = part[k]! * x + part[k + 1]! * y + part[k + 2]! * z;
    if (a < low) {
      low = a;
      i = k;
    }
    const b = obstacle[k]! * x + obstacle[k + 1]! * y + obstacle[k + 2]! * z;
    if (b > high) {
      high = b;
      j = k;
    }
  }
  setCorner(part, obstacle, slot, i, j);
  return low - high;
}

/** Puts into `slot` the part's corner at offset i minus the obstacle's at j. */
function setCorner(part: Float64Array, obstacle: Float64Array, slot: number, i: number, j: number): void {
  ofPart[slot] = i;
  ofObstacle[slot] = j;
  w[3 * slot] = part[i]! - obstacle[j]!;
  w[3 * slot + 1] = part[i + 1]! - obstacle[j + 1]!;
  w[3 * slot + 2] = part[i + 2]! - obstacle[j + 2]!;
}

/** The simplex has the new corner already: nothing nearer is left. */
function isRepeated(slot: number): boolean {
  for (let k = 0; k < slot; k++) {
    if (ofPart[k] === ofPart[slot] && ofObstacle[k] === ofObstacle[slot]) return true;
  }
  return false;
}

/** Drops the simplex corners that do not carry v, moves the others to the front, and writes the answer so far. */
function keep(): void {
  const count = kept[0]!;
  carriers[0] = count;
  for (let k = 0; k < count; k++) {
    const from = kept[k + 1]!;
    w[3 * k] = w[3 * from]!;
    w[3 * k + 1] = w[3 * from + 1]!;
    w[3 * k + 2] = w[3 * from + 2]!;
    ofPart[k] = ofPart[from]!;
    ofObstacle[k] = ofObstacle[from]!;
    carriers[k + 1] = ofPart[k]!;
    carriers[k + 4] = ofObstacle[k]!;
    shares[k] = best[k + 4]!;
  }
  found[0] = best[1]!;
  found[1] = best[2]!;
  found[2] = best[3]!;
  found[3] = Math.sqrt(best[0]!);
}

/** Takes (x, y, z) as the new best point if it is nearer to the origin than the best so far; the caller then writes who carries it. */
function isBetter(x: number, y: number, z: number): boolean {
  const squared = x * x + y * y + z * z;
  if (squared >= best[0]!) return false;
  best[0] = squared;
  best[1] = x;
  best[2] = y;
  best[3] = z;
  return true;
}

function tryPoint(i: number): void {
  if (!isBetter(w[3 * i]!, w[3 * i + 1]!, w[3 * i + 2]!)) return;
  best[4] = 1;
  kept[0] = 1;
  kept[1] = i;
}

/** Point of the segment from corner i to corner j nearest to the origin: w_i + t (w_j - w_i) with t cut to 0..1. */
function trySegment(i: number, j: number): void {
  const ax = w[3 * i]!;
  const ay = w[3 * i + 1]!;
  const az = w[3 * i + 2]!;
  const ex = w[3 * j]! - ax;
  const ey = w[3 * j + 1]! - ay;
  const ez = w[3 * j + 2]! - az;
  const along = -(ax * ex + ay * ey + az * ez);
  const length = ex * ex + ey * ey + ez * ez;
  const t = along / length;
  if (!(t > 0 && t < 1)) {
    tryPoint(t > 0 ? j : i);
    return;
  }
  if (!isBetter(ax + t * ex, ay + t * ey, az + t * ez)) return;
  best[4] = 1 - t;
  best[5] = t;
  kept[0] = 2;
  kept[1] = i;
  kept[2] = j;
}

/**
 * Point of the triangle nearest to the origin. With n = e1 x e2, e1 and e2 the sides from corner i, the
 * foot of the origin on the plane is n (n·w_i) / n·n and has the shares n·(p x e2) / n·n of corner j and
 * n·(e1 x p) / n·n of corner k, p = -w_i. Where a share is negative the nearest point lies on the side
 * opposite that corner.
 */
function tryTriangle(i: number, j: number, k: number): void {
  const ax = w[3 * i]!;
  const ay = w[3 * i + 1]!;
  const az = w[3 * i + 2]!;
  const ex = w[3 * j]! - ax;
  const ey = w[3 * j + 1]! - ay;
  const ez = w[3 * j + 2]! - az;
  const gx = w[3 * k]! - ax;
  const gy = w[3 * k + 1]! - ay;
  const gz = w[3 * k + 2]! - az;
  const nx = ey * gz - ez * gy;
  const ny = ez * gx - ex * gz;
  const nz = ex * gy - ey * gx;
  const nn = nx * nx + ny * ny + nz * nz;
  const shareJ = nx * (az * gy - ay * gz) + ny * (ax * gz - az * gx) + nz * (ay * gx - ax * gy);
  const shareK = nx * (ay * ez - az * ey) + ny * (az * ex - ax * ez) + nz * (ax * ey - ay * ex);
  const shareI = nn - shareJ - shareK;
  if (shareI > 0 && shareJ > 0 && shareK > 0) {
    const height = (nx * ax + ny * ay + nz * az) / nn;
    if (!isBetter(nx * height, ny * height, nz * height)) return;
    best[4] = shareI / nn;
    best[5] = shareJ / nn;
    best[6] = shareK / nn;
    kept[0] = 3;
    kept[1] = i;
    kept[2] = j;
    kept[3] = k;
    return;
  }
  if (shareK <= 0) trySegment(i, j);
  if (shareJ <= 0) trySegment(i, k);
  if (shareI <= 0) trySegment(j, k);
}

/**
 * Nearest point of a tetrahedron: on a face the origin lies outside of. Only the three faces with the
 * newest corner can be meant, for the origin lies on its side of the fourth. False when it lies inside.
 */
function tryTetrahedron(): boolean {
  let outside = false;
  for (let face = 0; face < 3; face++) {
    const i = face === 2 ? 1 : 0;
    const j = face === 0 ? 1 : 2;
    if (!isOutside(i, j, 3 - i - j)) continue;
    outside = true;
    tryTriangle(i, j, 3);
  }
  return outside;
}

/** True when the origin and corner `other` do not lie on the same side of the face i, j, 3, or the tetrahedron is flat. */
function isOutside(i: number, j: number, other: number): boolean {
  const ax = w[9]!;
  const ay = w[10]!;
  const az = w[11]!;
  const ex = w[3 * i]! - ax;
  const ey = w[3 * i + 1]! - ay;
  const ez = w[3 * i + 2]! - az;
  const gx = w[3 * j]! - ax;
  const gy = w[3 * j + 1]! - ay;
  const gz = w[3 * j + 2]! - az;
  const nx = ey * gz - ez * gy;
  const ny = ez * gx - ex * gz;
  const nz = ex * gy - ey * gx;
  const ox = w[3 * other]! - ax;
  const oy = w[3 * other + 1]! - ay;
  const oz = w[3 * other + 2]! - az;
  const inward = nx * ox + ny * oy + nz * oz;
  const size = (nx * nx + ny * ny + nz * nz) * (ox * ox + oy * oy + oz * oz);
  if (inward * inward <= FLAT * FLAT * size) return true;
  return -(nx * ax + ny * ay + nz * az) * inward < 0;
}
