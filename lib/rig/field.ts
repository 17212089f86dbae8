import type { Unit } from "#lib/quantity/measured.ts";

/**
 * What a set of numbers buys, in the order people should be asked: will it hang and run right, does it
 * steer in the notch, does it tilt in the well, and the rest.
 */
export type Group = "hang" | "notch" | "well" | "rest";

/** One number of the vocabulary: what it is called in a boatyard and how it is taken. Feeds the form, the measuring guide and the files' validation. */
export interface Field {
  readonly unit: Unit;
  /** Least and greatest value taken as possible on a boat of 3 to 7 m; outside it the entry is refused as a slip of the pen. */
  readonly min: number;
  readonly max: number;
  readonly group: Group;
  readonly name: string;
  /** From where to where, in one sentence. */
  readonly take: string;
  /** The mistake people usually make, where there is one. */
  readonly mistake?: string;
}
