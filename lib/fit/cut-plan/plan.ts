/**
 * The cut plan: one plain JSON object that page, print, drawing, API and file show and never recompute.
 * Lengths in millimetres, angles in degrees, both to a ten-thousandth.
 */
import type { Step } from "#lib/fit/cut-plan/checklist.ts";
import type { DrainPlan } from "#lib/fit/cut-plan/drain.ts";
import type { ScrewJoint } from "#lib/fit/cut-plan/fasteners.ts";
import type { Fillet } from "#lib/fit/cut-plan/fillet.ts";
import type { Marked } from "#lib/fit/cut-plan/marked.ts";
import type { Warning } from "#lib/fit/cut-plan/nearby.ts";
import type { NotchPlan } from "#lib/fit/cut-plan/notch.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { StockPlan } from "#lib/fit/cut-plan/stock.ts";
import type { WellShape } from "#lib/fit/cut-plan/well-shape.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** The plan's version: raised whenever any figure of any plan can change. */
export const CUT_PLAN_VERSION = "1.0.0";

/** Where the sole meets a side: a mark to make on the hull. */
export interface SideMark {
  readonly at: string;
  /** Top of the sole and its underside above the datum, plumb, and from the centreline. */
  readonly topAboveDatumMm: number;
  readonly underAboveDatumMm: number;
  readonly acrossMm: number;
  /** Below the sheer, square to it; minus = above. */
  readonly belowSheerMm: number;
}

/** The well's front against the sheer. */
export interface FrontPlan {
  /** How far the front's top stands above the sheer, square to the sheer; minus = below it. */
  readonly aboveSheerMm: number;
  /** Longest well fore and aft whose front, as high as this one, stays below the sheer; absent where the sole never rises to it. */
  readonly depthBelowSheerMm?: number;
  /** Height of front that stays below the sheer at this length. */
  readonly heightBelowSheerMm: number;
  /** How far the front beam's board stands above its finished edge, on its aft and forward face: plane it off. */
  readonly planeOffMm: { readonly aftMm: number; readonly foreMm: number };
  readonly says: string;
}

/** The well to be built. */
export interface WellPlan {
  readonly shape: WellShape;
  readonly drop: Marked;
  readonly depth: Marked;
  /** What the motors ask, without room for the spread. */
  readonly leastDropMm: number;
  readonly leastDepthMm: number;
  /** Top of the aft cleat below the seat, along the inside face. */
  readonly supportLine: Marked;
  readonly parts: readonly CutPart[];
  readonly marks: readonly SideMark[];
  readonly front: FrontPlan;
  readonly fasteners: readonly ScrewJoint[];
  readonly drain: DrainPlan;
  readonly fillets: {
    readonly radiusMm: number;
    readonly corners: readonly Fillet[];
    readonly millilitres: number;
  };
  readonly stock: StockPlan;
  /** Sole at the transom above the water without the motor; minus = below it. Absent where the waterline is not known. */
  readonly soleAboveWaterMm?: number;
}

export interface CutPlan {
  readonly version: string;
  readonly engine: string;
  readonly motors: readonly string[];
  readonly stern: string;
  readonly lengths: LengthSystem;
  /** How marks are rounded, in words. */
  readonly rounding: string;
  readonly notch?: NotchPlan;
  /** Where the seat stands too low: how much to build it up, plumb. */
  readonly raiseMm?: number;
  readonly well?: WellPlan;
  /** Keys nobody has taken and the plan needs. */
  readonly missing: readonly string[];
  readonly warnings: readonly Warning[];
  readonly checklist: readonly Step[];
  readonly advice: readonly string[];
}
