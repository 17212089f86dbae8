/** Every question asked of a boat afloat with its motor, in the order the numbers on a capacity label go. They decide nothing about hanging, steering and tilting. */
import type { AfloatCheck } from "#lib/checks/afloat-check.ts";
import { freeboard } from "#lib/checks/freeboard.ts";
import { motorMass } from "#lib/checks/motor-mass.ts";
import { power } from "#lib/checks/power.ts";
import { propeller } from "#lib/checks/propeller.ts";
import { transomThickness } from "#lib/checks/transom-thickness.ts";
import { wellDrainage } from "#lib/checks/well-drainage.ts";

export const afloatChecks: readonly AfloatCheck[] = [
  power,
  motorMass,
  transomThickness,
  freeboard,
  propeller,
  wellDrainage,
];
