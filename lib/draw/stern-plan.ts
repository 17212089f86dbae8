/** The stern from above. */
import { line, type Mark, outline } from "#lib/draw/drawing.ts";
import { boxes, cheekTop, halfTop, knows, type Reach, WELL } from "#lib/draw/stern-lines.ts";
import { type Berth, fromBracket } from "#lib/draw/view.ts";
import { tan } from "#lib/quantity/angle.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** The stern from above: tops of the cheeks, seat, well sole and front bulkhead. */
export function sternPlan(stern: SternValues, berth: Berth, reach: Reach): Mark[] {
  const at = (point: BracketPoint) => fromBracket("plan", point, berth);
  const half = halfTop(stern, reach);
  const t = stern.transomThicknessMm ?? 0;
  const strip = (from: number, to: number, v: number, of: string): Mark =>
    outline([at([0, from, v]), at([0, to, v]), at([t, to, v]), at([t, from, v])], { fill: "paper", of });
  const marks: Mark[] = [...wellPlan(stern, berth)];
  const cut = isUncut(stern) ? undefined : stern.notchWidthMm;
  if (cut === undefined) return [...marks, strip(-half, half, 0, "transom"), ...boxes(stern, berth, "plan")];
  marks.push(strip(-cut / 2, cut / 2, 0, "seat"));
  if (knows(stern, ["transomTopMm"])) {
    const top = cheekTop(stern, berth);
    for (const hand of [-1, 1])
      marks.push(strip((hand * cut) / 2, hand * Math.max(half, cut / 2), top, "cheek"));
  }
  return [...marks, ...boxes(stern, berth, "plan")];
}

function wellPlan(stern: SternValues, berth: Berth): Mark[] {
  if (!knows(stern, [...WELL, "wellDepthMm", "wellWidthAftMm", "wellWidthFrontMm"])) return [];
  const at = (along: number, y: number, above = 0) =>
    fromBracket("plan", inWell(stern, along, y, above), berth);
  const [aft, front, depth] = [stern.wellWidthAftMm / 2, stern.wellWidthFrontMm / 2, stern.wellDepthMm];
  const marks: Mark[] = [
    outline([at(0, aft), at(depth, front), at(depth, -front), at(0, -aft)], { fill: "paper", of: "sole" }),
  ];
  const high = stern.wellSideHeightMm;
  if (high !== undefined && stern.sideFlareDeg !== undefined) {
    const lean = high * tan(stern.sideFlareDeg);
    for (const hand of [-1, 1]) {
      const edge = [at(0, hand * (aft + lean), high), at(depth, hand * (front + lean), high)];
      marks.push(line(edge, { line: "dimension", of: "well side" }));
    }
  }
  return marks;
}
