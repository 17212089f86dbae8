/** The parts of sheets that pictures which move are drawn in. */
import type { Drawing, Window } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { MARGIN } from "#lib/draw/sheet.ts";

/** The part of a sheet its view fills, without frame, notes and strip, and with room for a line of words above and the scale bar below. */
function viewed({ marks, scale }: Pick<Drawing, "marks" | "scale">): Window {
  const sheet = ["frame", "strip", "scale bar", "datum"];
  const things = marks.filter(
    (mark) => mark.mark === "arc" || (mark.mark === "outline" && !sheet.includes(mark.of)),
  );
  const { left, right, bottom, top } = extent(things, scale);
  const room = MARGIN * scale;
  return { left: left - room, right: right + room, bottom: bottom - 2.2 * room, top: top + 2.2 * room };
}

/** Windows for pictures that move, one for each sheet: what the sheet's view fills, all of one breadth, so that they too stay to one scale. */
export function viewsOf<Name extends string>(
  sheets: Readonly<Record<Name, Drawing>>,
): Record<Name, Pick<Drawing, "window" | "scale">> {
  const windows = Object.entries<Drawing>(sheets).map(([name, drawing]) => ({
    name,
    scale: drawing.scale,
    window: viewed(drawing),
  }));
  const breadth = Math.max(...windows.map(({ window }) => window.right - window.left));
  const broadened = windows.map(({ name, scale, window }) => {
    const more = (breadth - (window.right - window.left)) / 2;
    return [
      name,
      { scale, window: { ...window, left: window.left - more, right: window.right + more } },
    ] as const;
  });
  return Object.fromEntries(broadened) as Record<Name, Pick<Drawing, "window" | "scale">>;
}
