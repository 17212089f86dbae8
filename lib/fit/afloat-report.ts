/**
 * The part of a report about the boat afloat. It stands beside the questions of hanging, steering and
 * tilting under a key of its own and changes neither `verdict` nor `governs`.
 */
import type { Figure } from "#lib/checks/afloat-check.ts";
import type { Outcome } from "#lib/fit/report.ts";
import type { How } from "#lib/quantity/measured.ts";
import type { Level, Mass } from "#lib/rig/afloat/floating.ts";

/** A margin with its give-or-take and worst case, in the unit of its question: `Mm`, `Kg` or `Kw`. */
export interface AfloatMargins {
  readonly marginMm?: number;
  readonly expandedUncertaintyMm?: number;
  readonly worstCaseMm?: number;
  readonly marginKg?: number;
  readonly expandedUncertaintyKg?: number;
  readonly worstCaseKg?: number;
  readonly marginKw?: number;
  readonly expandedUncertaintyKw?: number;
  readonly worstCaseKw?: number;
}

export interface ReportAfloatLimit {
  readonly value: number;
  readonly unit: "mm" | "kg" | "kW";
  readonly source: string;
  readonly status: string;
  /** Id under which the standard is listed. */
  readonly standard?: string;
}

/** One named rule's own answer. */
export interface ReportRule extends AfloatMargins {
  readonly id: string;
  readonly rule: string;
  readonly binds: string;
  readonly least: number;
  readonly outcome: Outcome;
  readonly source: string;
  readonly standard?: string;
}

/** One number a margin afloat rests on; `fullness` is the waterplane's, which follows from the hull's form. */
export interface ReportAfloatShare {
  readonly key: string;
  readonly value?: number | readonly number[];
  readonly plusMinus: number;
  readonly how?: How;
  readonly sensitivity: number;
  readonly share: number;
}

export interface ReportAfloat extends AfloatMargins {
  readonly id: string;
  readonly question: string;
  /** A rule, a yardstick or an estimate, and in a sentence whose. */
  readonly standing: "rule" | "yardstick" | "estimate";
  readonly is: string;
  readonly outcome: Outcome;
  readonly have?: number;
  readonly need?: number;
  readonly limit?: ReportAfloatLimit;
  readonly says: string;
  readonly missing?: readonly string[];
  readonly measureNext?: string;
  readonly restsOn?: readonly ReportAfloatShare[];
  readonly figures: readonly Figure[];
  readonly rules?: readonly ReportRule[];
  readonly notes: readonly { readonly id: string; readonly says: string }[];
  /** How the boat lies without the motor and with everything aboard. */
  readonly trim?: { readonly before: Level; readonly after: Level; readonly masses: readonly Mass[] };
}
