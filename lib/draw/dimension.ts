/**
 * Dimensions as a draughtsman draws them: extension lines with a small gap, a dimension line with slim
 * arrowheads, the figure above it. After ISO 129-1 (from memory).
 */
import {
  type AngleDimension,
  arc,
  type Dimension,
  type Flat,
  type Lettering,
  lettering,
  line,
  type Mark,
  outline,
} from "#lib/draw/drawing.ts";
import { breadthOf } from "#lib/draw/lettering.ts";
import { atan2, cos, sin } from "#lib/quantity/angle.ts";

/** On paper, mm: gap before an extension line, how far it runs past the dimension line, an arrowhead, the figure's height and its rise. */
const GAP = 1;
const PAST = 1.5;
const ARROW_LONG = 2.6;
const ARROW_WIDE = 0.8;
/** Height of a dimension's figure on paper, mm. */
export const FIGURE = 2.8;
const RISE = 0.9;

const along = (from: Flat, angleDeg: number, distance: number): Flat => [
  from[0] + distance * cos(angleDeg),
  from[1] + distance * sin(angleDeg),
];

/** A slim filled arrowhead with its tip at `tip`, flying in the direction `angleDeg`; `scale` turns paper mm into true size. */
export function arrowhead(tip: Flat, angleDeg: number, scale: number, tone: Mark["tone"]): Mark {
  const back = along(tip, angleDeg, -ARROW_LONG * scale);
  const half = (ARROW_WIDE / 2) * scale;
  const wings = [along(back, angleDeg + 90, half), along(back, angleDeg - 90, half)];
  return outline([tip, ...wings], { line: "dimension", tone, fill: "solid", of: "arrowhead" });
}

/** Direction of the dimension line, from the `from` end to the `to` end, degrees. */
function slope({ from, to, along: way }: Dimension): number {
  if (way === "level") return to[0] >= from[0] ? 0 : 180;
  if (way === "plumb") return to[1] >= from[1] ? 90 : 270;
  return atan2(to[1] - from[1], to[0] - from[0]);
}

/** The two ends of the dimension line itself. */
export function dimensionLine(dimension: Dimension, scale: number): readonly [Flat, Flat] {
  const { from, to, offset } = dimension;
  const away = offset * scale;
  if (dimension.along === "level") {
    const up = away >= 0 ? Math.max(from[1], to[1]) + away : Math.min(from[1], to[1]) + away;
    return [
      [from[0], up],
      [to[0], up],
    ];
  }
  if (dimension.along === "plumb") {
    const right = away >= 0 ? Math.max(from[0], to[0]) + away : Math.min(from[0], to[0]) + away;
    return [
      [right, from[1]],
      [right, to[1]],
    ];
  }
  const across = slope(dimension) + 90;
  return [along(from, across, away), along(to, across, away)];
}

/** Lettering reads from below or from the right, never upside down. */
const upright = (angleDeg: number): number => {
  const turned = ((angleDeg % 360) + 360) % 360;
  return turned > 90.5 && turned <= 270.5 ? turned - 180 : turned;
};

/** The figure of a dimension: over the middle of its line, or beyond its far end where the line is too short. */
export function figureOf(dimension: Dimension, scale: number): Lettering {
  const [a, b] = dimensionLine(dimension, scale);
  if (dimension.figureAt) {
    const leader: Flat = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const align = dimension.figureAlign ?? "middle";
    const style = { height: FIGURE, align, tone: dimension.tone, halo: true, leader } as const;
    return lettering(dimension.figureAt, dimension.figure, style);
  }
  const angle = slope(dimension);
  const turnDeg = upright(angle);
  const room = Math.hypot(b[0] - a[0], b[1] - a[1]) / scale;
  const breadth = breadthOf(dimension.figure, FIGURE);
  const middle: Flat = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const far = along(b, angle, (breadth / 2 + ARROW_LONG + 1.5) * scale);
  const at = along(room < breadth + 1 ? far : middle, turnDeg + 90, RISE * scale);
  const { tone } = dimension;
  return lettering(at, dimension.figure, { height: FIGURE, align: "middle", turnDeg, tone, halo: true });
}

