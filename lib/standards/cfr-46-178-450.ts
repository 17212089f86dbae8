/**
 * Freeing area of a recess that the sea may fill: 46 CFR 178.450, and 46 CFR 171.150 by the foot of
 * bulwark. Written for inspected vessels; for a pleasure boat's motor well they are a yardstick only. Only
 * the inch form is used: the metric constant printed in 178.450, 4389.12, does not convert square inches
 * per cubic foot (1 in2 per ft3 is 227.84 cm2 per m3).
 */
import { MM_PER_FOOT, MM_PER_INCH } from "#lib/quantity/length.ts";
import type { Citation } from "#lib/standards/citation.ts";

export const recessDrainage: Citation = {
  document: "46 CFR",
  clause: "178.450",
  edition: "61 FR 966, 10 January 1996",
  status: "published",
  read: "in the text itself",
  binds: "inspected small passenger vessels in the United States",
  url: "https://www.law.cornell.edu/cfr/text/46/178.450",
};

/** Share of the basic area each kind of waters requires. */
export const WATERS = { exposed: 1, "partially protected": 0.5, protected: 0.1 } as const;
export type Waters = keyof typeof WATERS;

export interface Recess {
  /** Volume that can hold water: bulwark height times deck area in the after two thirds, structures taken off; mm3. */
  readonly volumeMm3: number;
  readonly recessLengthMm: number;
  /** Length over deck, mm. */
  readonly lengthOverDeckMm: number;
}

/** Required freeing area, mm2: a square inch for every cubic foot of recess times recess length over two thirds of the length over deck, times the share for the waters. */
export function freeingAreaMm2(recess: Recess, waters: Waters): number {
  const cubicFeet = recess.volumeMm3 / MM_PER_FOOT ** 3;
  const ratio = recess.recessLengthMm / ((2 / 3) * recess.lengthOverDeckMm);
  return cubicFeet * ratio * WATERS[waters] * MM_PER_INCH ** 2;
}

export const bulwarkPorts: Citation = {
  ...recessDrainage,
  clause: "171.150",
  edition: "62 FR 51354, 30 September 1997",
  url: "https://www.law.cornell.edu/cfr/text/46/171.150",
};

/** Height of bulwark, in, and freeing-port area for each foot of its length, in2. */
export const PORTS_BY_HEIGHT = [
  [6, 2],
  [12, 4],
  [18, 8],
  [24, 12],
  [30, 16],
  [36, 20],
] as const;

/** Freeing-port area, mm2 for each mm of bulwark, straight between the rows; undefined outside 6 to 36 in of height. */
export function portAreaPerLength(bulwarkHeightMm: number): number | undefined {
  const height = bulwarkHeightMm / MM_PER_INCH;
  const above = PORTS_BY_HEIGHT.findIndex(([row]) => height <= row + 1e-9);
  const [upper, lower] = [PORTS_BY_HEIGHT[above], PORTS_BY_HEIGHT[Math.max(0, above - 1)]!];
  if (!upper || height < PORTS_BY_HEIGHT[0][0] - 1e-9) return undefined;
  const share = upper === lower ? 0 : (height - lower[0]) / (upper[0] - lower[0]);
  return ((lower[1] + share * (upper[1] - lower[1])) * MM_PER_INCH ** 2) / MM_PER_FOOT;
}

export const openBoatDeck: Citation = {
  ...recessDrainage,
  clause: "178.440",
  edition: "as read at captainsground.com",
  url: "https://www.law.cornell.edu/cfr/text/46/178.440",
};

/** What 178.440 says of an open boat. */
export const OPEN_BOAT_DRAINS =
  "The deck of an open boat drains to the bilge; drains overboard are not allowed.";

export const cableHole: Citation = {
  document: "United States Coast Guard boatbuilder's handbook, safe loading",
  clause: "subpart C, section 6, motor well",
  edition: "revised November 2003",
  status: "published",
  read: "in the text itself",
  binds: "outboard boats under 20 ft in the United States",
  url: "http://www.uscgboating.org/safety/boatbuilder/safeloading/subc-6.htm",
};

/** Diameter of the one hole for cables and fuel lines through a motor well that does not count as letting water in: 3 in, as mm. */
export const CABLE_HOLE_MM = 3 * MM_PER_INCH;
