/** What lies below the cowl's leg: plate, strut, gearcase, propeller, skeg. Heights are measured, the shape is typical. */
import type { Body, Known } from "#lib/draw/bodies.ts";
import type { Flat } from "#lib/draw/drawing.ts";
import { ring, slab } from "#lib/draw/rounding.ts";
import type { Corner, MotorValues } from "#lib/rig/motor.ts";

/** What must be known before anything below the leg is drawn. */
export const GEARCASE = [
  "shaftLengthMm",
  "midsectionFrontMm",
  "midsectionAftMm",
  "propDiameterMm",
  "plateToPropCentreMm",
] as const;

/** Plate, strut, gearcase, propeller and skeg; only the plate's height, the shaft's, the skeg's and the propeller's diameter are measured. */
export function underwater(motor: MotorValues & Known<(typeof GEARCASE)[number]>): Body[] {
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
