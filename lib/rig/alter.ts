/**
 * What sawing and packing do to a stern's numbers. The hull stays where it is: a seat cut deeper brings
 * the well sole and everything else nearer to it.
 */

import { cos } from "#lib/quantity/angle.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import type { Corner } from "#lib/rig/motor.ts";
import type { Stern, SternKey } from "#lib/rig/stern.ts";

/** The stern with one number put in place; spread and `how` stay those of the number it replaces, else as measured. */
export function withNumber(stern: Stern, key: SternKey, value: number): Stern {
  const was: Measured = stern[key] ?? { value, how: "measured" };
  return { ...stern, [key]: { ...was, value } };
}

/**
 * The stern with its seat at `seatMm`. Heights given from the seat follow: the sole's drop, and the
 * obstacles of the bracket frame, shift along the face by the seat's move over cos rake.
 */
export function withSeat(stern: Stern, seatMm: number): Stern {
  const seat = stern.seatMm ?? stern.transomTopMm;
  if (!seat) return withNumber(stern, "seatMm", seatMm);
  const raised = (seatMm - seat.value) / cos(stern.rakeDeg?.value ?? 0);
  const shift = ([f, y, v]: Corner): Corner => [f, y, v - raised];
  const moved: Stern = {
    ...stern,
    seatMm: { ...seat, value: seatMm },
    ...(stern.obstacles && {
      obstacles: stern.obstacles.map((one) => ({ ...one, fromMm: shift(one.fromMm), toMm: shift(one.toMm) })),
    }),
  };
  return stern.soleDropMm ? withNumber(moved, "soleDropMm", stern.soleDropMm.value + raised) : moved;
}
