/** Clearances on a drawing: the two nearest points joined and dimensioned; where solids overlap, the overlap hatched and called a foul. */
import { commonVolume, cornersOf } from "#lib/draw/common-volume.ts";
import { arc, type Dimension, type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { hatching } from "#lib/draw/hatch.ts";
import { silhouette } from "#lib/draw/hull.ts";
import type { Hung } from "#lib/draw/hung.ts";
import { fromBracket, type Pose, type View } from "#lib/draw/view.ts";
import { placed } from "#lib/geometry/mechanism.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";

/** A clearance to be drawn, whichever way it was found; points in the bracket frame, mm negative = overlap. */
export interface Shown {
  readonly obstacle: string;
  readonly part: string;
  readonly mm: number;
  readonly nearest: { readonly partMm: BracketPoint; readonly obstacleMm: BracketPoint };
}

const OBSTACLES: Readonly<Record<string, string>> = {
  "cheek-port": "port cheek",
  "cheek-starboard": "starboard cheek",
  sole: "well sole",
  bulkhead: "front bulkhead",
  "side-port": "port side of the well",
  "side-starboard": "starboard side of the well",
};
const PARTS: Readonly<Record<string, string>> = { midsection: "leg" };

/** An obstacle's id in words; one measured as a box is called by its own label. */
export const obstacleWords = (id: string): string => OBSTACLES[id] ?? id.replace(/^obstacle:/, "");
/** A part's id in words. */
export const partWords = (id: string): string => PARTS[id] ?? id;

const VIEWS: readonly View[] = ["profile", "plan", "elevation"];

/** How long the line between the nearest points looks in a view, true mm. */
function seen({ nearest }: Shown, view: View, hung: Hung): number {
  const [a, b] = [nearest.partMm, nearest.obstacleMm].map((point) => fromBracket(view, point, hung.berth));
  return Math.hypot(a![0] - b![0], a![1] - b![1]);
}

/** The view, of those given, in which a clearance is seen least foreshortened; nearly equal ones go to the one named first. */
export function bestView(shown: Shown, hung: Hung, views: readonly View[] = VIEWS): View {
  return views.reduce((best, view) =>
    seen(shown, view, hung) > 1.02 * seen(shown, best, hung) + 0.5 ? view : best,
  );
}

/** A clearance drawn in a view at its pose: dots on the two nearest points, the dimension between them, and the overlap where there is one. The figure begins (`start`) or ends (`end`) at `figureAt`. */
export function clearanceMarks(
  shown: Shown,
  view: View,
  hung: Hung,
  write: (mm: number) => string,
  scale: number,
  figureAt: Flat,
  align: "start" | "end" = "start",
): Mark[] {
  const [part, obstacle] = [shown.nearest.partMm, shown.nearest.obstacleMm].map((point) =>
    fromBracket(view, point, hung.berth),
  ) as [Flat, Flat];
  const fouls = shown.mm < 0;
  const tone = fouls ? "fouls" : "accent";
  const dots = [part, obstacle].map((at) =>
    arc(at, 0.55 * scale, [0, 360], { line: "dimension", tone, fill: "solid", of: "nearest point" }),
  );
  const words = `${partWords(shown.part)} to ${obstacleWords(shown.obstacle)}`;
  const figure = `${fouls ? `FOULS ${write(-shown.mm)}` : write(shown.mm)} ${words}`;
  const dimension: Dimension = {
    mark: "dimension",
    from: part,
    to: obstacle,
    along: "along",
    offset: 0,
    tone,
    figure,
    figureAt,
    figureAlign: align,
    mm: shown.mm,
    of: words,
  };
  return [...dots, dimension];
}

/** What part and obstacle have in common at a pose, hatched; nothing where they do not overlap. */
export function foulMarks(shown: Shown, view: View, hung: Hung, pose: Pose): Mark[] {
  const { mechanism, parts, obstacles } = hung.mounting;
  const part = parts.find(({ id }) => id === shown.part);
  const obstacle = obstacles.find(({ id }) => id === shown.obstacle);
  if (shown.mm >= 0 || !mechanism || !part || !obstacle) return [];
  const common = commonVolume(placed(mechanism, part, pose), cornersOf(obstacle.solid));
  const edge = silhouette(common.map((point) => fromBracket(view, point, hung.berth)));
  if (edge.length < 3) return [];
  return [
    outline(edge, { tone: "fouls", fill: "wash", of: `foul ${shown.obstacle}` }),
    ...hatching(edge, 10, 60).map((ends) => line(ends, { line: "hidden", tone: "fouls", of: "foul hatch" })),
    ...hatching(edge, 10, 120).map((ends) => line(ends, { line: "hidden", tone: "fouls", of: "foul hatch" })),
  ];
}
