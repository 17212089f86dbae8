/**
 * Angles. Every name, field and argument is in degrees; radians exist only inside the four functions
 * below, so no caller can hand one to the other by mistake.
 */
const RADIANS_PER_DEGREE = Math.PI / 180;

/** Sine of an angle in degrees. */
export const sin = (degrees: number): number => Math.sin(degrees * RADIANS_PER_DEGREE);
/** Cosine of an angle in degrees. */
export const cos = (degrees: number): number => Math.cos(degrees * RADIANS_PER_DEGREE);
/** Tangent of an angle in degrees. */
export const tan = (degrees: number): number => Math.tan(degrees * RADIANS_PER_DEGREE);
/** Angle in degrees of the direction (x, y), from -180 to 180. */
export const atan2 = (y: number, x: number): number => Math.atan2(y, x) / RADIANS_PER_DEGREE;
