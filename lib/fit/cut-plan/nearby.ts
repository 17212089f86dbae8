/**
 * What stands near the notch: fittings and frames, and the transom's own edge.
 */
import type { Settled } from "#lib/fit/cut-plan/choices.ts";
import { boxEnds } from "#lib/fit/cut-plan/notching.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import { withSeat } from "#lib/rig/alter.ts";
import type { Obstruction, Stern } from "#lib/rig/stern.ts";
import { joinery } from "#lib/standards/joinery.ts";

/** Something to heed before or while sawing. */
export interface Warning {
  readonly about: string;
  readonly says: string;
}

/** The opening of the notch, bracket frame: |y| up to the half width, v from the seat to the top. */
interface Opening {
  readonly halfMm: number;
  readonly topMm: number;
}

/** Distance of a box from the opening's prism, mm; 0 where it stands in it. */
function distance(box: Obstruction, { halfMm, topMm }: Opening, thickMm: number): number {
  const [low, high] = boxEnds(box);
  const gap = (axis: 0 | 1 | 2, from: number, to: number) => Math.max(0, low[axis] - to, from - high[axis]);
  return Math.hypot(gap(0, 0, thickMm), gap(1, -halfMm, halfMm), gap(2, 0, topMm));
}

/** Boxes given on the stern as recorded, moved with the seat. */
export const boxesAt = (
  stern: Stern,
  seatMm: number,
  boxes: readonly Obstruction[] = [],
): readonly Obstruction[] => withSeat({ ...stern, obstacles: boxes }, seatMm).obstacles ?? [];

/** Warnings about fittings, frames and the transom's edge. `sawn` is the stern with the new seat, whose boxes moved with it. */
export function near(stern: Stern, sawn: Stern, opening: Opening, choices: Settled): Warning[] {
  const write = lengthWriter(choices.lengths);
  const room = joinery.fittingRoomMm.value;
  const boxes = [...(sawn.obstacles ?? []), ...boxesAt(stern, sawn.seatMm!.value, choices.frames)];
  const close = boxes.flatMap((box): Warning[] => {
    const mm = distance(box, opening, stern.transomThicknessMm!.value);
    if (mm >= room) return [];
    const says =
      mm === 0
        ? `${box.label} stands in the cut: take it off before sawing.`
        : `${box.label} stands ${write(mm)} from the cut, less than ${write(room)}: mind the saw, and what is fastened behind.`;
    return [{ about: box.label, says }];
  });
  return [...close, ...edgeOf(stern, opening, choices)];
}

/** Wood left between the notch and the transom's own edge. */
function edgeOf(stern: Stern, { halfMm }: Opening, choices: Settled): Warning[] {
  const write = lengthWriter(choices.lengths);
  const breadth = choices.transomTopWidthMm ?? stern.transomWidthMm?.value;
  if (breadth === undefined) return [];
  const left = breadth / 2 - halfMm;
  const least = joinery.cheekMm.value;
  if (left >= least) return [];
  const says =
    left <= 0
      ? `The notch is wider than the transom by ${write(-2 * left)}: it cannot be cut.`
      : `Only ${write(left)} of wood is left beside the notch, less than ${write(least)}: knee or double the transom there.`;
  return [{ about: "the transom's edge", says }];
}
