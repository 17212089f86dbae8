/**
 * Water out of a hole: Torricelli's speed and the coefficient of discharge, the share of it that real
 * orifices pass.
 */
import type { Citation } from "#lib/standards/citation.ts";

/** Standard acceleration of free fall, mm/s2, exactly (3rd CGPM, 1901). */
export const GRAVITY_MM_S2 = 9806.65;

export const hydraulics: Citation = {
  document: "Encyclopaedia Britannica, article Hydraulics, W. C. Unwin",
  clause: "sections 17 to 19",
  edition: "11th edition, 1911",
  status: "published",
  read: "in the text itself",
  binds: "any orifice",
  url: "https://bitlit.ru/page/en/various/encyclopaedia-britannica-11th-edition-husband-to-hydrolysis-volume-14-slice-1/52",
};

export const pondOutlets: Citation = {
  document: "cecalc.com, Orifice Flow",
  clause: "coefficients by shape of edge",
  edition: "as read",
  status: "published",
  read: "in a secondary text",
  binds: "any orifice",
  url: "http://www.cecalc.com/Ponds/OrificeFlow.aspx",
};

const plainOrifice: Citation = {
  document: "powderprocess.net, Torricelli, after Midoux",
  clause: "p. 51 of the work followed",
  edition: "as read",
  status: "published",
  read: "in a secondary text",
  binds: "any orifice",
  url: "https://powderprocess.net/Tools_html/Piping/Tools_Toricelli.html",
};

/** A coefficient of discharge and where it stands. */
export interface Coefficient {
  readonly value: number;
  readonly what: string;
  readonly citation: Citation;
}

/** Coefficients of discharge by the edge of the hole. The pond page prints Q = k A sqrt(h) in feet; k / 8.02 is the coefficient. */
export const DISCHARGE = {
  /** 0.97 of the speed times 0.64 of the area. */
  sharp: { value: 0.97 * 0.64, what: "sharp-edged hole in a thin plate", citation: hydraulics },
  plain: { value: 0.6, what: "plain hole", citation: plainOrifice },
  rounded: { value: 7.9 / 8.02, what: "hole with a well-rounded edge", citation: pondOutlets },
  tube: { value: 6.4 / 8.02, what: "short tube, as through a thick transom", citation: pondOutlets },
  reentrant: { value: 4.1 / 8.02, what: "tube that stands into the well", citation: pondOutlets },
} as const satisfies Record<string, Coefficient>;

/** Fresh water, kg/m3; 33 CFR 183.105(a)(3) takes 62.4 lb/ft3, which is 999.6. Salt water carries some 2.5 % more. */
export const FRESH_WATER_KG_M3 = 1000;

/** Unwin's fit for round sharp-edged orifices of 1 to 3 in: 0.6075 + 0.0098 / sqrt(head, ft) - 0.0037 diameter, in. */
export const unwinCoefficient = (headFt: number, diameterIn: number): number =>
  0.6075 + 0.0098 / Math.sqrt(headFt) - 0.0037 * diameterIn;

/** Time, s, for a straight-sided tank of `areaMm2` to fall from `headMm` to the level of its holes: (A / C a) sqrt(2 H / g). */
export const straightDrainS = (
  areaMm2: number,
  headMm: number,
  holesMm2: number,
  coefficient: number,
): number => (areaMm2 / (coefficient * holesMm2)) * Math.sqrt((2 * headMm) / GRAVITY_MM_S2);

/** Area of `count` round holes, mm2. */
export const holesArea = (diameterMm: number, count: number): number =>
  (count * Math.PI * diameterMm ** 2) / 4;