function extension(from: Flat, to: Flat, scale: number, tone: Mark["tone"]): Mark[] {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (long <= GAP * scale) return [];
  const angle = atan2(to[1] - from[1], to[0] - from[0]);
  const ends = [along(from, angle, GAP * scale), along(to, angle, PAST * scale)];
  return [line(ends, { line: "dimension", tone, of: "extension" })];
}

/** The dimension line, prolonged past its arrowheads where these stand outside or the figure stands beyond. */
function prolonged(dimension: Dimension, scale: number): Flat[] {
  const [a, b] = dimensionLine(dimension, scale);
  const angle = slope(dimension);
  const room = Math.hypot(b[0] - a[0], b[1] - a[1]) / scale;
  const breadth = breadthOf(dimension.figure, FIGURE);
  const tail = room < 2.2 * ARROW_LONG ? 2 * ARROW_LONG : 0;
  const beyond = dimension.figureAt || room >= breadth + 1 ? tail : breadth + ARROW_LONG + 2;
  return [along(a, angle, -tail * scale), along(b, angle, beyond * scale)];
}

/** A dimension broken down into lines, arrowheads and its figure. */
export function drawnDimension(dimension: Dimension, scale: number): Mark[] {
  const { from, to, tone } = dimension;
  const [a, b] = dimensionLine(dimension, scale);
  const angle = slope(dimension);
  const inside = Math.hypot(b[0] - a[0], b[1] - a[1]) / scale >= 2.2 * ARROW_LONG;
  return [
    ...extension(from, a, scale, tone),
    ...extension(to, b, scale, tone),
    line(prolonged(dimension, scale), { line: "dimension", tone, of: `dimension ${dimension.of}` }),
    arrowhead(a, inside ? angle + 180 : angle, scale, tone),
    arrowhead(b, inside ? angle : angle + 180, scale, tone),
    ...drawnLettering(figureOf(dimension, scale), scale),
  ];
}

/** An angle broken down into its arc, arrowheads and figure; the figure stands outside the middle of the arc. */
export function drawnAngle(angle: AngleDimension, scale: number): Mark[] {
  const { centre, radius, fromDeg, toDeg, tone } = angle;
  const middle = (fromDeg + toDeg) / 2;
  const breadth = breadthOf(angle.figure, FIGURE);
  const out =
    radius + (1.5 + (Math.abs(cos(middle)) * breadth) / 2 + Math.abs(sin(middle)) * FIGURE * 0.5) * scale;
  const at = along(centre, middle, out);
  const words = lettering([at[0], at[1] - (FIGURE / 2) * scale], angle.figure, {
    height: FIGURE,
    align: "middle",
    tone,
    halo: true,
  });
  const ends = [
    arrowhead(along(centre, fromDeg, radius), fromDeg - 90, scale, tone),
    arrowhead(along(centre, toDeg, radius), toDeg + 90, scale, tone),
  ];
  return [
    arc(centre, radius, [fromDeg, toDeg], { line: "dimension", tone, of: `angle ${angle.of}` }),
    ...ends,
    words,
  ];
}

/** Lettering with its leader: a thin line from beside the words to a dot on the thing. */
export function drawnLettering(words: Lettering, scale: number): Mark[] {
  const { leader, ...plain } = words;
  if (leader === undefined) return [words];
  const breadth = breadthOf(words.text, words.height) * scale;
  const left = words.at[0] - { start: 0, middle: breadth / 2, end: breadth }[words.align];
  const foot: Flat = [
    Math.min(Math.max(leader[0], left - 0.8 * scale), left + breadth + 0.8 * scale),
    words.at[1],
  ];
  const middle = words.at[1] + (words.height / 2) * scale;
  const above = leader[1] > middle;
  const from: Flat =
    foot[0] > left && foot[0] < left + breadth
      ? [foot[0], above ? words.at[1] + words.height * 1.3 * scale : words.at[1] - 0.6 * scale]
      : [foot[0], middle];
  return [
    line([from, leader], { line: "dimension", tone: words.tone, of: "leader" }),
    arc(leader, 0.45 * scale, [0, 360], {
      line: "dimension",
      tone: words.tone,
      fill: "solid",
      of: "leader end",
    }),
    plain,
  ];
}
