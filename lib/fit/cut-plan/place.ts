/**
 * Where a part stands in the boat, and points on its faces.
 */
import { cross, plus, scaled, type Vector } from "#lib/fit/cut-plan/planes.ts";

/** A point of a part's face: [right, up] as one looks at the marked face, mm. */
export type Spot = readonly [right: number, up: number];

/** Origin on the marked face and the directions of its right and up, bracket frame. The marked face looks along right x up. */
export interface Place {
  readonly originMm: Vector;
  readonly right: Vector;
  readonly up: Vector;
}

/** Outward normal of the marked face. */
export const faceOf = ({ right, up }: Place): Vector => cross(right, up);

/** The point of space a spot stands for, `belowMm` under the marked face. */
export const spotInSpace = (place: Place, [right, up]: Spot, belowMm = 0): Vector =>
  plus(
    plus(place.originMm, plus(scaled(place.right, right), scaled(place.up, up))),
    scaled(faceOf(place), -belowMm),
  );
