/** Clearances worked by hand: every expected value follows from the dimensions in the line above it. */
import { describe, expect, test } from "vitest";
import { type Clearance, clearanceAt, gapAlong, leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part, Range } from "#lib/geometry/mechanism.ts";
import { box, hexahedron, type Solid, type Triple } from "#lib/geometry/solid.ts";

const AT_SADDLE: Mechanism = { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0, steerAxisAftMm: 0 };
const HELD: Range = { from: 0, to: 0 };
const UPRIGHT = { faceAngleDeg: 0, steeringDeg: 0 };
const UNIT = box([-1, -1, -1], [1, 1, 1]);

const part = (
  solid: Solid,
  faceAngles = HELD,
  steeringAngles = HELD,
  moves: Part["moves"] = "steered",
): Part => ({
  id: "part",
  moves,
  solid,
  faceAngles,
  steeringAngles,
});
const obstacle = (solid: Solid): Obstacle => ({ id: "obstacle", solid });
const shifted = (x: number, y: number, z: number): Obstacle =>
  obstacle(box([x - 1, y - 1, z - 1], [x + 1, y + 1, z + 1]));
const between = (a: Solid, b: Obstacle): Clearance => clearanceAt(AT_SADDLE, part(a), b, UPRIGHT);

/** A square bar about the z axis, turned by 45 degrees: corners on the x and y axes at the given reach. */
const diamond = (reach: number, low: number, high: number): Solid =>
  hexahedron(
    [low, high].flatMap((z): Triple[] => [
      [0, -reach, z],
      [reach, 0, z],
      [-reach, 0, z],
      [0, reach, z],
    ]),
  );

describe("Two cubes with sides of 2 mm, square to each other", () => {
  test("face to face: 5 mm between centres leaves 3 mm", () => {
    const found = between(UNIT, shifted(5, 0, 0));
    expect(found.mm).toBeCloseTo(3, 12);
    expect(found.direction[0]).toBeCloseTo(-1, 12);
  });
  test("edge to edge: gaps of 3 and 4 mm make 5 mm", () => {
    expect(between(UNIT, shifted(5, 6, 0)).mm).toBeCloseTo(5, 12);
  });
  test("corner to corner: gaps of 2, 3 and 6 mm make 7 mm", () => {
    const found = between(UNIT, shifted(-4, 5, 8));
    expect(found.mm).toBeCloseTo(7, 12);
    expect(found.partPoint.map((value) => value + 0)).toEqual([-1, 1, 1]);
    expect(found.obstaclePoint.map((value) => value + 0)).toEqual([-3, 4, 7]);
    // From the obstacle towards the part.
    [2 / 7, -3 / 7, -6 / 7].forEach((value, k) => {
      expect(found.direction[k]).toBeCloseTo(value, 12);
    });
  });
  test("touching: 2 mm between centres leaves nothing", () => {
    expect(between(UNIT, shifted(2, 0.5, 0.3)).mm).toBeCloseTo(0, 6);
  });
  test("overlapping by 0.5 mm one way, more the others: minus 0.5 mm", () => {
    const found = between(UNIT, shifted(0.2, -1.5, 0.3));
    expect(found.mm).toBeCloseTo(-0.5, 12);
    expect(found.direction[1]).toBeCloseTo(1, 12);
  });
  test("one inside the other: out by the shortest way, 1 + 7 mm and 7 - 4 mm", () => {
    expect(between(UNIT, obstacle(box([-10, -10, -10], [10, 10, 7]))).mm).toBeCloseTo(-8, 12);
    expect(between(box([-1, -1, 4], [1, 1, 5]), obstacle(box([-10, -10, -10], [10, 10, 7]))).mm).toBeCloseTo(
      -3,
      12,
    );
  });
});

