/**
 * How far a height can lie beyond its chord across a cell of poses; the formulas are derived in bound.ts.
 * Slopes and curvatures are taken at the four corners of the cell, and `slack` is what they can differ by
 * inside; the curvature is never more than `most`, the distance from the steering axis.
 */

/** Greatest h_ss over the cell, or 0 when h is monotone in s or nowhere curved upward. `x` is X + c and `y` is Y, at both ends of s; `m` at both ends of p. */
export function sag(
  m0: number,
  m1: number,
  ny: number,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  slack: number,
  most: number,
): number {
  const slopeLow = Math.min(ny * x0 - m0 * y0, ny * x1 - m0 * y1, ny * x0 - m1 * y0, ny * x1 - m1 * y1);
  if (slopeLow >= slack) return 0;
  const slopeHigh = Math.max(ny * x0 - m0 * y0, ny * x1 - m0 * y1, ny * x0 - m1 * y0, ny * x1 - m1 * y1);
  if (slopeHigh <= -slack) return 0;
  const least = Math.min(m0 * x0 + ny * y0, m0 * x1 + ny * y1, m1 * x0 + ny * y0, m1 * x1 + ny * y1);
  return Math.min(most, Math.max(0, slack - least));
}

/** Greatest -g_ss over the cell, or 0 when g is monotone in s or nowhere curved downward; `x` is X + c at both ends of p; `a` and `b` at both ends of s. */
export function hump(
  a0: number,
  b0: number,
  a1: number,
  b1: number,
  x0: number,
  x1: number,
  y: number,
  slack: number,
  most: number,
): number {
  const slopeLow = Math.min(a0 * y - b0 * x0, a0 * y - b0 * x1, a1 * y - b1 * x0, a1 * y - b1 * x1);
  if (slopeLow >= slack) return 0;
  const slopeHigh = Math.max(a0 * y - b0 * x0, a0 * y - b0 * x1, a1 * y - b1 * x0, a1 * y - b1 * x1);
  if (slopeHigh <= -slack) return 0;
  const greatest = Math.max(a0 * x0 + b0 * y, a0 * x1 + b0 * y, a1 * x0 + b1 * y, a1 * x1 + b1 * y);
  return Math.min(most, Math.max(0, greatest + slack));
}
