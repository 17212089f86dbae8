/** Laws every certified clearance obeys, on invented rigs. Slack: the two certificates' widths, and rounding. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Clearance, leastClearance } from "#lib/geometry/clearance.ts";
import type { Mechanism, Obstacle, Part, Range } from "#lib/geometry/mechanism.ts";
import { hexahedron, type Solid, type Triple } from "#lib/geometry/solid.ts";
import { rig } from "#tests/oracle/rigs.ts";

const RUNS = { seed: 61, numRuns: 200 };
/** Any rig and any of its six obstacles. */
const anyTrial = fc
  .tuple(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 0, max: 5 }))
  .map(([start, which]) => ({ ...rig(start), obstacle: rig(start).obstacles[which]! }));

const altered = (solid: Solid, change: (corner: Triple) => Triple): Solid =>
  hexahedron(
    [0, 3, 6, 9, 12, 15, 18, 21].map((k) =>
      change([...solid.corners.subarray(k, k + 3)] as unknown as Triple),
    ),
  );

/** Neither certified interval lies wholly below the other by more than rounding. */
function expectSame(a: Clearance, b: Clearance): void {
  expect(a.lowerMm).toBeLessThanOrEqual(b.mm + 1e-6);
  expect(b.lowerMm).toBeLessThanOrEqual(a.mm + 1e-6);
}

describe("The least clearance", () => {
  test("is certified from below within the tolerance asked for", () => {
    fc.assert(
      fc.property(anyTrial, fc.constantFrom(0.001, 0.1, 2), ({ mechanism, parts, obstacle }, within) => {
        const found = leastClearance(mechanism, parts, obstacle, { within });
        expect(found.lowerMm).toBeLessThanOrEqual(found.mm);
        expect(found.mm - found.lowerMm).toBeLessThanOrEqual(
          (found.mm < 0 ? Math.max(1, within) : within) + 1e-6,
        );
      }),
      RUNS,
    );
  });

  test("does not depend on the tolerance beyond the tolerance", () => {
    fc.assert(
      fc.property(anyTrial, ({ mechanism, parts, obstacle }) => {
        const fine = leastClearance(mechanism, parts, obstacle, { within: 0.001, withinOverlap: 0.01 });
        expectSame(fine, leastClearance(mechanism, parts, obstacle, { within: 5, withinOverlap: 10 }));
      }),
      RUNS,
    );
  });

  test("mirrors when boat and motor are mirrored", () => {
    const mirror = ([x, y, z]: Triple): Triple => [x, -y, z];
    const turned = ({ from, to }: Range): Range => ({ from: -to, to: -from });
    fc.assert(
      fc.property(anyTrial, ({ mechanism, parts, obstacle }) => {
        const mirrored = parts.map((part) => ({
          ...part,
          solid: altered(part.solid, mirror),
          steeringAngles: turned(part.steeringAngles),
        }));
        const other = { ...obstacle, solid: altered(obstacle.solid, mirror) };
        expectSame(leastClearance(mechanism, parts, obstacle), leastClearance(mechanism, mirrored, other));
      }),
      RUNS,
    );
  });

  test("does not mind where the saddle corner is said to be", () => {
    fc.assert(
      fc.property(anyTrial, fc.integer({ min: -300, max: 300 }), ({ mechanism, parts, obstacle }, by) => {
        const shifted: Mechanism = {
          ...mechanism,
          tiltAxisForwardMm: mechanism.tiltAxisForwardMm + by,
          tiltAxisAboveMm: mechanism.tiltAxisAboveMm - 2 * by,
        };
        const other = { ...obstacle, solid: altered(obstacle.solid, ([f, y, v]) => [f + by, y, v - 2 * by]) };
        expectSame(leastClearance(mechanism, parts, obstacle), leastClearance(shifted, parts, other));
      }),
      RUNS,
    );
  });

  test("is never greater for a wider range of poses", () => {
    fc.assert(
      fc.property(anyTrial, fc.integer({ min: 0, max: 20 }), ({ mechanism, parts, obstacle }, by) => {
        const wider = parts.map((part) => ({
          ...part,
          faceAngles: { from: part.faceAngles.from - by / 4, to: part.faceAngles.to + by },
          steeringAngles: { from: part.steeringAngles.from - by, to: part.steeringAngles.to + by / 2 },
        }));
        const [narrow, wide] = [parts, wider].map((some) => leastClearance(mechanism, some, obstacle));
        expect(wide!.lowerMm).toBeLessThanOrEqual(narrow!.mm + 1e-6);
      }),
      RUNS,
    );
  });

  test("held straight is never less than with all steering", () => {
    fc.assert(
      fc.property(anyTrial, ({ mechanism, parts, obstacle }) => {
        const straight = leastClearance(mechanism, parts, obstacle, { straight: true });
        expect(leastClearance(mechanism, parts, obstacle).lowerMm).toBeLessThanOrEqual(straight.mm + 1e-6);
        expect(straight.pose.steeringDeg).toBe(0);
      }),
      RUNS,
    );
  });

  test("changes by at most the distance the obstacle is moved", () => {
    fc.assert(
      fc.property(
        anyTrial,
        fc.integer({ min: 0, max: 150 }),
        fc.constantFrom<Triple>([1, 0, 0], [0, 1, 0], [0, 0, 1], [0.6, 0, -0.8], [-0.48, 0.6, 0.64]),
        ({ mechanism, parts, obstacle }, by, [f, y, v]) => {
          const moved: Obstacle = {
            ...obstacle,
            solid: altered(obstacle.solid, (c) => [c[0] + by * f, c[1] + by * y, c[2] + by * v]),
          };
          const here = leastClearance(mechanism, parts, obstacle);
          const there = leastClearance(mechanism, parts, moved);
          expect(there.lowerMm).toBeLessThanOrEqual(here.mm + by + 1e-6);
          expect(here.lowerMm).toBeLessThanOrEqual(there.mm + by + 1e-6);
        },
      ),
      RUNS,
    );
  });

  test("of several parts is the least of each alone", () => {
    fc.assert(
      fc.property(anyTrial, ({ mechanism, parts, obstacle }) => {
        const all = leastClearance(mechanism, parts, obstacle);
        const alone = parts.map((part: Part) => leastClearance(mechanism, [part], obstacle));
        expect(all.lowerMm).toBeLessThanOrEqual(Math.min(...alone.map(({ mm }) => mm)) + 1e-6);
        expect(Math.min(...alone.map(({ lowerMm }) => lowerMm))).toBeLessThanOrEqual(all.mm + 1e-6);
      }),
      RUNS,
    );
  });

  test("does not depend on what was asked before", () => {
    fc.assert(
      fc.property(anyTrial, anyTrial, (one, other) => {
        const ask = (trial: typeof one) => leastClearance(trial.mechanism, trial.parts, trial.obstacle);
        const first = ask(one);
        ask(other);
        expect(ask(one)).toEqual(first);
      }),
      RUNS,
    );
  });
});
