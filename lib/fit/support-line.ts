/**
 * Where the well sole's support (a cleat or ledger) is screwed to the inside face of the transom.
 */

/**
 * Distance of the support's top edge below the seat, along the inside face of the transom, mm: the drop
 * to the top of the sole plus the sole's own thickness. Common practice, no source. For a sole square to
 * the transom, or nearly: a level sole on a raked transom is bevelled, and its underside meets the face
 * `soleThickness (1/sin angle - 1)` lower.
 */
export const supportLineMm = (soleDropMm: number, soleThicknessMm: number): number =>
  soleDropMm + soleThicknessMm;