describe("Solids askew", () => {
  test("corner to face: the diamond's point at 3 mm stands 2 mm off a wall at 5 mm", () => {
    const found = between(diamond(3, -1, 1), obstacle(box([5, -50, -50], [60, 50, 50])));
    expect(found.mm).toBeCloseTo(2, 12);
    expect(found.partPoint[0]).toBeCloseTo(3, 12);
  });
  test("edge to edge, crossing: bars turned on edge, upper edge at 3, lower edge at 8: 5 mm", () => {
    // One lies along x with an edge up, the other along y with an edge down.
    const along = (z: number, axis: 0 | 1): Triple[] =>
      [-40, 40].flatMap((t) =>
        [
          [0, -3],
          [3, 0],
          [-3, 0],
          [0, 3],
        ].map(([a, b]): Triple => (axis === 0 ? [t, a!, z + b!] : [a!, t, z + b!])),
      );
    const lower = hexahedron(along(0, 0));
    const upper = obstacle(hexahedron(along(11, 1)));
    expect(between(lower, upper).mm).toBeCloseTo(5, 12);
  });
  test("a point 2 mm deep in a wall comes out square to it", () => {
    expect(between(diamond(3, -1, 1), obstacle(box([1, -50, -50], [60, 50, 50]))).mm).toBeCloseTo(-2, 12);
  });
  test("a sloping face: 3-4-5, 10 mm above its foot leaves 8 mm", () => {
    // The ramp z = 3/4 x; the least corner of the part stands at x = 0, z = 10: 10 x 4/5 from it.
    const ramp = hexahedron([
      [-400, -100, -900],
      [400, -100, -900],
      [-400, 100, -900],
      [400, 100, -900],
      [-400, -100, -300],
      [400, -100, 300],
      [-400, 100, -300],
      [400, 100, 300],
    ]);
    expect(between(box([-5, -1, 10], [0, 1, 12]), obstacle(ramp)).mm).toBeCloseTo(8, 12);
  });
  test("faces that reach 20 m away cost no accuracy", () => {
    const far = obstacle(box([30, -20_000, -20_000], [68, 20_000, 20_000]));
    expect(Math.abs(between(diamond(3, -1, 1), far).mm - 27)).toBeLessThan(1e-6);
    const edge = obstacle(box([33, 5, -20_000], [20_000, 20_000, 20_000]));
    // The diamond's point at (3, 0): gaps of 30 mm ahead and 5 mm aside; its flank runs away at 45 degrees.
    expect(Math.abs(between(diamond(3, -1, 1), edge).mm - Math.hypot(30, 5))).toBeLessThan(1e-6);
  });
});

describe("Least clearance over poses", () => {
  const wall = (f: number) => obstacle(box([f, -20_000, -20_000], [20_000, 20_000, 20_000]));

  test("a bar of 3 by 4 swinging past a wall comes closest on its diagonal, 5", () => {
    // Half sizes 300 and 400: the corner is 500 from the steering axis and points ahead at 53.13 degrees of steering.
    const bar = part(box([-300, -400, -10], [300, 400, 10]), HELD, { from: -90, to: 90 });
    const found = leastClearance(AT_SADDLE, [bar], wall(600));
    expect(found.mm - 100).toBeGreaterThanOrEqual(-1e-9);
    expect(found.mm - 100).toBeLessThanOrEqual(0.1);
    expect(found.lowerMm).toBeLessThanOrEqual(100);
    expect(Math.abs(found.pose.steeringDeg)).toBeCloseTo(53.13, 0);
  });
  test("held straight, the same bar keeps 600 - 300", () => {
    const bar = part(box([-300, -400, -10], [300, 400, 10]), HELD, { from: -90, to: 90 });
    expect(leastClearance(AT_SADDLE, [bar], wall(600), { straight: true }).mm).toBeCloseTo(300, 9);
  });
  test("with the stop before the diagonal, it is closest at the stop", () => {
    // At 30 degrees the corner (300, -400) stands at f = 300 cos 30 + 400 sin 30.
    const bar = part(box([-300, -400, -10], [300, 400, 10]), HELD, { from: 0, to: 30 });
    const found = leastClearance(AT_SADDLE, [bar], wall(600));
    expect(found.mm).toBeCloseTo(600 - 300 * Math.cos(Math.PI / 6) - 200, 9);
    expect(found.pose.steeringDeg).toBeCloseTo(30, 9);
  });
  test("tilting a leg of 500 by 90 degrees swings its lower end 500 aft", () => {
    const leg = part(box([-10, -10, -500], [10, 10, 0]), { from: 0, to: 90 }, HELD, "tilting");
    const aft = obstacle(box([-800, -100, -100], [-600, 100, 100]));
    // The lower corner is hypot(500, 10) from the axis, but swings full aft only at atan(10 / 500) short of or past level.
    const found = leastClearance(AT_SADDLE, [leg], aft);
    const wanted = 600 - Math.hypot(500, 10);
    expect(found.mm).toBeGreaterThanOrEqual(wanted - 1e-9);
    expect(found.mm).toBeLessThanOrEqual(wanted + 0.1);
  });
  test("the steering axis aft of the tilt axis takes everything aft with it", () => {
    const mechanism = { ...AT_SADDLE, steerAxisAftMm: 100 };
    const bar = part(box([-50, -50, -10], [50, 50, 10]));
    expect(leastClearance(mechanism, [bar], wall(600)).mm).toBeCloseTo(600 - 50 + 100, 9);
    const tilting = part(box([-50, -50, -10], [50, 50, 10]), HELD, HELD, "tilting");
    expect(leastClearance(mechanism, [tilting], wall(600)).mm).toBeCloseTo(600 - 50, 9);
  });
  test("the nearest of several parts is named", () => {
    const parts = [
      part(box([-50, -50, -10], [50, 50, 10])),
      { ...part(box([-60, -5, -10], [60, 5, 10])), id: "rod" },
    ];
    const found = leastClearance(AT_SADDLE, parts, wall(100));
    expect(found.partId).toBe("rod");
    expect(found.mm).toBeCloseTo(40, 9);
  });
  test("turning into a wall: the diagonal of 500 against 480 overlaps by 20", () => {
    const bar = part(box([-300, -400, -10], [300, 400, 10]), HELD, { from: -90, to: 90 });
    const found = leastClearance(AT_SADDLE, [bar], wall(480));
    expect(found.mm).toBeGreaterThanOrEqual(-20 - 1e-9);
    expect(found.mm).toBeLessThanOrEqual(-19);
    expect(found.lowerMm).toBeLessThanOrEqual(-20);
  });
  test("a steering of more than half a turn is no trouble", () => {
    const bar = part(box([-10, -10, -10], [500, 10, 10]), HELD, { from: -180, to: 180 });
    const aft = obstacle(box([-1000, -50, -50], [-600, 50, 50]));
    const wanted = 600 - Math.hypot(500, 10);
    const found = leastClearance(AT_SADDLE, [bar], aft);
    expect(found.mm).toBeGreaterThanOrEqual(wanted - 1e-9);
    expect(found.mm).toBeLessThanOrEqual(wanted + 0.1);
  });
});

