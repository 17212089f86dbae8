/**
 * Obstacles by hand: where measurements say a number is taken, there the solid must show it again. Lines
 * and planes are written out from the definitions: forward along the sole (sin a, cos a) in the bracket's
 * f and v, square to it upward (-cos a, sin a), from the inside face (thickness, -drop).
 */
import { describe, expect, test } from "vitest";
import { withSeat } from "#lib/rig/alter.ts";
import { type BracketPoint, bracketToHull } from "#lib/rig/frame.ts";
import { hasWell, isUncut, obstacleIds, outlineOf } from "#lib/rig/obstacles.ts";
import { sternValues } from "#lib/rig/record.ts";
import type { Stern, SternValues } from "#lib/rig/stern.ts";

const RAKE = 14;
const stern = {
  rakeDeg: RAKE,
  transomThicknessMm: 45,
  transomTopMm: 620,
  seatMm: 510,
  notchWidthMm: 760,
  soleDropMm: 190,
  soleAngleDeg: 97,
  wellDepthMm: 680,
  wellFrontHeightMm: 240,
  wellWidthAftMm: 1240,
  wellWidthFrontMm: 1040,
  sideFlareDeg: 12,
  wellSideHeightMm: 150,
} satisfies SternValues;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A point of the well by its definition: so far along the sole, to port, square above the sole. */
function inTheWell(
  along: number,
  y: number,
  above: number,
  angle: number = stern.soleAngleDeg,
): BracketPoint {
  const [s, c] = [Math.sin(radians(angle)), Math.cos(radians(angle))];
  return [45 + along * s - above * c, y, -190 + along * c + above * s];
}

const dot = (a: readonly number[], b: readonly number[]) => a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!;
const less = (a: readonly number[], b: readonly number[]) => a.map((value, k) => value - b[k]!);
const cross = (a: readonly number[], b: readonly number[]) => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];

/** Distance of a point from the plane through the four corners at one end of axis `k` of an outline. */
function offPlane(id: string, k: 0 | 1 | 2, end: 0 | 1, point: readonly number[], of: SternValues = stern) {
  const { corners } = outlineOf(of, id);
  const [a, b, c] = [0, 1, 2, 3, 4, 5, 6, 7]
    .filter((i) => ((i >> k) & 1) === end)
    .map((i) => corners[i]!) as [BracketPoint, BracketPoint, BracketPoint];
  const n = cross(less(b, a), less(c, a));
  return Math.abs(dot(less(point, a), n)) / Math.sqrt(dot(n, n));
}

/** Corners lie 20 m off: rounding of their planes, mm. */
const HAIR = 1e-6;

describe("Cheeks", () => {
  test("beside the notch, as thick as the transom, up to the uncut top along the face", () => {
    const { corners } = outlineOf(stern, "cheek-port");
    const ys = corners.map(([, y]) => y);
    expect(Math.min(...ys)).toBe(380);
    expect(new Set(corners.map(([f]) => f))).toEqual(new Set([0, 45]));
    // 110 plumb on a face raked 14: 110 / cos 14 = 113.3675.
    expect(Math.max(...corners.map(([, , v]) => v))).toBeCloseTo(113.3675, 3);
    expect(Math.max(...outlineOf(stern, "cheek-starboard").corners.map(([, y]) => y))).toBe(-380);
  });

  test("nothing cut: the top beside the bracket, level with the saddle", () => {
    const { seatMm: _, notchWidthMm: __, ...uncut } = stern;
    expect(isUncut(uncut)).toBe(true);
    expect(obstacleIds(uncut)).not.toContain("cheek-port");
    expect(obstacleIds(uncut, 240)).toContain("cheek-port");
    const { corners } = outlineOf(uncut, "cheek-port", 240);
    expect(Math.min(...corners.map(([, y]) => y))).toBe(120);
    expect(Math.max(...corners.map(([, , v]) => v))).toBeCloseTo(0, 9);
  });
});

describe("Sole and bulkhead", () => {
  test("the sole starts at the inside face, a drop below the seat, and runs at its angle", () => {
    for (const along of [0, 300, 2000])
      expect(offPlane("sole", 2, 1, inTheWell(along, 77, 0))).toBeLessThan(HAIR);
    expect(Math.min(...outlineOf(stern, "sole").corners.map(([f]) => f))).toBe(45);
  });

  test("90 plus the rake is level in the boat, 90 square to the transom", () => {
    const heights = (soleAngleDeg: number) => {
      const { corners } = outlineOf({ ...stern, soleAngleDeg }, "sole");
      return corners.slice(4).map((corner) => bracketToHull(corner, RAKE, 510)[2]);
    };
    const level = heights(90 + RAKE);
    for (const height of level) expect(height).toBeCloseTo(level[0]!, 8);
    // Its height: 510 + 45 sin 14 - 190 cos 14 = 510 + 10.88649 - 184.35619 = 336.53030.
    expect(level[0]).toBeCloseTo(336.5303, 3);
    const square = outlineOf({ ...stern, soleAngleDeg: 90 }, "sole").corners.slice(4);
    for (const [, , v] of square) expect(v).toBeCloseTo(-190, 9);
  });

  test("the bulkhead stands square to the sole, its well along it, its top square above it", () => {
    for (const above of [-50, 0, 240])
      expect(offPlane("bulkhead", 0, 0, inTheWell(680, 10, above))).toBeLessThan(HAIR);
    for (const along of [680, 900])
      expect(offPlane("bulkhead", 2, 1, inTheWell(along, 10, 240))).toBeLessThan(HAIR);
  });

  test("nothing of the well reaches aft of the inside face", () => {
    for (const id of ["sole", "side-port", "side-starboard"])
      expect(Math.min(...outlineOf(stern, id).corners.map(([f]) => f))).toBeGreaterThanOrEqual(45 - HAIR);
  });
});

