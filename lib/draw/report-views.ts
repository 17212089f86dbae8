/** The three views of a pairing: profile from port, plan from above, elevation from aft. Each says what it draws and how it is lettered. */

import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { bestView, clearanceMarks, foulMarks, obstacleWords, partWords } from "#lib/draw/clearance-marks.ts";
import { arrowhead } from "#lib/draw/dimension.ts";
import {
  arc,
  type Dimension,
  type Flat,
  lettering,
  line,
  type Mark,
  type Window,
} from "#lib/draw/drawing.ts";
import { envelope, ghostMotor, type Hung, plateBelowAxis, solidMotor, tiltAxis } from "#lib/draw/hung.ts";
import { type Content, extent } from "#lib/draw/sheet.ts";
import {
  datumLine,
  halfTop,
  type Reach,
  sternElevation,
  sternPlan,
  sternProfile,
  waterSurface,
} from "#lib/draw/stern-view.ts";
import { fromBracket, type Pose, type View } from "#lib/draw/view.ts";
import type { Report, ReportClearance } from "#lib/fit/report.ts";
import { placed } from "#lib/geometry/mechanism.ts";
import { atan2 } from "#lib/quantity/angle.ts";
import { inDegrees } from "#lib/quantity/words.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";

/** What the views are drawn from: the pairing hung, its report, and how lengths are lettered (without unit). */
export interface Subject {
  readonly hung: Hung;
  readonly report: Pick<Report, "plate" | "clearances">;
  readonly write: (mm: number) => string;
}

/** Heads of the motor: what strikes first, and what a ghost of a tightest pose shows. */
const HEAD = ["cowl", "tiller", "grip", "leg"];
/** What is at the other end of it. */
const FOOT = ["plate", "propeller", "skeg"];
/** Letters of a name that find room on a drawing. */
const NAME = 24;
/** At most so many tightest poses are ghosted in one view; the rest stand in the table. */
const GHOSTS = 2;

const level = (from: Flat, to: Flat, offset: number, mm: number, figure: string, of: string): Dimension => ({
  mark: "dimension",
  tone: "ink",
  along: "level",
  from,
  to,
  offset,
  mm,
  figure,
  of,
});
const plumb = (...parts: Parameters<typeof level>): Dimension => ({ ...level(...parts), along: "plumb" });
const straight = (...parts: Parameters<typeof level>): Dimension => ({ ...level(...parts), along: "along" });

/** How far the stern is drawn: past the well and past the motor's head, and never less than half a metre each way. */
function reachOf({ mounting: { rig } }: Hung): Reach {
  const { stern, motor } = rig;
  const well = (stern.wellDepthMm ?? 0) + (stern.transomThicknessMm ?? 0) + 20;
  const half = Math.max(
    (stern.notchWidthMm ?? 0) / 2 + 160,
    (stern.wellWidthAftMm ?? 0) / 2 + 120,
    (motor.cowlWidthMm ?? 0) / 2 + 300,
    420,
  );
  const sideMm = Math.min(half, (stern.transomWidthMm ?? Number.POSITIVE_INFINITY) / 2);
  return { foreMm: Math.max(460, well), sideMm };
}

const posedOf = ({ faceAngleDeg, steeringDeg }: ReportClearance): Pose => ({ faceAngleDeg, steeringDeg });

/** Hard over to port and to starboard in the running hole, as far as the stops are known. */
function hardOver({ motion, mounting: { rig } }: Hung): Pose[] {
  if (!motion) return [];
  const { steerPortDeg = 0, steerStarboardDeg = 0 } = rig.motor;
  const stops = [steerPortDeg, -steerStarboardDeg].filter((deg) => deg !== 0);
  return stops.map((steeringDeg) => ({ ...motion.running, steeringDeg }));
}

/** The clearances that are seen best in a view, least first. */
const seenIn = (view: View, { hung, report }: Subject): ReportClearance[] =>
  report.clearances.filter((one) => bestView(one, hung) === view).toSorted((a, b) => a.mm - b.mm);

const samePose = (a: Pose, b: Pose): boolean =>
  Math.abs(a.faceAngleDeg - b.faceAngleDeg) < 1 && Math.abs(a.steeringDeg - b.steeringDeg) < 1;

/** The tightest poses of a view, each once. */
function tightest(clearances: readonly ReportClearance[]): Pose[] {
  const poses: Pose[] = [];
  for (const pose of clearances.map(posedOf))
    if (!poses.some((other) => samePose(other, pose))) poses.push(pose);
  return poses.slice(0, GHOSTS);
}

/**
 * The clearances of a view lettered in columns where the view leaves the paper free: over everything in
 * profile and from aft, abaft the transom in plan; port and starboard each on their side.
 */
