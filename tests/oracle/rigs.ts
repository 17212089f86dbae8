/**
 * Invented motors and sterns for trials of the engine: seven parts and six obstacles each, from a numbered
 * start, so that every run sees the same ones. All ranges of dimension are invented (from memory of the
 * trade's sizes, no source). Obstacles without end are cut off 20 m away.
 */

import type { Mechanism, Obstacle, Part, Range } from "#lib/geometry/mechanism.ts";
import { box, hexahedron, type Triple } from "#lib/geometry/solid.ts";

export interface Rig {
  readonly mechanism: Mechanism;
  readonly parts: readonly Part[];
  readonly obstacles: readonly Obstacle[];
}

const FAR = 20_000;

/** Numbers between 0 and 1 from a 32-bit start (a counter put through two rounds of mixing). */
export function numbers(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return ((mixed ^ (mixed >>> 16)) >>> 0) / 2 ** 32;
  };
}

/** Rig number `start`. */
export function rig(start: number): Rig {
  const random = numbers(start * 7919 + 1);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const mechanism = {
    tiltAxisForwardMm: between(-20, 60),
    tiltAxisAboveMm: between(10, 110),
    steerAxisAftMm: between(40, 120),
  };
  return { mechanism, parts: motorParts(between), obstacles: sternObstacles(between) };
}

type Between = (low: number, high: number) => number;

/** Heights along the leg from the tilt axis; forward and sideways from the steering axis (the clamp: from the tilt axis). */
function motorParts(between: Between): Part[] {
  const lowest = between(-2, 16);
  const faceAngles = { from: lowest, to: lowest + between(55, 72) };
  const steeringAngles = { from: -between(32, 45), to: between(32, 45) };
  const cowlBottom = between(20, 110);
  const plate = -between(330, 600);
  const half = between(110, 190);
  const tillerAt = cowlBottom + between(20, 90);
  const tillerOff = between(-70, 70);
  const steered = (id: string, solid: Part["solid"], angles: Range = faceAngles): Part => ({
    id,
    moves: "steered",
    solid,
    faceAngles: angles,
    steeringAngles,
  });
  const front = between(110, 230);
  const aft = between(200, 380);
  const top = cowlBottom + between(230, 420);
  const taper = between(0.7, 0.95);
  return [
    steered("cowl", frustum([-aft, front], half, [cowlBottom, top], taper)),
    steered(
      "midsection",
      box([-between(90, 150), -between(40, 65), plate / 2], [between(30, 75), between(40, 65), cowlBottom]),
    ),
    steered("leg", box([-between(90, 160), -35, plate], [between(20, 50), 35, plate / 2])),
    steered(
      "plate",
      box([-between(180, 300), -between(70, 130), plate - 8], [between(20, 60), between(70, 130), plate]),
    ),
    steered(
      "gearcase",
      box([-between(150, 230), -50, plate - between(110, 180)], [between(60, 120), 50, plate - 8]),
    ),
    steered(
      "tiller",
      box([front * 0.8, tillerOff - 20, tillerAt], [between(480, 800), tillerOff + 20, tillerAt + 40]),
      { from: lowest, to: lowest + 20 },
    ),
    {
      id: "clamp",
      moves: "tilting",
      solid: box(
        [-between(90, 140), -between(60, 110), -between(120, 260)],
        [between(10, 40), between(60, 110), between(10, 60)],
      ),
      faceAngles,
      steeringAngles,
    },
  ];
}

/** A box that narrows towards its top by the factor `taper` about the middle of its bottom. */
function frustum([aft, front]: [number, number], half: number, [low, high]: [number, number], taper: number) {
  const middle = (aft + front) / 2;
  const corner = (x: number, y: number, z: number): [number, number, number] => {
    const share = z === high ? taper : 1;
    return [middle + (x - middle) * share, y * share, z];
  };
  return hexahedron(
    [0, 1, 2, 3, 4, 5, 6, 7].map((i) =>
      corner(i & 1 ? front : aft, i & 2 ? half : -half, i & 4 ? high : low),
    ),
  );
}

function sternObstacles(between: Between): Obstacle[] {
  const thickness = 38;
  const cheek = between(250, 480);
  const cheekTop = between(10, 170);
  const soleDrop = between(190, 420);
  const slope = (between(0, 15) * Math.PI) / 180;
  const depth = between(420, 800);
  const front = between(120, 350);
  const halfAft = between(360, 560);
  const halfFront = halfAft * between(0.75, 1);
  const flare = Math.tan((between(0, 25) * Math.PI) / 180);
  // Along the sole and square to it, from where it meets the inside of the transom.
  const sole = (along: number, up: number): [number, number] => [
    thickness + along * Math.cos(slope) + up * Math.sin(slope),
    -soleDrop - along * Math.sin(slope) + up * Math.cos(slope),
  ];
  // Half the well's width falls from aft to front and grows with height.
  const side = (along: number, up: number): number =>
    halfAft + ((halfFront - halfAft) * along) / depth + flare * up;
  const sideOf = (sign: 1 | -1) =>
    slab(
      [
        [0, -500],
        [FAR, -500],
        [0, FAR],
        [FAR, FAR],
      ],
      sole,
      (along, up) => [sign * side(along, up), sign * FAR],
    );
  return [
    { id: "cheek-port", solid: box([0, cheek, -FAR], [thickness, FAR, cheekTop]) },
    { id: "cheek-starboard", solid: box([0, -cheek, -FAR], [thickness, -FAR, cheekTop]) },
    {
      id: "sole",
      solid: hexahedron([
        [thickness, -FAR, -FAR],
        [FAR, -FAR, -FAR],
        [thickness, FAR, -FAR],
        [FAR, FAR, -FAR],
        [thickness, -FAR, -soleDrop],
        [FAR, -FAR, -soleDrop - (FAR - thickness) * Math.tan(slope)],
        [thickness, FAR, -soleDrop],
        [FAR, FAR, -soleDrop - (FAR - thickness) * Math.tan(slope)],
      ] as Triple[]),
    },
    {
      id: "bulkhead",
      solid: slab(
        [
          [depth, -FAR],
          [FAR, -FAR],
          [depth, front],
          [FAR, front],
        ],
        sole,
        () => [-FAR, FAR],
      ),
    },
    { id: "side-port", solid: sideOf(1) },
    { id: "side-starboard", solid: sideOf(-1) },
  ];
}

/** Four places (along, up) of the sole's own plane of sight, each with two places across: a solid. */
function slab(
  places: readonly [number, number][],
  sole: (along: number, up: number) => [number, number],
  across: (along: number, up: number) => [number, number],
) {
  const corner = (place: readonly [number, number], end: 0 | 1): [number, number, number] => {
    const [f, v] = sole(...place);
    return [f, across(...place)[end], v];
  };
  const [a, b, c, d] = places as [[number, number], [number, number], [number, number], [number, number]];
  return hexahedron([
    corner(a, 0),
    corner(b, 0),
    corner(a, 1),
    corner(b, 1),
    corner(c, 0),
    corner(d, 0),
    corner(c, 1),
    corner(d, 1),
  ]);
}
