/**
 * The two motions against exact mathematics (Rodrigues' formula; the name is from memory) and against the
 * matrices and quaternions of three, an independent implementation. Tolerance: rounding of doubles on
 * lengths of a few metres.
 */
import * as THREE from "three";
import { describe, expect, test } from "vitest";
import { clearanceAt } from "#lib/geometry/clearance.ts";
import { type Mechanism, type Part, placed } from "#lib/geometry/mechanism.ts";
import { fixed, mover, turn } from "#lib/geometry/motion.ts";
import { box, type Triple } from "#lib/geometry/solid.ts";
import { bracketToHull, legToBracket, steeredToLeg } from "#lib/rig/frame.ts";
import { numbers } from "#tests/oracle/rigs.ts";

/** Rodrigues: v' = v cos t + (k x v) sin t + k (k·v)(1 - cos t), k the unit axis, t in degrees. */
function rodrigues(v: Triple, k: Triple, degrees: number): Triple {
  const t = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(t), Math.sin(t)];
  const along = (k[0] * v[0] + k[1] * v[1] + k[2] * v[2]) * (1 - c);
  return [
    v[0] * c + (k[1] * v[2] - k[2] * v[1]) * s + k[0] * along,
    v[1] * c + (k[2] * v[0] - k[0] * v[2]) * s + k[1] * along,
    v[2] * c + (k[0] * v[1] - k[1] * v[0]) * s + k[2] * along,
  ];
}

const add = (a: Triple, b: Triple): Triple => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const UP: Triple = [0, 0, 1];
const PORT: Triple = [0, 1, 0];

function expectClose(actual: readonly number[], wanted: readonly number[]): void {
  actual.forEach((value, k) => {
    expect(value).toBeCloseTo(wanted[k]!, 8);
  });
}

/** Attitudes from the whole of what a motor can do, and beyond. */
const random = numbers(62);
const trials = Array.from({ length: 50 }, () => {
  const span = (low: number, high: number) => low + (high - low) * random();
  return {
    point: [span(-800, 800), span(-800, 800), span(-1000, 800)] as Triple,
    p: span(-30, 110),
    s: span(-180, 180),
    rake: span(-20, 40),
    seat: span(100, 1500),
    mechanism: {
      tiltAxisForwardMm: span(-150, 200),
      tiltAxisAboveMm: span(-150, 250),
      steerAxisAftMm: span(-50, 300),
    },
  };
});

describe("Rodrigues' formula itself", () => {
  test("a quarter turn about z takes x to y", () => {
    expectClose(rodrigues([1, 0, 0], UP, 90), [0, 1, 0]);
  });
  test("a third of a turn about (1, 1, 1) takes x to y, y to z, z to x", () => {
    const k = 1 / Math.sqrt(3);
    expectClose(rodrigues([1, 0, 0], [k, k, k], 120), [0, 1, 0]);
    expectClose(rodrigues([0, 1, 0], [k, k, k], 120), [0, 0, 1]);
    expectClose(rodrigues([0, 0, 1], [k, k, k], 120), [1, 0, 0]);
  });
});

describe("The frames", () => {
  test("steering is a turn about the upright steering axis, plus to port", () => {
    expectClose(steeredToLeg([500, 0, 0], 90, 100), [-100, 500, 0]);
    for (const { point, s, mechanism } of trials) {
      const wanted = add(rodrigues(point, UP, s), [-mechanism.steerAxisAftMm, 0, 0]);
      expectClose(steeredToLeg(point, s, mechanism.steerAxisAftMm), wanted);
    }
  });

  test("tilting is a turn about the tilt axis that takes up to forward, so the lower end swings aft", () => {
    const atOrigin = { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0 };
    expectClose(legToBracket([0, 0, -400], 90, atOrigin), [-400, 0, 0]);
    for (const { point, p, mechanism } of trials) {
      const axis: Triple = [mechanism.tiltAxisForwardMm, 0, mechanism.tiltAxisAboveMm];
      // Turning plus about the axis to port takes up (z) to forward (x).
      expectClose(legToBracket(point, p, mechanism), add(axis, rodrigues(point, PORT, p)));
    }
  });

  test("rake is a turn about the axis across the boat that takes up to aft", () => {
    expectClose(bracketToHull([0, 0, 100], 90 - 1e-9, 0), [-100, 0, 0]);
    for (const { point, rake, seat } of trials) {
      const origin: Triple = [-seat * Math.tan((rake * Math.PI) / 180), 0, seat];
      expectClose(bracketToHull(point, rake, seat), add(origin, rodrigues(point, PORT, -rake)));
    }
  });

  test("turning there and back changes nothing, and no length is changed", () => {
    for (const { point, p, s } of trials) {
      const there = legToBracket(steeredToLeg(point, s, 0), p, { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0 });
      expect(Math.hypot(...there)).toBeCloseTo(Math.hypot(...point), 8);
      const untilted = legToBracket(there as Triple, -p, { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0 });
      expectClose(steeredToLeg(untilted as Triple, -s, 0), point);
    }
  });
});

