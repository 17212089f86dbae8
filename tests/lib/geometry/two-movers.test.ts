/**
 * The room between two moving motors: by hand where it can be, and against plain looking with a judge that
 * shares none of the engine's code. Looking can refute a certificate; it cannot prove one.
 */
import { describe, expect, test } from "vitest";
import { type Mechanism, type Part, placed, type Range } from "#lib/geometry/mechanism.ts";
import { box, type Triple } from "#lib/geometry/solid.ts";
import { leastBetween, type Moving } from "#lib/geometry/two-movers.ts";
import { mechanismOf, partsOf } from "#lib/rig/parts.ts";
import { motorValues } from "#lib/rig/record.ts";
import { motors } from "#tests/lib/data/demo.ts";
import { body, signedDistance } from "#tests/oracle/distance.ts";
import { numbers } from "#tests/oracle/rigs.ts";

const AT_SADDLE: Mechanism = { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0, steerAxisAftMm: 0 };
const HELD: Range = { from: 0, to: 0 };
const bar = (steeringAngles: Range, faceAngles = HELD): Part => ({
  id: "bar",
  moves: "steered",
  // A bar 400 long, 100 broad, from the steering axis forward.
  solid: box([0, -50, 0], [400, 50, 100]),
  faceAngles,
  steeringAngles,
});
const side = (y: number, part: Part, z = 0): Moving => ({
  mechanism: AT_SADDLE,
  parts: [part],
  saddle: [0, y, z],
});
const swing = (deg: number): Range => ({ from: -deg, to: deg });

describe("Two bars 400 long and 100 broad, side by side", () => {
  test("held straight 700 apart: 600 between them", () => {
    expect(leastBetween(side(350, bar(HELD)), side(-350, bar(HELD))).mm).toBeCloseTo(600, 6);
  });

  test("each swinging 30 degrees: both turn in, 700 - 2 (400 sin 30 + 50 cos 30) = 213.4", () => {
    const found = leastBetween(side(350, bar(swing(30))), side(-350, bar(swing(30))), { within: 0.01 });
    expect(found.mm).toBeCloseTo(700 - 2 * (200 + 50 * Math.cos(Math.PI / 6)), 2);
    expect(found.mm - found.lowerMm).toBeLessThan(0.02);
    expect(found.poses.map(({ steeringDeg }) => Math.round(steeringDeg))).toEqual([-30, 30]);
    expect(found.direction[1]).toBeCloseTo(1, 6);
  });

  test("one swings, one is held: 700 - 50 - (200 + 43.3) = 406.7", () => {
    const found = leastBetween(side(350, bar(swing(30))), side(-350, bar(HELD)));
    expect(found.mm).toBeCloseTo(650 - 200 - 50 * Math.cos(Math.PI / 6), 1);
  });

  test("one a metre higher passes over the other: 900 between them, however they swing", () => {
    expect(leastBetween(side(0, bar(swing(40))), side(0, bar(swing(40)), 1000)).mm).toBeCloseTo(900, 6);
  });

  test("close enough they strike, and the depth is the shift that parts them", () => {
    // Straight, 60 apart: 40 into each other.
    expect(leastBetween(side(30, bar(HELD)), side(-30, bar(HELD))).mm).toBeCloseTo(-40, 6);
  });

  test("tilting one moves it out of the other's way: the certificate is of the worst", () => {
    const tilts = bar(swing(30), { from: 0, to: 70 });
    const found = leastBetween(side(350, tilts), side(-350, bar(swing(30))), { within: 0.01 });
    expect(found.mm).toBeCloseTo(700 - 2 * (200 + 50 * Math.cos(Math.PI / 6)), 2);
  });

  test("a motor without parts is refused", () => {
    const none: Moving = { mechanism: AT_SADDLE, parts: [], saddle: [0, 0, 0] };
    expect(() => leastBetween(none, side(0, bar(HELD)))).toThrow(RangeError);
  });
});

const whole = motors.filter((motor) => {
  const values = motorValues(motor);
  return mechanismOf(values) && partsOf(values).length >= 2;
});

/** The least distance seen in some thousand random attitudes of every two parts. */
function leastSeen(one: Moving, other: Moving, random: () => number, looks: number): number {
  const between = ({ from, to }: Range) =>
    from + (to - from) * (random() < 0.3 ? Math.round(random()) : random());
  const stand = ({ mechanism, saddle }: Moving, part: Part) => {
    const pose = { faceAngleDeg: between(part.faceAngles), steeringDeg: between(part.steeringAngles) };
    const points = placed(mechanism, part, pose).map(
      (point): Triple => [point[0] + saddle[0], point[1] + saddle[1], point[2] + saddle[2]],
    );
    return body(Float64Array.from(points.flat()));
  };
  let least = Number.POSITIVE_INFINITY;
  for (const a of one.parts) {
    for (const b of other.parts) {
      for (let look = 0; look < looks; look += 1)
        least = Math.min(least, signedDistance(stand(one, a), stand(other, b)));
    }
  }
  return least;
}

test("twenty pairs of invented motors: nothing seen lies under the certificate, and what is met is met", () => {
  const random = numbers(183);
  for (let pair = 0; pair < 20; pair += 1) {
    const [a, b] = [0, 1].map(() => motorValues(whole[Math.floor(random() * whole.length)]!));
    const apartMm = 350 + 700 * random();
    const moving = (motor: typeof a, y: number, z: number): Moving => ({
      mechanism: mechanismOf(motor!)!,
      parts: partsOf(motor!),
      saddle: [0, y, z],
    });
    const [one, other] = [moving(a, apartMm / 2, 0), moving(b, -apartMm / 2, 100 * random())];
    const found = leastBetween(one, other, { within: 0.5, withinOverlap: 5 });
    const seen = leastSeen(one, other, random, 250);
    expect(seen, `pair ${pair}`).toBeGreaterThanOrEqual(found.lowerMm);
    expect(found.mm - found.lowerMm).toBeLessThan(found.mm < 0 ? 5.01 : 0.51);
    // The pose given really has that distance, by the judge's own reckoning.
    const at = ({ mechanism, parts, saddle }: Moving, i: 0 | 1) => {
      const part = parts.find(({ id }) => id === found.partIds[i])!;
      const points = placed(mechanism, part, found.poses[i]).map((point) => [
        point[0] + saddle[0],
        point[1] + saddle[1],
        point[2] + saddle[2],
      ]);
      return body(Float64Array.from(points.flat()));
    };
    expect(signedDistance(at(one, 0), at(other, 1))).toBeCloseTo(found.mm, 4);
  }
});
