/**
 * The same question, the least clearance of each obstacle over all poses, answered by looking at a grid of
 * poses with general tools: what the engine is measured against. All get the least distance so far as the
 * limit of their search. None of them certifies anything between the poses of its grid.
 */
import * as THREE from "three";
import { MeshBVH } from "three-mesh-bvh";
import type { Part, Pose } from "#lib/geometry/mechanism.ts";
import { fixed, mover, turn } from "#lib/geometry/motion.ts";
import { separate, separation } from "#lib/geometry/separation.ts";
import { gapAt, manifold, motion } from "#tests/oracle/manifold.ts";
import type { Rig } from "#tests/oracle/rigs.ts";

/** All poses of a part on a grid of at most `stepDeg`, ends included. */
function poses(part: Part, stepDeg: number): Pose[] {
  const along = (from: number, to: number): number[] => {
    const count = Math.ceil((to - from) / stepDeg);
    return Array.from({ length: count + 1 }, (_, k) => from + ((to - from) * k) / Math.max(1, count));
  };
  const steerings = part.moves === "steered" ? along(part.steeringAngles.from, part.steeringAngles.to) : [0];
  return along(part.faceAngles.from, part.faceAngles.to).flatMap((faceAngleDeg) =>
    steerings.map((steeringDeg) => ({ faceAngleDeg, steeringDeg })),
  );
}

const standing = new Float64Array(24);

/** The engine's own distance in every pose; skipped where the gap along the last direction is already greater than the least so far. */
export function ownOnGrid({ mechanism, parts, obstacles }: Rig, stepDeg: number): number[] {
  return obstacles.map((obstacle) => {
    const still = fixed(mechanism, obstacle);
    let least = Number.POSITIVE_INFINITY;
    for (const part of parts) {
      const moving = mover(mechanism, part);
      separation.set([0, 1, 0]);
      for (const { faceAngleDeg, steeringDeg } of poses(part, stepDeg)) {
        const p = (faceAngleDeg * Math.PI) / 180;
        const s = (steeringDeg * Math.PI) / 180;
        turn(moving.corners, moving.aft, Math.cos(p), Math.sin(p), Math.cos(s), Math.sin(s), standing);
        if (gap(standing, still.corners) >= least) continue;
        separate(moving, still, p, s, separation[0]!, separation[1]!, separation[2]!);
        if (separation[3]! < least) least = separation[3]!;
      }
    }
    return least;
  });
}

/** Gap along the direction of the last separation. */
function gap(part: Float64Array, obstacle: Float64Array): number {
  const x = separation[0]!;
  const y = separation[1]!;
  const z = separation[2]!;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < 24; k += 3) {
    low = Math.min(low, x * part[k]! + y * part[k + 1]! + z * part[k + 2]!);
    high = Math.max(high, x * obstacle[k]! + y * obstacle[k + 1]! + z * obstacle[k + 2]!);
  }
  return low - high;
}

/** manifold-3d: body of the part in every pose, `minGap`. Overlap counts as 0. */
export function manifoldOnGrid({ mechanism, parts, obstacles }: Rig, stepDeg: number): number[] {
  return obstacles.map((obstacle) => {
    const still = manifold(obstacle.solid.corners);
    let least = 30_000;
    for (const part of parts) {
      const body = manifold(part.solid.corners);
      for (const pose of poses(part, stepDeg)) {
        if (least > 0) least = Math.min(least, gapAt(mechanism, part, pose, still, least, body));
      }
      body.delete();
    }
    still.delete();
    return least;
  });
}

const TRIANGLES = [
  0, 2, 6, 0, 6, 4, 1, 5, 7, 1, 7, 3, 0, 4, 5, 0, 5, 1, 2, 3, 7, 2, 7, 6, 0, 1, 3, 0, 3, 2, 4, 6, 7, 4, 7, 5,
];

function geometry(corners: Float64Array): THREE.BufferGeometry {
  const made = new THREE.BufferGeometry();
  made.setAttribute("position", new THREE.BufferAttribute(Float32Array.from(corners), 3));
  made.setIndex([...TRIANGLES]);
  made.boundsTree = new MeshBVH(made as never);
  return made;
}

/** three-mesh-bvh: `closestPointToGeometry` with the part's matrix in every pose. Overlap counts as 0. */
export function bvhOnGrid({ mechanism, parts, obstacles }: Rig, stepDeg: number): number[] {
  return obstacles.map((obstacle) => {
    const tree = geometry(obstacle.solid.corners).boundsTree as MeshBVH;
    let least = Number.POSITIVE_INFINITY;
    for (const part of parts) {
      const moving = geometry(part.solid.corners);
      for (const pose of poses(part, stepDeg)) {
        const matrix = new THREE.Matrix4();
        matrix.elements = [...motion(mechanism, part, pose)];
        const found = tree.closestPointToGeometry(
          moving as never,
          matrix as never,
          {} as never,
          {} as never,
          0,
          least,
        );
        if (found && found.distance < least) least = found.distance;
      }
    }
    return least;
  });
}
