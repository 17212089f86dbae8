/**
 * Every bound over a cell of poses against the gap it bounds, taken pose by pose on a fine grid with the
 * frames of lib/rig: never above it, and where the bound is said to be exact, met by it.
 */
import { describe, expect, test } from "vitest";
import { bound, hullBound, legBound, predict, steeredBound } from "#lib/geometry/bound.ts";
import { setCell } from "#lib/geometry/cell.ts";
import { clearanceAt, gapAlong } from "#lib/geometry/clearance.ts";
import { cornersBound } from "#lib/geometry/corners.ts";
import type { Part } from "#lib/geometry/mechanism.ts";
import { fixed, mover } from "#lib/geometry/motion.ts";
import { box, type Triple } from "#lib/geometry/solid.ts";
import { legToBracket, steeredToLeg } from "#lib/rig/frame.ts";
import { numbers } from "#tests/oracle/rigs.ts";

const STEPS = 24;
const AT_AXIS = { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0 };
const random = numbers(2718);
const between = (low: number, high: number) => low + (high - low) * random();

function unit(): Triple {
  const [a, b, c] = [between(-1, 1), between(-1, 1), between(-1, 1)];
  const length = Math.hypot(a, b, c);
  return [a / length, b / length, c / length];
}

/**
 * A part, an obstacle anywhere about it (touching, far, or round it), a direction and a cell, narrow or
 * wide. Of every two one has solids of 1 mm, where no other corner hides what is said of one.
 */
function trial(_: unknown, k: number) {
  const corner = (reach: number): Triple => [
    between(-reach, reach),
    between(-reach, reach),
    between(-reach, reach),
  ];
  const solid = (reach: number) => {
    const [a, b] = [corner(reach), corner(reach)];
    return k % 2 === 0 ? box(a, b) : box(a, [a[0] + 1, a[1] + 1, a[2] + 1]);
  };
  const part: Part = {
    id: "part",
    moves: "steered",
    solid: solid(500),
    faceAngles: { from: 0, to: 0 },
    steeringAngles: { from: 0, to: 0 },
  };
  const mechanism = {
    tiltAxisForwardMm: between(-50, 50),
    tiltAxisAboveMm: between(-50, 100),
    steerAxisAftMm: between(-50, 150),
  };
  const obstacle = { id: "obstacle", solid: solid(900) };
  const width = between(0, 1) ** 2 * 85;
  const [p, s] = [between(-20, 80), between(-90, 90)];
  const cell = [p, p + width, s, s + width * between(0, 1)] as const;
  return { part, mechanism, obstacle, direction: unit(), cell };
}

type Trial = ReturnType<typeof trial>;
const trials = Array.from({ length: 600 }, trial);

/** Least gap over the grid along the direction carried from the frame into the bracket's. */
function leastGap(
  { part, mechanism, obstacle, cell }: Trial,
  carried: (p: number, s: number) => readonly [number, number, number],
  steps = STEPS,
): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      const p = cell[0] + ((cell[1] - cell[0]) * i) / steps;
      const s = cell[2] + ((cell[3] - cell[2]) * j) / steps;
      const pose = { faceAngleDeg: p, steeringDeg: s };
      least = Math.min(least, gapAlong(mechanism, part, obstacle, pose, [...carried(p, s)]));
    }
  }
  return least;
}

function prepare({ mechanism, part, obstacle, cell }: Trial) {
  const [p0, p1, s0, s1] = cell.map((degrees) => (degrees * Math.PI) / 180) as [
    number,
    number,
    number,
    number,
  ];
  setCell(p0, p1, s0, s1);
  return [mover(mechanism, part), fixed(mechanism, obstacle)] as const;
}

/** The pose the last bound expects least lies in the cell. */
function expectPoseInside(cell: Trial["cell"]): void {
  predict();
  const [p, s] = [(bound[1]! * 180) / Math.PI, (bound[2]! * 180) / Math.PI];
  expect(p).toBeGreaterThanOrEqual(cell[0] - 1e-9);
  expect(p).toBeLessThanOrEqual(cell[1] + 1e-9);
  expect(s).toBeGreaterThanOrEqual(cell[2] - 1e-9);
  expect(s).toBeLessThanOrEqual(cell[3] + 1e-9);
}

