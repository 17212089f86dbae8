/**
 * Skeg clear of the datum when tilted full up. A skeg that stays below the keel line strikes the beach or
 * drags at the mooring. Margin: from the skeg's tip, straight ahead and full up, to the datum. Needs the
 * leg's length and axes, the plate's height over the skeg, the tilt arc, the rake and the seat. The limit
 * is common practice, no source. Leaves out the propeller's blades and the boat's trim afloat.
 */
import { type Check, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { legPointAboveSeat, seatNow } from "#lib/rig/plate.ts";

const LEG = [
  "shaftLengthMm",
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
  "tiltArcDeg",
  "plateToSkegMm",
] as const;

function lift({ motor, stern }: Rig): number | undefined {
  const leg = known(motor, ...LEG);
  const seat = seatNow(stern);
  if (!leg || seat === undefined || stern.rakeDeg === undefined) return undefined;
  const fullUp = leg.pinAnglesDeg[0]! + leg.tiltArcDeg;
  return seat + legPointAboveSeat(leg, stern.rakeDeg, fullUp, leg.plateToSkegMm);
}

export const skegLift: Check = {
  id: "skeg-lift",
  question: "Does the skeg come up above the keel line when the motor is tilted full up?",
  why: "A skeg below the keel is the first thing to touch on a beach.",
  leavesOut: "The propeller's blades, and how the boat trims afloat.",
  unit: "mm",
  limits: ["skegLiftMm"],
  asked: () => true,
  needs: ({ stern }) => [
    ...LEG,
    "rakeDeg",
    stern.transomTopMm === undefined || stern.seatMm !== undefined ? "seatMm" : "transomTopMm",
  ],
  edges: ({ mounting: { rig }, limit, write }: Study) => {
    const height = lift(rig);
    if (height === undefined) return [];
    const least = limit("skegLiftMm");
    const stands = `${write(Math.abs(height))} ${height < 0 ? "below" : "above"} the datum`;
    return [
      {
        room: height - least.value,
        held: (other: Rig) => lift(other)! - least.value,
        have: height,
        need: least.value,
        limit: least,
        says: `tilted full up, the skeg's tip stands ${stands}`,
      },
    ];
  },
};
