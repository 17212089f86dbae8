/**
 * Water over the upper blade tips. With too little, air is drawn down to the blades, the motor races and
 * the boat loses way; no open standard gives a figure.
 */
import { inches } from "#lib/quantity/length.ts";
import { commonPractice } from "#lib/standards/standard.ts";

/** Least water over the upper blade tips, by how the boat lies. */
export const TIP_COVER = {
  "at rest": commonPractice(inches(2), "mm", "least water over the upper blade tips at rest"),
  running: commonPractice(inches(0.5), "mm", "least water over the upper blade tips when running"),
} as const;

export type Lying = keyof typeof TIP_COVER;

export interface Ventilation {
  readonly risk: "draws air" | "may draw air" | "covered";
  readonly says: string;
}

/** Risk that the propeller draws air, from the depth of the upper blade tips below the water, mm; minus = above it. */
export function ventilation(upperTipDepthMm: number, lying: Lying): Ventilation {
  if (upperTipDepthMm < 0) {
    return { risk: "draws air", says: `${lying}, the blades break the surface and draw air` };
  }
  if (upperTipDepthMm < TIP_COVER[lying].value) {
    return {
      risk: "may draw air",
      says: `${lying}, little water stands over the blades: in a chop or a turn they may draw air`,
    };
  }
  return { risk: "covered", says: `${lying}, the blades are well covered` };
}
