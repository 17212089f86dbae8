/**
 * Room to leave and lengths to keep, as the trade does it. No open standard was found for any of them,
 * so each may be changed per stern or per question, and a report says when it was.
 */
import { inches } from "#lib/quantity/length.ts";
import { commonPractice, type Standard } from "#lib/standards/standard.ts";

/** The limits people may change, by the key they are changed with. */
export const practiceLimits = {
  plateHighMm: commonPractice(0, "mm", "highest the plate should run, above the datum"),
  plateLowMm: commonPractice(inches(-1), "mm", "lowest the plate should run, above the datum"),
  plateAttitudeDeg: commonPractice(3, "deg", "most the plate may lie out of parallel with the keel line"),
  shaftClassMm: commonPractice(inches(0.5), "mm", "most the seat may differ from the nominal shaft length"),
  clampRoomMm: commonPractice(0, "mm", "room to spare at the clamps"),
  bracketMm: commonPractice(0, "mm", "room each side of the bracket on the flat of the notch"),
  steeringRoomMm: commonPractice(
    inches(1),
    "mm",
    "room between the moving motor and the cheeks of the notch",
  ),
  screwHandlesMm: commonPractice(inches(1), "mm", "room between the clamp handles' sweep and the well sole"),
  soleDropMm: commonPractice(inches(6), "mm", "least drop from the seat to the well sole"),
  soleRoomMm: commonPractice(inches(1), "mm", "room between the moving motor and the well sole"),
  bulkheadRoomMm: commonPractice(
    inches(1),
    "mm",
    "room between the moving motor and the well's front bulkhead",
  ),
  wellDepthMm: commonPractice(inches(22), "mm", "shortest well fore and aft"),
  sideRoomMm: commonPractice(inches(1), "mm", "room between the moving motor and the well's sides"),
  obstacleRoomMm: commonPractice(
    inches(1),
    "mm",
    "room between the moving motor and anything else in its way",
  ),
  skegLiftMm: commonPractice(
    0,
    "mm",
    "least height of the skeg's tip above the datum with the motor full up",
  ),
} as const satisfies Record<string, Standard>;

export type LimitKey = keyof typeof practiceLimits;

/** Nominal shaft lengths of the four classes, saddle to underside of the plate: 15, 20, 25 and 30 in. */
export const nominalShaft = {
  short: commonPractice(inches(15), "mm", "nominal short shaft"),
  long: commonPractice(inches(20), "mm", "nominal long shaft"),
  "extra-long": commonPractice(inches(25), "mm", "nominal extra-long shaft"),
  "ultra-long": commonPractice(inches(30), "mm", "nominal ultra-long shaft"),
} as const satisfies Record<string, Standard>;
