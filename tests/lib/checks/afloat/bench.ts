/**
 * The bench pairing afloat, every number exact unless a test gives it a spread: a box-like flat skiff
 * 4 m by 1.5 m on the water, plumb transom, seat 508 over the datum, no keel, no well; a motor of 50 kg
 * whose mass hangs 100 - 30 = 70 mm aft of the transom.
 */

import type { ReportAfloat } from "#lib/fit/afloat-report.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Aboard } from "#lib/rig/afloat/aboard.ts";
import { bench, type Changes } from "../bench.ts";

const NO_WELL = {
  soleDropMm: undefined,
  soleAngleDeg: undefined,
  wellDepthMm: undefined,
  wellFrontHeightMm: undefined,
  wellWidthAftMm: undefined,
  wellWidthFrontMm: undefined,
  sideFlareDeg: undefined,
};
export const AFLOAT: Changes = {
  ...NO_WELL,
  powerKw: 7,
  massKg: 50,
  propDiameterMm: 200,
  plateToPropCentreMm: 120,
  hullForm: "flat",
  hardChine: true,
  lengthOverallMm: 4500,
  transomWidthMm: 1400,
  beamMm: 1500,
  keelDepthMm: 0,
  waterlineMm: 150,
  waterlineLengthMm: 4000,
  waterlineBeamMm: 1500,
};
/** Nobody and nothing aboard but the motor. */
export const EMPTY: Aboard = { persons: 0, personKg: 75, fuelKg: 0, fuelForwardMm: 600 };

/** What one question afloat answers on the bench. */
export function afloat(id: string, changes: Changes = {}, aboard: Aboard = EMPTY): ReportAfloat {
  const { motor, stern } = bench({ ...AFLOAT, ...changes });
  return assess(motor, stern, {}, { aboard }).afloat.find((one) => one.id === id)!;
}

/** A figure of an answer by its label; NaN where it is not shown. */
export const figureOf = (found: ReportAfloat, label: string): number =>
  found.figures.find((one) => one.label === label)?.value ?? Number.NaN;

/** What an answer says by its notes' ids. */
export const noteIds = (found: ReportAfloat): string[] => found.notes.map(({ id }) => id);
