import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** An invented motor with two numbers. */
export const aMotor = (id: string, more: Partial<Motor> = {}): Motor => ({
  id,
  label: `Grey motor ${id}`,
  shaftClass: "short",
  steering: "tiller",
  strokes: 4,
  shaftLengthMm: { value: 430, plusMinus: 2, how: "measured" },
  powerKw: { value: 4.5, how: "declared" },
  ...more,
});

/** An invented stern with one number. */
export const aStern = (id: string, more: Partial<Stern> = {}): Stern => ({
  id,
  label: `Dinghy ${id}`,
  hullForm: "vee",
  rakeDeg: { value: 12, how: "measured" },
  ...more,
});
