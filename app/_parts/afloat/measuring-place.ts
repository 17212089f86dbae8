import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

/** Where the guide tells how a number is taken; a plain fact has no place of its own there. */
export const measuringPlace = (key: string): string =>
  key in motorFields || key in sternFields ? `/measuring#${key}` : "/measuring";
