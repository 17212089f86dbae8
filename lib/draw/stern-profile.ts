/** The stern in section on the centreline, seen from port: hatched where the saw would go through. */
import { type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { hatching } from "#lib/draw/hatch.ts";
import { boxes, cheekTop, knows, type Reach, WELL } from "#lib/draw/stern-lines.ts";
import { type Berth, fromBracket } from "#lib/draw/view.ts";
import { cos, sin } from "#lib/quantity/angle.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** Spacing of section hatching, true mm at one to one: three paper millimetres at 1:10. */
const HATCH = 16;

/** A piece cut through: its edge in full line, hatched. */
function section(points: readonly Flat[], of: string, angleDeg = 45): Mark[] {
  return [
    outline(points, { fill: "paper", of }),
    ...hatching(points, HATCH, angleDeg).map((ends) => line(ends, { line: "dimension", of: "hatch" })),
  ];
}

/** Height up the transom's face, from the seat, of a point `forward` of the outside face that stands `zMm` above the datum. */
const upTheFace = (zMm: number, forward: number, { rakeDeg, seatMm }: Berth): number =>
  (zMm - seatMm - forward * sin(rakeDeg)) / cos(rakeDeg);

/** The section on the centreline, seen from port. */
export function sternProfile(stern: SternValues, berth: Berth, { foreMm }: Reach): Mark[] {
  const at = (point: BracketPoint) => fromBracket("profile", point, berth);
  const bottom = stern.keelDepthMm ?? 0;
  const t = stern.transomThicknessMm;
  const foot = (forward: number) => at([forward, 0, upTheFace(bottom, forward, berth)]);
  const marks: Mark[] = [];
  if (knows(stern, ["transomTopMm"]) && !isUncut(stern) && cheekTop(stern, berth) > 0) {
    const top = cheekTop(stern, berth);
    const beyond = [at([0, 0, 0]), at([t ?? 0, 0, 0]), at([t ?? 0, 0, top]), at([0, 0, top])];
    marks.push(outline(beyond, { of: "cheek", fill: "paper" }));
  }
  if (t === undefined) marks.push(line([foot(0), at([0, 0, 0])], { of: "transom" }));
  else marks.push(...section([foot(0), foot(t), at([t, 0, 0]), at([0, 0, 0])], "transom"));
  const [x, z] = foot(t ?? 0);
  marks.push(
    line(
      [
        [x, z],
        [-foreMm, z],
      ],
      { of: "bottom" },
    ),
  );
  if (bottom > 0) {
    const heel = foot(t ?? 0);
    marks.push(line([heel, [heel[0], 0], [-foreMm, 0]], { of: "keel" }));
  }
  marks.push(...wellProfile(stern, berth, foreMm), ...boxes(stern, berth, "profile"));
  return marks;
}

/** Sole and front bulkhead in section; the far side's top edge where its height is known. */
function wellProfile(stern: SternValues, berth: Berth, foreMm: number): Mark[] {
  if (!knows(stern, WELL)) return [];
  const at = (along: number, above: number) => fromBracket("profile", inWell(stern, along, 0, above), berth);
  const deck = stern.deckThicknessMm;
  const depth = stern.wellDepthMm ?? Math.max(0, foreMm - 200);
  const marks: Mark[] = [];
  if (stern.wellSideHeightMm !== undefined) {
    marks.push(line([at(0, stern.wellSideHeightMm), at(depth, stern.wellSideHeightMm)], { of: "well side" }));
  }
  if (deck === undefined) marks.push(line([at(0, 0), at(depth, 0)], { of: "sole" }));
  else marks.push(...section([at(0, 0), at(depth, 0), at(depth, -deck), at(0, -deck)], "sole", 135));
  if (stern.wellDepthMm !== undefined && stern.wellFrontHeightMm !== undefined) {
    const thick = deck ?? 0;
    const high = stern.wellFrontHeightMm;
    if (deck === undefined) marks.push(line([at(depth, 0), at(depth, high)], { of: "bulkhead" }));
    else
      marks.push(
        ...section(
          [at(depth, -deck), at(depth + thick, -deck), at(depth + thick, high), at(depth, high)],
          "bulkhead",
        ),
      );
  }
  return marks;
}
