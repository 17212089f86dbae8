/** How the saw is set for one cut, in words for the columns of a table. */
import { degrees, riseOverRun, writtenUp } from "#lib/draw/paper/figures.ts";
import type { PartCut } from "#lib/fit/cut-plan/panel.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** One cut as the saw is set for it. */
export interface SawWords {
  /** Blade from square. */
  readonly blade: string;
  /** The same for a bevel gauge; absent where the blade stands square. */
  readonly bladeSlope?: string;
  readonly longFace: string;
  /** The cut's line on the marked face. */
  readonly table: string;
  readonly tableSlope?: string;
  /** Length of the cut on the marked face, rounded up. */
  readonly length: string;
}

/** Below this a table counts as set straight, degrees: no saw's scale shows less (common practice, no source). */
const STRAIGHT_DEG = 0.05;

const LONG_FACE: Record<PartCut["longFace"], string> = {
  marked: "the marked face",
  back: "the back",
  neither: "both alike",
};

/** The words of a cut. */
export function sawWords(cut: PartCut, lengths: LengthSystem): SawWords {
  const square = cut.longFace === "neither";
  const straight = Math.abs(cut.tableDeg) < STRAIGHT_DEG;
  const way = cut.tableDeg > 0 ? "anticlockwise" : "clockwise";
  const from = cut.runs === "end" ? "square" : "the length";
  const straightOn = cut.runs === "end" ? "straight across" : "along the part";
  return {
    blade: square ? "square" : degrees(cut.tiltDeg),
    ...(!square && { bladeSlope: riseOverRun(cut.tiltPer100Mm, lengths) }),
    longFace: LONG_FACE[cut.longFace],
    table: straight ? straightOn : `${degrees(Math.abs(cut.tableDeg))} ${way} from ${from}`,
    ...(!straight && { tableSlope: riseOverRun(cut.tablePer100Mm, lengths) }),
    length: writtenUp(cut.markedMm, lengths),
  };
}
