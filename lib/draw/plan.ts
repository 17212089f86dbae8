/** The plan from above: well, seat, cheeks, and the motor straight and turned. */
import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { clearancesLettered, fouled } from "#lib/draw/clearance-columns.ts";
import { lettering, line, type Mark } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { forward } from "#lib/draw/forward.ts";
import { envelope, ghostMotor, solidMotor } from "#lib/draw/hung.ts";
import type { Content } from "#lib/draw/sheet.ts";
import { sternPlan } from "#lib/draw/stern-plan.ts";
import { plumb } from "#lib/draw/straight-dimensions.ts";
import { HEAD, hardOver, reachOf, type Subject, seenIn, tightest } from "#lib/draw/subject.ts";
import { fromBracket } from "#lib/draw/view.ts";
import { inWell } from "#lib/rig/obstacles.ts";

/** Letters of a name that find room on a drawing. */
const NAME = 24;

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
