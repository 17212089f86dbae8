/** The solids as bodies of manifold-3d, an independent library, in its double precision: a unit cube whose corners are moved. */
import Module from "manifold-3d";
import { type Mechanism, type Part, type Pose, placed } from "#lib/geometry/mechanism.ts";

const library = await Module();
library.setup();

export type Manifold = InstanceType<typeof library.Manifold>;

/** The body with these corners (24 coordinates, in the order of `Solid`). Free it with `delete`. */
export function manifold(corners: Float64Array): Manifold {
  const cube = library.Manifold.cube([1, 1, 1]);
  const warped = cube.warp((point) => {
    const at = 3 * (Math.round(point[0]!) + 2 * Math.round(point[1]!) + 4 * Math.round(point[2]!));
    for (let k = 0; k < 3; k++) point[k] = corners[at + k]!;
  });
  cube.delete();
  return warped;
}

/** Distance of a part in one pose from an obstacle's body, 0 when they touch or overlap; `search` is the greatest distance looked for. */
export function gapAt(
  mechanism: Mechanism,
  part: Part,
  pose: Pose,
  obstacle: Manifold,
  search: number,
): number {
  const standing = manifold(Float64Array.from(placed(mechanism, part, pose).flat()));
  const gap = standing.minGap(obstacle, search);
  standing.delete();
  return gap;
}
