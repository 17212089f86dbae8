/** The cell of poses at hand: a rectangle of face angles p and steering angles s, radians, which the bounds are made for. */

/** p from, p to, s from, s to; then cosine and sine of each in that order; then of the middle of p and of s. */
export const cell = new Float64Array(16);
cell.fill(Number.NaN, 0, 4);

/** Sets the cell for the bounds that follow. Radians; neither side wider than half a turn. */
export function setCell(p0: number, p1: number, s0: number, s1: number): void {
  if (cell[0] !== p0 || cell[1] !== p1) {
    cell[0] = p0;
    cell[1] = p1;
    cell[4] = Math.cos(p0);
    cell[5] = Math.sin(p0);
    cell[6] = Math.cos(p1);
    cell[7] = Math.sin(p1);
    cell[12] = Math.cos((p0 + p1) / 2);
    cell[13] = Math.sin((p0 + p1) / 2);
  }
  if (cell[2] !== s0 || cell[3] !== s1) {
    cell[2] = s0;
    cell[3] = s1;
    cell[8] = Math.cos(s0);
    cell[9] = Math.sin(s0);
    cell[10] = Math.cos(s1);
    cell[11] = Math.sin(s1);
    cell[14] = Math.cos((s0 + s1) / 2);
    cell[15] = Math.sin((s0 + s1) / 2);
  }
}
