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
  /** The tightest place jumps within the spread: U was widened by what the straight line missed. */
  readonly jumps: boolean;
  /** The margin with every half-width at its bad end. */
  readonly worstCase: number;
  readonly budget: readonly Share[];
  readonly verdict: Verdict;
}

/** A hair of rounding, in the margin's unit, is not a foul. */
const HAIR = 1e-9;

/**
 * Fits when margin - U >= 0, fouls when margin + U < 0, else it cannot be told; U = 2 u. What rests on
 * like motors must hold even at the far end of their intervals: `far` is how far that moves the margin,
 * `uElse` the spread of everything else.
 */
export function verdictOf(margin: number, u: number, far = 0, uElse = 0): Verdict {
  const reach = Math.max(COVERAGE_FACTOR * u, far === 0 ? 0 : far + COVERAGE_FACTOR * uElse);
  if (margin - reach >= -HAIR) return "fits";
  return margin + reach < -HAIR ? "fouls" : "cannot tell";
}

/** Half the step of the central difference, in the number's own unit. */
const STEP = 1e-3;

/**
 * Change of a held margin per unit of one number; the pin angles move together. Works on one copy of each
 * record, made once: a pairing has some two hundred slopes.
 */
export function slopesOf(held: (rig: Rig) => number, rig: Rig): (key: RigKey) => number {
  const { motor, stern, withMotor, withStern } = probesOf(rig);
  return (key) => {
    const ofMotor = key in motorFields;
    const [record, probe] = ofMotor ? [motor, withMotor] : [stern, withStern];
    const was = record[key] as number | readonly number[];
    record[key] = movedBy(was, STEP);
    const above = held(probe);
    record[key] = movedBy(was, -STEP);
    const below = held(probe);
    record[key] = was;
    return (above - below) / (2 * STEP);
  };
}

/** A number, or all of a list together, moved by so much. */
const movedBy = (was: number | readonly number[], by: number): number | readonly number[] =>
  typeof was === "number" ? was + by : was.map((angle) => angle + by);

interface Probes {
  readonly motor: Record<string, unknown>;
  readonly stern: Record<string, unknown>;
  readonly withMotor: Rig;
  readonly withStern: Rig;
}

/** The copies of a rig that its slopes are worked on; every number is put back before the next is moved. */
const probes = new WeakMap<Rig, Probes>();

function probesOf(rig: Rig): Probes {
  const kept = probes.get(rig);
  if (kept) return kept;
  const motor: Record<string, unknown> = { ...rig.motor };
  const stern: Record<string, unknown> = { ...rig.stern };
  const made = { motor, stern, withMotor: { ...rig, motor } as Rig, withStern: { ...rig, stern } as Rig };
  probes.set(rig, made);
  return made;
}

interface Part {
  readonly key: RigKey;
  readonly taken: Taken;
  readonly slope: number;
}

/** Standard uncertainty of a margin from its parts. */
const spreadOf = (parts: readonly Part[]): number =>
  combined(parts.map(({ taken: { halfWidth }, slope }) => slope * standardUncertainty(halfWidth)));

/** How far the half-widths of the parts can move a margin at the worst. */
const farthest = (parts: readonly Part[]): number =>
  parts.reduce((sum, { taken: { halfWidth }, slope }) => sum + Math.abs(slope) * halfWidth, 0);

