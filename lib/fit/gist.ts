/**
 * The gist of a pairing that cannot be told for want of a number: verdict, what governs, what is missing.
 * It is the same as the whole row's, at a fraction of the work: where a question lacks a number, only a
 * foul could still settle the pairing, so it is enough to be sure that nothing known of the moving motor
 * comes near enough to foul. Where that is not sure at once, there is no gist, and the row is worked whole.
 */
import { type Check, limitOf, type NeededKey, type Study } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import { isKnown, type Options, rigOf } from "#lib/fit/examine.ts";
import { filledIn } from "#lib/fit/like-motors.ts";
import { MOVING } from "#lib/fit/means.ts";
import { leastClearance } from "#lib/geometry/clearance.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { type Mounting, mount, type Rig } from "#lib/rig/mounting.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** What governs a pairing that wants a number, and every number it wants. */
export interface Gist {
  readonly governs: Check;
  readonly missing: readonly NeededKey[];
  /** Those the governing question wants. */
  readonly first: readonly NeededKey[];
}

/** Rooms the moving motor has to keep. */
const ROOMS = ["steeringRoomMm", "soleRoomMm", "bulkheadRoomMm", "sideRoomMm", "obstacleRoomMm"] as const;

/** The gist of a pairing in which no standing part fouls; undefined where nothing is missing, or a foul is not out of the question at once. */
export function gistOf(recorded: Motor, stern: Stern, options: Options = {}): Gist | undefined {
  const estimates = options.estimates?.filter(({ key }) => recorded[key] === undefined) ?? [];
  const rig = rigOf(filledIn(recorded, estimates), stern, options);
  const open = checks.flatMap((check) => {
    if (check.asked(rig) !== true) return [];
    const missing = check.needs(rig).filter((key) => !isKnown(rig, key));
    return missing.length > 0 ? [{ check, missing }] : [];
  });
  const wanting = new Set(open.map(({ check }) => check.id));
  // A rough question never governs beside the better one, once that is answered.
  const governing = open.find(({ check: { overruledBy } }) => !overruledBy || wanting.has(overruledBy.check));
  if (!governing || !surelyClear(mount(rig))) return undefined;
  return {
    governs: governing.check,
    missing: [...new Set(open.flatMap(({ missing }) => missing))],
    first: governing.missing,
  };
}

/** Whether no question about the moving motor can foul: every known part keeps the widest room there is to keep. */
function surelyClear(mounting: Mounting): boolean {
  const { rig, mechanism, parts, obstacles } = mounting;
  const room = Math.max(...ROOMS.map((key) => limitOf(rig, key).value));
  const plain = MOVING.flatMap((id) => checks.find((check) => check.id === id)!)
    .filter((check) => check.asked(rig) === true)
    .flatMap((check) => check.edges(withoutClearances(mounting)));
  if (plain.some((edge) => edge.room < 0)) return false;
  if (!mechanism || parts.length === 0) return true;
  return obstacles.every(
    (obstacle) =>
      leastClearance(mechanism, parts, obstacle, { within: 1, stopAbove: room, stopBelow: room }).lowerMm >=
      room,
  );
}

/** A study in which no clearance is known, so that a question gives its other edges only. */
function withoutClearances(mounting: Mounting): Study {
  const rig: Rig = mounting.rig;
  const unknown = () => undefined;
  return {
    mounting: Object.create(mounting, {
      clearance: { value: unknown },
      insideClearance: { value: unknown },
      straightClearance: { value: unknown },
    }) as Mounting,
    limit: (key) => limitOf(rig, key),
    write: () => "",
  };
}
