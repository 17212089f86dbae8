/**
 * The greatest outboard power for a boat by its size: 33 CFR 183.53(a), United States, monohulls under
 * 20 ft. A rule of one country; the label on the hull governs where there is one. The text leaves places
 * open; each is named below and goes with the answer instead of being decided in silence.
 */
import { MM_PER_FOOT } from "#lib/quantity/length.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { isTall } from "#lib/standards/cfr-33-183-3.ts";
import type { Citation, Note } from "#lib/standards/citation.ts";
import { along, compare, type Factor, type Line, raisedToFive } from "#lib/standards/factor.ts";

export const horsepowerCapacity: Citation = {
  document: "33 CFR",
  clause: "183.53(a) and Table 183.53",
  edition: "51 FR 37574, 23 October 1986",
  status: "published",
  read: "in the text itself",
  binds: "monohull boats under 20 ft (6.096 m) sold in the United States for outboard motors",
  url: "https://www.law.cornell.edu/cfr/text/33/183.53",
};

/** Table 183.53 up to a factor of 52: greatest whole factor of each band, and its horsepower. */
export const TABLE_183_53 = [
  { upTo: 35, hp: 3 },
  { upTo: 39, hp: 5 },
  { upTo: 42, hp: 7.5 },
  { upTo: 45, hp: 10 },
  { upTo: 52, hp: 15 },
] as const;

/** Table 183.53 over 52.5: the three lines, in tenths. */
export const LINES_183_53 = {
  /** Remote steering and a transom of 20 in or more: 2 F - 90. */
  "remote steering and tall transom": { slopeTenths: 20, lessTenths: 900 },
  /** Either of them wanting, flat bottom with hard chines: 0.5 F - 15. */
  "flat bottom": { slopeTenths: 5, lessTenths: 150 },
  /** Either of them wanting, any other hull: 0.8 F - 25. */
  other: { slopeTenths: 8, lessTenths: 250 },
} as const satisfies Record<string, Line>;

export type PowerBranch = "table" | keyof typeof LINES_183_53;

/** What the rule asks besides the factor. Lengths in mm. */
export interface PowerTerms {
  /** A flat bottom meeting its sides in hard chines. */
  readonly flatBottomHardChine: boolean;
  /** A mechanical assist fixed to the boat; a bare tiller is none. */
  readonly remoteSteering: boolean;
  /** Transom height after 183.3: plumb, keel left out, a cutout counted. */
  readonly transomHeightMm: number;
  /** Height of the motor well's top after 183.3, where there is a well. */
  readonly motorwellHeightMm?: number;
}

/** Places where the text is open, and what this answer takes. */
export const OPEN_PLACES = {
  seam: "A factor over 52 and up to 52.5 lies between the table's last whole number and where the formulas begin: undefined by the text; the table's last step is taken, 15 hp (10 hp for a flat bottom with hard chines).",
  "below-three":
    "A flat bottom with hard chines goes one step down the table, and the table has no step below 3 hp: undefined by the text, less than 3 hp.",
  "raised-to-five":
    "The paragraph says the result may be raised to the next multiple of 5, the table that it is: raised here.",
  "cutout-behind-well":
    "The transom's cutout is under 20 in though the motor well behind it is not: the paragraph names the transom's height only, so the lower formula is taken.",
  "power-assisted-tiller": "Whether a power-assisted tiller is remote steering is not decided by the text.",
} as const;

export type PowerNote = Note<keyof typeof OPEN_PLACES>;

export interface PowerCapacity {
  /** Length times width, square feet, unrounded. */
  readonly factor: number;
  /** Horsepower before it is raised to a multiple of 5; undefined where the text defines none. */
  readonly raw: number | undefined;
  readonly hp: number | undefined;
  /** The same in kilowatts, at 745.699872 W a horsepower. */
  readonly kW: number | undefined;
  readonly branch: PowerBranch;
  readonly notes: readonly PowerNote[];
}

/** Power capacity of a hull after 183.53(a). The factor decides: up to 52.5 the table, above it one of three lines. */
export function powerCapacity(size: Factor, terms: PowerTerms): PowerCapacity {
  return compare(size, 525) > 0 ? byLine(size, terms) : byTable(size, terms);
}

function byTable(size: Factor, { flatBottomHardChine }: PowerTerms): PowerCapacity {
  const found = TABLE_183_53.findIndex(({ upTo }) => size.nearest <= upTo);
  // Exactly 52.5 rounds to 53, which has no band: the last one is taken.
  const band = found < 0 ? TABLE_183_53.length - 1 : found;
  const hp = TABLE_183_53[flatBottomHardChine ? band - 1 : band]?.hp;
  return answer(size, "table", hp, hp, [
    ...(compare(size, 520) > 0 ? note("seam") : []),
    ...(hp === undefined ? note("below-three") : []),
  ]);
}

function byLine(size: Factor, terms: PowerTerms): PowerCapacity {
  const branch = branchOf(terms);
  const [raw, hp] = [along(size, LINES_183_53[branch]), raisedToFive(size, LINES_183_53[branch])];
  const transomIsTall = isTall(terms.transomHeightMm) === "yes";
  const wellIsTall = terms.motorwellHeightMm !== undefined && isTall(terms.motorwellHeightMm) === "yes";
  return answer(size, branch, raw, hp, [
    ...(raw < hp ? note("raised-to-five") : []),
    ...(terms.remoteSteering && wellIsTall && !transomIsTall ? note("cutout-behind-well") : []),
    ...(transomIsTall && !terms.remoteSteering ? note("power-assisted-tiller") : []),
  ]);
}

function branchOf(terms: PowerTerms): keyof typeof LINES_183_53 {
  if (terms.remoteSteering && isTall(terms.transomHeightMm) === "yes")
    return "remote steering and tall transom";
  return terms.flatBottomHardChine ? "flat bottom" : "other";
}

const note = (id: keyof typeof OPEN_PLACES): PowerNote[] => [{ id, says: OPEN_PLACES[id] }];

const answer = (
  { value }: Factor,
  branch: PowerBranch,
  raw: number | undefined,
  hp: number | undefined,
  notes: readonly PowerNote[],
): PowerCapacity => ({
  factor: value,
  raw,
  hp,
  kW: hp === undefined ? undefined : (hp * WATTS_PER_HORSEPOWER) / 1000,
  branch,
  notes,
});

/** Craft the rule leaves out, besides anything but a monohull. */
export const LEFT_OUT = ["sailboat", "canoe", "kayak", "inflatable"] as const;
export type Craft = "monohull" | "multihull" | (typeof LEFT_OUT)[number];

export const applicability: Citation = {
  ...horsepowerCapacity,
  clause: "183.51",
  read: "in a secondary text",
  url: "https://www.law.cornell.edu/cfr/text/33/183.51",
};

/** Length under which the powering and loading rules apply, mm: 20 ft, not met at exactly 20. */
export const APPLIES_UNDER_MM = 20 * MM_PER_FOOT;

/** Why the powering and loading rules do not apply to a craft; empty where they do. */
export function reasonsLeftOut(lengthOverallMm: number, craft: Craft = "monohull"): string[] {
  return [
    ...(lengthOverallMm < APPLIES_UNDER_MM ? [] : ["the rule is for boats under 20 ft"]),
    ...(craft === "monohull"
      ? []
      : [`the rule is for monohulls and leaves out a craft that is a ${named(craft)}`]),
  ];
}

const named = (craft: Craft): string => (craft === "inflatable" ? "inflatable boat" : craft);
