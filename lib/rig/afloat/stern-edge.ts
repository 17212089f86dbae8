/**
 * The edge behind which the boat's own floor is safe from water over the stern: the seat where there is no
 * motor well; with one the lowest of its front and its sides, unless the seat itself is higher.
 */
import { aboveWater, type Level } from "#lib/rig/afloat/floating.ts";
import {
  drainPoint,
  freeboardAtSeat,
  freeboardAtWellFront,
  type WellPlace,
} from "#lib/rig/afloat/freeboard.ts";
import { seatOf } from "#lib/rig/afloat/lying.ts";
import { bracketToHull } from "#lib/rig/frame.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** Numbers that say where a well's front stands. */
export const WELL_PLACE = [
  "transomThicknessMm",
  "soleDropMm",
  "soleAngleDeg",
  "wellDepthMm",
  "wellFrontHeightMm",
] as const satisfies readonly SternKey[];

/** The well of a stern, placed; undefined where there is none or a number of it was not taken. */
export function wellPlaceOf(stern: SternValues): WellPlace | undefined {
  const seat = seatOf(stern);
  if (!seat || WELL_PLACE.some((key) => stern[key] === undefined)) return undefined;
  return { ...(stern as Required<SternValues>), ...seat };
}

/** Freeboard of the seat, mm, plumb; minus = under water. */
export function seatFreeboard(level: Level, stern: SternValues): number | undefined {
  const seat = seatOf(stern);
  return seat && freeboardAtSeat(level, seat);
}

/** Freeboard of the lowest of the well's front and its sides' tops, mm; sides nobody took are taken to be no lower than the front. */
export function wellFreeboard(level: Level, stern: SternValues): number | undefined {
  const well = wellPlaceOf(stern);
  if (!well) return undefined;
  const side = stern.wellSideHeightMm;
  const sides =
    side === undefined
      ? []
      : [0, well.wellDepthMm].map((along) =>
          aboveWater(level, bracketToHull(inWell(well, along, 0, side), well.rakeDeg, well.seatMm)),
        );
  return Math.min(freeboardAtWellFront(level, well), ...sides);
}

/** The edge that keeps water out of the boat. */
export function edgeFreeboard(
  level: Level,
  stern: SternValues,
): { readonly at: "seat" | "well"; readonly mm: number } | undefined {
  const seat = seatFreeboard(level, stern);
  if (seat === undefined) return undefined;
  const well = wellFreeboard(level, stern);
  return well !== undefined && well > seat ? { at: "well", mm: well } : { at: "seat", mm: seat };
}

/** Height of the well's drains above the water outside, mm; minus = water stands in the well. */
export function drainsAboveWater(level: Level, stern: SternValues): number | undefined {
  const well = wellPlaceOf(stern);
  return well && aboveWater(level, drainPoint(well));
}
