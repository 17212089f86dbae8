/** The profile from port: the section on the centreline, the motor in its running hole, full up and at its tightest. */
import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { fouled } from "#lib/draw/clearance-columns.ts";
import { obstacleWords, partWords } from "#lib/draw/clearance-marks.ts";
import { arc, type Flat, type Mark } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { envelope, ghostMotor, type Hung, solidMotor, tiltAxis } from "#lib/draw/hung.ts";
import { profileLettered } from "#lib/draw/profile-lettering.ts";
import type { Content } from "#lib/draw/sheet.ts";
import { datumLine, waterSurface } from "#lib/draw/stern-lines.ts";
import { sternProfile } from "#lib/draw/stern-profile.ts";
import {
  HEAD,
  posedOf,
  poseWords,
  reachOf,
  type Subject,
  samePose,
  seenIn,
  tightest,
} from "#lib/draw/subject.ts";
import { fromBracket } from "#lib/draw/view.ts";
import { placed } from "#lib/geometry/mechanism.ts";
import { atan2 } from "#lib/quantity/angle.ts";

/** Profile from port: the bow is to the left. */
export function profile(subject: Subject): Content {
  const { hung } = subject;
  const { stern } = hung.mounting.rig;
  const reach = reachOf(hung);
  const poses = tightest(seenIn("profile", subject));
  const { motion, berth } = hung;
  const fullUp = motion?.fullUp;
  const motor = [
    ...(fullUp ? ghostMotor(hung, "profile", fullUp) : []),
    ...poses
      .filter((pose) => !fullUp || !samePose(pose, fullUp))
      .flatMap((pose) => ghostMotor(hung, "profile", pose, HEAD)),
  ];
  const running = motion
    ? [
        ...solidMotor(hung, "profile"),
        ...drawnBracket(hung.mounting.rig.motor, stern.transomThicknessMm, "profile", berth),
        ...envelope(hung, "profile", motion.running),
      ]
    : [];
  const hull = sternProfile(stern, berth, reach);
  const things = [...motor, ...hull, ...running, ...tiltArc(hung)];
  const { left, right: reached } = extent(things, 1);
  // Room for the datum and the water abaft a transom that stands alone.
  const right = Math.max(reached, fromBracket("profile", [0, 0, 0], berth)[0] + 260);
  const water = stern.waterlineMm;
  const base = [
    datumLine(right, Math.min(left, -reach.foreMm)),
    ...(water === undefined ? [] : waterSurface(water, -berth.seatMm * 0.1 + 120, right, right - 60, 10)),
  ];
  return {
    title: "Profile from port",
    says: profileWords(subject),
    things: [...base, ...things, ...fouled("profile", subject)],
    lettered: (scale) => profileLettered(subject, [...base, ...things], scale),
    notes: [
      ...hung.notes,
      ...(stern.keelDepthMm === undefined ? ["Keel depth not taken: the bottom is drawn at the datum."] : []),
    ],
  };
}

function profileWords({ hung, report }: Subject): string {
  const plate = report.plate && `plate ${report.plate.aboveDatumMm < 0 ? "below" : "above"} the datum`;
  const least = report.clearances
    .filter(({ throughTransom }) => !throughTransom)
    .toSorted((a, b) => a.mm - b.mm)[0];
  const tight =
    least &&
    `tightest: ${partWords(least.part)} to ${obstacleWords(least.obstacle)}, ${poseWords(posedOf(least))}`;
  const shown = hung.motion
    ? "The motor in its running hole in full line, full up and at its tightest in dash-and-dots"
    : "The stern alone";
  return [`Section on the centreline seen from port, bow to the left. ${shown}`, plate, tight]
    .filter(Boolean)
    .join("; ");
}

/** The way of the cowl's furthest corner from running to full up, about the tilt axis. */
function tiltArc(hung: Hung): Mark[] {
  const centre = tiltAxis(hung, "profile");
  const { motion, mounting } = hung;
  const cowl = mounting.parts.find(({ id }) => id === "cowl");
  if (!centre || !motion?.fullUp || !cowl || !mounting.mechanism) return [];
  const corners = placed(mounting.mechanism, cowl, motion.running).map((point) =>
    fromBracket("profile", point, hung.berth),
  );
  const distance = ([x, y]: Flat) => Math.hypot(x - centre[0], y - centre[1]);
  const far = corners.reduce((best, corner) => (distance(corner) > distance(best) ? corner : best));
  const from = atan2(far[1] - centre[1], far[0] - centre[0]);
  const swept = motion.fullUp.faceAngleDeg - motion.running.faceAngleDeg;
  return [
    arc(centre, distance(far), [from, from + swept], { line: "extreme", tone: "accent", of: "tilt arc" }),
  ];
}
