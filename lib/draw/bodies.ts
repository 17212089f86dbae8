/**
 * A motor as a draughtsman sees it: rounded bodies that stay inside the measured envelope, so that the
 * drawing reads as an outboard motor and is never bigger than what the checks work with. Every body is
 * convex; its silhouette in any view and pose is the outline around its thrown points.
 *
 * Points are [x forward, y to port, height above the saddle along the leg]: x from the steering axis for
 * what steers, from the tilt axis for what only tilts. What lies below the plate has two measured heights
 * and a propeller; the rest of its shape is typical, and the drawings say so.
 */

import type { Flat } from "#lib/draw/drawing.ts";
import { octagon, rounded, swollen } from "#lib/draw/rounding.ts";
import { GEARCASE, underwater } from "#lib/draw/underwater.ts";
import type { Corner, MotorKey, MotorValues } from "#lib/rig/motor.ts";
import { COWL, knows, LEG, TILLER } from "#lib/rig/parts.ts";

/** One convex body of a motor: what it is, how it moves, and the points it is stretched around. */
export interface Body {
  readonly of: string;
  readonly moves: "steered" | "tilting";
  readonly points: readonly Corner[];
}

/** A motor of which these numbers are known. */
export type Known<K extends MotorKey> = Required<Pick<MotorValues, K>>;

/** The cowl's side as parts of its length (0 aft, 1 forward) and height (0 bottom, 1 top). It touches all four sides of the envelope. */
const COWL_SIDE: readonly Flat[] = [
  [0.14, 0],
  [0.88, 0],
  [1, 0.1],
  [1, 0.42],
  [0.94, 0.8],
  [0.82, 0.95],
  [0.62, 1],
  [0.2, 1],
  [0.05, 0.86],
  [0, 0.62],
  [0, 0.26],
];

function cowl(motor: Known<(typeof COWL)[number]>): Body {
  const long = motor.cowlFrontMm + motor.cowlAftMm;
  const high = motor.cowlTopMm - motor.cowlBottomMm;
  const side = rounded(COWL_SIDE).map(
    ([u, w]): Flat => [u * long - motor.cowlAftMm, motor.cowlBottomMm + w * high],
  );
  return { of: "cowl", moves: "steered", points: swollen(side, motor.cowlWidthMm / 2) };
}

/** The joint between hood and tray: a level ring round the cowl a quarter of the way up. */
function seam(motor: Known<(typeof COWL)[number]>): Body {
  const height = motor.cowlBottomMm + 0.26 * (motor.cowlTopMm - motor.cowlBottomMm);
  const half = motor.cowlWidthMm / 2;
  const long = motor.cowlFrontMm + motor.cowlAftMm;
  const ring = [0.012, 0.988].flatMap((u) =>
    [-0.6, 0.6].map((y): Corner => [u * long - motor.cowlAftMm, y * half, height]),
  );
  const flanks = [0.2, 0.8].flatMap((u) =>
    [-0.985, 0.985].map((y): Corner => [u * long - motor.cowlAftMm, y * half, height]),
  );
  return { of: "seam", moves: "steered", points: [...ring, ...flanks] };
}

/** The leg: fills its envelope under the cowl and narrows towards the plate. */
function leg(motor: Known<(typeof LEG)[number]>): Body {
  const half = motor.midsectionWidthMm / 2;
  const section = (height: number, fore: number, aft: number, wide: number): Corner[] =>
    [
      [fore * motor.midsectionFrontMm, 0.45],
      [-aft * motor.midsectionAftMm, 0.45],
      [0.5 * (fore * motor.midsectionFrontMm - aft * motor.midsectionAftMm), 1],
    ].flatMap(([x, y]) => [-1, 1].map((hand): Corner => [x!, hand * y! * wide * half, height]));
  const long = motor.cowlBottomMm + motor.shaftLengthMm;
  return {
    of: "leg",
    moves: "steered",
    points: [
      ...section(motor.cowlBottomMm, 1, 1, 1),
      ...section(motor.cowlBottomMm - 0.2 * long, 1, 1, 1),
      ...section(-motor.shaftLengthMm, 0.62, 0.72, 0.6),
    ],
  };
}