describe("The engine's own motions", () => {
  const partAt = (point: Triple, moves: Part["moves"] = "steered"): Part => ({
    id: "part",
    moves,
    solid: box(point, add(point, [10, 20, 30])),
    faceAngles: { from: -30, to: 110 },
    steeringAngles: { from: -180, to: 180 },
  });

  test("a drawn part stands where the frames put it", () => {
    for (const { point, p, s, mechanism } of trials) {
      const [corner] = placed(mechanism, partAt(point), { faceAngleDeg: p, steeringDeg: s });
      expectClose(corner!, legToBracket(steeredToLeg(point, s, mechanism.steerAxisAftMm), p, mechanism));
    }
  });

  test("a tilting part does not mind the steering", () => {
    for (const { point, p, s, mechanism } of trials) {
      const [corner] = placed(mechanism, partAt(point, "tilting"), { faceAngleDeg: p, steeringDeg: s });
      expectClose(corner!, legToBracket(point, p, mechanism));
    }
  });

  test("the inner loop's motion agrees with three's matrices", () => {
    for (const { point, p, s, mechanism } of trials) {
      const matrix = transformation(mechanism, p, s);
      const wanted = new THREE.Vector3(...point).applyMatrix4(matrix).toArray();
      const out = new Float64Array(24);
      const moving = mover(mechanism, partAt(point));
      const rad = Math.PI / 180;
      turn(
        moving.corners,
        moving.aft,
        Math.cos(p * rad),
        Math.sin(p * rad),
        Math.cos(s * rad),
        Math.sin(s * rad),
        out,
      );
      const { tiltAxisForwardMm, tiltAxisAboveMm } = mechanism;
      expectClose([out[0]! + tiltAxisForwardMm, out[1]!, out[2]! + tiltAxisAboveMm], wanted);
    }
  });

  test("it agrees with three's quaternions", () => {
    for (const { point, p, s, mechanism } of trials) {
      const { tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm } = mechanism;
      const rad = Math.PI / 180;
      const steering = new THREE.Quaternion().setFromAxisAngle(new THREE.Vector3(...UP), s * rad);
      const tilting = new THREE.Quaternion().setFromAxisAngle(new THREE.Vector3(...PORT), p * rad);
      const wanted = new THREE.Vector3(...point)
        .applyQuaternion(steering)
        .add(new THREE.Vector3(-steerAxisAftMm, 0, 0))
        .applyQuaternion(tilting)
        .add(new THREE.Vector3(tiltAxisForwardMm, 0, tiltAxisAboveMm));
      const [corner] = placed(mechanism, partAt(point), { faceAngleDeg: p, steeringDeg: s });
      expectClose(corner!, wanted.toArray());
    }
  });

  test("points of a clearance are given from the saddle corner, not from the tilt axis", () => {
    const mechanism = { tiltAxisForwardMm: 30, tiltAxisAboveMm: 70, steerAxisAftMm: 0 };
    // 10 x 20 x 30 standing on (0, 0, 0) of the leg, so on (30, 0, 70) of the bracket; the wall begins at f = 100.
    const wall = { id: "wall", solid: box([100, -500, -500], [200, 500, 500]) };
    const found = clearanceAt(mechanism, partAt([0, 0, 0]), wall, { faceAngleDeg: 0, steeringDeg: 0 });
    expect(found.mm).toBeCloseTo(60, 9);
    expect(found.partPoint[0]).toBeCloseTo(40, 9);
    expect(found.obstaclePoint[0]).toBeCloseTo(100, 9);
    expect(fixed(mechanism, wall).corners[0]).toBe(70);
  });
});

/** The whole way from the steered to the bracket frame as one of three's matrices. */
function transformation(mechanism: Mechanism, p: number, s: number): THREE.Matrix4 {
  const rad = Math.PI / 180;
  return new THREE.Matrix4()
    .makeTranslation(mechanism.tiltAxisForwardMm, 0, mechanism.tiltAxisAboveMm)
    .multiply(new THREE.Matrix4().makeRotationAxis(new THREE.Vector3(...PORT), p * rad))
    .multiply(new THREE.Matrix4().makeTranslation(-mechanism.steerAxisAftMm, 0, 0))
    .multiply(new THREE.Matrix4().makeRotationAxis(new THREE.Vector3(...UP), s * rad));
}