/** An edge's margin with its spread over the numbers it can depend on. Largest share first. */
export function assessEdge(
  edge: Edge,
  rig: Rig,
  keys: readonly NeededKey[],
  taken: (key: RigKey) => Taken | undefined,
  thorough = false,
): Assessed {
  const slopeOf = slopesOf(edge.held, rig);
  const parts = (edge.keys ?? keys).flatMap((key): Part[] => {
    const entry = key === "steering" || key === "shaftClass" ? undefined : taken(key);
    if (!entry) return [];
    const slope = slopeOf(key as RigKey);
    return Math.abs(slope) < 1e-9 ? [] : [{ key: key as RigKey, taken: entry, slope }];
  });
  const linear = spreadOf(parts);
  const miss = missOfLine(edge, rig, parts, linear, thorough);
  const u = linear + miss / COVERAGE_FACTOR;
  const [like, other] = [
    parts.filter((part) => part.taken.fromLike),
    parts.filter((part) => !part.taken.fromLike),
  ];
  const budget = parts
    .map(({ key, taken: entry, slope }) => ({
      key,
      taken: entry,
      sensitivity: slope,
      share: linear === 0 ? 0 : (slope * standardUncertainty(entry.halfWidth)) ** 2 / linear ** 2,
    }))
    .sort((a, b) => b.share - a.share);
  return {
    edge,
    margin: edge.room,
    u,
    jumps: miss > Math.max(LINEAR_SHARE * COVERAGE_FACTOR * linear, LINEAR_MM),
    worstCase: edge.room - farthest(parts) - miss,
    budget,
    verdict: verdictOf(edge.room, u, farthest(like), spreadOf(other)),
  };
}

/** A miss of the straight line by less than this share of U, or this many mm, is no jump. */
const LINEAR_SHARE = 0.1;
const LINEAR_MM = 0.2;

/** In long lists a margin of more than this many U is not worked out anew: it decides nothing there. */
const FAR_OFF = 5;

/**
 * How much less room there is than the straight line says where the numbers stand two standard
 * uncertainties towards the foul (the likeliest such place: each moved in proportion to its part of the
 * variance). The spread is widened by it; a large miss means that the tightest place jumps.
 */
function missOfLine(
  { anew, room }: Edge,
  rig: Rig,
  parts: readonly Part[],
  u: number,
  thorough: boolean,
): number {
  if (!anew || u === 0) return 0;
  if (!thorough && Math.abs(room) > FAR_OFF * COVERAGE_FACTOR * u) return 0;
  const shifts = parts.map(({ key, taken: { halfWidth }, slope }) => ({
    key,
    by: (-COVERAGE_FACTOR * slope * standardUncertainty(halfWidth) ** 2) / u,
  }));
  return Math.max(0, room - COVERAGE_FACTOR * u - anew(shifted(rig, shifts)));
}

/** The rig with some numbers moved, each `by` its own way; the pin angles move together. */
function shifted(rig: Rig, shifts: readonly { readonly key: RigKey; readonly by: number }[]): Rig {
  const [motor, stern] = [{ ...rig.motor }, { ...rig.stern }];
  for (const { key, by } of shifts) {
    const record = (key in motorFields ? motor : stern) as Record<string, number | readonly number[]>;
    record[key] = movedBy(record[key]!, by);
  }
  return { ...rig, motor, stern };
}

const GRAVITY: Record<Verdict, number> = { fouls: 0, "cannot tell": 1, fits: 2 };

/** Beyond this many standard uncertainties (three times U) one answer is as sure as another. */
const SURE = 3 * COVERAGE_FACTOR;

/** How sure an answer is, in standard uncertainties; without spread the margin's sign settles it. */
const sureness = ({ margin, u }: { margin: number; u: number }): number =>
  Math.max(-SURE, Math.min(SURE, u > 0 ? margin / u : Math.sign(margin) * SURE));

interface Ranked {
  readonly verdict: Verdict;
  readonly margin?: number;
  readonly u?: number;
  readonly unit?: "mm" | "deg";
}

/**
 * Orders the worse first: fouls over cannot tell over fits; among those that cannot be told a missing
 * number first; then the one least surely met; among those as sure as any, lengths before angles and the
 * smaller margin.
 */
export function byGravity(a: Ranked, b: Ranked): number {
  const gravity = GRAVITY[a.verdict] - GRAVITY[b.verdict];
  if (gravity !== 0) return gravity;
  if (a.margin === undefined || b.margin === undefined) {
    return Number(a.margin !== undefined) - Number(b.margin !== undefined);
  }
  return (
    sureness({ margin: a.margin, u: a.u ?? 0 }) - sureness({ margin: b.margin, u: b.u ?? 0 }) ||
    Number(a.unit === "deg") - Number(b.unit === "deg") ||
    a.margin - b.margin
  );
}