/** Arm and grip of the tiller, inside its box. */
function tiller(motor: Known<(typeof TILLER)[number]>): Body[] {
  const { tillerLengthMm: long, tillerHeightMm: low, tillerThicknessMm: thick, tillerOffsetMm: off } = motor;
  const grip = Math.min(130, 0.3 * long);
  const bar = (fromX: number, toX: number, slim: number): Corner[] =>
    [fromX, toX].flatMap((x, end) => {
      const r = (thick / 2) * (end === 0 ? 1 : slim);
      return octagon(r).map(([y, h]): Corner => [x, off + y, low + thick / 2 + h]);
    });
  return [
    { of: "tiller", moves: "steered", points: bar(0, long - grip, 0.62) },
    {
      of: "grip",
      moves: "steered",
      points: [
        ...bar(long - grip, long - 0.12 * grip, 1),
        ...octagon(0.35 * thick).map(([y, h]): Corner => [long - grip - 4, off + y, low + thick / 2 + h]),
        ...octagon(0.36 * thick).map(([y, h]): Corner => [long, off + y, low + thick / 2 + h]),
      ],
    },
  ];
}

/** The swivel bracket between tilt tube and leg; its shape is typical. */
function swivel(
  motor: Known<"steerAxisAftMm" | "tiltAxisAboveMm" | "bracketDropMm" | "bracketWidthMm">,
): Body {
  const { steerAxisAftMm: aft, tiltAxisAboveMm: axis, bracketDropMm } = motor;
  const half = 0.3 * motor.bracketWidthMm;
  const side: Flat[] = [
    [14, axis + 8],
    [-8, axis + 16],
    [-aft, axis + 14],
    [-aft, axis - 0.85 * bracketDropMm - 10],
    [-aft + 18, axis - 0.85 * bracketDropMm],
    [14, axis - 14],
  ];
  return {
    of: "swivel",
    moves: "tilting",
    points: side.flatMap(([x, h]) => [-half, half].map((y): Corner => [x, y, h])),
  };
}

/** Everything else that moves, as the boxes it was measured as. */
function extras(motor: MotorValues): Body[] {
  return (motor.extraSolids ?? []).map(({ label, group, fromMm: a, toMm: b }) => ({
    of: label,
    moves: group,
    points: [a[0], b[0]].flatMap((x) =>
      [a[1], b[1]].flatMap((y) => [a[2], b[2]].map((h): Corner => [x, y, h])),
    ),
  }));
}

/** The bodies of a motor that can be drawn from what is known of it, back to front as seen from the side. */
export function bodiesOf(motor: MotorValues): Body[] {
  return [
    ...(knows(motor, GEARCASE) ? underwater(motor) : []),
    ...(knows(motor, LEG) ? [leg(motor)] : []),
    ...(knows(motor, ["steerAxisAftMm", "tiltAxisAboveMm", "bracketDropMm", "bracketWidthMm"])
      ? [swivel(motor)]
      : []),
    ...extras(motor),
    ...(knows(motor, COWL) ? [cowl(motor), seam(motor)] : []),
    ...(knows(motor, TILLER) ? tiller(motor) : []),
  ];
}

/** What of the motor's shape is left out of a drawing for want of a number, in words. */
export function leftOut(motor: MotorValues): string[] {
  const parts: [string, readonly MotorKey[]][] = [
    ["cowl", COWL],
    ["leg", LEG],
    ["propeller and gearcase", GEARCASE],
  ];
  if (motor.steering === "tiller" || motor.tillerLengthMm !== undefined) parts.push(["tiller", TILLER]);
  const left = parts.filter(([, keys]) => !knows(motor, keys)).map(([words]) => words);
  return motor.steering === undefined && motor.tillerLengthMm === undefined
    ? [...left, "tiller, if it has one"]
    : left;
}
