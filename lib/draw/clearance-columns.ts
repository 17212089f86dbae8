/** Clearances of a view lettered in columns, and what fouls hatched. */
import { clearanceMarks, foulMarks } from "#lib/draw/clearance-marks.ts";
import type { Flat, Mark, Window } from "#lib/draw/drawing.ts";
import { posedOf, type Subject, seenIn } from "#lib/draw/subject.ts";
import { fromBracket, type View } from "#lib/draw/view.ts";
import type { ReportClearance } from "#lib/fit/report.ts";

/**
 * The clearances of a view lettered in columns where the view leaves the paper free: over everything in
 * profile and from aft, abaft the transom in plan; port and starboard each on their side.
 */
export function clearancesLettered(view: View, subject: Subject, bounds: Window, scale: number): Mark[] {
  const rows = new Map<string, number>();
  const { hung, write } = subject;
  const place = (one: ReportClearance) => fromBracket(view, one.nearest.obstacleMm, hung.berth);
  // The leader that starts furthest left leaves the lowest row, so that no leader runs through another's words.
  const ordered = seenIn(view, subject).toSorted((a, b) => place(a)[0] - place(b)[0]);
  const lettered = ordered.map((one) => {
    const [x, y] = place(one);
    const starboard = view === "plan" ? y > 0 : x > 0;
    const column = view === "profile" ? "all" : starboard ? "starboard" : "port";
    const row = rows.get(column) ?? 0;
    rows.set(column, row + 1);
    const step = row * 5 * scale;
    const abaft = fromBracket("plan", [0, 0, 0], hung.berth)[0] + 8 * scale;
    const above = bounds.top + 3 * scale + step;
    const places: Record<string, readonly [Flat, "start" | "end"]> = {
      "profile all": [[bounds.left, above], "start"],
      "plan starboard": [[abaft, bounds.top - 8 * scale - step], "start"],
      "plan port": [[abaft, bounds.bottom + 6 * scale + step], "start"],
      "elevation port": [[-2 * scale, above], "end"],
      "elevation starboard": [[2 * scale, above], "start"],
    };
    const [at, align] = places[`${view} ${column}`]!;
    return clearanceMarks(one, view, hung, write, scale, at, align);
  });
  // The uppermost row first: where its leader must pass a lower row, it passes behind the words.
  return lettered.toReversed().flat();
}

/** Every overlap that is seen best in a view, hatched. */
export const fouled = (view: View, subject: Subject): Mark[] =>
  seenIn(view, subject).flatMap((one) => foulMarks(one, view, subject.hung, posedOf(one)));
