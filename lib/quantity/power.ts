/** Powers. Inside Sternwright every power is a number of kilowatts. */
import { MM_PER_FOOT } from "#lib/quantity/length.ts";
import { KG_PER_POUND } from "#lib/quantity/mass.ts";

/** Standard acceleration of free fall, m/s2, exactly (3rd CGPM, 1901). */
const STANDARD_GRAVITY = 9.80665;
const M_PER_FOOT = MM_PER_FOOT / 1000;

/** Watts in one mechanical horsepower: 550 foot pounds-force a second, 745.699872 W to nine figures (NIST SP 811, appendix B.8: 7.456 999 E+02). */
export const WATTS_PER_HORSEPOWER = 550 * M_PER_FOOT * KG_PER_POUND * STANDARD_GRAVITY;
/** Watts in one metric horsepower (PS): 75 kilogram-force metres a second, exactly 735.49875 W (NIST SP 811, appendix B.8: 7.354 988 E+02). */
export const WATTS_PER_METRIC_HORSEPOWER = 75 * STANDARD_GRAVITY;
