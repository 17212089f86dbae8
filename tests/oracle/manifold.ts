/** The solids as bodies of manifold-3d, an independent library, in its double precision: a unit cube whose corners are moved. */
import Module, { type Mat4 } from "manifold-3d";
import { type Mechanism, type Part, type Pose, placed } from "#lib/geometry/mechanism.ts";
import { box, type Triple } from "#lib/geometry/solid.ts";

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

/** Distance of a part in one pose from an obstacle's body, 0 when they touch or overlap; `search` is the greatest distance looked for. `made` is the part's own body, where there is one already. */
export function gapAt(
  mechanism: Mechanism,
  part: Part,
  pose: Pose,
  obstacle: Manifold,
  search: number,
  made?: Manifold,
): number {
  const body = made ?? manifold(part.solid.corners);
  const standing = body.transform(motion(mechanism, part, pose));
  const gap = standing.minGap(obstacle, search);
  standing.delete();
  if (made === undefined) body.delete();
  return gap;
}

const UNIT = box([0, 0, 0], [1, 1, 1]);

/** The motion as a matrix by columns, read off where it takes the origin and the three units. */
export function motion(mechanism: Mechanism, part: Part, pose: Pose): Mat4 {
  const unit = { ...part, solid: UNIT };
  const [origin, x, y, , z] = placed(mechanism, unit, pose) as [Triple, Triple, Triple, Triple, Triple];
  const column = (to: Triple): Triple => [to[0] - origin[0], to[1] - origin[1], to[2] - origin[2]];
  return [...column(x), 0, ...column(y), 0, ...column(z), 0, ...origin, 1];
}
