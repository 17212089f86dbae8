/** Two motors on one stern from above: both straight ahead in full line, and in dash-and-dots as they come nearest to each other. Bow to the left, port at the foot. */
import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { type Drawing, type Flat, lettering, line, type Mark } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { forward } from "#lib/draw/forward.ts";
import { ghostMotor, type Hung, hang, solidMotor } from "#lib/draw/hung.ts";
import { barLength, scaleBar } from "#lib/draw/scale-bar.ts";
import { SCALES } from "#lib/draw/sheet.ts";
import { sternPlan } from "#lib/draw/stern-plan.ts";
import { plumb } from "#lib/draw/straight-dimensions.ts";
import { HEAD } from "#lib/draw/subject.ts";
import type { TwoBerth, TwoBetween } from "#lib/fit/two-report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import { seatNow } from "#lib/rig/plate.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** What the plan is drawn from. */
export interface TwoDrawn {
  readonly motors: readonly [MotorValues, MotorValues];
  readonly berths: readonly [TwoBerth, TwoBerth];
  readonly between?: TwoBetween | undefined;
  readonly stern: SternValues;
  readonly lengths: LengthSystem;
}

const WIDE = 182;

/** Marks of a motor on the centreline moved to its place: port is at the foot of the plan. */
function moved<M extends Mark>(marks: readonly M[], offsetMm: number): Mark[] {
  const by = ([x, y]: Flat): Flat => [x, y - offsetMm];
  return marks.map((mark): Mark => {
    if (mark.mark === "outline") return { ...mark, points: mark.points.map(by) };
    return mark.mark === "arc" ? { ...mark, centre: by(mark.centre) } : mark;
  });
}

const hungAt = ({ motors, berths, stern }: TwoDrawn, i: 0 | 1): Hung | undefined => {
  const { seatMm } = berths[i];
  return seatMm === undefined ? undefined : hang(mount({ motor: motors[i], stern: { ...stern, seatMm } }));
};

/** The plan; undefined where rake or a seat is not known. */
export function twoPlan(drawn: TwoDrawn): Drawing | undefined {
  const { stern, berths, between, lengths } = drawn;
  const [one, other] = [hungAt(drawn, 0), hungAt(drawn, 1)];
  const seatMm = seatNow(stern);
  if (!one || !other || stern.rakeDeg === undefined || seatMm === undefined) return undefined;
  const both = [one, other] as const;
  const out = Math.max(...berths.map(({ offsetMm }) => Math.abs(offsetMm))) + 420;
  const sideMm = Math.max(out, (stern.notchWidthMm ?? 0) / 2 + 160, (stern.wellWidthAftMm ?? 0) / 2 + 120);
  const ghosts = both.flatMap((hung, i) =>
    between ? moved(ghostMotor(hung, "plan", between.poses[i]!, HEAD), berths[i]!.offsetMm) : [],
  );
  const straight = both.flatMap((hung, i) =>
    moved(
      [
        ...drawnBracket(drawn.motors[i]!, stern.transomThicknessMm, "plan", hung.berth),
        ...solidMotor(hung, "plan"),
      ],
      berths[i]!.offsetMm,
    ),
  );
  const things: Mark[] = [
    ...ghosts,
    ...sternPlan(stern, { rakeDeg: stern.rakeDeg, seatMm }, { foreMm: 500, sideMm }),
    ...straight,
  ];
  const around = extent(things, 1);
  const scale = SCALES.find((each) => (around.right - around.left + 500) / each <= WIDE) ?? SCALES.at(-1)!;
  const write = (mm: number) => lengthWriter(lengths)(mm).replace(/ (mm|in)$/, "");
  const apartMm = Math.abs(berths[0].offsetMm - berths[1].offsetMm);
  const [aft, low] = [around.right + 4 * scale, around.bottom - 6 * scale];
  const marks: Mark[] = [
    ...things,
    line(
      [
        [around.left - 2 * scale, 0],
        [around.right + 4 * scale, 0],
      ],
      { line: "centre", of: "centreline" },
    ),
    plumb(
      [around.right, -berths[0].offsetMm],
      [around.right, -berths[1].offsetMm],
      8,
      apartMm,
      write(apartMm),
      "between the motors' middles",
    ),
    ...berths.map(({ offsetMm }, i) =>
      lettering([230, -offsetMm - 1.2 * scale], i === 0 ? "FIRST" : "SECOND", {
        height: 2.6,
        align: "middle",
        bold: true,
        halo: true,
      }),
    ),
    lettering([aft - 12 * scale, around.bottom + 1 * scale], "PORT", { height: 2.6, bold: true, halo: true }),
    lettering([aft - 12 * scale, around.top - 3 * scale], "STARBOARD", {
      height: 2.6,
      bold: true,
      halo: true,
    }),
    ...forward([around.left, around.top + 2 * scale], scale),
    ...scaleBar([around.left, low], scale, lengths),
  ];
  const room = extent(marks, scale);
  const edge = 4 * scale;
  return {
    title: "Plan of the two motors",
    says: `The stern from above, bow to the left and port at the foot; both motors straight ahead in full line${between ? ", in dash-and-dots as they come nearest to each other" : ""}; ${lengthWriter(lengths)(apartMm)} between their middles.`,
    scale,
    window: {
      left: room.left - edge,
      right: Math.max(room.right, around.left + barLength(scale, lengths)) + edge,
      bottom: room.bottom - edge,
      top: room.top + edge,
    },
    marks,
  };
}
