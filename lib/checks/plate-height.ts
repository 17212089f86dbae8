/**
 * Plate height. Too high: the propeller draws air, races and lets go in turns. Too low: the leg drags, the
 * stern squats, spray climbs the transom. Margin: from the plate's height over the datum, in the running
 * hole, to the nearer edge of the hull's window. Needs the leg's length and axes, the pin angles, the
 * rake and the seat. The window is common practice (level with the datum to an inch below it) unless the
 * stern's owner knows better. Leaves out how the hull lifts and trims under way.
 */
import { type Check, type Edge, known, type Study } from "#lib/checks/check.ts";
import type { Rig } from "#lib/rig/mounting.ts";
import { legPointAboveSeat, runningHole, seatNow } from "#lib/rig/plate.ts";

const MOTOR = [
  "shaftLengthMm",
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
] as const;

/** The plate's height above the datum with the leg in the hole numbered `hole`; undefined where a number is missing. */
export function plateAboveDatum({ motor, stern }: Rig, hole: number): number | undefined {
  const leg = known(motor, ...MOTOR);
  const pin = motor.pinAnglesDeg?.[hole];
  const seat = seatNow(stern);
  if (!leg || pin === undefined || seat === undefined || stern.rakeDeg === undefined) return undefined;
  return seat + legPointAboveSeat(leg, stern.rakeDeg, pin);
}

/** The number of the running hole, counted from the lowest; undefined where angles or rake are missing. */
export function runningHoleNumber({ motor, stern, handling }: Rig): number | undefined {
  if (!motor.pinAnglesDeg || stern.rakeDeg === undefined) return undefined;
  if (handling?.hole !== undefined) return handling.hole;
  return motor.pinAnglesDeg.indexOf(runningHole(motor.pinAnglesDeg, stern.rakeDeg));
}

export const plateHeight: Check = {
  id: "plate-height",
  question: "Does the anti-ventilation plate run at the height this hull wants?",
  why: "Too high and the propeller draws air in every turn and wave; too low and the leg drags and throws spray.",
  leavesOut: "How far the hull lifts and trims under way.",
  unit: "mm",
  limits: ["plateHighMm", "plateLowMm"],
  asked: () => true,
  needs: ({ stern }) => [
    ...MOTOR,
    "pinAnglesDeg",
    "rakeDeg",
    stern.transomTopMm === undefined || stern.seatMm !== undefined ? "seatMm" : "transomTopMm",
  ],
  edges: ({ mounting: { rig }, limit, write }: Study): Edge[] => {
    const hole = runningHoleNumber(rig);
    const height = hole === undefined ? undefined : plateAboveDatum(rig, hole);
    if (hole === undefined || height === undefined) return [];
    const [high, low] = [limit("plateHighMm"), limit("plateLowMm")];
    const says = `the plate stands ${overDatum(height, write)}; between ${overDatum(low.value, write)} and ${overDatum(high.value, write)} is wanted`;
    return [
      {
        limit: high,
        room: high.value - height,
        held: (other: Rig) => high.value - plateAboveDatum(other, hole)!,
      },
      {
        limit: low,
        room: height - low.value,
        held: (other: Rig) => plateAboveDatum(other, hole)! - low.value,
      },
    ].map((edge) => ({ ...edge, have: height, need: edge.limit.value, says }));
  },
};

/** "19 mm below the datum", "level with the datum". */
function overDatum(mm: number, write: Study["write"]): string {
  if (Math.abs(mm) < 0.05) return "level with the datum";
  return `${write(Math.abs(mm))} ${mm > 0 ? "above" : "below"} the datum`;
}
