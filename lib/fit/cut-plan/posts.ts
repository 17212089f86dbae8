/**
 * Stern posts and frames inside the well, as boxes of the bracket frame: what the sole is notched round,
 * and where cleats stop and go on.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { boxesAt } from "#lib/fit/cut-plan/nearby.ts";
import { type Blocked, blockedBy, boxEnds } from "#lib/fit/cut-plan/notching.ts";
import { beyond, type Vector } from "#lib/fit/cut-plan/planes.ts";
import type { WellPlanes, WellShape } from "#lib/fit/cut-plan/well-shape.ts";
import type { Stern } from "#lib/rig/stern.ts";
import { joinery } from "#lib/standards/joinery.ts";

/** A post with the room left round it, grown into what it stands against. */
export interface Post {
  readonly label: string;
  readonly low: Vector;
  readonly high: Vector;
  readonly side: "port" | "starboard" | "middle";
}

/** Far into the transom or the side, mm: what a post stands against is never left as a sliver. */
const INTO_MM = 500;

/** The posts that pass through the sole, with their room. */
export function postsOf(recorded: Stern, choices: Settled, shape: WellShape, planes: WellPlanes): Post[] {
  const room = joinery.postRoomMm.value;
  return boxesAt(recorded, shape.seatMm, choices.posts).flatMap((box): Post[] => {
    const [low, high] = boxEnds(box);
    const middle: Vector = [(low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2];
    const onSole = -shape.soleDropMm;
    if (low[2] > onSole + 1 || high[2] < onSole - choices.soleThicknessMm) return [];
    const outer: Vector = [middle[0], middle[1] > 0 ? high[1] : low[1], onSole];
    const plane = middle[1] > 0 ? planes.port : planes.starboard;
    const against = beyond(plane, outer) > -choices.cleatThicknessMm;
    const side = !against ? "middle" : middle[1] > 0 ? "port" : "starboard";
    const onTransom = low[0] < shape.transomThicknessMm + choices.cleatThicknessMm;
    return [
      {
        label: box.label,
        side,
        low: [
          onTransom ? -INTO_MM : low[0] - room,
          side === "starboard" ? low[1] - INTO_MM : low[1] - room,
          low[2],
        ],
        high: [high[0] + room, side === "port" ? high[1] + INTO_MM : high[1] + room, high[2]],
      },
    ];
  });
}

/** The posts as something to notch a panel round. */
export const roundPosts = (posts: readonly Post[]): Blocked[] =>
  posts.map(({ label, low, high }) => blockedBy(label, low, high));

/** The free stretches of an axis between posts: from the end of one to the start of the next. */
export function freeStretches(blocked: readonly (readonly [number, number])[]): [number, number][] {
  const sorted = blocked.toSorted((a, b) => a[0] - b[0]);
  const stretches: [number, number][] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const [start, end] of sorted) {
    if (start > from) stretches.push([from, start]);
    from = Math.max(from, end);
  }
  stretches.push([from, Number.POSITIVE_INFINITY]);
  return stretches;
}
