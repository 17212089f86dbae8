/** The three drawings of a report, all to one scale, and the numbers that stand on them for the table beside. */

import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { bestView, clearanceMarks, foulMarks } from "#lib/draw/clearance-marks.ts";
import type { Drawing, Mark } from "#lib/draw/drawing.ts";
import { lettering } from "#lib/draw/drawing.ts";
import { elevation } from "#lib/draw/elevation.ts";
import { envelope, type Hung, hang, solidMotor } from "#lib/draw/hung.ts";
import { plan } from "#lib/draw/plan.ts";
import type { PoseClearance } from "#lib/draw/pose-clearance.ts";
import { profile } from "#lib/draw/profile.ts";
import { scaleBar } from "#lib/draw/scale-bar.ts";
import { type Content, scaleFor, sheeted } from "#lib/draw/sheet.ts";
import { sternElevation } from "#lib/draw/stern-elevation.ts";
import { datumLine } from "#lib/draw/stern-lines.ts";
import { sternPlan } from "#lib/draw/stern-plan.ts";
import { sternProfile } from "#lib/draw/stern-profile.ts";
import type { Subject } from "#lib/draw/subject.ts";
import type { Strip } from "#lib/draw/title-strip.ts";
import type { Pose, View } from "#lib/draw/view.ts";
import type { Report } from "#lib/fit/report.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import type { Mounting } from "#lib/rig/mounting.ts";

/** The three sheets of a report. */
export interface ReportDrawings {
  readonly profile: Drawing;
  readonly plan: Drawing;
  readonly elevation: Drawing;
}

/** Lengths as lettered on a drawing: the strip names the unit, the figures leave it out. */
export const figureWriter =
  (lengths: Strip["lengths"]) =>
  (mm: number): string =>
    lengthWriter(lengths)(mm).replace(/ (mm|in)$/, "");

/** What the drawings are made from. */
export interface DrawnPairing {
  readonly mounting: Mounting;
  readonly report: Pick<Report, "plate" | "clearances" | "engine" | "estimated">;
  readonly motorLabel: string;
  readonly sternLabel: string;
  readonly lengths: Strip["lengths"];
}

/** The scale of a sheet that holds no drawing. */
const USUAL_SCALE = 10;

/** Stands on the first sheet where gaps were filled. */
const FROM_LIKE = "Numbers nobody took on this motor come from like motors.";

const nothing = (title: string): Content => ({
  title,
  says: "Nothing can be drawn yet: the transom's rake and the height of the seat are not both known.",
  things: [
    lettering([0, 0], "Nothing to draw on yet: take the transom's rake and the seat height.", {
      height: 3.5,
      align: "middle",
    }),
  ],
  lettered: () => [],
  notes: [],
});

function contentsOf({ mounting, report, lengths }: DrawnPairing): readonly [Content, Content, Content] {
  const hung = hang(mounting);
  if (!hung) return [nothing("Profile from port"), nothing("Plan from above"), nothing("Elevation from aft")];
  const subject: Subject = { hung, report, write: figureWriter(lengths) };
  const first = profile(subject);
  const notes = report.estimated?.length ? [...first.notes, FROM_LIKE] : first.notes;
  return [{ ...first, notes }, plan(subject), elevation(subject)];
}

/** The three sheets of a report, to the one ISO 5455 scale at which all of them fit. */
export function reportDrawings(pairing: DrawnPairing): ReportDrawings {
  const contents = contentsOf(pairing);
  const scale = hang(pairing.mounting) ? scaleFor(contents) : USUAL_SCALE;
  const { motorLabel: motor, sternLabel: stern, lengths, report } = pairing;
  const strip = { motor, stern, lengths, engine: report.engine };
  const [first, second, third] = contents.map((content, i) => sheeted(content, scale, strip, i + 1));
  return { profile: first!, plan: second!, elevation: third! };
}

/** One dimension that stands on a drawing: what it is, its true length in mm, and whether it is a clearance (then minus = overlap). */
export interface Standing {
  readonly of: string;
  readonly mm: number;
  readonly clearance: boolean;
}

/** The dimensions that stand on a drawing, each once. */
export function dimensionsOn(drawing: Drawing): Standing[] {
  const found = drawing.marks.flatMap((mark) =>
    mark.mark === "dimension"
      ? [{ of: mark.of, mm: mark.mm, clearance: mark.along === "along" && mark.figureAt !== undefined }]
      : [],
  );
  return found.filter((one, i) => found.findIndex((other) => other.of === one.of) === i);
}

function sternIn(view: View, hung: Hung): Mark[] {
  const { stern } = hung.mounting.rig;
  const reach = {
    foreMm: Math.max(500, (stern.wellDepthMm ?? 0) + 200),
    sideMm: (stern.notchWidthMm ?? 600) / 2 + 200,
  };
  const narrowed = { ...stern, transomWidthMm: undefined };
  if (view === "profile") return sternProfile(stern, hung.berth, reach);
  return view === "plan"
    ? sternPlan(narrowed, hung.berth, reach)
    : sternElevation(narrowed, hung.berth, reach);
}

/** The views in which a motor is moved by hand. */
export const POSED_VIEWS = ["profile", "plan"] as const satisfies readonly View[];

/**
 * One view with the motor held in a pose, in the window and to the scale of a sheet drawn before: so the
 * picture stands still while the motor moves. The nearest obstacle is dimensioned in that one of the
 * posed views that shows it least foreshortened.
 */
export function posedDrawing(
  { mounting, lengths }: Pick<DrawnPairing, "mounting" | "lengths">,
  view: View,
  pose: Pose,
  nearest: PoseClearance | undefined,
  sheet: Pick<Drawing, "window" | "scale">,
): Drawing {
  const hung = hang(mounting);
  const { window, scale } = sheet;
  const shown = hung && nearest && bestView(nearest, hung, POSED_VIEWS) === view ? nearest : undefined;
  const figureAt = [window.left + 4 * scale, window.top - 6 * scale] as const;
  const marks: Mark[] = [
    ...(view === "plan" ? [] : [datumLine(window.right - 40, window.left + 40)]),
    ...(hung ? posedThings(hung, view, pose) : []),
    ...(hung && shown ? foulMarks(shown, view, hung, pose) : []),
    ...(hung && shown ? clearanceMarks(shown, view, hung, figureWriter(lengths), scale, figureAt) : []),
    ...scaleBar([window.left + 6 * scale, window.bottom + 4 * scale], scale, lengths),
  ];
  const says = "Moves with the tilt and the steering set above.";
  return { title: "The motor as it is held", says, scale, window, marks };
}

/** Stern, bracket, motor at the pose and its envelope; in profile the bracket lies nearer than the leg. */
function posedThings(hung: Hung, view: View, pose: Pose): Mark[] {
  const { motor, stern } = hung.mounting.rig;
  const bracket = drawnBracket(motor, stern.transomThicknessMm, view, hung.berth);
  const moved = solidMotor(hung, view, pose);
  const inOrder = view === "profile" ? [...moved, ...bracket] : [...bracket, ...moved];
  return [...sternIn(view, hung), ...inOrder, ...envelope(hung, view, pose)];
}
