/**
 * Least clearance by looking everywhere: a grid over all poses of all parts, then a pattern search from
 * the best places. It can only show that a lower pose exists, never that none does.
 */
import { type Mechanism, type Obstacle, type Part, type Pose, placed } from "#lib/geometry/mechanism.ts";
import { type Body, body, signedDistance } from "#tests/oracle/distance.ts";

export interface Least {
  readonly mm: number;
  readonly part: Part;
  readonly pose: Pose;
}

/** Signed distance in one pose by the enumeration of distance.ts. */
export function distanceAt(mechanism: Mechanism, part: Part, obstacle: Body, pose: Pose): number {
  return signedDistance(body(Float64Array.from(placed(mechanism, part, pose).flat())), obstacle);
}

/** Grid of at most `stepDeg` over the poses of every part, refined from the `starts` best places apart from each other to a few thousandths of a degree. */
export function leastByLooking(
  mechanism: Mechanism,
  parts: readonly Part[],
  obstacle: Obstacle,
  stepDeg = 5,
  starts = 2,
): Least {
  const still = body(obstacle.solid.corners);
  const best: Least[] = [];
  for (const part of parts) {
    for (const pose of grid(part, stepDeg)) {
      const corners = Float64Array.from(placed(mechanism, part, pose).flat());
      const bar = best.length < starts ? Number.POSITIVE_INFINITY : best[starts - 1]!.mm;
      if (boxDistance(corners, still.corners) >= bar) continue;
      const mm = signedDistance(body(corners), still);
      if (mm >= bar) continue;
      keepApart(best, { mm, part, pose }, 1.5 * stepDeg);
      best.length = Math.min(best.length, starts);
    }
  }
  return best
    .map((start) => refine(mechanism, still, start, stepDeg / 2))
    .reduce((a, b) => (b.mm < a.mm ? b : a));
}

/** Adds a place to the list, lowest first; of places of one part that lie close to each other only the lowest stays. */
function keepApart(best: Least[], place: Least, closeDeg: number): void {
  const isClose = ({ part, pose }: Least): boolean =>
    part === place.part &&
    Math.abs(pose.faceAngleDeg - place.pose.faceAngleDeg) < closeDeg &&
    Math.abs(pose.steeringDeg - place.pose.steeringDeg) < closeDeg;
  if (best.some((other) => other.mm <= place.mm && isClose(other))) return;
  const rest = best.filter((other) => !isClose(other));
  best.splice(0, best.length, ...rest, place);
  best.sort((a, b) => a.mm - b.mm);
}

function grid(part: Part, stepDeg: number): Pose[] {
  const along = (from: number, to: number): number[] => {
    const count = Math.ceil((to - from) / stepDeg);
    return Array.from({ length: count + 1 }, (_, k) =>
      count === 0 ? from : from + ((to - from) * k) / count,
    );
  };
  const steerings = part.moves === "steered" ? along(part.steeringAngles.from, part.steeringAngles.to) : [0];
  return along(part.faceAngles.from, part.faceAngles.to).flatMap((faceAngleDeg) =>
    steerings.map((steeringDeg) => ({ faceAngleDeg, steeringDeg })),
  );
}

/** Directions tried from a place: eight ways round in the plane of the two angles. */
const WAYS = [0, 1, 2, 3, 4, 5, 6, 7].map(
  (k) => [Math.cos((k * Math.PI) / 4), Math.sin((k * Math.PI) / 4)] as const,
);

/** Walks to the lowest neighbour, halving the step where there is none. */
function refine(mechanism: Mechanism, still: Body, start: Least, firstStep: number): Least {
  const { part } = start;
  const { faceAngles, steeringAngles } = part;
  let best = start;
  for (let step = firstStep; step > 0.004; ) {
    let lowest = best;
    for (const [p, s] of WAYS) {
      const pose = {
        faceAngleDeg: cut(best.pose.faceAngleDeg + step * p, faceAngles.from, faceAngles.to),
        steeringDeg: cut(best.pose.steeringDeg + step * s, steeringAngles.from, steeringAngles.to),
      };
      const mm = distanceAt(mechanism, part, still, pose);
      if (mm < lowest.mm) lowest = { mm, part, pose };
    }
    if (lowest === best) step /= 2;
    best = lowest;
  }
  return best;
}

const cut = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Distance of the two upright boxes round the solids: never more than that of the solids. */
function boxDistance(a: Float64Array, b: Float64Array): number {
  let square = 0;
  for (let axis = 0; axis < 3; axis++) {
    let [aLow, aHigh, bLow, bHigh] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let k = axis; k < 24; k += 3) {
      aLow = Math.min(aLow, a[k]!);
      aHigh = Math.max(aHigh, a[k]!);
      bLow = Math.min(bLow, b[k]!);
      bHigh = Math.max(bHigh, b[k]!);
    }
    square += Math.max(0, aLow - bHigh, bLow - aHigh) ** 2;
  }
  // Boxes that overlap say nothing about how deep the solids do.
  return square > 0 ? Math.sqrt(square) : Number.NEGATIVE_INFINITY;
}
