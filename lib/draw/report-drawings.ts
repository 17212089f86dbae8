/** The three drawings of a report, all to one scale, and the numbers that stand on them for the table beside. */

import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { clearanceMarks, foulMarks } from "#lib/draw/clearance-marks.ts";
import type { Drawing, Mark } from "#lib/draw/drawing.ts";
import { lettering } from "#lib/draw/drawing.ts";
import { envelope, type Hung, hang, solidMotor } from "#lib/draw/hung.ts";
import type { PoseClearance } from "#lib/draw/pose-clearance.ts";
import { elevation, plan, profile, type Subject } from "#lib/draw/report-views.ts";
import { type Content, type Strip, scaleBar, scaleFor, sheeted } from "#lib/draw/sheet.ts";
import { datumLine, sternElevation, sternPlan, sternProfile } from "#lib/draw/stern-view.ts";
import type { Pose, View } from "#lib/draw/view.ts";
import type { Report } from "#lib/fit/report.ts";
import { lengthWriter } from "#lib/quantity/words.ts";
import type { Mounting } from "#lib/rig/mounting.ts";

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
  readonly report: Pick<Report, "plate" | "clearances" | "engine">;
  readonly motorLabel: string;
  readonly sternLabel: string;
  readonly lengths: Strip["lengths"];
}

/** The scale of a sheet that holds no drawing. */
const USUAL_SCALE = 10;

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
  return [profile(subject), plan(subject), elevation(subject)];
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

/** The dimensions that stand on a drawing, each once: what it is, and its true length in mm. */
export function dimensionsOn(drawing: Drawing): { readonly of: string; readonly mm: number }[] {
  const found = drawing.marks.flatMap((mark) =>
    mark.mark === "dimension" ? [{ of: mark.of, mm: mark.mm }] : [],
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

/**
 * One view with the motor held in a pose and its nearest obstacle dimensioned, in the window and to the
 * scale of a sheet drawn before: so the picture stands still while the motor moves.
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
  const { motor, stern } = mounting.rig;
  const marks: Mark[] = hung
    ? [
        ...(view === "plan" ? [] : [datumLine(window.right - 40, window.left + 40)]),
        ...sternIn(view, hung),
        ...(view === "profile" ? [] : drawnBracket(motor, stern.transomThicknessMm, view, hung.berth)),
        ...solidMotor(hung, view, pose),
        ...(view === "profile" ? drawnBracket(motor, stern.transomThicknessMm, view, hung.berth) : []),
        ...envelope(hung, view, pose),
        ...(nearest
          ? [
              ...foulMarks(nearest, view, hung, pose),
              ...clearanceMarks(nearest, view, hung, figureWriter(lengths), scale, [
                window.left + 4 * scale,
                window.top - 6 * scale,
              ]),
            ]
          : []),
      ]
    : [];
  const bar = scaleBar([window.left + 60, window.bottom + 4 * scale], scale, lengths);
  return {
    title: "The motor as it is held",
    says: "Moves with the tilt and the steering set above.",
    scale,
    window,
    marks: [...marks, ...bar],
  };
}
