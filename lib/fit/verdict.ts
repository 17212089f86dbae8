/**
 * From a margin and its spread to an answer. Margins are positive when good; spread comes from the law of
 * propagation (JCGM 100:2008, 5.1.2) with the sensitivities of the tightest place.
 */
import type { Edge, NeededKey } from "#lib/checks/check.ts";
import type { Verdict } from "#lib/fit/report.ts";
import { COVERAGE_FACTOR, combined, standardUncertainty } from "#lib/quantity/uncertainty.ts";
import { motorFields } from "#lib/rig/motor.ts";
import type { Rig, RigKey } from "#lib/rig/mounting.ts";
import type { Taken } from "#lib/rig/record.ts";

/** One number a margin rests on: change of the margin per unit of the number, and its part of the margin's variance. */
export interface Share {
  readonly key: RigKey;
  readonly taken: Taken;
  readonly sensitivity: number;
  /** Share of u squared, 0 to 1. */
  readonly share: number;
}

/** One edge with its spread. */
export interface Assessed {
  readonly edge: Edge;
  readonly margin: number;
  /** Standard uncertainty of the margin. */
  readonly u: number;
  /** The margin with every half-width at its bad end. */
  readonly worstCase: number;
  readonly budget: readonly Share[];
  readonly verdict: Verdict;
}

/** Fits when margin - U >= 0, fouls when margin + U < 0, else it cannot be told; U = 2 u. A hair of rounding (1e-9) is not a foul. */
export function verdictOf(margin: number, u: number): Verdict {
  const expanded = COVERAGE_FACTOR * u;
  if (margin - expanded >= -1e-9) return "fits";
  return margin + expanded < -1e-9 ? "fouls" : "cannot tell";
}

/** Half the step of the central difference, in the number's own unit. */
const STEP = 1e-3;

/**
 * Change of a held margin per unit of one number; the pin angles move together. Works on one copy of each
 * record, made once: a pairing has some two hundred slopes.
 */
export function slopesOf(held: (rig: Rig) => number, rig: Rig): (key: RigKey) => number {
  const motor: Record<string, unknown> = { ...rig.motor };
  const stern: Record<string, unknown> = { ...rig.stern };
  const withMotor = { ...rig, motor } as Rig;
  const withStern = { ...rig, stern } as Rig;
  return (key) => {
    const ofMotor = key in motorFields;
    const [record, probe] = ofMotor ? [motor, withMotor] : [stern, withStern];
    const was = record[key] as number | readonly number[];
    const moved = (by: number) => {
      record[key] = typeof was === "number" ? was + by : was.map((angle) => angle + by);
      return held(probe);
    };
    const slope = (moved(STEP) - moved(-STEP)) / (2 * STEP);
    record[key] = was;
    return slope;
  };
}

/** An edge's margin with its spread over the numbers it can depend on. Largest share first. */
export function assessEdge(
  edge: Edge,
  rig: Rig,
  keys: readonly NeededKey[],
  taken: (key: RigKey) => Taken | undefined,
): Assessed {
  const slopeOf = slopesOf(edge.held, rig);
  const parts = (edge.keys ?? keys).flatMap((key) => {
    const entry = key === "steering" || key === "shaftClass" ? undefined : taken(key);
    if (!entry) return [];
    const slope = slopeOf(key as RigKey);
    return Math.abs(slope) < 1e-9 ? [] : [{ key: key as RigKey, taken: entry, slope }];
  });
  const u = combined(parts.map(({ taken: { halfWidth }, slope }) => slope * standardUncertainty(halfWidth)));
  const spread = parts.reduce((sum, { taken: { halfWidth }, slope }) => sum + Math.abs(slope) * halfWidth, 0);
  const budget = parts
    .map(({ key, taken: entry, slope }) => ({
      key,
      taken: entry,
      sensitivity: slope,
      share: u === 0 ? 0 : (slope * standardUncertainty(entry.halfWidth)) ** 2 / u ** 2,
    }))
    .sort((a, b) => b.share - a.share);
  return {
    edge,
    margin: edge.room,
    u,
    worstCase: edge.room - spread,
    budget,
    verdict: verdictOf(edge.room, u),
  };
}

const GRAVITY: Record<Verdict, number> = { fouls: 0, "cannot tell": 1, fits: 2 };

/** How sure a fit is, in standard uncertainties; without spread the margin's sign settles it. */
const sureness = ({ margin, u }: { margin: number; u: number }): number =>
  u > 0 ? margin / u : margin * Number.MAX_SAFE_INTEGER;

interface Ranked {
  readonly verdict: Verdict;
  readonly margin?: number;
  readonly u?: number;
}

/**
 * Orders the worse first: fouls over cannot tell over fits; among those that cannot be told a missing
 * number first; then the one least surely met.
 */
export function byGravity(a: Ranked, b: Ranked): number {
  const gravity = GRAVITY[a.verdict] - GRAVITY[b.verdict];
  if (gravity !== 0) return gravity;
  if (a.margin === undefined || b.margin === undefined) {
    return Number(a.margin !== undefined) - Number(b.margin !== undefined);
  }
  return sureness({ margin: a.margin, u: a.u ?? 0 }) - sureness({ margin: b.margin, u: b.u ?? 0 });
}
