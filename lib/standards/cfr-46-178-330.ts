/**
 * How much of its freeboard a boat may lose when people move to one side: 46 CFR 178.330(d), simplified
 * stability proof test. Never over 14 degrees of heel, whichever shape of deck.
 */
import type { Citation } from "#lib/standards/citation.ts";

export const heelingTest: Citation = {
  document: "46 CFR",
  clause: "178.330(d)",
  edition: "75 FR 78088, 14 December 2010",
  status: "published",
  read: "in the text itself",
  binds: "inspected small passenger vessels in the United States",
  url: "https://www.law.cornell.edu/cfr/text/46/178.330",
};

export const GREATEST_HEEL_DEG = 14;

/** Deck of a boat as the test parts them; a cockpit boat is told by the length of its cockpit. */
export type DeckShape =
  | { readonly deck: "flush" }
  | { readonly deck: "open" }
  | {
      readonly deck: "cockpit";
      readonly cockpitLengthMm: number;
      readonly waters: "exposed" | "partially protected" | "protected";
    };

/**
 * Greatest immersion under heel, in the unit of the freeboard: half of it (flush deck), a quarter (open
 * boat), f (2 L - 1.5 L') / 4 L on exposed waters and f (2 L - L') / 4 L otherwise (cockpit of length L').
 */
export function greatestImmersion(freeboard: number, lengthMm: number, shape: DeckShape): number {
  if (shape.deck === "flush") return freeboard / 2;
  if (shape.deck === "open") return freeboard / 4;
  const share = shape.waters === "exposed" ? 1.5 : 1;
  return (freeboard * (2 * lengthMm - share * shape.cockpitLengthMm)) / (4 * lengthMm);
}

export const heelByFreeboard: Citation = {
  document: "National Standard for Commercial Vessels, part C6A",
  clause: "7.3.5.4",
  edition: "edition not stated where read",
  status: "published",
  read: "in a secondary text",
  binds: "commercial vessels in Australia",
};

/** Another rule's limit of heel: the immersion that uses half the freeboard to the deck's edge or a quarter of that to where water first gets in, the lesser. */
export const immersionByFreeboard = (deckEdge: number, toFloodingPoint: number): number =>
  Math.min(deckEdge / 2, toFloodingPoint / 4);
