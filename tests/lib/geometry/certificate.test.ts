/**
 * The engine's promise, tried on 200 invented pairs of motor and stern (1,200 least clearances, more than a
 * tenth of them overlapping): the true least lies between `lowerMm` and `mm`, 0.1 mm apart, 1 mm where they
 * overlap. Judges that share no code with it: an enumeration of corners, faces and edges on a grid of poses
 * with a pattern search, and the library manifold-3d at every tightest pose.
 *
 * Looking can refute a certificate but not prove one; the proof is in the comments of bound.ts.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { type Clearance, clearanceAt, leastClearance } from "#lib/geometry/clearance.ts";
import type { Obstacle } from "#lib/geometry/mechanism.ts";
import { type Body, body } from "#tests/oracle/distance.ts";
import { distanceAt, type Least, leastByLooking } from "#tests/oracle/least.ts";
import { gapAt, manifold } from "#tests/oracle/manifold.ts";
import { numbers, type Rig, rig } from "#tests/oracle/rigs.ts";

const PAIRS = 200;
const GRID_DEG = 10;
/** Rounding in two independent computations on lengths of up to 20 m. */
const ROUNDING = 1e-6;

interface Trial {
  readonly name: string;
  readonly rig: Rig;
  readonly obstacle: Obstacle;
  readonly still: Body;
  readonly found: Clearance;
  readonly looked: Least;
}

let trials: Trial[] = [];
beforeAll(() => {
  trials = Array.from({ length: PAIRS }, (_, k) => rig(k)).flatMap((one, k) =>
    one.obstacles.map((obstacle) => ({
      name: `rig ${k}, ${obstacle.id}`,
      rig: one,
      obstacle,
      still: body(obstacle.solid.corners),
      found: leastClearance(one.mechanism, one.parts, obstacle),
      looked: leastByLooking(one.mechanism, one.parts, obstacle, GRID_DEG),
    })),
  );
}, 120_000);

const partOf = ({ rig, found }: Trial) => rig.parts.find((part) => part.id === found.partId)!;
const names = (wrong: Trial[]) => wrong.map(({ name }) => name);

describe("On 200 invented pairs", () => {
  test("at least a tenth of the obstacles overlap, and at least a quarter come within 100 mm without", () => {
    expect(trials.filter(({ found }) => found.mm < 0).length).toBeGreaterThan(trials.length / 10);
    expect(trials.filter(({ found }) => found.mm > 0 && found.mm < 100).length).toBeGreaterThan(
      trials.length / 4,
    );
  });

  test("no pose is found with less clearance than certified", () => {
    expect(names(trials.filter(({ found, looked }) => looked.mm < found.lowerMm - ROUNDING))).toEqual([]);
  });

  test("apart, the figure agrees with looking everywhere within 0.1 mm", () => {
    const apart = trials.filter(({ found }) => found.mm >= 0);
    expect(
      names(apart.filter(({ found, looked }) => Math.abs(found.mm - looked.mm) > 0.1 + ROUNDING)),
    ).toEqual([]);
  });

  test("overlapping, it agrees within 1 mm", () => {
    const overlapping = trials.filter(({ found }) => found.mm < 0);
    expect(names(overlapping.filter(({ found, looked }) => Math.abs(found.mm - looked.mm) > 1))).toEqual([]);
  });

  test("the sign is right wherever looking is further than the tolerance from nothing", () => {
    const sure = trials.filter(({ looked }) => looked.mm > 0.1 || looked.mm < 0);
    expect(names(sure.filter(({ found, looked }) => found.mm < 0 !== looked.mm < 0))).toEqual([]);
  });

  test("the figure is met at the pose named, by the enumeration and by manifold", () => {
    for (const trial of trials) {
      const { rig, obstacle, still, found } = trial;
      expect(distanceAt(rig.mechanism, partOf(trial), still, found.pose), trial.name).toBeCloseTo(
        found.mm,
        6,
      );
      const solid = manifold(obstacle.solid.corners);
      const gap = gapAt(rig.mechanism, partOf(trial), found.pose, solid, 30_000);
      solid.delete();
      expect(gap, trial.name).toBeCloseTo(Math.max(0, found.mm), 6);
    }
  });

  test("manifold finds no nearer pose around the tightest", () => {
    const random = numbers(17);
    for (const trial of trials.filter(({ found }) => found.mm > 0)) {
      const { rig, obstacle, found } = trial;
      const part = partOf(trial);
      const solid = manifold(obstacle.solid.corners);
      for (let k = 0; k < 4; k++) {
        const near = (value: number, { from, to }: { from: number; to: number }) =>
          Math.min(to, Math.max(from, value + 4 * random() - 2));
        const pose = {
          faceAngleDeg: near(found.pose.faceAngleDeg, part.faceAngles),
          steeringDeg: near(found.pose.steeringDeg, part.steeringAngles),
        };
        const gap = gapAt(rig.mechanism, part, pose, solid, 30_000);
        expect(gap, trial.name).toBeGreaterThanOrEqual(found.lowerMm - ROUNDING);
      }
      solid.delete();
    }
  });

  test("the certificate is as narrow as promised, and points and direction belong to the figure", () => {
    for (const { found, name } of trials) {
      expect(found.lowerMm, name).toBeLessThanOrEqual(found.mm);
      expect(found.mm - found.lowerMm, name).toBeLessThanOrEqual((found.mm < 0 ? 1 : 0.1) + ROUNDING);
      found.direction.forEach((share, k) => {
        expect(found.partPoint[k]! - found.obstaclePoint[k]!, name).toBeCloseTo(share * found.mm, 6);
      });
    }
  });
});

describe("In single poses", () => {
  test("the engine agrees with the enumeration to a millionth of a millimetre, apart and overlapping", () => {
    const random = numbers(4);
    let overlapping = 0;
    for (let k = 0; k < 60; k++) {
      const { mechanism, parts, obstacles } = rig(1000 + k);
      for (const obstacle of obstacles) {
        const still = body(obstacle.solid.corners);
        for (const part of parts) {
          const pose = { faceAngleDeg: 120 * random() - 10, steeringDeg: 120 * random() - 60 };
          const wanted = distanceAt(mechanism, part, still, pose);
          if (wanted < 0) overlapping++;
          expect(clearanceAt(mechanism, part, obstacle, pose).mm).toBeCloseTo(wanted, 6);
        }
      }
    }
    expect(overlapping).toBeGreaterThan(20);
  });
});
