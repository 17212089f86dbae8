/**
 * The notch on the transom's outside face, seen square to it from aft: true lengths down the rake.
 */
import { arc, type Dimension, type Flat, lettering, line, type Mark } from "#lib/draw/drawing.ts";
import { figureOfMark } from "#lib/draw/paper/figures.ts";
import type { View } from "#lib/draw/paper/page.ts";
import type { Marked } from "#lib/fit/cut-plan/marked.ts";
import type { NotchPlan } from "#lib/fit/cut-plan/notch.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** How far the top is drawn outboard of the notch, mm. */
const BESIDE = 120;

/** The line of the cut, the transom's top beside it, the centreline and the corner holes. */
export function notchLines(notch: NotchPlan): Mark[] {
  const top = notch.depth.along.markMm;
  const half = notch.halfWidth.markMm;
  const { radiusMm } = notch.corner;
  const hole = (side: 1 | -1) =>
    arc([side * notch.holes.acrossMm, top - notch.holes.downMm], radiusMm, [0, 360], {
      line: "dimension",
      of: "corner hole",
    });
  const cross = (side: 1 | -1): Mark[] => {
    const [x, y] = [side * notch.holes.acrossMm, top - notch.holes.downMm];
    return [
      line(
        [
          [x - 5, y],
          [x + 5, y],
        ],
        { line: "dimension", of: "hole centre" },
      ),
      line(
        [
          [x, y - 5],
          [x, y + 5],
        ],
        { line: "dimension", of: "hole centre" },
      ),
    ];
  };
  return [
    line(
      [
        [-half - BESIDE, top],
        [-half, top],
      ],
      { of: "top" },
    ),
    line(notch.line, { of: "notch" }),
    line(
      [
        [half, top],
        [half + BESIDE, top],
      ],
      { of: "top" },
    ),
    line(
      [
        [-half, top],
        [half, top],
      ],
      { line: "extreme", of: "top before the cut" },
    ),
    line(
      [
        [0, -40],
        [0, top + 15],
      ],
      { line: "centre", of: "centreline" },
    ),
    hole(-1),
    hole(1),
    ...cross(-1),
    ...cross(1),
  ];
}

/** PORT at the left and STARBOARD at the right, inside the cut, as one looks forward from aft. */
export function notchWords(notch: NotchPlan, scale: number): Mark[] {
  const y = notch.depth.along.markMm / 2 - 1.75 * scale;
  const x = notch.halfWidth.markMm - 4 * scale;
  return [
    lettering([-x, y], "PORT", { height: 3.5, bold: true }),
    lettering([x, y], "STARBOARD", { height: 3.5, align: "end", bold: true }),
  ];
}

/** The notch on its sheet. */
export function notchView(notch: NotchPlan, lengths: LengthSystem): View {
  const top = notch.depth.along.markMm;
  const half = notch.halfWidth.markMm;
  const dimension = (
    from: Flat,
    to: Flat,
    along: Dimension["along"],
    offset: number,
    length: Marked,
    of: string,
  ): Dimension => ({
    mark: "dimension",
    from,
    to,
    along,
    offset,
    tone: "ink",
    figure: figureOfMark(length, lengths),
    mm: length.markMm,
    of,
  });
  return {
    title: "Notch, seen from aft",
    says: "The notch on the outside face of the transom, looked at square to the face from aft, port to the left.",
    marks: (scale) => [
      ...notchLines(notch),
      ...notchWords(notch, scale),
      dimension([-half, top], [0, top], "level", 9, notch.halfWidth, "half width to port"),
      dimension([0, top], [half, top], "level", 9, notch.halfWidth, "half width to starboard"),
      dimension(
        [-half - BESIDE / 2, 0],
        [-half - BESIDE / 2, top],
        "plumb",
        -9,
        notch.depth.along,
        "depth down the face",
      ),
      lettering([half + 10 * scale, -8 * scale], `R ${Math.round(notch.corner.radiusMm * 10) / 10} mm`, {
        leader: [half - 0.293 * notch.corner.radiusMm, 0.293 * notch.corner.radiusMm],
      }),
    ],
    notes: [
      "True lengths on the outside face, down the rake; saw square to the face.",
      `Depth: ${notch.tolerance.depth.says}`,
      `Half width: ${notch.tolerance.halfWidth.says} Half widths are rounded ${notch.halfWidth.rounded}, the depth ${notch.depth.along.rounded}.`,
      `Corner holes: ${Math.round(notch.corner.boreMm * 10) / 10} mm across, centres on the crosses. ${notch.corner.why.charAt(0).toUpperCase()}${notch.corner.why.slice(1)}.`,
      `Stop the saw ${notch.stops.cheek.text} down each cheek and ${notch.stops.seat.text} along the seat from the centreline. ${notch.stops.says}`,
      ...notch.offsets.map(({ from, to, length }) => `From the ${from} to the ${to}: ${length.text}.`),
      ...notch.warnings.map(({ says }) => `MIND: ${says}`),
    ],
  };
}
