/** Masses. Inside Sternwright every mass is a number of kilograms. */

/** Kilograms in one avoirdupois pound, exactly (international yard and pound agreement, 1959; NIST SP 811, appendix B.8). */
export const KG_PER_POUND = 0.45359237;
