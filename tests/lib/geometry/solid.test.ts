import { describe, expect, test } from "vitest";
import { box, hexahedron, type Triple } from "#lib/geometry/solid.ts";

const CUBE: Triple[] = [
  [0, 0, 0],
  [1, 0, 0],
  [0, 1, 0],
  [1, 1, 0],
  [0, 0, 1],
  [1, 0, 1],
  [0, 1, 1],
  [1, 1, 1],
];
const withCorner = (i: number, corner: Triple): Triple[] => CUBE.map((old, k) => (k === i ? corner : old));

describe("A box", () => {
  test("may be given by any two opposite corners", () => {
    const wanted = [0, 0, 0, 1, 0, 0, 0, 2, 0, 1, 2, 0, 0, 0, 3, 1, 0, 3, 0, 2, 3, 1, 2, 3];
    expect([...box([0, 0, 0], [1, 2, 3]).corners]).toEqual(wanted);
    expect([...box([1, 2, 3], [0, 0, 0]).corners]).toEqual(wanted);
    expect([...box([0, 2, 0], [1, 0, 3]).corners]).toEqual(wanted);
  });

  test("has outward normals, three directions of faces and three of edges", () => {
    const { normals, faceAxes, edgeAxes } = box([-1, -1, -1], [1, 1, 1]);
    expect([...normals].map((value) => value + 0)).toEqual([
      -1, 0, 0, 1, 0, 0, 0, -1, 0, 0, 1, 0, 0, 0, -1, 0, 0, 1,
    ]);
    expect(faceAxes.length).toBe(9);
    expect(edgeAxes.length).toBe(9);
  });

  test("without height is refused", () => {
    expect(() => box([0, 0, 0], [1, 2, 0])).toThrow(/length, breadth and height/);
  });
});

describe("A solid of eight corners", () => {
  test("may be a wedge: its sloping face has its own normal", () => {
    // Top falls from 1 to 1/4 over a run of 1: the normal leans (3, 0, 4)/5 (3-4-5 triangle).
    const wedge = hexahedron(withCorner(5, [1, 0, 0.25]).map((c, i) => (i === 7 ? [1, 1, 0.25] : c)));
    expect(wedge.normals[15]).toBeCloseTo(0.6, 12);
    expect(wedge.normals[16]).toBeCloseTo(0, 12);
    expect(wedge.normals[17]).toBeCloseTo(0.8, 12);
    expect(wedge.edgeAxes.length).toBe(12);
  });

  test("has outward normals whichever way its corners run", () => {
    const mirrored = hexahedron(CUBE.map(([x, y, z]): Triple => [x, -y, z]));
    for (let face = 0; face < 18; face += 3) {
      const height = (i: number) =>
        [0, 1, 2].reduce((sum, k) => sum + mirrored.normals[face + k]! * mirrored.corners[3 * i + k]!, 0);
      const middle = [0, 1, 2, 3, 4, 5, 6, 7].reduce((sum, i) => sum + height(i) / 8, 0);
      expect(Math.max(...[0, 1, 2, 3, 4, 5, 6, 7].map(height))).toBeCloseTo(middle + 0.5, 12);
    }
  });

  test.each([
    ["seven corners", CUBE.slice(1), /8 corners/],
    ["a coordinate that is no number", withCorner(3, [1, Number.NaN, 0]), /finite/],
    ["a corner at infinity", withCorner(3, [1, Number.POSITIVE_INFINITY, 0]), /finite/],
    ["two corners in one place", withCorner(1, [0, 0, 0]), /fall together/],
    ["a face that is not flat", withCorner(7, [1, 1, 2]), /not flat/],
    ["corners out of order", [1, 0, 2, 3, 4, 5, 6, 7].map((i) => CUBE[i]!), /not flat|not convex|no area/],
    ["all corners in one plane", CUBE.map(([x, y, z]): Triple => [x + 2 * z, y + 3 * z, 0]), /no thickness/],
    [
      "a corner pushed in beyond the line of its neighbours",
      [0, 1].flatMap((z): Triple[] => [
        [0, 0, z],
        [10, 0, z],
        [0, 10, z],
        [2, 2, z],
      ]),
      /not convex/,
    ],
  ])("is refused with %s", (_, corners, words) => {
    expect(() => hexahedron(corners)).toThrow(words);
    expect(() => hexahedron(corners)).toThrow(RangeError);
  });
});
