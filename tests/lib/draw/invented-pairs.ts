/** Invented pairings for the tests of drawings: a record from bare values, the usual pair, and what is drawn from it. */

import { clearancesAtPose } from "#lib/draw/pose-clearance.ts";
import { type DrawnPairing, type ReportDrawings, reportDrawings } from "#lib/draw/report-drawings.ts";
import { TYPICAL_MOTOR, TYPICAL_STERN } from "#lib/draw/typical.ts";
import type { Pose } from "#lib/draw/view.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Report } from "#lib/fit/report.ts";
import type { Motor, MotorValues } from "#lib/rig/motor.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import type { Stern, SternValues } from "#lib/rig/stern.ts";
import { sternFields } from "#lib/rig/stern.ts";

function recorded(id: string, values: object, fields: object): unknown {
  const entries = Object.entries(values).filter(([, value]) => value !== undefined);
  const taken = entries.map(([key, value]) => [key, key in fields ? { value, how: "measured" } : value]);
  return { id, label: `Invented ${id}`, ...Object.fromEntries(taken) };
}

/** A motor as recorded, every number measured. */
export const motorOf = (values: MotorValues): Motor => recorded("motor", values, motorFields) as Motor;
/** A stern as recorded, every number measured. */
export const sternOf = (values: SternValues): Stern => recorded("stern", values, sternFields) as Stern;

export interface Drawn {
  readonly pairing: DrawnPairing;
  readonly report: Report;
  readonly drawings: ReportDrawings;
}

/** Assesses and draws a pairing. */
export function drawn(motor: MotorValues, stern: SternValues, lengths: "mm" | "in" = "mm"): Drawn {
  const report = assess(motorOf(motor), sternOf(stern), {}, { lengths });
  const labels = { motorLabel: "Invented motor", sternLabel: "Invented stern" };
  const pairing: DrawnPairing = { mounting: mount({ motor, stern }), report, ...labels, lengths };
  return { pairing, report, drawings: reportDrawings(pairing) };
}

/**
 * Draws a pairing with the clearances of one pose given by hand in place of the tightest: so the drawing
 * does not hang on which of several equally tight poses a search comes upon first.
 */
export function drawnInPose(
  motor: MotorValues,
  stern: SternValues,
  lengths: "mm" | "in",
  pose: Pose,
): ReportDrawings {
  const { pairing } = drawn(motor, stern, lengths);
  const clearances = clearancesAtPose(pairing.mounting, pose).map((one) => ({
    ...one,
    ...pose,
    straightMm: one.mm,
  }));
  return reportDrawings({ ...pairing, report: { ...pairing.report, clearances } });
}

const ROOMY: SternValues = {
  ...TYPICAL_STERN,
  rakeDeg: 12,
  soleAngleDeg: 102,
  notchWidthMm: 760,
  wellDepthMm: 640,
  wellWidthAftMm: 1000,
  wellWidthFrontMm: 920,
  soleDropMm: 230,
  waterlineMm: 170,
};
const { notchWidthMm: _n, seatMm: _s, notchCornerRadiusMm: _r, ...UNCUT } = TYPICAL_STERN;
const { soleDropMm: _d, wellDepthMm: _w, ...REST } = TYPICAL_STERN;
const { soleAngleDeg: _a, wellFrontHeightMm: _f, wellWidthAftMm: _x, wellWidthFrontMm: _y, ...MORE } = REST;
const { sideFlareDeg: _z, wellSideHeightMm: _v, deckThicknessMm: _t, ...NO_WELL } = MORE;
const { pinAnglesDeg: _p, ...NO_PINS } = TYPICAL_MOTOR;
const { propDiameterMm: _e, tillerThicknessMm: _g, ...GAPS } = TYPICAL_MOTOR;

/** The pairings of the golden drawings, each with what it shows. */
export const INVENTED: Readonly<Record<string, readonly [MotorValues, SternValues, "mm" | "in"]>> = {
  "fouls-in-a-small-well": [TYPICAL_MOTOR, TYPICAL_STERN, "mm"],
  "clear-in-a-roomy-well": [{ ...TYPICAL_MOTOR, tillerFolds: true }, ROOMY, "mm"],
  "nothing-cut-in-inches": [TYPICAL_MOTOR, UNCUT, "in"],
  "no-well-numbers-missing": [GAPS, { ...NO_WELL, transomWidthMm: undefined, keelDepthMm: undefined }, "mm"],
  "stern-alone": [NO_PINS, ROOMY, "mm"],
};
