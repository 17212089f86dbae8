/**
 * The shape of a question about a pairing. One file per question; each says what it needs, where its
 * limit comes from, and measures the room to spare: positive is good, everywhere.
 */
import type { LengthWriter } from "#lib/quantity/words.ts";
import type { Mounting, Rig, RigKey } from "#lib/rig/mounting.ts";
import { type LimitKey, practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** A limit as applied: a standard, or the owner's own figure in its place. */
export interface Limit extends Omit<Standard, "status"> {
  readonly status: Standard["status"] | "set by the owner";
}

/** What a question is asked about: the pairing, the limits in force, and how lengths are written. */
export interface Study {
  readonly mounting: Mounting;
  readonly limit: (key: LimitKey) => Limit;
  readonly write: LengthWriter;
}

/** One edge of a question (a thing can be too high or too low): the room to spare up to it. */
export interface Edge {
  /** Room to spare beyond the limit, in the check's unit. */
  readonly room: number;
  /** The same room on a slightly different rig, holding the pin hole, pose and direction found. */
  readonly held: (rig: Rig) => number;
  /** The same room worked out anew, place and all, where that can differ from `held`. */
  readonly anew?: (rig: Rig) => number;
  /** The numbers it can depend on; absent, all the check's. */
  readonly keys?: readonly NeededKey[];
  /** What is there and what is wanted, in the check's unit. */
  readonly have: number;
  readonly need: number;
  readonly limit: Limit;
  /** The finding as a clause, without verdict: "the cowl passes 43 mm from the port cheek, 25 mm wanted". */
  readonly says: string;
}

/** A key a question can miss: a measured number, or one of the plain facts. */
export type NeededKey = RigKey | "steering" | "shaftClass";

export interface Check {
  /** The file's name: a noun of the trade. */
  readonly id: string;
  /** As a user would ask it. */
  readonly question: string;
  /** What goes wrong where it does not fit. */
  readonly why: string;
  /** What it leaves out. */
  readonly leavesOut?: string;
  readonly unit: "mm" | "deg";
  readonly limits: readonly LimitKey[];
  /** True, or why the question does not arise. */
  asked(rig: Rig): true | string;
  /** What it needs to be answered. */
  needs(rig: Rig): readonly NeededKey[];
  /** Numbers it uses where they are known and does without where they are not. */
  readonly also?: readonly RigKey[];
  /** A question that answers the same thing better: where it was answered and does not foul, a finding here that does not fit is set aside. */
  readonly overruledBy?: { readonly check: string; readonly says: string };
  /** Every edge that can be worked out from what is known; a missing number leaves its edge out. */
  edges(study: Study): readonly Edge[];
}

/** Why nothing is asked of the clamps of a motor that has none. */
export const BOLTED = "The motor is bolted through the transom: it has no clamps.";

/** The values of some keys, or undefined where one of them is unknown. */
export function known<R extends object, K extends keyof R>(
  record: R,
  ...keys: readonly K[]
): Required<Pick<R, K>> | undefined {
  return keys.every((key) => record[key] !== undefined) ? (record as Required<Pick<R, K>>) : undefined;
}

/** The limit in force for a rig: the owner's own figure where the stern carries one, else common practice. */
export function limitOf({ stern }: Rig, key: LimitKey): Limit {
  const practice: Standard = practiceLimits[key];
  const own = ownWindow(stern, key) ?? stern.limits?.[key];
  if (own === undefined) return practice;
  return { ...practice, value: own, source: "set for this stern", status: "set by the owner" };
}

/** The plate's window may stand among the stern's numbers. */
const ownWindow = (stern: Rig["stern"], key: LimitKey): number | undefined =>
  key === "plateHighMm" || key === "plateLowMm" ? (stern.limits?.[key] ?? stern[key]) : undefined;
