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
import { cos, sin } from "#lib/quantity/angle.ts";
import type { Corner, MotorKey, MotorValues } from "#lib/rig/motor.ts";

export interface Body {
  readonly of: string;
  readonly moves: "steered" | "tilting";
  readonly points: readonly Corner[];
}

type Known<K extends MotorKey> = Required<Pick<MotorValues, K>>;
const knows = <K extends MotorKey>(motor: MotorValues, keys: readonly K[]): motor is MotorValues & Known<K> =>
  keys.every((key) => motor[key] !== undefined);

const COWL = ["cowlFrontMm", "cowlAftMm", "cowlWidthMm", "cowlBottomMm", "cowlTopMm"] as const;
const LEG = [
  "midsectionFrontMm",
  "midsectionAftMm",
  "midsectionWidthMm",
  "shaftLengthMm",
  "cowlBottomMm",
] as const;
const TILLER = ["tillerLengthMm", "tillerHeightMm", "tillerThicknessMm", "tillerOffsetMm"] as const;
const GEARCASE = [
  "shaftLengthMm",
  "midsectionFrontMm",
  "midsectionAftMm",
  "propDiameterMm",
  "plateToPropCentreMm",
] as const;

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

/** Corners cut off twice: rounder, and never outside what it was. */
function rounded(points: readonly Flat[], times = 2): Flat[] {
  let round = [...points];
  for (let i = 0; i < times; i++) {
    round = round.flatMap((a, k) => {
      const b = round[(k + 1) % round.length]!;
      return [0.25, 0.75].map((t): Flat => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]);
    });
  }
  return round;
}

/** Slices from the middle outward: half-width as a part of the whole, and how much of the side's outline is left there (a superellipse of the fifth degree). */
const SLICES = [0, 0.6, 0.8, 0.9, 0.96, 1].map(
  (wide) => [wide, wide === 1 ? 0.5 : (1 - wide ** 5) ** 0.2] as const,
);

/** A side outline made into a solid of `halfWidth` with rounded flanks, about y = 0. */
function swollen(side: readonly Flat[], halfWidth: number): Corner[] {
  const middle = [0, 1].map(
    (i) => (Math.min(...side.map((p) => p[i]!)) + Math.max(...side.map((p) => p[i]!))) / 2,
  );
  const [mx, mh] = [middle[0]!, middle[1]!];
  return SLICES.flatMap(([wide, left]) =>
    side.flatMap(([x, h]) =>
      [-1, 1].map((hand): Corner => [mx + (x - mx) * left, hand * wide * halfWidth, mh + (h - mh) * left]),
    ),
  );
}

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

/** A ring of points round the propeller shaft's line at `x`, `radius` out. */
const ring = (x: number, radius: number, height: number): Corner[] =>
  Array.from({ length: 24 }, (_, k): Corner => [x, radius * cos(k * 15), height + radius * sin(k * 15)]);

/** Plate, strut, gearcase, propeller and skeg; only the plate's height, the shaft's, the skeg's and the propeller's diameter are measured. */
function underwater(motor: MotorValues & Known<(typeof GEARCASE)[number]>): Body[] {
  const { propDiameterMm: d, shaftLengthMm, midsectionFrontMm, midsectionAftMm } = motor;
  const [fore, aft] = [0.62 * midsectionFrontMm, -0.72 * midsectionAftMm];
  const plate = -shaftLengthMm;
  const shaft = plate - motor.plateToPropCentreMm;
  const prop = aft - 0.16 * d;
  const bodies: [string, Corner[]][] = [
    [
      "propeller",
      [-1, -0.7, -0.35, 0, 0.35, 0.7, 1].flatMap((t) =>
        ring(prop + 0.055 * d * t, (d / 2) * Math.sqrt(1 - t * t), shaft),
      ),
    ],
    ["hub", [...ring(prop, 0.1 * d, shaft), ...ring(prop - 0.15 * d, 0.06 * d, shaft)]],
    ["strut", slab([fore, plate], [aft, plate], [aft * 0.9, shaft], [fore * 0.9, shaft], 0.05 * d)],
    [
      "gearcase",
      [0.34, 0.3, 0.2, 0, -0.1]
        .flatMap((t) => ring(fore + t * d, 0.15 * d * Math.sqrt(1 - Math.max(0, t / 0.34) ** 2), shaft))
        .concat(ring(prop + 0.05 * d, 0.11 * d, shaft)),
    ],
    ["plate", plateSlab(fore + 0.06 * d, prop - 0.3 * d, plate, 0.36 * d)],
  ];
  const skeg = motor.plateToSkegMm;
  if (skeg !== undefined && plate - skeg < shaft - 0.16 * d) {
    const [top, tip] = [shaft - 0.1 * d, plate - skeg];
    bodies.unshift([
      "skeg",
      slab([fore * 0.5, top], [aft, top], [aft, tip], [aft + 0.4 * (fore * 0.5 - aft), tip], 0.02 * d),
    ]);
  }
  return bodies.map(([of, points]) => ({ of, moves: "steered", points }));
}

const slab = (a: Flat, b: Flat, c: Flat, d: Flat, half: number): Corner[] =>
  [a, b, c, d].flatMap(([x, h]) => [-half, half].map((y): Corner => [x, y, h]));

/** The plate itself, its underside at the measured height, its ends rounded in plan. */
function plateSlab(fore: number, aft: number, height: number, half: number): Corner[] {
  const outline: Flat[] = [
    [fore, 0.25],
    [fore + 0.2 * (aft - fore), 0.75],
    [fore + 0.55 * (aft - fore), 1],
    [fore + 0.9 * (aft - fore), 0.85],
    [aft, 0.45],
  ];
  return outline.flatMap(([x, y]) =>
    [-1, 1].flatMap((hand) => [0, 7].map((up): Corner => [x, hand * y * half, height + up])),
  );
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

/** An eight-sided ring that touches a square of half-width r. */
const octagon = (r: number): Flat[] =>
  [-1, 1].flatMap((a) =>
    [-1, 1].flatMap((b): Flat[] => [
      [a * r, b * 0.45 * r],
      [a * 0.45 * r, b * r],
    ]),
  );

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
  return parts.filter(([, keys]) => !knows(motor, keys)).map(([words]) => words);
}