describe("Sides", () => {
  test("the clear width on the sole, at the transom and at the front", () => {
    for (const [id, out] of [
      ["side-port", 1],
      ["side-starboard", -1],
    ] as const) {
      expect(offPlane(id, 1, 0, inTheWell(0, out * 620, 0))).toBeLessThan(HAIR);
      expect(offPlane(id, 1, 0, inTheWell(680, out * 520, 0))).toBeLessThan(HAIR);
    }
  });

  test("lean outward from square to the sole, as seen from aft: tan 12 = 0.212557 a millimetre up", () => {
    expect(offPlane("side-port", 1, 0, inTheWell(0, 620 + 21.2557, 100))).toBeLessThan(1e-3);
    expect(offPlane("side-starboard", 1, 0, inTheWell(680, -520 - 21.2557, 100))).toBeLessThan(1e-3);
    const upright = { ...stern, sideFlareDeg: 0 };
    expect(offPlane("side-port", 1, 0, inTheWell(340, 570, 500), upright)).toBeLessThan(HAIR);
  });

  test("their top is square above the sole; without a height they go up without end", () => {
    for (const along of [0, 680])
      expect(offPlane("side-port", 2, 1, inTheWell(along, 800, 150))).toBeLessThan(HAIR);
    const { wellSideHeightMm: _, ...endless } = stern;
    expect(Math.max(...outlineOf(endless, "side-port").corners.map(([, , v]) => v))).toBeGreaterThan(10_000);
  });
});

describe("What a stern has", () => {
  test("an obstacle needs all its numbers; a well any of its own", () => {
    const { wellWidthFrontMm: _, ...some } = stern;
    expect(obstacleIds(some)).toEqual(["cheek-port", "cheek-starboard", "sole", "bulkhead"]);
    expect(hasWell({ soleDropMm: 190 })).toBe(true);
    expect(hasWell({ rakeDeg: 3, seatMm: 500, deckThicknessMm: 12, wellSideHeightMm: 100 })).toBe(false);
    expect(() => outlineOf(stern, "obstacle:cleat")).toThrow("no such obstacle");
  });

  test("a listed box, whichever corners were given", () => {
    const cleat = { label: "cleat", fromMm: [60, 300, 20], toMm: [20, 200, -40] } as const;
    const { corners } = outlineOf({ ...stern, obstacles: [cleat] }, "obstacle:cleat");
    expect(corners[0]).toEqual([20, 200, -40]);
    expect(corners[7]).toEqual([60, 300, 20]);
  });
});

describe("A seat cut deeper or packed up", () => {
  const measured = (value: number) => ({ value, plusMinus: 1, how: "measured" }) as const;
  const recorded: Stern = {
    id: "hull",
    label: "Hull",
    ...Object.fromEntries(Object.entries(stern).map(([key, value]) => [key, measured(value)])),
    obstacles: [{ label: "ladder", fromMm: [-80, 200, -300], toMm: [-20, 400, 0] }],
  };

  test("leaves the hull where it is: sole, bulkhead, sides and boxes keep their place in the boat", () => {
    for (const seatMm of [450, 560]) {
      const [was, is] = [sternValues(recorded), sternValues(withSeat(recorded, seatMm))];
      for (const id of ["sole", "bulkhead", "obstacle:ladder"]) {
        const before = outlineOf(was, id).corners.map((corner) => bracketToHull(corner, RAKE, 510));
        const after = outlineOf(is, id).corners.map((corner) => bracketToHull(corner, RAKE, seatMm));
        const moves = after.flatMap((point, i) => point.map((value, k) => Math.abs(value - before[i]![k]!)));
        expect(Math.max(...moves)).toBeLessThan(HAIR);
      }
      // Sides and cheeks are cut off 20 m from the seat: their planes must keep their place. Plumb move over
      // cos 14, along the face.
      const shift = (seatMm - 510) / Math.cos(radians(RAKE));
      const moved = ([f, y, v]: BracketPoint): BracketPoint => [f, y, v - shift];
      for (const [along, y] of [
        [0, 620],
        [680, 520],
      ] as const) {
        expect(offPlane("side-port", 1, 0, moved(inTheWell(along, y, 0)), is)).toBeLessThan(HAIR);
        expect(offPlane("side-port", 2, 1, moved(inTheWell(along, y, 150)), is)).toBeLessThan(HAIR);
      }
      expect(offPlane("cheek-port", 2, 1, moved([20, 500, 113.3675]), is)).toBeLessThan(1e-3);
    }
  });

  test("by hand: 51 deeper on a rake of 14 brings the sole 51 / cos 14 = 52.5613 nearer", () => {
    const cut = withSeat(recorded, 459);
    expect(cut.soleDropMm?.value).toBeCloseTo(190 - 52.5613, 3);
    expect(cut.obstacles?.[0]?.fromMm[2]).toBeCloseTo(-300 + 52.5613, 3);
    expect(cut.seatMm).toEqual(measured(459));
    expect(cut.transomTopMm).toEqual(measured(620));
  });

  test("an uncut top becomes a seat with the top's own spread", () => {
    const { seatMm: _, ...uncut } = recorded;
    expect(withSeat(uncut, 560).seatMm).toEqual(measured(560));
  });
});
