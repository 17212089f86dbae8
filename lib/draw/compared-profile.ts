/** Two to four motors on one stern in one profile, each as it runs, each in its own kind of line and with its letter. */
import { bareSheet } from "#lib/draw/bare-sheet.ts";
import { type Drawing, type Flat, type LineKind, lettering, type Mark } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { forward } from "#lib/draw/forward.ts";
import { type Hung, hang, plateBelowAxis } from "#lib/draw/hung.ts";
import { figureWriter } from "#lib/draw/report-drawings.ts";
import { datumLine } from "#lib/draw/stern-lines.ts";
import { sternProfile } from "#lib/draw/stern-profile.ts";
import { reachOf } from "#lib/draw/subject.ts";
import { drawnMotor, fromBracket } from "#lib/draw/view.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import type { Mounting } from "#lib/rig/mounting.ts";

/** The line of each motor, in the order of their letters. */
export const COMPARED_LINES = [
  "visible",
  "hidden",
  "centre",
  "extreme",
] as const satisfies readonly LineKind[];

/** What those lines are called. */
export const LINE_WORDS: Readonly<Record<(typeof COMPARED_LINES)[number], string>> = {
  visible: "full line",
  hidden: "dashes",
  centre: "dash and dot",
  extreme: "dash and two dots",
};

/** Letter of a motor by its place. */
export const letterOf = (place: number): string => "ABCD"[place] ?? "?";

/** What is told apart from the side; the rest would only blacken the sheet. */
const TOLD = ["cowl", "leg", "tiller", "grip", "plate", "skeg", "gearcase"];

/** The profile of some motors on one stern; undefined where rake or seat are not known, or no motor can be placed. */
export function comparedProfile(mountings: readonly Mounting[], lengths: LengthSystem): Drawing | undefined {
  const hung = mountings.map((mounting) => hang(mounting));
  const [first] = hung;
  if (!first) return undefined;
  const stern = first.mounting.rig.stern;
  const reach = reachOf(first);
  const motors = hung.map((one, place) => (one ? outlines(one, COMPARED_LINES[place]!) : []));
  if (motors.every((marks) => marks.length === 0)) return undefined;
  const hull = sternProfile(stern, first.berth, reach);
  const { left, right } = extent([...hull, ...motors.flat()], 1);
  const datum = datumLine(right + 120, left);
  return bareSheet(
    {
      title: "The motors as they run, from port",
      says: `Section on the centreline seen from port, bow to the left; ${motors.length} motors laid over each other, each in its own kind of line.`,
      things: [...hull, datum, ...motors.flat()],
      notes: [],
      lettered: (scale) => [
        ...motors.flatMap((marks, place) => letterMarks(marks, place, right, scale)),
        ...hung.flatMap((one, place) => (one ? plateMarks(one, place, right, scale, lengths) : [])),
        lettering([left + 4 * scale, 0.8 * scale], "DATUM", { height: 2.3, halo: true }),
        ...forward([left, -13 * scale], scale),
      ],
    },
    lengths,
  );
}

function outlines({ motion, bodies, berth }: Hung, line: LineKind): Mark[] {
  if (!motion) return [];
  const told = bodies.filter(({ of }) => TOLD.includes(of));
  return drawnMotor(
    told,
    { view: "profile", berth, axes: motion.axes, pose: motion.running },
    {
      line,
      tone: line === "visible" ? "ink" : "accent",
      fill: "none",
    },
  );
}

/** The letter abaft the motors, with a leader to the aftermost point of its cowl. */
function letterMarks(marks: readonly Mark[], place: number, right: number, scale: number): Mark[] {
  const cowl = marks.find((mark) => mark.mark === "outline" && mark.of === "cowl");
  if (cowl?.mark !== "outline") return [];
  const aft = cowl.points.reduce((best, point): Flat => (point[0] > best[0] ? point : best));
  const at: Flat = [right + 6 * scale, aft[1] + 4 * scale];
  return [lettering(at, letterOf(place), { height: 5, bold: true, halo: true, leader: aft })];
}

/** The height of the plate, where it stands. */
function plateMarks(one: Hung, place: number, right: number, scale: number, lengths: LengthSystem): Mark[] {
  const point = plateBelowAxis(one);
  if (!point) return [];
  const at = fromBracket("profile", point, one.berth);
  const words = `${letterOf(place)} PLATE ${figureWriter(lengths)(at[1])}`;
  return [lettering([right + 6 * scale, at[1]], words, { height: 2.5, halo: true, leader: at })];
}
