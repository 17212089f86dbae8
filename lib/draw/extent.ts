/** How much of the plane marks and their words take. */
import { drawnAngle, drawnDimension, figureOf } from "#lib/draw/dimension.ts";
import type { Flat, Mark, Window } from "#lib/draw/drawing.ts";
import { boxOf } from "#lib/draw/lettering.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

function points(mark: Mark, scale: number): Flat[] {
  switch (mark.mark) {
    case "outline":
      return [...mark.points];
    case "arc":
      return Array.from({ length: 25 }, (_, k) => {
        const angle = mark.fromDeg + ((mark.toDeg - mark.fromDeg) * k) / 24;
        return [mark.centre[0] + mark.radius * cos(angle), mark.centre[1] + mark.radius * sin(angle)];
      });
    case "lettering": {
      const { left, right, bottom, top } = boxOf(mark, scale);
      return [
        [left, bottom],
        [right, top],
      ];
    }
    case "dimension":
      return drawnDimension(mark, scale).flatMap((part) => points(part, scale));
    case "angle":
      return drawnAngle(mark, scale).flatMap((part) => points(part, scale));
  }
}

/** The least rectangle around marks, true mm. */
export function extent(marks: readonly Mark[], scale: number): Window {
  const all = marks.flatMap((mark) => points(mark, scale));
  const [xs, ys] = [all.map((point) => point[0]), all.map((point) => point[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** The rectangle of a mark's words, where it has any. */
export function wordsBox(mark: Mark, scale: number): Window | undefined {
  if (mark.mark === "lettering") return boxOf(mark, scale);
  if (mark.mark === "dimension") return boxOf(figureOf(mark, scale), scale);
  return undefined;
}
