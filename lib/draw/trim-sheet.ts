/**
 * How the boat lies on the water without the motor and with everything aboard: two small profiles from
 * port, one over the other, bow to the left, to one scale. The water is level; the hull tilts. Only the
 * stern and the lengths are measured; the rest of the hull's shape is typical.
 */
import {
  arc,
  type Drawing,
  type Flat,
  lettering,
  line,
  type Mark,
  outline,
  type Window,
} from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { barLength, scaleBar } from "#lib/draw/scale-bar.ts";
import { SCALES } from "#lib/draw/sheet.ts";
import { waterSurface } from "#lib/draw/stern-lines.ts";
import { plumb } from "#lib/draw/straight-dimensions.ts";
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import { figure, type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { Level, Mass } from "#lib/rig/afloat/floating.ts";
import { aboveWater } from "#lib/rig/afloat/floating.ts";
import { seatPoint, wellFrontPoint } from "#lib/rig/afloat/freeboard.ts";
import { seatOf } from "#lib/rig/afloat/lying.ts";
import { wellPlaceOf } from "#lib/rig/afloat/stern-edge.ts";
import { bracketToHull, type HullPoint } from "#lib/rig/frame.ts";
import { inWell } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** What the drawing is made from. */
export interface TrimDrawn {
  readonly stern: SternValues;
  readonly before: Level;
  readonly after: Level;
  readonly masses: readonly Mass[];
  readonly lengths: LengthSystem;
}

/** Greatest breadth of the drawing on paper, mm. */
const WIDE = 182;
/** Free paper around, mm. */
const EDGE = 5;

/** A point of the hull on the drawing plane as the boat lies, `drop` mm lower than the first profile. */
const afloat =
  (level: Level, drop: number) =>
  ([x, , z]: HullPoint): Flat => [
    -(x * cos(level.bowUpDeg) - (z - level.atTransomMm) * sin(level.bowUpDeg)),
    aboveWater(level, [x, 0, z]) - drop,
  ];

const top = (stern: SternValues): number => stern.transomTopMm ?? (stern.seatMm ?? 0) + 60;
const long = (stern: SternValues): number =>
  stern.lengthOverallMm ?? (stern.waterlineLengthMm ?? 4000) * 1.08;

/** Section on the centreline: transom to the seat, keel, stem, sheer. The sheer's rise and the stem are typical. */
function hullLine(stern: SternValues, rakeDeg: number, seatMm: number): HullPoint[] {
  const [high, length] = [top(stern), long(stern) - top(stern) * Math.max(0, tan(rakeDeg))];
  const at = (share: number, height: number): HullPoint => [share * length, 0, height];
  return [
    [-seatMm * tan(rakeDeg), 0, seatMm],
    [0, 0, 0],
    at(0.7, 0),
    at(0.84, 0.08 * high),
    at(0.93, 0.35 * high),
    at(0.98, 0.8 * high),
    at(1, 1.35 * high),
    at(0.75, 1.14 * high),
    at(0.45, 1.02 * high),
    at(0.2, high),
    [-high * tan(rakeDeg), 0, high],
  ];
}

function wellLine(stern: SternValues): HullPoint[] {
  const well = wellPlaceOf(stern);
  if (!well) return [];
  const point = (along: number, above: number) =>
    bracketToHull(inWell(well, along, 0, above), well.rakeDeg, well.seatMm);
  return [point(0, 0), point(well.wellDepthMm, 0), point(well.wellDepthMm, well.wellFrontHeightMm)];
}

interface Place {
  readonly level: Level;
  readonly drop: number;
  readonly title: string;
  readonly masses: readonly Mass[];
}

function things({ stern }: TrimDrawn, { level, drop }: Place): Mark[] {
  const seat = seatOf(stern)!;
  const put = afloat(level, drop);
  const well = wellLine(stern).map(put);
  return [
    outline(hullLine(stern, seat.rakeDeg, seat.seatMm).map(put), { fill: "paper", of: "hull" }),
    ...(well.length > 0 ? [line(well, { of: "well" })] : []),
  ];
}

/** The masses as dots where they weigh, with what they are. */
function loads({ stern }: TrimDrawn, { level, drop, masses }: Place, scale: number): Mark[] {
  const put = afloat(level, drop);
  return masses.flatMap((mass) => {
    const isMotor = mass.label === "motor";
    const at = put([mass.xMm, 0, isMotor ? (stern.seatMm ?? top(stern)) + 120 : 0.3 * top(stern)]);
    const words = `${mass.label} ${figure(mass.kg)} kg`;
    const dot = arc(at, 1.1 * scale, [0, 360], {
      fill: "solid",
      line: "dimension",
      tone: "accent",
      of: mass.label,
    });
    const under: Flat = [at[0] - 5 * scale, put([mass.xMm, 0, 0])[1] - 6 * scale];
    return [
      dot,
      isMotor
        ? lettering([at[0] - 2.5 * scale, at[1] + 2.4 * scale], words, {
            height: 2.2,
            align: "end",
            halo: true,
          })
        : lettering(under, words, { height: 2.2, align: "end", leader: at }),
    ];
  });
}

/** Freeboard of the seat, and of the well's front where there is one. */
function heights({ stern, lengths }: TrimDrawn, { level, drop }: Place, scale: number): Mark[] {
  const put = afloat(level, drop);
  const write = (mm: number) => lengthWriter(lengths)(mm).replace(/ (mm|in)$/, "");
  const dimensioned = (point: HullPoint, offset: number, of: string) => {
    const at = put(point);
    const mm = aboveWater(level, point);
    return plumb([at[0], -drop], at, offset, mm, write(mm), of);
  };
  const seat = seatPoint(seatOf(stern)!);
  const well = wellPlaceOf(stern);
  const right =
    9 + Math.max(0, put([-top(stern) * tan(stern.rakeDeg ?? 0), 0, top(stern)])[0] - put(seat)[0]) / scale;
  return [
    dimensioned(
      seat,
      right,
      drop === 0 ? "seat above the water, before" : "seat above the water, all aboard",
    ),
    ...(well
      ? [
          dimensioned(
            wellFrontPoint(well),
            -7,
            drop === 0 ? "well's front above the water, before" : "well's front above the water, all aboard",
          ),
        ]
      : []),
  ];
}

/** The drawing; undefined where rake or seat are not known. */
export function trimSheet(drawn: TrimDrawn): Drawing | undefined {
  const { stern, before, after, masses, lengths } = drawn;
  if (!seatOf(stern)) return undefined;
  const alone: Place = { level: before, drop: 0, title: "WITHOUT MOTOR AND LOAD", masses: [] };
  const room = extent(things(drawn, alone), 1);
  const wide = room.right - room.left + 900;
  const scale = SCALES.find((each) => wide / each <= WIDE) ?? SCALES.at(-1)!;
  const drop = room.top - room.bottom + 21 * scale;
  const places = [alone, { level: after, drop, title: "ALL ABOARD", masses }];
  const marks = places.flatMap((place) => profileOf(drawn, place, room, scale));
  const { left, right, bottom, top: high } = extent(marks, scale);
  const window: Window = {
    left: left - EDGE * scale,
    right: right + EDGE * scale,
    bottom: bottom - 13 * scale,
    top: high + 3 * scale,
  };
  const bar = barLength(scale, lengths);
  return {
    title: "How the boat lies",
    says: `Two profiles from port, bow to the left: ${saysOf(drawn, before, "without motor and load")}; ${saysOf(drawn, after, "with everything aboard")}.`,
    scale,
    window,
    marks: [
      ...marks,
      lettering(
        [window.left + 2 * scale, window.bottom + 1.5 * scale],
        `1:${scale}; all but the stern is typical`,
        { height: 2.2 },
      ),
      ...scaleBar([window.right - bar - 12 * scale, window.bottom + 6.5 * scale], scale, lengths),
    ],
  };
}

function profileOf(drawn: TrimDrawn, place: Place, room: Window, scale: number): Mark[] {
  const left = room.left - 4 * scale;
  const right = room.right + 24 * scale;
  return [
    ...things(drawn, place),
    ...waterSurface(-place.drop, left, right, left + 6 * scale, scale),
    ...loads(drawn, place, scale),
    ...heights(drawn, place, scale),
    lettering([left, room.top - place.drop + 10 * scale], place.title, { height: 2.5, bold: true }),
  ];
}

const saysOf = ({ stern, lengths }: TrimDrawn, level: Level, when: string): string => {
  const mm = aboveWater(level, seatPoint(seatOf(stern)!));
  return `${when} the seat stands ${lengthWriter(lengths)(Math.abs(mm))} ${mm < 0 ? "under" : "above"} the water`;
};
