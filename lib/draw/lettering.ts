import type { Drawing, Flat, Lettering, Window } from "#lib/draw/drawing.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Breadth of a character as a part of the height of capitals: a generous mean for condensed drawing-office lettering. */
const BREADTH = 0.68;

/** Breadth of a line of lettering on paper, mm. An estimate on the broad side: the writer's face may be narrower. */
export const breadthOf = (text: string, height: number): number => text.length * height * BREADTH;

/** The rectangle a lettering covers on the drawing plane, true-size mm, whatever its turn. */
export function boxOf(words: Lettering, scale: number): Window {
  const long = breadthOf(words.text, words.height) * scale;
  const high = words.height * scale;
  const before = { start: 0, middle: long / 2, end: long }[words.align];
  const corners = [-before, long - before].flatMap((along) =>
    [-0.25 * high, 1.15 * high].map(
      (up): Flat => [
        words.at[0] + along * cos(words.turnDeg) - up * sin(words.turnDeg),
        words.at[1] + along * sin(words.turnDeg) + up * cos(words.turnDeg),
      ],
    ),
  );
  const [xs, ys] = [corners.map((corner) => corner[0]), corners.map((corner) => corner[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** Whether two rectangles have more than an edge in common. */
export const collide = (a: Window, b: Window): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/** Where a run of words is broken so that no line is broader than `breadth` paper mm; a single long word stands alone. */
export function folded(text: string, height: number, breadth: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = lines.length > 0 ? `${lines.at(-1)} ${word}` : word;
    if (lines.length > 0 && breadthOf(longer, height) <= breadth) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Size of a drawing on paper, mm. */
export const paperSize = ({
  window,
  scale,
}: Pick<Drawing, "window" | "scale">): readonly [wide: number, high: number] => [
  (window.right - window.left) / scale,
  (window.top - window.bottom) / scale,
];
