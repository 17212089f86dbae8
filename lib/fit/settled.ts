/**
 * The short way to "it fouls": most motors of a long list stand at the wrong height or do not go over the
 * transom, and one standing question whose room is short by more than its spread settles the pairing,
 * whatever the others say. The questions' own edges are asked, one after the other, only until one fouls.
 */
import { type Check, type Edge, limitOf, type Study } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import { type Options, rigOf } from "#lib/fit/examine.ts";
import { filledIn } from "#lib/fit/like-motors.ts";
import { MOVING } from "#lib/fit/means.ts";
import { assessEdge } from "#lib/fit/verdict.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import { takenOf } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Questions that hang on no pose of the motor: cheap to ask. */
export const STANDING: readonly Check[] = checks.filter(({ id }) => !MOVING.includes(id));

/** Nothing is written here. */
const silent = (): string => "";

/** Whether a standing question fouls, and with it the pairing; the same answer as asking them all. */
export function foulsStanding(recorded: Motor, stern: Stern, options: Options = {}): boolean {
  const estimates = options.estimates?.filter(({ key }) => recorded[key] === undefined) ?? [];
  const motor = filledIn(recorded, estimates);
  const rig = rigOf(motor, stern, options);
  const study: Study = { mounting: mount(rig), limit: (key) => limitOf(rig, key), write: silent };
  const edgesOf = (check: Check) => (check.asked(rig) === true ? check.edges(study) : []);
  const taken = takenOf(motor, stern, options.tape, new Set(estimates.map(({ key }) => key)));
  const fouls = (check: Check, edge: Edge): boolean =>
    // Only what is short of room can foul, and only then is its spread worth working out.
    edge.room < 0 &&
    assessEdge(edge, rig, [...check.needs(rig), ...(check.also ?? [])], taken).verdict === "fouls";
  return STANDING.some((check) => {
    const edges = edgesOf(check);
    return edges.some((edge) => fouls(check, edge)) && !answeredElsewhere(check, edgesOf);
  });
}

/** A rough question counts only while the better one cannot be answered; had that fouled, it would have settled the pairing itself. */
function answeredElsewhere({ overruledBy }: Check, edgesOf: (check: Check) => readonly Edge[]): boolean {
  const better = STANDING.find(({ id }) => id === overruledBy?.check);
  return better !== undefined && edgesOf(better).length > 0;
}
