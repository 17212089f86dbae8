/**
 * Compound mitres of splayed joints, reached through the plan's own planes. For a board leaning `s` from the
 * wall round a corner `C`: mitre = atan(sin s / tan(C/2)), bevel = asin(cos s cos(C/2)); on edge s and
 * 90 - s change places. Table values: woodweb.com, "Finding Compound Angles for Crown Moulding" (38 and 45
 * degrees, to two decimals; its saw presets 31.6 and 33.9), and sbebuilders.com, crown_table.cgi with
 * Spring_Angle=52 (to five decimals; the corner's half dihedral 64.19).
 */
import { describe, expect, test } from "vitest";
import { angleBetweenDeg, halving, type Plane, sawSetting, type Vector } from "#lib/fit/cut-plan/planes.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Two boards leaning `spring` degrees from walls that meet at `corner` degrees: faces, and the first one's length. */
function boards(spring: number, corner: number): { faces: [Plane, Plane]; length: Vector } {
  // Walls run from the corner at 0 and at `corner` degrees; their normals point into the room.
  const face = (across: number): Plane => ({
    normal: [cos(spring) * cos(across), cos(spring) * sin(across), sin(spring)],
    at: 0,
  });
  return { faces: [face(90), face(corner - 90)], length: [1, 0, 0] };
}

const acute = (degrees: number): number => Math.min(Math.abs(degrees), 180 - Math.abs(degrees));

function setting(spring: number, corner: number) {
  const { faces, length } = boards(spring, corner);
  const joint = halving(...faces);
  const { tiltDeg, tableDeg } = sawSetting(faces[0].normal, length, joint.normal);
  return { mitre: acute(tableDeg), bevel: Math.abs(tiltDeg) };
}

/** The same board standing on its edge: the edge's normal lies square to the face's, in the section. */
function onEdge(spring: number, corner: number) {
  const { faces, length } = boards(spring, corner);
  const joint = halving(...faces);
  const edge: Vector = [0, -sin(spring), cos(spring)];
  const { tiltDeg, tableDeg } = sawSetting(edge, length, joint.normal);
  return { mitre: acute(tableDeg), bevel: Math.abs(tiltDeg) };
}

describe("published compound mitres", () => {
  test.each([
    [38, 90, 31.62, 33.86],
    [45, 90, 35.26, 30.0],
  ])("spring %d, corner %d: mitre %d, bevel %d, as the table prints them", (spring, corner, mitre, bevel) => {
    const found = setting(spring, corner);
    // Printed to two decimals: within half of the last.
    expect(Math.abs(found.mitre - mitre)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(found.bevel - bevel)).toBeLessThanOrEqual(0.0051);
  });

  test.each([
    [1, 89.3655, 89.1879, 37.9983, 51.99721],
    [2, 88.73106, 88.376, 37.99318, 51.98883],
    [3, 88.09674, 87.56451, 37.98466, 51.97488],
    [4, 87.46259, 86.75362, 37.97274, 51.95535],
    [5, 86.82868, 85.94354, 37.95741, 51.93026],
  ])("spring 52, corner %d, flat and on edge", (corner, mitre, mitreEdge, bevel, bevelEdge) => {
    const [flat, edge] = [setting(52, corner), onEdge(52, corner)];
    // Printed to five decimals.
    expect(Math.abs(flat.mitre - mitre)).toBeLessThan(6e-6);
    expect(Math.abs(flat.bevel - bevel)).toBeLessThan(6e-6);
    expect(Math.abs(edge.mitre - mitreEdge)).toBeLessThan(6e-6);
    expect(Math.abs(edge.bevel - bevelEdge)).toBeLessThan(6e-6);
  });

  test("spring 52, corner 90: the dihedral of face and joint is 64.19", () => {
    const { faces } = boards(52, 90);
    const joint = halving(...faces);
    expect(Math.abs(acute(angleBetweenDeg(faces[0].normal, joint.normal)) - 64.19)).toBeLessThan(0.0051);
  });
});

describe("the general formula, over the range of springs and corners", () => {
  const degrees = 180 / Math.PI;
  for (const spring of [5, 17, 38, 52, 71]) {
    for (const corner of [20, 60, 89, 90, 91, 135, 170]) {
      test(`spring ${spring}, corner ${corner}`, () => {
        const half = corner / 2 / degrees;
        const s = spring / degrees;
        const found = setting(spring, corner);
        expect(found.mitre).toBeCloseTo(Math.atan(Math.sin(s) / Math.tan(half)) * degrees, 9);
        expect(found.bevel).toBeCloseTo(Math.asin(Math.cos(s) * Math.cos(half)) * degrees, 9);
      });
    }
  }
});
