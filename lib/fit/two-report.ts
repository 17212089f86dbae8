/** The report of two motors on one stern: plain JSON, lengths in mm rounded to 0.01. */
import type { ReportAfloat } from "#lib/fit/afloat-report.ts";
import type { Outcome, Verdict } from "#lib/fit/report.ts";
import type { Pose } from "#lib/geometry/mechanism.ts";

/** One of the two: its place, and what it comes to by itself on this seat. */
export interface TwoBerth {
  readonly id: string;
  /** Its middle from the centreline, plus = to port. */
  readonly offsetMm: number;
  readonly seatMm?: number;
  /** The verdict of this motor alone on the middle of this stern at this seat. */
  readonly alone: { readonly verdict: Verdict; readonly governs: string };
}

/** The room between the two in all their attitudes. */
export interface TwoBetween {
  readonly mm: number;
  /** Certified: it is nowhere less than this. */
  readonly certifiedMm: number;
  readonly parts: readonly [string, string];
  readonly poses: readonly [Pose, Pose];
}

/** One question about the two. */
export interface TwoAnswer {
  readonly id: string;
  readonly question: string;
  readonly outcome: Outcome;
  readonly marginMm?: number;
  readonly expandedUncertaintyMm?: number;
  readonly have?: number;
  readonly need?: number;
  readonly limit?: { readonly value: number; readonly source: string; readonly status: string };
  readonly says: string;
  readonly missing?: readonly { readonly of: string; readonly key: string }[];
}

export interface TwoReport {
  readonly engine: string;
  readonly stern: string;
  readonly motors: readonly [TwoBerth, TwoBerth];
  readonly verdict: Verdict;
  readonly governs: string;
  readonly between?: TwoBetween;
  readonly checks: readonly TwoAnswer[];
  /** Power, mass, transom and freeboard of both together. Decides neither `verdict` nor `governs`. */
  readonly afloat: readonly ReportAfloat[];
}