describe("A direction carried rigidly", () => {
  test("in the hull frame", () => {
    for (const one of trials) {
      hullBound(...prepare(one), ...one.direction);
      expect(bound[0]).toBeLessThanOrEqual(leastGap(one, () => one.direction) + 1e-7);
      expectPoseInside(one.cell);
    }
  });

  test("in the leg frame, where the bound is exact: the gap comes within the grid's coarseness of it", () => {
    for (const one of trials) {
      legBound(...prepare(one), ...one.direction);
      const least = leastGap(one, (p) => legToBracket(one.direction, p, AT_AXIS));
      expect(bound[0]).toBeLessThanOrEqual(least + 1e-7);
      // A grid step is at most 85 / 24 degrees; over half of it in each angle no corner moves more than 1.7 m x 0.031 (twice, for both bodies).
      expect(bound[0]).toBeGreaterThanOrEqual(least - 2 * 1700 * ((85 / STEPS / 2) * (Math.PI / 180)) * 2);
      expectPoseInside(one.cell);
    }
  });

  test("in the steered frame", () => {
    for (const one of trials) {
      steeredBound(...prepare(one), ...one.direction);
      const carried = (p: number, s: number) => legToBracket(steeredToLeg(one.direction, s, 0), p, AT_AXIS);
      expect(bound[0]).toBeLessThanOrEqual(leastGap(one, carried) + 1e-7);
      expectPoseInside(one.cell);
    }
  });

  test("each frame's bound is the gap itself in a cell of one pose", () => {
    for (const one of trials) {
      const [p, , s] = one.cell;
      const single = { ...one, cell: [p, p, s, s] as const };
      const [moving, still] = prepare(single);
      const gapIn = (carried: () => readonly [number, number, number]) => leastGap(single, carried, 1);
      hullBound(moving, still, ...one.direction);
      expect(bound[0]).toBeCloseTo(
        gapIn(() => one.direction),
        7,
      );
      legBound(moving, still, ...one.direction);
      expect(bound[0]).toBeCloseTo(
        gapIn(() => legToBracket(one.direction, p, AT_AXIS)),
        7,
      );
      steeredBound(moving, still, ...one.direction);
      const carried = legToBracket(steeredToLeg(one.direction, s, 0), p, AT_AXIS);
      expect(bound[0]).toBeCloseTo(
        gapIn(() => carried),
        7,
      );
    }
  });
});

describe("The corners' bound", () => {
  const corners = ({ cell }: Trial) =>
    [0, 1, 2, 3].map((c) => ({ faceAngleDeg: cell[c < 2 ? 0 : 1], steeringDeg: cell[c % 2 === 0 ? 2 : 3] }));

  /** Least clearance over the grid, straight from the distance. */
  const leastClearance = ({ part, mechanism, obstacle, cell }: Trial): number => {
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i <= 8; i++) {
      for (let j = 0; j <= 8; j++) {
        const faceAngleDeg = cell[0] + ((cell[1] - cell[0]) * i) / 8;
        const steeringDeg = cell[2] + ((cell[3] - cell[2]) * j) / 8;
        least = Math.min(least, clearanceAt(mechanism, part, obstacle, { faceAngleDeg, steeringDeg }).mm);
      }
    }
    return least;
  };

  test("with the directions measured there is no more than any clearance of the cell", () => {
    for (const one of trials) {
      const found = corners(one).map((pose) => clearanceAt(one.mechanism, one.part, one.obstacle, pose));
      const n = Float64Array.from(found.flatMap(({ direction, mm }) => [...direction, mm]));
      const least = leastClearance(one);
      const [moving, still] = prepare(one);
      cornersBound(moving, still, n, 0);
      expect(bound[0]).toBeLessThanOrEqual(least + 1e-6);
    }
  });

  test("with any four directions at all it still is not", () => {
    for (const one of trials) {
      const n = Float64Array.from([0, 1, 2, 3].flatMap(() => [...unit(), 0]));
      const near = Float64Array.from([0, 1, 2, 3].flatMap((c) => [...one.direction, c]));
      const least = leastClearance(one);
      const [moving, still] = prepare(one);
      cornersBound(moving, still, n, 0);
      expect(bound[0]).toBeLessThanOrEqual(least + 1e-6);
      cornersBound(moving, still, near, 0);
      expect(bound[0]).toBeLessThanOrEqual(least + 1e-6);
    }
  });
});
