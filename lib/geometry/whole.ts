/** All poses of a part as cells to begin a search with. */
import { bound, hullBound, predict } from "#lib/geometry/bound.ts";
import { cell, setCell } from "#lib/geometry/cell.ts";
import type { Fixed, Mover } from "#lib/geometry/motion.ts";
import { foresee } from "#lib/geometry/node.ts";
import * as queue from "#lib/geometry/queue.ts";

/** Widest side of a cell the bounds are made for, radians. */
const WIDEST = Math.PI / 2;

/** Puts all poses of a part into the queue, cut into cells of a size the bounds are made for. */
export function addWhole(mover: Mover, k: number, fixed: Fixed, straight: boolean): void {
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
      const record = queue.records;
      record[begin + queue.P0] = row === 0 ? p0 : p0 + ((p1 - p0) * row) / rows;
      record[begin + queue.P1] = row === rows - 1 ? p1 : p0 + ((p1 - p0) * (row + 1)) / rows;
      record[begin + queue.S0] = column === 0 ? s0 : s0 + ((s1 - s0) * column) / columns;
      record[begin + queue.S1] = column === columns - 1 ? s1 : s0 + ((s1 - s0) * (column + 1)) / columns;
      record[begin + queue.PART] = k;
      record[begin + queue.MEASURED] = 0;
      boundByFace(mover, fixed, begin);
      queue.push();
    }
  }
}

/** First bound of a whole: along the obstacle's face that the part's middle stands off most in the middle pose. */
function boundByFace(mover: Mover, fixed: Fixed, begin: number): void {
  const record = queue.records;
  setCell(record[begin]!, record[begin + 1]!, record[begin + 2]!, record[begin + 3]!);
  const face = 3 * facing(mover, fixed);
  const { normals } = fixed.obstacle.solid;
  const f = normals[face]!;
  const y = normals[face + 1]!;
  const v = normals[face + 2]!;
  hullBound(mover, fixed, f, y, v);
  predict();
  record[begin + queue.BOUND] = bound[0]!;
  foresee(begin, f, y, v);
}

/** The obstacle's face that the part's middle stands off most in the middle pose of the cell. */
function facing({ corners, aft }: Mover, { obstacle, faces }: Fixed): number {
  // Opposite corners of a box meet in its middle; for the choice of a face this serves any solid.
  const x = (corners[0]! + corners[21]!) / 2;
  const y = (corners[1]! + corners[22]!) / 2;
  const z = (corners[2]! + corners[23]!) / 2;
  const forward = x * cell[14]! - y * cell[15]! - aft;
  const f = forward * cell[12]! + z * cell[13]!;
  const aside = x * cell[15]! + y * cell[14]!;
  const v = z * cell[12]! - forward * cell[13]!;
  const { normals } = obstacle.solid;
  let best = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let face = 0; face < 6; face++) {
    const n = 3 * face;
    const off = normals[n]! * f + normals[n + 1]! * aside + normals[n + 2]! * v - faces[face]!;
    if (off <= most) continue;
    most = off;
    best = face;
  }
  return best;
}
