/** Needed dimensions worked by hand, and the laws they obey. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leastClearance } from "#lib/geometry/clearance.ts";
import type { Obstacle, Part } from "#lib/geometry/mechanism.ts";
import { leastSlide } from "#lib/geometry/slide.ts";
import { box, hexahedron, type Solid, type Triple } from "#lib/geometry/solid.ts";
import { inches } from "#lib/quantity/length.ts";
import { rig } from "#tests/oracle/rigs.ts";

const AT_SADDLE = { tiltAxisForwardMm: 0, tiltAxisAboveMm: 0, steerAxisAftMm: 0 };
const HELD = { from: 0, to: 0 };

/** The port cheek of a notch: its inner edge at `half`, its top at `top`. */
const cheek =
  (top: number) =>
  (half: number): Obstacle => ({ id: "cheek-port", solid: box([-19, half, -2000], [19, 20_000, top]) });
const cowl = (solid: Solid, steeringAngles = HELD): Part => ({
  id: "cowl",
  moves: "steered",
  solid,
  faceAngles: HELD,
  steeringAngles,
});

describe("A cowl that sweeps 15 1/2 in to each side", () => {
  // 9.3 by 12.4 from the axis to the corner: 3.1 times a 3-4-5 triangle, so the corner sweeps 15.5.
  const sweeping = cowl(box([-inches(9.3), -inches(12.4), 0], [inches(9.3), inches(12.4), 300]), {
    from: -90,
    to: 90,
  });

  test("wants a notch of 33 in, with 1 in to each side (common practice, no source)", () => {
    const { position, clearance, jumps } = leastSlide(AT_SADDLE, [sweeping], cheek(100), inches(1), {
      from: 100,
      to: 2000,
    });
    expect(2 * position!).toBeGreaterThanOrEqual(inches(33));
    expect(2 * position!).toBeLessThanOrEqual(inches(33) + 0.2);
    expect(clearance.lowerMm).toBeGreaterThanOrEqual(inches(1));
    expect(jumps).toBe(false);
  });

  test("held straight it wants 2 x (12.4 + 1) in", () => {
    const { position } = leastSlide(
      AT_SADDLE,
      [sweeping],
      cheek(100),
      inches(1),
      { from: 100, to: 2000 },
      { straight: true },
    );
    expect(position! - inches(13.4)).toBeGreaterThanOrEqual(0);
    expect(position! - inches(13.4)).toBeLessThanOrEqual(0.1);
  });

  test("may only just touch where the limit is nothing", () => {
    const { position } = leastSlide(AT_SADDLE, [sweeping], cheek(100), 0, { from: 100, to: 2000 });
    expect(position! - inches(15.5)).toBeGreaterThanOrEqual(0);
    expect(position! - inches(15.5)).toBeLessThanOrEqual(0.1);
  });

  test("finds no notch wide enough in a range that ends too soon, and says what is left there", () => {
    const { position, clearance } = leastSlide(AT_SADDLE, [sweeping], cheek(100), inches(1), {
      from: 100,
      to: inches(16),
    });
    expect(position).toBeUndefined();
    expect(clearance.mm).toBeGreaterThanOrEqual(inches(0.5) - 1e-9);
    expect(clearance.mm).toBeLessThanOrEqual(inches(0.5) + 0.1);
  });

  test("needs nothing where the range begins far enough out", () => {
    const { position, jumps } = leastSlide(AT_SADDLE, [sweeping], cheek(100), inches(1), {
      from: 500,
      to: 2000,
    });
    expect(position).toBe(500);
    expect(jumps).toBe(false);
  });
});

describe("A cowl that passes 20 mm above the cheek's top", () => {
  const passing = cowl(box([-19, -254, 0], [19, 254, 300]));
  const need = (limit: number) => leastSlide(AT_SADDLE, [passing], cheek(-20), limit, { from: 50, to: 1000 });

  test("needs no notch for 19.5 mm, but the need jumps just above", () => {
    expect(need(19.5)).toMatchObject({ position: 50, jumps: true });
  });
  test("needs 258.5 mm for 20.5 mm: 4.5 aside and 20 above make 20.5, and the need jumps just below", () => {
    const { position, jumps } = need(20.5);
    expect(position! - 258.5).toBeGreaterThanOrEqual(0);
    // A change of the clearance by 0.1 mm is one of the place by 0.1 x 20.5 / 4.5 there.
    expect(position! - 258.5).toBeLessThanOrEqual((0.1 * 20.5) / 4.5);
    expect(jumps).toBe(true);
  });
  test("needs 269 mm for 25 mm: 15 aside and 20 above make 25, and nothing jumps there", () => {
    const { position, jumps } = need(25);
    expect(position! - 269).toBeGreaterThanOrEqual(0);
    expect(position! - 269).toBeLessThanOrEqual((0.1 * 25) / 15);
    expect(jumps).toBe(false);
  });
});

describe("On invented rigs", () => {
  /** The obstacle moved by d along a unit direction of the bracket frame. */
  const moved = (obstacle: Obstacle, [f, y, v]: Triple, d: number): Obstacle => {
    const corners = [0, 3, 6, 9, 12, 15, 18, 21].map((k): Triple => {
      const at = obstacle.solid.corners;
      return [at[k]! + d * f, at[k + 1]! + d * y, at[k + 2]! + d * v];
    });
    return { ...obstacle, solid: hexahedron(corners) };
  };
  const AWAY: [number, Triple][] = [
    [0, [0, 1, 0]],
    [1, [0, -1, 0]],
    [2, [0, 0, -1]],
    [3, [1, 0, 0]],
    [4, [0, 1, 0]],
    [5, [0, -1, 0]],
  ];

  test("the place found keeps the limit, a nearer one does not, and a greater limit never needs less", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.constantFrom(...AWAY),
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 1, max: 60 }),
        (start, [which, away], limit, more) => {
          const { mechanism, parts, obstacles } = rig(start);
          const at = (d: number) => moved(obstacles[which]!, away, d);
          const range = { from: -200, to: 800 };
          const need = leastSlide(mechanism, parts, at, limit, range);
          const greater = leastSlide(mechanism, parts, at, limit + more, range);
          if (need.position === undefined) return greater.position === undefined;
          if (greater.position !== undefined && greater.position < need.position) return false;
          expect(
            leastClearance(mechanism, parts, at(need.position), { within: 0.001 }).mm,
          ).toBeGreaterThanOrEqual(limit);
          if (need.position === range.from) return true;
          // 0.1 mm of clearance nearer: short, or within the tolerance of the limit.
          return (
            leastClearance(mechanism, parts, at(need.position - 0.1), { within: 0.001 }).mm < limit + 0.1
          );
        },
      ),
      { seed: 33, numRuns: 150 },
    );
  });
});
