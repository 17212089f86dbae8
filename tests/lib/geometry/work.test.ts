/**
 * How much work a certified clearance takes, counted in cells of poses looked at: a figure that does not
 * depend on the machine. The bounds have reasons of their own and are not read off the engine.
 */
import { describe, expect, test } from "vitest";
import { type ClearanceOptions, leastClearance } from "#lib/geometry/clearance.ts";
import type { Obstacle } from "#lib/geometry/mechanism.ts";
import { leastSlide } from "#lib/geometry/slide.ts";
import { box } from "#lib/geometry/solid.ts";
import { type Rig, rig } from "#tests/oracle/rigs.ts";

/** 7 parts and 6 obstacles: one look at each combination. */
const COMBINATIONS = 42;
/** Poses of one part on a 5 degree grid of 70 by 80 degrees, which certifies nothing: 15 x 17. */
const COARSE_GRID = 255;

const work = ({ mechanism, parts }: Rig, obstacle: Obstacle, options?: ClearanceOptions): number =>
  leastClearance(mechanism, parts, obstacle, options).nodes;

describe("Cells looked at", () => {
  const pairs = Array.from({ length: 200 }, (_, k) => rig(k));
  const mean = (options?: ClearanceOptions): number =>
    pairs.reduce(
      (sum, pair) => sum + pair.obstacles.reduce((all, one) => all + work(pair, one, options), 0),
      0,
    ) / pairs.length;

  test("for a whole pair are fewer than its combinations of part and obstacle, on the mean of 200", () => {
    expect(mean()).toBeLessThan(COMBINATIONS);
  });

  test("hardly grow with the accuracy asked for: a hundred times finer is not twice the work", () => {
    expect(mean({ within: 0.001 })).toBeLessThan(2 * mean());
  });

  test("are far fewer where a verdict is all that is wanted", () => {
    expect(mean({ within: 1, stopAbove: 10, stopBelow: 10 })).toBeLessThan(mean() / 2);
  });

  test("stay below a coarse grid's poses at and about contact, the slow case, even within 0.1 mm of depth", () => {
    const cheek = (half: number): Obstacle => ({
      id: "cheek",
      solid: box([0, half, -20_000], [38, 20_000, 150]),
    });
    for (let k = 0; k < 46; k++) {
      const pair = rig(200 + k);
      const contact = leastSlide(pair.mechanism, pair.parts, cheek, 0, { from: 0, to: 2000 }).position!;
      for (const offset of [5, 0, -1, -20, -60]) {
        expect(work(pair, cheek(contact + offset), { withinOverlap: 0.1 })).toBeLessThan(COARSE_GRID);
      }
    }
  });

  test("stay below it for deep overlaps of every obstacle", () => {
    const inward = [
      [0, -1, 0],
      [0, 1, 0],
      [0, 0, 1],
      [-1, 0, 0],
      [0, -1, 0],
      [0, 1, 0],
    ] as const;
    for (let k = 0; k < 40; k++) {
      const pair = rig(3000 + k);
      pair.obstacles.forEach((obstacle, which) => {
        for (const by of [50, 120, 250]) {
          const [f, y, v] = inward[which]!.map((way) => way * by) as [number, number, number];
          // Moving the obstacle is moving the tilt axis the other way, and the parts with it.
          const mechanism = {
            ...pair.mechanism,
            tiltAxisForwardMm: pair.mechanism.tiltAxisForwardMm - f,
            tiltAxisAboveMm: pair.mechanism.tiltAxisAboveMm - v,
          };
          const corners = obstacle.solid.corners.map((value, i) => value + (i % 3 === 1 ? y : 0));
          const solid = { ...obstacle.solid, corners };
          expect(work({ ...pair, mechanism }, { ...obstacle, solid })).toBeLessThan(COARSE_GRID);
        }
      });
    }
  });
});
