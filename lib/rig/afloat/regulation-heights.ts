/**
 * Transom and motor-well height as 33 CFR 183.3 takes them: plumb, from the lowest place where water can
 * enter along the top, down to the bottom on the centreline without its keel. The record's heights stand
 * on the datum, which is the keel's underside where there is one.
 */
import { type WellPlace, wellFrontPoint } from "#lib/rig/afloat/freeboard.ts";
import { bracketToHull } from "#lib/rig/frame.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import { seatNow } from "#lib/rig/plate.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** Transom height, mm: the seat as it is now, a cutout counted, less the keel's depth. Undefined where either was not taken. */
export function regulationTransomHeight(stern: SternValues): number | undefined {
  const seat = seatNow(stern);
  return seat === undefined || stern.keelDepthMm === undefined ? undefined : seat - stern.keelDepthMm;
}

/** Motor-well height, mm: the lowest of the front's top and the sides' tops, less the keel's depth. Sides whose height was not taken are taken to be no lower than the front. */
export function regulationMotorwellHeight(
  well: WellPlace & Required<Pick<SternValues, "keelDepthMm">> & Pick<SternValues, "wellSideHeightMm">,
): number {
  const { rakeDeg, seatMm, wellDepthMm, wellSideHeightMm: side, keelDepthMm } = well;
  const sideTops =
    side === undefined
      ? []
      : [0, wellDepthMm].map((along) => bracketToHull(inWell(well, along, 0, side), rakeDeg, seatMm)[2]);
  return Math.min(wellFrontPoint(well)[2], ...sideTops) - keelDepthMm;
}
