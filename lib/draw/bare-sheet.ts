/** A sheet for one drawing that stands in a page: its scale and a scale bar under it, no title strip. */
import { type Drawing, lettering, type Mark } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { barLength, NOTE, scaleBar } from "#lib/draw/scale-bar.ts";
import { settled } from "#lib/draw/settle.ts";
import { type Content, MARGIN, scaleFor } from "#lib/draw/sheet.ts";
import { SHEET } from "#lib/draw/title-strip.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** Height of the strip with scale and bar, paper mm. */
const FOOT = 9;

/** A view on a sheet of the usual breadth, to the largest scale of ISO 5455 at which it fits. */
export function bareSheet(content: Content, lengths: LengthSystem): Drawing {
  const scale = scaleFor([content]);
  const things = extent(content.things, scale);
  const middle = (things.left + things.right) / 2;
  const [left, right] = [middle - (SHEET / 2) * scale, middle + (SHEET / 2) * scale];
  const sides = { left: left + MARGIN * scale, right: right - MARGIN * scale };
  const marks: readonly Mark[] = [...content.things, ...settled(content.lettered(scale), scale, sides)];
  const reach = extent(marks, scale);
  const bottom = reach.bottom - (MARGIN + FOOT) * scale;
  const words = `SCALE 1:${scale}, DIMENSIONS IN ${lengths === "mm" ? "MILLIMETRES" : "INCHES"}`;
  const foot = bottom + 2.5 * scale;
  const footing = [
    lettering([sides.left, foot], words, { height: NOTE }),
    ...scaleBar([sides.right - barLength(scale, lengths) - 6 * scale, foot], scale, lengths),
  ];
  return {
    title: content.title,
    says: content.says,
    scale,
    window: { left, right, bottom, top: reach.top + MARGIN * scale },
    marks: [...marks, ...footing],
  };
}
