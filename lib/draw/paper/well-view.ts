/** The well from above, its parts in place: how they lie to each other. Forward up, port to the left. */
import { type Dimension, type Flat, lettering, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { figureOfMark, figureUp, writtenUp } from "#lib/draw/paper/figures.ts";
import type { View } from "#lib/draw/paper/page.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import { spotInSpace } from "#lib/fit/cut-plan/place.ts";
import type { WellPlan } from "#lib/fit/cut-plan/plan.ts";
import { dot, minus } from "#lib/fit/cut-plan/planes.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** A part's corners laid onto the sole's plane. */
function onSole(part: CutPart, sole: CutPart): Flat[] {
  const { originMm, right, up } = sole.place;
  const flat = (spot: Flat, below: number): Flat => {
    const from = minus(spotInSpace(part.place, spot, below), originMm);
    return [dot(from, right), dot(from, up)];
  };
  return [
    ...part.outline.map((spot) => flat(spot, 0)),
    ...part.back.map((spot) => flat(spot, part.stock.thicknessMm)),
  ];
}

/** The outermost ring of points (Andrew's monotone chain). */
function ring(points: readonly Flat[]): Flat[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  const turns = (a: Flat, b: Flat, c: Flat) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  const half = (list: readonly Flat[]) => {
    const kept: Flat[] = [];
    for (const point of list) {
      while (kept.length > 1 && turns(kept.at(-2)!, kept.at(-1)!, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

/** The well on its sheet. */
export function wellView(well: WellPlan, lengths: LengthSystem): View {
  const sole = well.parts.find(({ id }) => id === "sole")!;
  const under = well.parts.filter(({ id }) => id.includes("cleat"));
  const beam = well.parts.find(({ id }) => id === "front-beam")!;
  const { wellDepthMm: deep, wellWidthAftMm: aft, wellWidthFrontMm: front } = well.shape;
  // Words stand clear of the cleats under the sole's edges.
  const inside = (under[0]?.stock.thicknessMm ?? 0) + Math.abs(aft - front) / 4;
  const dimension = (
    from: Flat,
    to: Flat,
    along: Dimension["along"],
    offset: number,
    figure: string,
    mm: number,
    of: string,
  ): Dimension => ({
    mark: "dimension",
    from,
    to,
    along,
    offset,
    tone: "ink",
    figure,
    mm,
    of,
  });
  return {
    title: "Well from above",
    says: "The well's parts in place, looked at square to the sole, forward up and port to the left; cleats under the sole dashed.",
    marks: (scale): Mark[] => [
      outline(sole.outline, { of: "sole" }),
      outline(ring(onSole(beam, sole)), { of: "front beam" }),
      ...under.map((part) => outline(ring(onSole(part, sole)), { line: "hidden", of: part.id })),
      line(
        [
          [0, -30],
          [0, deep + 40],
        ],
        { line: "centre", of: "centreline" },
      ),
      lettering([-aft / 2 + inside + 4 * scale, deep / 2], "PORT", { height: 3.5, bold: true }),
      lettering([aft / 2 - inside - 4 * scale, deep / 2], "STARBOARD", {
        height: 3.5,
        bold: true,
        align: "end",
      }),
      lettering([8 * scale, deep - 9 * scale], "FORWARD", { height: 3.5, bold: true }),
      lettering([8 * scale, 6 * scale], "AFT", { height: 3.5, bold: true }),
      dimension(
        [-aft / 2, 0],
        [aft / 2, 0],
        "level",
        -9,
        figureUp(aft, lengths),
        aft,
        "width at the transom",
      ),
      dimension(
        [-front / 2, deep],
        [front / 2, deep],
        "level",
        12,
        figureUp(front, lengths),
        front,
        "width at the front",
      ),
      dimension(
        [Math.max(aft, front) / 2, 0],
        [Math.max(aft, front) / 2, deep],
        "plumb",
        9,
        figureOfMark(well.depth, lengths),
        well.depth.markMm,
        "fore and aft",
      ),
    ],
    notes: [
      `Top of the aft cleat ${well.supportLine.text} below the seat, along the inside face; top of the sole ${well.drop.text} below it.`,
      ...well.marks.map(
        ({ at, topAboveDatumMm, underAboveDatumMm }) =>
          `On the ${at}: top of the sole ${writtenUp(topAboveDatumMm, lengths)}, underside ${writtenUp(underAboveDatumMm, lengths)} above the datum, plumb.`,
      ),
      well.front.says,
      `Drain: ${well.drain.says} Hole ${well.drain.hole.text}, centre ${writtenUp(well.drain.acrossMm, lengths)} from the centreline and ${writtenUp(well.drain.aboveSoleMm, lengths)} above the sole.`,
    ],
  };
}
