/**
 * Lengths. Inside Sternwright every length is a number of millimetres; what people type and read is
 * turned into and out of millimetres at the edges only.
 */

/** Millimetres in one inch, exactly (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;
/** Millimetres in one foot, exactly: twelve inches. */
export const MM_PER_FOOT = 304.8;

/** Inches to millimetres. */
export const inches = (value: number): number => value * MM_PER_INCH;
