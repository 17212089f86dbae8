/**
 * Least and greatest value of B cos t + C sin t over an interval of t no wider than half a turn.
 *
 * The slope is -B sin t + C cos t. Within half a turn it changes sign at most once, so there is a valley
 * inside the interval exactly when the slope is negative at its beginning and positive at its end; the
 * value there is -sqrt(B² + C²), at t = atan2(-C, -B). Otherwise the least value is at an end. Sines and
 * cosines of the ends are handed in, for they serve many sinusoids.
 */

/** Least value between the ends given by their cosines and sines. */
export function leastOf(
  b: number,
  c: number,
  cos0: number,
  sin0: number,
  cos1: number,
  sin1: number,
): number {
  if (c * cos0 - b * sin0 < 0 && c * cos1 - b * sin1 > 0) return -Math.sqrt(b * b + c * c);
  const first = b * cos0 + c * sin0;
  const last = b * cos1 + c * sin1;
  return Math.min(first, last);
}

/** Greatest value between the ends given by their cosines and sines. */
export function greatestOf(
  b: number,
  c: number,
  cos0: number,
  sin0: number,
  cos1: number,
  sin1: number,
): number {
  if (c * cos0 - b * sin0 > 0 && c * cos1 - b * sin1 < 0) return Math.sqrt(b * b + c * c);
  const first = b * cos0 + c * sin0;
  const last = b * cos1 + c * sin1;
  return Math.max(first, last);
}

/** Where between `from` and `to` (radians) the least value is met. */
export function leastAt(b: number, c: number, from: number, to: number): number {
  const bottom = Math.atan2(-c, -b);
  const middle = (from + to) / 2;
  const t = bottom + 2 * Math.PI * Math.round((middle - bottom) / (2 * Math.PI));
  if (t >= from && t <= to) return t;
  return b * Math.cos(from) + c * Math.sin(from) <= b * Math.cos(to) + c * Math.sin(to) ? from : to;
}