describe("Ranges of a single angle", () => {
  const wall = obstacle(box([100, -20_000, -20_000], [20_000, 20_000, 20_000]));
  const block = box([-50, -50, -50], [50, 50, 50]);

  test.each([
    ["both held", HELD, HELD, 50],
    ["tilt held", HELD, { from: 0, to: 45 }, 100 - 50 * Math.SQRT2],
    ["steering held", { from: 0, to: 45 }, HELD, 100 - 50 * Math.SQRT2],
  ])("%s: a cube of 100 before a wall", (_, tilt, steering, wanted) => {
    const found = leastClearance(AT_SADDLE, [part(block, tilt, steering)], wall);
    expect(found.mm).toBeCloseTo(wanted, 9);
    expect(found.lowerMm).toBeGreaterThanOrEqual(wanted - 0.1 - 1e-6);
  });

  test("overlapping, with the least depth changing sides half-way, each angle held in turn", () => {
    // A bar of 20 by 400 turning in a slot of 60: free at 0, against the sides when turned.
    const bar = box([-10, -200, -10], [10, 200, 10]);
    const side = obstacle(box([30, -300, -300], [80, 300, 300]));
    for (const [tilt, steering] of [
      [HELD, { from: -80, to: 80 }],
      [{ from: -80, to: 80 }, HELD],
    ] as const) {
      const found = leastClearance(AT_SADDLE, [part(bar, tilt, steering)], side);
      expect(found.mm - found.lowerMm).toBeLessThanOrEqual(1 + 1e-6);
      expect(found.nodes).toBeLessThan(100);
    }
  });
});

describe("Stopping early", () => {
  const bar = part(box([-300, -400, -10], [300, 400, 10]), { from: 0, to: 60 }, { from: -90, to: 90 });
  const wall = obstacle(box([600, -20_000, -20_000], [20_000, 20_000, 20_000]));
  const full = leastClearance(AT_SADDLE, [bar], wall);

  test("above a cap: the certificate reaches the cap, and it costs no more", () => {
    const found = leastClearance(AT_SADDLE, [bar], wall, { stopAbove: 50 });
    expect(found.lowerMm).toBeGreaterThanOrEqual(50 - 1e-6);
    expect(found.lowerMm).toBeLessThanOrEqual(full.mm);
    expect(found.nodes).toBeLessThanOrEqual(full.nodes);
  });
  test("below a figure: one pose that is nearer is enough", () => {
    const found = leastClearance(AT_SADDLE, [bar], wall, { stopBelow: 1000 });
    expect(found.mm).toBeLessThan(1000);
    expect(found.nodes).toBe(1);
    expect(found.lowerMm).toBeLessThanOrEqual(full.mm);
  });
});

describe("Gap along a held direction", () => {
  test("is the part's least height minus the obstacle's greatest, whatever the direction's length", () => {
    const [a, b] = [part(UNIT), shifted(5, 6, 0)];
    expect(gapAlong(AT_SADDLE, a, b, UPRIGHT, [-1, 0, 0])).toBeCloseTo(3, 12);
    expect(gapAlong(AT_SADDLE, a, b, UPRIGHT, [0, -7, 0])).toBeCloseTo(4, 12);
    expect(gapAlong(AT_SADDLE, a, b, UPRIGHT, [-3, -4, 0])).toBeCloseTo(5, 12);
    expect(gapAlong(AT_SADDLE, a, b, UPRIGHT, [1, 0, 0])).toBeCloseTo(-7, 12);
  });
});

describe("What cannot be meant", () => {
  test("no parts, ranges that run backwards and angles that are no numbers are refused", () => {
    expect(() => leastClearance(AT_SADDLE, [], shifted(5, 0, 0))).toThrow(RangeError);
    expect(() => leastClearance(AT_SADDLE, [part(UNIT, { from: 5, to: 0 })], shifted(5, 0, 0))).toThrow(
      /from 5 to 0/,
    );
    expect(() =>
      leastClearance(AT_SADDLE, [part(UNIT, HELD, { from: 0, to: Number.NaN })], shifted(5, 0, 0)),
    ).toThrow(RangeError);
  });
});
