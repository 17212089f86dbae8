/** Every question asked of a pairing, in the order a fitter would ask them. */
import { bracket } from "#lib/checks/bracket.ts";
import type { Check } from "#lib/checks/check.ts";
import { clampDepth } from "#lib/checks/clamp-depth.ts";
import { clampOpening } from "#lib/checks/clamp-opening.ts";
import { obstacleRoom } from "#lib/checks/obstacle-room.ts";
import { plateAttitude } from "#lib/checks/plate-attitude.ts";
import { plateHeight } from "#lib/checks/plate-height.ts";
import { screwHandles } from "#lib/checks/screw-handles.ts";
import { shaftClass } from "#lib/checks/shaft-class.ts";
import { sideRoom } from "#lib/checks/side-room.ts";
import { skegLift } from "#lib/checks/skeg-lift.ts";
import { soleRoom } from "#lib/checks/sole-room.ts";
import { steeringRoom } from "#lib/checks/steering-room.ts";
import { tiltRoom } from "#lib/checks/tilt-room.ts";

export const checks: readonly Check[] = [
  plateHeight,
  plateAttitude,
  shaftClass,
  clampOpening,
  bracket,
  steeringRoom,
  clampDepth,
  screwHandles,
  tiltRoom,
  soleRoom,
  sideRoom,
  obstacleRoom,
  skegLift,
];