function clearancesLettered(view: View, subject: Subject, bounds: Window, scale: number): Mark[] {
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

const fouled = (view: View, subject: Subject): Mark[] =>
  seenIn(view, subject).flatMap((one) => foulMarks(one, view, subject.hung, posedOf(one)));

/** "leg 66°, tiller 40° to starboard". */
export function poseWords({ faceAngleDeg, steeringDeg }: Pose): string {
  const side = steeringDeg > 0 ? "port" : "starboard";
  const turned =
    Math.abs(steeringDeg) < 0.05 ? "straight ahead" : `tiller ${inDegrees(Math.abs(steeringDeg))} to ${side}`;
  return `leg ${inDegrees(faceAngleDeg)}, ${turned}`;
}

/** A bold word with an arrow to the left: where the bow is. */
function forward(at: Flat, scale: number): Mark[] {
  const tip: Flat = [at[0], at[1] + 1.2 * scale];
  return [
    line([tip, [tip[0] + 12 * scale, tip[1]]], { line: "dimension", of: "forward" }),
    arrowhead(tip, 180, scale * 1.4, "ink"),
    lettering([at[0] + 14 * scale, at[1]], "FORWARD", { height: 3, bold: true }),
  ];
}

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
  const least = report.clearances.toSorted((a, b) => a.mm - b.mm)[0];
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

function profileLettered(subject: Subject, things: readonly Mark[], scale: number): Mark[] {
  const { hung, write } = subject;
  const { berth, mounting } = hung;
  const { stern } = mounting.rig;
  const at = (f: number, v: number) => fromBracket("profile", [f, 0, v], berth);
  const t = stern.transomThicknessMm ?? 0;
  const bounds = extent(things, scale);
  const small = { height: 2.3, halo: true } as const;
  const marks: Mark[] = [
    ...wellLettered(subject),
    ...heights(subject, bounds.left, at(t, 0), scale),
    ...plateLettered(subject, bounds, scale),
  ];
  marks.push(...clearancesLettered("profile", subject, bounds, scale));
  marks.push(lettering([bounds.left + 14 * scale, 0.8 * scale], "DATUM", small));
  if (stern.waterlineMm !== undefined) {
    const water: Flat = [bounds.right - 12 * scale, stern.waterlineMm + 0.9 * scale];
    marks.push(lettering(water, `WATER ${write(stern.waterlineMm)}`, { ...small, align: "end" }));
  }
  const rake: Flat = [at(t, 0)[0] - 6 * scale, -7 * scale];
  marks.push(
    lettering(rake, `RAKE ${inDegrees(berth.rakeDeg)}`, {
      ...small,
      align: "end",
      leader: at(t / 2, -berth.seatMm * 0.75),
    }),
  );
  return [...marks, ...fullUpLettered(hung, scale), ...forward([bounds.left, -13 * scale], scale)];
}

/** Seat and uncut top over the datum, on lines of their own before the bow end of the drawing. */
function heights(
  { hung: { berth, mounting }, write }: Subject,
  left: number,
  seat: Flat,
  scale: number,
): Mark[] {
  const { transomTopMm } = mounting.rig.stern;
  const standing = (lane: number, mm: number, of: string): Mark =>
    plumb([left, 0], [seat[0], mm], -lane * 7, mm, write(mm), of);
  const marks = [
    standing(
      1,
      berth.seatMm,
      isUncut(mounting.rig.stern) ? "top of the transom above the datum" : "seat above the datum",
    ),
  ];
  if (transomTopMm !== undefined && !isUncut(mounting.rig.stern) && transomTopMm > berth.seatMm + 2 * scale) {
    marks.push(standing(2, transomTopMm, "top of the transom above the datum"));
  }
  return marks;
}

/** Says which ghost is the motor tilted right up, over its after end. */
function fullUpLettered(hung: Hung, scale: number): Mark[] {
  const fullUp = hung.motion?.fullUp;
  if (!fullUp) return [];
  const ghost = ghostMotor(hung, "profile", fullUp);
  const foot = ghost.filter((mark) => mark.mark === "outline" && FOOT.includes(mark.of));
  const shown = foot.length > 0 ? foot : ghost;
  if (shown.length === 0) return [];
  const { right, top } = extent(shown, 1);
  const words = `FULL UP, LEG ${inDegrees(fullUp.faceAngleDeg)}`;
  return [lettering([right, top + 2 * scale], words, { height: 2.3, halo: true, align: "end" })];
}

function wellLettered({ hung, write }: Subject): Mark[] {
  const { stern } = hung.mounting.rig;
  const { soleDropMm, soleAngleDeg, transomThicknessMm, wellDepthMm, wellFrontHeightMm } = stern;
  if (soleDropMm === undefined || soleAngleDeg === undefined || transomThicknessMm === undefined) return [];
  const well = { soleDropMm, soleAngleDeg, transomThicknessMm };
  const at = (along: number, above: number) =>
    fromBracket("profile", inWell(well, along, 0, above), hung.berth);
  const seat = fromBracket("profile", [transomThicknessMm, 0, 0], hung.berth);
  const marks: Mark[] = [
    straight(at(0, 0), seat, 13, soleDropMm, write(soleDropMm), "seat down to the well sole"),
  ];
  if (wellDepthMm !== undefined) {
    marks.push(
      straight(at(wellDepthMm, 0), at(0, 0), -6, wellDepthMm, write(wellDepthMm), "well fore and aft"),
    );
    if (wellFrontHeightMm !== undefined) {
      marks.push(
        straight(
          at(wellDepthMm, 0),
          at(wellDepthMm, wellFrontHeightMm),
          5,
          wellFrontHeightMm,
          write(wellFrontHeightMm),
          "front bulkhead above the sole",
        ),
      );
    }
  }
  return marks;
}

/** The plate's height over the datum, from the report, dimensioned clear of the propeller. */
function plateLettered({ hung, report, write }: Subject, { right }: Window, scale: number): Mark[] {
  const point = plateBelowAxis(hung);
  if (!point || !report.plate) return [];
  const [x, z] = fromBracket("profile", point, hung.berth);
  const mm = report.plate.aboveDatumMm;
  const figure = mm < 0 ? `PLATE ${write(-mm)} BELOW DATUM` : `PLATE ${write(mm)} ABOVE DATUM`;
  const { midsectionAftMm = 0, propDiameterMm = 0 } = hung.mounting.rig.motor;
  const beyond = x + midsectionAftMm + 0.5 * propDiameterMm + 4 * scale;
  const dimension = plumb([beyond, 0], [beyond, z], 0, mm, figure, "plate above the datum");
  const figureAt: Flat = [Math.min(right, beyond + 32 * scale), Math.min(0, z) - 8 * scale];
  return [{ ...dimension, tone: "accent", figureAt }];
}

/** Plan from above: the bow to the left, port at the foot. */
export function plan(subject: Subject): Content {
  const { hung, write } = subject;
  const { stern, motor } = hung.mounting.rig;
  const { motion, berth } = hung;
  const reach = reachOf(hung);
  const narrowed = {
    ...stern,
    ...(stern.transomWidthMm !== undefined && { transomWidthMm: 2 * reach.sideMm }),
  };
  const tight = tightest(seenIn("plan", subject));
  const poses = tight.length > 0 ? tight : hardOver(hung);
  const things = [
    ...poses.flatMap((pose) => ghostMotor(hung, "plan", pose, HEAD)),
    ...sternPlan(narrowed, berth, reach),
    ...drawnBracket(motor, stern.transomThicknessMm, "plan", berth),
    ...(motion ? [...solidMotor(hung, "plan"), ...envelope(hung, "plan", motion.running)] : []),
  ];
  const around = extent(things, 1);
  const centre = line(
    [
      [around.left - 20, 0],
      [around.right + 20, 0],
    ],
    { line: "centre", of: "centreline" },
  );
  return {
    title: "Plan from above",
    says: `The stern from above, bow to the left and port at the foot${motion ? "; the motor straight ahead in full line, at its tightest in dash-and-dots" : ""}.`,
    things: [...things, centre, ...fouled("plan", subject)],
    lettered: (scale) => {
      const bounds = extent(things, scale);
      const afloat = fromBracket("plan", [0, 0, 0], berth)[0];
      return [
        ...wellBreadths(subject, write),
        ...clearancesLettered("plan", subject, bounds, scale),
        ...sides({ ...bounds, left: afloat + 8 * scale }, scale),
        ...obstaclesNamed(subject),
        ...forward([bounds.left, bounds.top + 2 * scale], scale),
      ];
    },
    notes: [],
  };
}

/** Names of whatever was measured as a box, on the boxes. */
function obstaclesNamed({ hung }: Subject): Mark[] {
  return (hung.mounting.rig.stern.obstacles ?? []).map(({ label, fromMm: a, toMm: b }) => {
    const middle = fromBracket("plan", [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2], hung.berth);
    const words = label.length > NAME ? `${label.slice(0, NAME - 1)}…` : label;
    return lettering(middle, words, { height: 2.3, align: "middle", halo: true });
  });
}

const sides = (
  { left, bottom, top }: { left: number; bottom: number; top: number },
  scale: number,
): Mark[] => [
  lettering([left, bottom + 1 * scale], "PORT", { height: 2.6, bold: true, halo: true }),
  lettering([left, top - 3 * scale], "STARBOARD", { height: 2.6, bold: true, halo: true }),
];

function wellBreadths({ hung }: Subject, write: (mm: number) => string): Mark[] {
  const { stern } = hung.mounting.rig;
  const { soleDropMm, soleAngleDeg, transomThicknessMm, wellDepthMm, wellWidthAftMm, wellWidthFrontMm } =
    stern;
  if (soleDropMm === undefined || soleAngleDeg === undefined || transomThicknessMm === undefined) return [];
  const at = (along: number, y: number) =>
    fromBracket("plan", inWell({ soleDropMm, soleAngleDeg, transomThicknessMm }, along, y, 0), hung.berth);
  const breadth = (along: number, wide: number, offset: number, of: string) =>
    plumb(at(along, wide / 2), at(along, -wide / 2), offset, wide, write(wide), of);
  return [
    ...(wellWidthAftMm === undefined || wellWidthFrontMm === undefined || wellDepthMm === undefined
      ? []
      : [
          breadth(0, wellWidthAftMm, -9, "well width at the transom"),
          breadth(wellDepthMm, wellWidthFrontMm, -6, "well width at the front"),
        ]),
  ];
}

/** Elevation from aft: port to the left. */
export function elevation(subject: Subject): Content {
  const { hung, report } = subject;
  const { stern, motor } = hung.mounting.rig;
  const { motion, berth } = hung;
  const reach = reachOf(hung);
  const hard = hardOver(hung);
  const things = [
    ...sternElevation(stern, berth, reach),
    ...hard.flatMap((pose) => ghostMotor(hung, "elevation", pose, HEAD)),
    ...tightest(seenIn("elevation", subject)).flatMap((pose) => ghostMotor(hung, "elevation", pose, HEAD)),
    ...drawnBracket(motor, stern.transomThicknessMm, "elevation", berth),
    ...(motion ? [...solidMotor(hung, "elevation"), ...envelope(hung, "elevation", motion.running)] : []),
  ];
  const around = extent(things, 1);
  const plumbLine = line(
    [
      [0, around.bottom - 20],
      [0, around.top + 20],
    ],
    { line: "centre", of: "centreline" },
  );
  const water = stern.waterlineMm;
  return {
    title: "Elevation from aft",
    says: `The stern from aft, port to the left${motion ? "; the motor straight ahead in full line, hard over in dash-and-dots" : ""}.`,
    things: [
      datumLine(around.right, around.left),
      ...(water === undefined ? [] : waterSurface(water, around.left, around.right, around.right - 40, 10)),
      ...things,
      plumbLine,
      ...fouled("elevation", subject),
    ],
    lettered: (scale) => elevationLettered(subject, reach, around, scale),
    notes: [
      ...(stern.transomWidthMm === undefined
        ? ["Transom width not taken: the transom is broken off at the sides."]
        : ["Only the middle of the transom is measured; its outline is typical of the hull's form."]),
      ...(report.plate ? [] : ["The plate's height cannot be told yet."]),
    ],
  };
}

function elevationLettered(subject: Subject, reach: Reach, around: Window, scale: number): Mark[] {
  const { hung, write } = subject;
  const { stern } = hung.mounting.rig;
  const top = stern.transomTopMm;
  const marks: Mark[] = clearancesLettered("elevation", subject, around, scale);
  if (stern.notchWidthMm !== undefined && top !== undefined) {
    const half = stern.notchWidthMm / 2;
    marks.push(
      level(
        [-half, hung.berth.seatMm + 40],
        [half, hung.berth.seatMm + 40],
        -(top - 40 - hung.berth.seatMm) / scale - 4,
        stern.notchWidthMm,
        write(stern.notchWidthMm),
        "notch width",
      ),
    );
  }
  if (stern.transomWidthMm !== undefined && top !== undefined) {
    const half = halfTop(stern, reach);
    marks.push(
      level(
        [-half, top],
        [half, top],
        (around.top - top) / scale + 5 + 5 * Math.ceil(seenIn("elevation", subject).length / 2),
        stern.transomWidthMm,
        write(stern.transomWidthMm),
        "transom width",
      ),
    );
  }
  return [
    ...marks,
    lettering([around.left + 1.5 * scale, around.top - 2 * scale], "PORT", { height: 2.6, bold: true }),
    lettering([around.right - 1.5 * scale, around.top - 2 * scale], "STARBOARD", {
      height: 2.6,
      bold: true,
      align: "end",
    }),
    lettering([around.left, 0.8 * scale], "DATUM", { height: 2.3, halo: true }),
  ];
}
