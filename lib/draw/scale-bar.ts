/** The scale bar of a sheet: words do not survive copying, a drawn bar does. */
import { type Flat, lettering, type Mark, outline } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { MM_PER_INCH } from "#lib/quantity/length.ts";

/** Height of small lettering on a sheet, mm. */
export const NOTE = 2.3;

/** A scale bar of whole hundreds of millimetres, or of whole inches, some 50 mm long on paper; filled every other part, its length lettered with its unit. */
export function scaleBar(at: Flat, scale: number, lengths: "mm" | "in"): Mark[] {
  const part =
    lengths === "mm"
      ? 10 * scale
      : Math.max(0.5, Math.round((10 * scale) / MM_PER_INCH / 2) * 2 || 0.5) * MM_PER_INCH;
  const high = 1.6 * scale;
  const [x, y] = at;
  const bars = [0, 1, 2, 3, 4].map((k) =>
    outline(
      [
        [x + k * part, y],
        [x + (k + 1) * part, y],
        [x + (k + 1) * part, y + high],
        [x + k * part, y + high],
      ],
      { line: "dimension", fill: k % 2 === 0 ? "solid" : "paper", of: "scale bar" },
    ),
  );
  const long = 5 * part;
  const words = lengths === "mm" ? `${long} mm` : `${Number((long / MM_PER_INCH).toFixed(1))} in`;
  const up = y + high + 1 * scale;
  return [
    ...bars,
    lettering([x, up], "0", { height: NOTE, align: "middle" }),
    lettering([x + long, up], words, { height: NOTE, align: "middle" }),
  ];
}

/** True length of the bar drawn at a scale, mm. */
export const barLength = (scale: number, lengths: "mm" | "in"): number => {
  const { left, right } = extent(
    scaleBar([0, 0], scale, lengths).filter((mark) => mark.mark === "outline"),
    scale,
  );
  return right - left;
};
