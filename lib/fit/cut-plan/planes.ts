/**
 * Planes, and the saw settings that follow from them. A part of a well is bounded by planes; every bevel
 * and mitre is an angle between two of them, so none is looked up in a table.
 */
import { atan2, cos, sin } from "#lib/quantity/angle.ts";

/** Three coordinates, mm, of the frame the caller works in. */
export type Vector = readonly [number, number, number];

/** The points p with normal . p = at; `normal` has unit length and points out of the wood, which lies where normal . p <= at. */
export interface Plane {
  readonly normal: Vector;
  readonly at: number;
}

export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const scaled = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
export const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The direction of a vector. Throws a RangeError for one without length. */
export function unit(a: Vector): Vector {
  const length = Math.hypot(...a);
  if (!(length > 0)) throw new RangeError("A direction needs a length.");
  return scaled(a, 1 / length);
}

/** The plane square to `normal` through a point. */
export function planeThrough(point: Vector, normal: Vector): Plane {
  const n = unit(normal);
  return { normal: n, at: dot(n, point) };
}

/** The plane through three points, its normal on the same side as `outward`. Throws where they lie in a line. */
export function planeOfPoints(a: Vector, b: Vector, c: Vector, outward: Vector): Plane {
  const normal = cross(minus(b, a), minus(c, a));
  return planeThrough(a, dot(normal, outward) < 0 ? scaled(normal, -1) : normal);
}

/** The same plane seen from its other side. */
export const turned = ({ normal, at }: Plane): Plane => ({ normal: scaled(normal, -1), at: -at });

/** The plane `byMm` further along its normal. */
export const shifted = ({ normal, at }: Plane, byMm: number): Plane => ({ normal, at: at + byMm });

/** How far a point stands outside a plane, mm; minus = within. */
export const beyond = ({ normal, at }: Plane, point: Vector): number => dot(normal, point) - at;

/** The point three planes have in common (Cramer's rule). Throws a RangeError where two are parallel. */
export function meeting(a: Plane, b: Plane, c: Plane): Vector {
  const bc = cross(b.normal, c.normal);
  const whole = dot(a.normal, bc);
  if (Math.abs(whole) < 1e-12) throw new RangeError("The planes do not meet in a point.");
  const sum = plus(
    plus(scaled(bc, a.at), scaled(cross(c.normal, a.normal), b.at)),
    scaled(cross(a.normal, b.normal), c.at),
  );
  return scaled(sum, 1 / whole);
}

/** Angle between two directions, degrees, 0 to 180. */
export const angleBetweenDeg = (a: Vector, b: Vector): number => atan2(Math.hypot(...cross(a, b)), dot(a, b));

/** The inside angle of the corner two walls make, degrees, from their normals out of the corner's room. */
export const cornerDeg = (a: Plane, b: Plane): number => 180 - angleBetweenDeg(a.normal, b.normal);

/** The plane that halves a corner between two walls: a mitred joint lies in it. Normal from wall `b` towards wall `a`. */
export function halving(a: Plane, b: Plane): Plane {
  const normal = minus(a.normal, b.normal);
  const length = Math.hypot(...normal);
  return { normal: unit(normal), at: (a.at - b.at) / length };
}

/** How a saw is set for a cut, degrees. */
export interface SawSetting {
  /**
   * The blade from square: plus = the cut faces the marked face, so that the marked face is the short
   * one; minus = the cut is hidden behind it and the marked face is the long one.
   */
  readonly tiltDeg: number;
  /** The cut's line on the marked face from square to the length; 0 = straight across, plus = turned anticlockwise, 90 = along it. */
  readonly tableDeg: number;
}

/**
 * The setting for a cut with outward normal `cut` through stock whose marked face has outward normal
 * `face` and whose length runs along `length` (in the face): sin tilt = cut . face, and the table turns by
 * the angle of the cut's normal, laid into the face, from the length.
 */
export function sawSetting(face: Vector, length: Vector, cut: Vector): SawSetting {
  const toFace = dot(cut, face);
  const inFace = minus(cut, scaled(face, toFace));
  return {
    tiltDeg: atan2(toFace, Math.hypot(...inFace)),
    tableDeg: atan2(dot(inFace, cross(face, length)), dot(inFace, length)),
  };
}

/** A direction in a vertical plane: `alongDeg` up from level. */
export const rising = (alongDeg: number): Vector => [cos(alongDeg), 0, sin(alongDeg)];
