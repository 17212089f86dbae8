/**
 * The other way to a power: the performance test of 33 CFR 183.53(b), which a builder may run with a short
 * boat in place of the computation. Only who may take it and what it can give are worked out here; the
 * driving is on the water.
 */
import { inches, MM_PER_FOOT } from "#lib/quantity/length.ts";
import { horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import type { Citation } from "#lib/standards/citation.ts";

export const performanceTest: Citation = { ...horsepowerCapacity, clause: "183.53(b)" };

/** Who may take the test, and its ceiling. Lengths in mm, driver in pounds, wind in knots. */
export const TEST_TERMS = {
  greatestLengthMm: 13 * MM_PER_FOOT,
  leastTransomHeightMm: inches(19),
  /** A transom this high will do where the motor well's top stands `leastTransomHeightMm` high. */
  leastTransomBeforeWellMm: inches(15),
  mostPersons: 2,
  mostHorsepower: 40,
  heaviestDriverLb: 200,
  windUnderKnots: 10,
} as const;

export interface TestCandidate {
  readonly lengthMm: number;
  readonly remoteWheel: boolean;
  readonly transomHeightMm: number;
  readonly motorwellHeightMm?: number;
  readonly persons: number;
}

/** A nanometre, for what floating point makes of an inch. */
const SLACK_MM = 1e-6;
const reaches = (have: number, least: number): boolean => have >= least - SLACK_MM;

/** Why a boat may not take the test; empty where it may. */
export function barsToTest(boat: TestCandidate): string[] {
  const { transomHeightMm, motorwellHeightMm = 0 } = boat;
  const highEnough =
    reaches(transomHeightMm, TEST_TERMS.leastTransomHeightMm) ||
    (reaches(transomHeightMm, TEST_TERMS.leastTransomBeforeWellMm) &&
      reaches(motorwellHeightMm, TEST_TERMS.leastTransomHeightMm));
  return [
    ...(boat.lengthMm <= TEST_TERMS.greatestLengthMm + SLACK_MM ? [] : ["longer than 13 ft"]),
    ...(boat.remoteWheel ? [] : ["not steered by a remote wheel"]),
    ...(highEnough ? [] : ["transom under 19 in, or under 15 in before a motor well of 19 in"]),
    ...(boat.persons <= TEST_TERMS.mostPersons ? [] : ["rated for more than two persons"]),
  ];
}
