import type { Flat } from "#lib/draw/drawing.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/**
 * Hatching of a closed outline of any shape: the pieces of parallel lines that lie inside it.
 * @param spacing between lines, true-size millimetres, more than 0
 * @param angleDeg slope of the lines, anticlockwise from level
 */
export function hatching(points: readonly Flat[], spacing: number, angleDeg = 45): [Flat, Flat][] {
  const [c, s] = [cos(angleDeg), sin(angleDeg)];
  // Turned back by the slope, so that the hatch lines lie level.
  const turned = points.map(([x, y]): Flat => [x * c + y * s, y * c - x * s]);
  const heights = turned.map((point) => point[1]);
  const pieces: [Flat, Flat][] = [];
  const last = Math.max(...heights);
  for (let k = Math.ceil(Math.min(...heights) / spacing); k * spacing < last; k++) {
    const crossings = crossed(turned, k * spacing);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const ends = [crossings[i]!, crossings[i + 1]!].map(
        (x): Flat => [x * c - k * spacing * s, x * s + k * spacing * c],
      );
      pieces.push([ends[0]!, ends[1]!]);
    }
  }
  return pieces;
}

/** Where a level line crosses the edges of an outline, left to right. */
function crossed(points: readonly Flat[], height: number): number[] {
  const found = points.flatMap((a, i) => {
    const b = points[(i + 1) % points.length]!;
    if (a[1] > height === b[1] > height) return [];
    return [a[0] + ((height - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
  });
  return found.sort((a, b) => a - b);
}
