/**
 * The report of one pairing: one plain JSON object that page, print, drawing, API and command show and
 * never recompute. Lengths in millimetres rounded to 0.01, angles in degrees rounded to 0.01.
 */
import type { ReportAfloat } from "#lib/fit/afloat-report.ts";
import type { How } from "#lib/quantity/measured.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";

/** The engine's version: raised whenever any number of any report can change. */
export const ENGINE_VERSION = "1.0.0";

export type Verdict = "fits" | "fouls" | "cannot tell";
export type Outcome = Verdict | "not asked";

export interface ReportPlate {
  /** Face angle in the running hole. */
  readonly pinDeg: number;
  /** Plate against the keel line in that hole; plus = trimmed out (aft edge high). */
  readonly attitudeDeg: number;
  readonly aboveDatumMm: number;
  readonly windowMm: readonly [low: number, high: number];
  /** The plate in every pin hole, lowest hole first. */
  readonly holes: readonly {
    readonly pinDeg: number;
    readonly attitudeDeg: number;
    readonly aboveDatumMm: number;
  }[];
}

export interface ReportClearance {
  /** cheek-port, cheek-starboard, sole, bulkhead, side-port, side-starboard or obstacle:LABEL. */
  readonly obstacle: string;
  /** Least clearance over all poses; negative = they overlap and must be parted by that much. */
  readonly mm: number;
  readonly part: string;
  readonly faceAngleDeg: number;
  readonly steeringDeg: number;
  /** Least clearance with the motor held straight ahead at every tilt. */
  readonly straightMm: number;
  /** Measured through the transom, from the leg outside to the sole inside: true as a distance, in nobody's way. */
  readonly throughTransom?: true;
  /** The two nearest points at the tightest pose, in the bracket frame. */
  readonly nearest: { readonly partMm: BracketPoint; readonly obstacleMm: BracketPoint };
}

/** Smallest dimensions that meet their limits with this motor; a key is absent where it cannot be told. */
export interface ReportNeeds {
  readonly seatMm?: number;
  /** Seats that keep the plate in its window: saw anywhere between. */
  readonly seatRangeMm?: readonly [number, number];
  readonly notchDepthMm?: number;
  readonly notchWidthMm?: number;
  readonly wellDepthMm?: number;
  readonly soleDropMm?: number;
}

export interface ReportLimit {
  readonly value: number;
  readonly unit: "mm" | "deg";
  readonly source: string;
  readonly status: "published" | "common practice" | "from memory" | "set by the owner";
}

export interface ReportCheck {
  readonly id: string;
  readonly question: string;
  readonly outcome: Outcome;
  /** Room to spare beyond the limit, positive is good. `marginDeg` for angles. */
  readonly marginMm?: number;
  readonly marginDeg?: number;
  readonly expandedUncertaintyMm?: number;
  readonly expandedUncertaintyDeg?: number;
  readonly worstCaseMm?: number;
  readonly worstCaseDeg?: number;
  readonly have?: number;
  readonly need?: number;
  readonly limit?: ReportLimit;
  /** One sentence in the trade's words. */
  readonly says: string;
  /** The tightest place jumps within the spread: the give-or-take was widened, and is rough. */
  readonly jumps?: true;
  /** The numbers the margin rests on, largest part of its variance first. */
  readonly restsOn?: readonly ReportBudgetLine[];
  /** Keys of the numbers the check needs and nobody has taken. */
  readonly missing?: readonly string[];
  readonly measureNext?: string;
}

/** One number a margin rests on. */
export interface ReportBudgetLine {
  readonly key: string;
  readonly value: number | readonly number[];
  /** Half-width in force, in the number's unit. */
  readonly plusMinus: number;
  readonly how: How;
  /** True where nobody gave the half-width and it follows from `how`. */
  readonly byDefault: boolean;
  /** True where nobody took it on this motor: it comes from like motors. */
  readonly fromLike?: true;
  /** Change of the margin per unit of the number. */
  readonly sensitivity: number;
  /** Part of the margin's variance, 0 to 1. */
  readonly share: number;
}

/** A number nobody took on this motor, estimated from like motors. */
export interface ReportEstimate {
  readonly key: string;
  readonly value: number | readonly number[];
  /** Half of the interval that holds nine of ten. */
  readonly plusMinus: number;
  /** Ids of the records it comes from, the likest first. */
  readonly from: readonly string[];
  /** Few records had it: the interval is a wide guess. */
  readonly few: boolean;
}

/** The one measurement that would settle the governing question. */
export interface ReportMeasureNext {
  readonly key: string;
  /** Half-width that would do, in the number's unit. */
  readonly goodEnough?: number;
  readonly says: string;
}

export interface ReportChange {
  /** A key of the records, or `pinDeg` / `straightWhileTilting` for how the motor is handled. */
  readonly change: string;
  readonly from?: number | string | boolean;
  readonly to: number | string | boolean;
}

/** One change that serves; `also` what it brings with it, or the second of two that serve together. */
export interface ReportRemedy extends ReportChange {
  readonly also?: readonly ReportChange[];
  /** Verdict of the whole pairing assessed again with the changes in place. */
  readonly verdictAfter: Verdict;
  readonly governsAfter: string;
  readonly marginAfterMm?: number;
  readonly marginAfterDeg?: number;
  readonly expandedUncertaintyAfterMm?: number;
  readonly expandedUncertaintyAfterDeg?: number;
  readonly says: string;
}

export interface Report {
  readonly engine: string;
  readonly motor: string;
  readonly stern: string;
  readonly verdict: Verdict;
  /** Id of the check that governs the verdict. */
  readonly governs: string;
  readonly plate?: ReportPlate;
  readonly clearances: readonly ReportClearance[];
  readonly needs: ReportNeeds;
  readonly checks: readonly ReportCheck[];
  /** The boat afloat with this motor: power, mass, freeboard, propeller, draining. Decides neither `verdict` nor `governs`. */
  readonly afloat: readonly ReportAfloat[];
  /** The motor's numbers that come from like motors, where that was asked for. */
  readonly estimated?: readonly ReportEstimate[];
  readonly measureNext?: ReportMeasureNext;
  readonly remedies: readonly ReportRemedy[];
}
