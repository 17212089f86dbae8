/**
 * The point of a simplex (point, segment, triangle, tetrahedron) nearest to the origin; for gjk.ts.
 *
 * Corners may be 20 m away while the answer is wanted to a millionth of a millimetre, so on a triangle the
 * point is taken from its plane (normal times height), never summed up from shares of far corners.
 */

/** Up to four corners of the difference body, the newest last, and the corners of part and obstacle that made them. */
export const w = new Float64Array(12);
export const ofPart = new Int32Array(4);
export const ofObstacle = new Int32Array(4);
/** Best point of the simplex: squared length, v, shares; and the simplex corners that carry it, their number first. */
export const best = new Float64Array(7);
export const kept = new Int32Array(4);

/** A tetrahedron flatter than this share of its size counts as flat. */
const FLAT = 1e-12;

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

export function tryPoint(i: number): void {
  if (!isBetter(w[3 * i]!, w[3 * i + 1]!, w[3 * i + 2]!)) return;
  best[4] = 1;
  kept[0] = 1;
  kept[1] = i;
}

/** Point of the segment from corner i to corner j nearest to the origin: w_i + t (w_j - w_i) with t cut to 0..1. */
export function trySegment(i: number, j: number): void {
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
export function tryTriangle(i: number, j: number, k: number): void {
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
export function tryTetrahedron(): boolean {
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
