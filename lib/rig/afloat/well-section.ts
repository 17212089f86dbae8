/**
 * A motor well cut lengthwise down the middle. In the section, s runs forward along the sole from the
 * inside face of the transom and z up from it, square to it; the well's breadth at (s, z) is a straight
 * function of both, so volumes and water surfaces come out exactly, tapering, flaring or tilted.
 */
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import type { SternValues } from "#lib/rig/stern.ts";

export type Well = Required<
  Pick<
    SternValues,
    | "soleDropMm"
    | "soleAngleDeg"
    | "wellDepthMm"
    | "wellFrontHeightMm"
    | "wellWidthAftMm"
    | "wellWidthFrontMm"
    | "sideFlareDeg"
  >
> &
  Pick<SternValues, "wellSideHeightMm">;

/** A point of the section, mm. */
export type Spot = readonly [s: number, z: number];

/** A straight function of a spot. */
export interface Linear {
  readonly at0: number;
  readonly perS: number;
  readonly perZ: number;
}

export const valueAt = ({ at0, perS, perZ }: Linear, [s, z]: Spot): number => at0 + perS * s + perZ * z;

/** Breadth of the well, mm. */
export const breadth = (well: Well): Linear => ({
  at0: well.wellWidthAftMm,
  perS: (well.wellWidthFrontMm - well.wellWidthAftMm) / well.wellDepthMm,
  perZ: 2 * tan(well.sideFlareDeg),
});

/** Forward of the transom's inside face where not below 0: s - z cot a, with a the sole's angle to the face. */
const forwardOfFace = ({ soleAngleDeg: a }: Well): Linear => ({ at0: 0, perS: 1, perZ: -cos(a) / sin(a) });

/** What bounds the water sideways and below: not below 0 inside the well. */
export const walls = (well: Well): Linear[] => [
  { at0: 0, perS: 0, perZ: 1 },
  { at0: well.wellDepthMm, perS: -1, perZ: 0 },
  forwardOfFace(well),
  breadth(well),
];

/** Taller and longer than any well, mm. */
const FAR = 20_000;

/** The section without water in it: floor, transom, front and (where they lean in) sides, open upward. */
export const openSection = (well: Well): Spot[] =>
  walls(well).reduce<Spot[]>(clipped, [
    [-FAR, 0],
    [FAR, 0],
    [FAR, FAR],
    [-FAR, FAR],
  ]);

/** The part of a convex outline where a straight function is not below 0. */
export function clipped(outline: readonly Spot[], keep: Linear): Spot[] {
  return outline.flatMap((spot, i) => {
    const next = outline[(i + 1) % outline.length]!;
    const [here, there] = [valueAt(keep, spot), valueAt(keep, next)];
    const crossing: Spot[] = here < 0 === there < 0 ? [] : [between(spot, next, here / (here - there))];
    return here < 0 ? crossing : [spot, ...crossing];
  });
}

const between = (a: Spot, b: Spot, share: number): Spot => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
];

/** Integral of a straight function over a convex outline: triangle by triangle, area times the mean of its corners. */
export function integral(outline: readonly Spot[], over: Linear): number {
  const [first, ...rest] = outline;
  if (!first) return 0;
  return rest.slice(1).reduce((sum, third, i) => {
    const second = rest[i]!;
    const area =
      ((second[0] - first[0]) * (third[1] - first[1]) - (third[0] - first[0]) * (second[1] - first[1])) / 2;
    return sum + (area * (valueAt(over, first) + valueAt(over, second) + valueAt(over, third))) / 3;
  }, 0);
}

/** Edges over which water leaves the well: the seat, the front's top, and the sides' tops where they were taken. */
export function lips(well: Well): Spot[] {
  const { soleDropMm: drop, soleAngleDeg: a, wellDepthMm, wellFrontHeightMm, wellSideHeightMm: side } = well;
  return [
    [drop * cos(a), drop * sin(a)],
    [wellDepthMm, wellFrontHeightMm],
    ...(side === undefined
      ? []
      : ([
          [(side * cos(a)) / sin(a), side],
          [wellDepthMm, side],
        ] satisfies Spot[])),
  ];
}
