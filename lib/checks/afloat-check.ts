/**
 * The shape of a question about a boat afloat: too strong, too heavy, too low in the water. These stand
 * beside the questions of hanging, steering and tilting and never decide them: a hull whose length nobody
 * took is no reason to doubt that a motor hangs, and a motor that is allowed is not one that fits.
 */
import { nameOfKey } from "#lib/checks/key-names.ts";
import type { LengthWriter } from "#lib/quantity/words.ts";
import type { Level, Mass } from "#lib/rig/afloat/floating.ts";
import { type Afloat, LYING_STERN } from "#lib/rig/afloat/lying.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import { seatNow } from "#lib/rig/plate.ts";
import {
  type Citation,
  COMMON_PRACTICE_ID,
  citationId,
  type Note,
  sourceOf,
} from "#lib/standards/citation.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** A key a question afloat can miss: a measured number or a plain fact. */
export type AfloatKey = RigKey | "steering" | "hullForm" | "hardChine" | "drainCount";

/** What a question is, so that nobody takes a yardstick for a law. */
export type Standing = "rule" | "yardstick" | "estimate";

/** Where a number comes from: its words, and one of the places it can be looked up under. */
export interface Source {
  readonly source: string;
  /** Id of a listed standard. */
  readonly standard?: string;
  /** Key of a record's number. */
  readonly key?: AfloatKey;
}

/** The source of a number that a rule gives. */
export const fromStandard = (citation: Citation): Source => ({
  source: sourceOf(citation),
  standard: citationId(citation),
});
/** The source of a number that is common practice. */
export const fromPractice: Source = { source: "common practice, no source", standard: COMMON_PRACTICE_ID };
/** The source of a number that was taken. */
export const fromRecord = (key: AfloatKey): Source => ({ source: "as recorded", key });
/** The source of a number worked out here. */
export const workedOut: Source = { source: "worked out" };
/** The source of a number the reader set. */
export const asAsked: Source = { source: "as set for this report" };

export type FigureUnit =
  | "mm"
  | "deg"
  | "kg"
  | "kW"
  | "hp"
  | "ft²"
  | "cm²"
  | "L"
  | "s"
  | "kg/cm"
  | "kg m/cm"
  | "persons";

/** One number worth showing beside an answer. */
export interface Figure extends Source {
  readonly label: string;
  readonly value: number;
  readonly unit: FigureUnit;
}

/** A limit as applied. */
export interface AfloatLimit extends Source {
  readonly value: number;
  readonly status: Standard["status"] | "capacity label" | "set by the owner";
}

/** Room to spare up to one limit, in the question's unit. */
export interface AfloatEdge {
  readonly room: (of: Afloat) => number;
  /** The numbers it can depend on. */
  readonly keys: readonly RigKey[];
  /** It rests on the fullness of the waterplane, which nobody measured. */
  readonly onFullness?: true;
  /** A shortfall no larger than this is rounding of the figures compared. */
  readonly rounding?: number;
}

/** One number a margin rests on. */
export interface AfloatShare {
  readonly key: RigKey | "fullness";
  readonly halfWidth: number;
  readonly sensitivity: number;
  /** Part of the margin's variance, 0 to 1. */
  readonly share: number;
}

/** An edge with its spread. */
export interface Judged {
  readonly margin: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly worstCase: number;
  readonly verdict: "fits" | "fouls" | "cannot tell";
  readonly budget: readonly AfloatShare[];
}

/** What a question afloat is asked about. */
export interface AfloatStudy {
  readonly afloat: Afloat;
  readonly write: LengthWriter;
  judge(edge: AfloatEdge): Judged;
}

/** How one named rule is kept. */
export interface RuleKept extends Source {
  readonly id: string;
  readonly rule: string;
  /** Whom it was written for. */
  readonly binds: string;
  readonly least: number;
  readonly judged: Judged;
}

/** What a question comes to. */
export interface AfloatFinding {
  readonly outcome: "fits" | "fouls" | "cannot tell" | "not asked";
  readonly says: string;
  readonly missing: readonly AfloatKey[];
  /** The margin that rules, with what is there, what is wanted and whose limit it is. */
  readonly ruling?: {
    readonly judged: Judged;
    readonly have: number;
    readonly need: number;
    readonly limit: AfloatLimit;
  };
  readonly figures: readonly Figure[];
  readonly notes: readonly Note[];
  readonly rules?: readonly RuleKept[];
  /** How the boat lies before and after, where that was worked out. */
  readonly trim?: { readonly before: Level; readonly after: Level; readonly masses: readonly Mass[] };
}

export interface AfloatCheck {
  /** The file's name: a noun of the trade. */
  readonly id: string;
  readonly question: string;
  readonly why: string;
  readonly leavesOut: string;
  readonly unit: "mm" | "kg" | "kW";
  readonly standing: Standing;
  /** What it is and whom it binds, in one sentence. */
  readonly is: string;
  readonly standards: readonly (Citation | Standard)[];
  /** All it can need. */
  readonly needs: readonly AfloatKey[];
  answer(study: AfloatStudy): AfloatFinding;
}

/** Whether a rig holds what a key names; a seat counts as known where the uncut top is. */
export const holds = ({ motor, stern }: Rig, key: AfloatKey): boolean =>
  (key === "seatMm"
    ? seatNow(stern)
    : ((motor as Record<string, unknown>)[key] ?? (stern as Record<string, unknown>)[key])) !== undefined;

/** Those of some keys that nobody took, each once. */
export const missingOf = (rig: Rig, keys: readonly AfloatKey[]): AfloatKey[] =>
  [...new Set(keys)].filter((key) => !holds(rig, key));

/** "Not known: beam, hull form." */
export const notKnown = (missing: readonly AfloatKey[]): string =>
  `Not known: ${missing.map(nameOfKey).join(", ")}.`;

/** What says how the boat lies at rest. */
export const LYING: readonly AfloatKey[] = [...LYING_STERN, "seatMm", "hullForm", "massKg"];

/** The measured numbers among them, and the motor's axes, which are used where they are known. */
export const LYING_KEYS: readonly RigKey[] = [
  ...LYING_STERN,
  "seatMm",
  "transomTopMm",
  "massKg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
];

/** Of whom every answer afloat says that it is no more than it is. */
export const DEFERS: Note = {
  id: "defers",
  says: "The hull's own capacity label, the local authority and a licensed surveyor go before this answer.",
};
