/** Dimensions in ink between two points: level, plumb, or along the line between them. */
import type { Dimension, Flat } from "#lib/draw/drawing.ts";

/** A level dimension, its line `offset` paper mm above (minus: below) the points. */
export const level = (
  from: Flat,
  to: Flat,
  offset: number,
  mm: number,
  figure: string,
  of: string,
): Dimension => ({
  mark: "dimension",
  tone: "ink",
  along: "level",
  from,
  to,
  offset,
  mm,
  figure,
  of,
});

/** A plumb dimension, its line to the right (minus: to the left) of the points. */
export const plumb = (...parts: Parameters<typeof level>): Dimension => ({
  ...level(...parts),
  along: "plumb",
});

/** A dimension along the line between the points, to the left (minus: to the right) of the way. */
export const straight = (...parts: Parameters<typeof level>): Dimension => ({
  ...level(...parts),
  along: "along",
});
