/**
 * Definitions of 33 CFR 183.3 that the powering and loading rules rest on. Length and beam leave fittings
 * out (a motor bracket lengthens nothing). Transom height is plumb, from the lowest place where water can
 * enter over the transom, a motor cutout included, down to the line of the bottom without keels.
 */
import { inches } from "#lib/quantity/length.ts";
import type { Citation } from "#lib/standards/citation.ts";

export const definitions: Citation = {
  document: "33 CFR",
  clause: "183.3",
  edition: "67 FR 34760, 15 May 2002",
  status: "published",
  read: "in the text itself",
  binds: "recreational boats in the United States",
  url: "https://www.law.cornell.edu/cfr/text/33/183.3",
};

/** A full transom is wider than half the beam; exactly half is not. */
export const isFullTransom = (transomWidthMm: number, beamMm: number): boolean => transomWidthMm > beamMm / 2;

/** What is known of a hull's breadths, mm, fittings left out. */
export interface Breadths {
  readonly transomWidthMm?: number;
  readonly beamMm?: number;
  /** Broadest beam in the aftermost quarter of the length. */
  readonly aftQuarterBeamMm?: number;
}

/** The breadth the powering factor takes, mm, and why that one; undefined where what it needs was not taken. */
export interface FactorWidth {
  readonly widthMm: number | undefined;
  readonly says: string;
}

/** 183.53(a)(1): the transom's greatest width where the transom is full, else the broadest beam in the aftermost quarter. */
export function factorWidth({ transomWidthMm, beamMm, aftQuarterBeamMm }: Breadths): FactorWidth {
  if (transomWidthMm === undefined) return { widthMm: undefined, says: "the transom's width is not known" };
  if (beamMm === undefined) {
    return {
      widthMm: transomWidthMm,
      says: "transom width; taken to be a full transom, the beam is not known",
    };
  }
  if (isFullTransom(transomWidthMm, beamMm)) {
    return { widthMm: transomWidthMm, says: "transom width: a full transom, wider than half the beam" };
  }
  return {
    widthMm: aftQuarterBeamMm,
    says:
      aftQuarterBeamMm === undefined
        ? "not a full transom: the broadest beam in the aftermost quarter is wanted, and is not known"
        : "broadest beam in the aftermost quarter: not a full transom",
  };
}

/** A transom this high or higher, mm, lets the greater power stand: 20 in, met at exactly 20. */
export const TALL_TRANSOM_MM = inches(20);

/**
 * Is the transom at least 20 in high? Yes or no only where its height clears the line by the expanded
 * uncertainty; at exactly 20 with none, yes. Compared to a millionth of a millimetre, so that 20 in typed
 * is 20 in.
 */
export function isTall(transomHeightMm: number, expandedUncertaintyMm = 0): "yes" | "no" | "cannot tell" {
  const room = transomHeightMm - TALL_TRANSOM_MM;
  if (room - expandedUncertaintyMm >= -1e-6) return "yes";
  return room + expandedUncertaintyMm < 0 ? "no" : "cannot tell";
}
