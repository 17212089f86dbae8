/** A measurement drawn on a picture: heavy accent line, arrowheads, dots at its ends. */
import { arrowhead } from "#lib/draw/dimension.ts";
import { arc, type Flat, lettering, line, type Mark } from "#lib/draw/drawing.ts";
import type { Taken } from "#lib/draw/taken.ts";
import { atan2, cos, sin } from "#lib/quantity/angle.ts";

/** The point of a circle in a direction, degrees anticlockwise from the right. */
export const onCircle = (centre: Flat, radius: number, deg: number): Flat => [
  centre[0] + radius * cos(deg),
  centre[1] + radius * sin(deg),
];

const accent = { tone: "accent" } as const;

const dot = (at: Flat, scale: number): Mark =>
  arc(at, 0.8 * scale, [0, 360], { ...accent, line: "dimension", fill: "solid", of: "end" });

const thin = (points: readonly Flat[]): Mark =>
  line(points, { ...accent, line: "dimension", of: "extension" });

const heavy = (points: readonly Flat[]): Mark =>
  line(points, { ...accent, line: "visible", of: "measurement" });

function shifted(taken: Extract<Taken, { to: Flat }>): readonly [Flat, Flat] {
  const { from, to, along, aside } = taken;
  if (along === "level") {
    const up = aside >= 0 ? Math.max(from[1], to[1]) + aside : Math.min(from[1], to[1]) + aside;
    return [
      [from[0], up],
      [to[0], up],
    ];
  }
  if (along === "plumb") {
    const right = aside >= 0 ? Math.max(from[0], to[0]) + aside : Math.min(from[0], to[0]) + aside;
    return [
      [right, from[1]],
      [right, to[1]],
    ];
  }
  const across = atan2(to[1] - from[1], to[0] - from[0]) + 90;
  return [onCircle(from, aside, across), onCircle(to, aside, across)];
}

/** Arrowheads turned inward and set outside where the length is too short to hold them. */
function arrows(a: Flat, b: Flat, scale: number): Mark[] {
  const slope = atan2(b[1] - a[1], b[0] - a[0]);
  const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const big = scale * 1.5;
  const inside = long > 3 * 2.6 * big;
  const tails = inside
    ? []
    : [thin([a, onCircle(a, -9 * scale, slope)]), thin([b, onCircle(b, 9 * scale, slope)])];
  return [
    ...tails,
    heavy([a, b]),
    arrowhead(a, inside ? slope + 180 : slope, big, "accent"),
    arrowhead(b, inside ? slope : slope + 180, big, "accent"),
  ];
}

/** The marks of a measurement; `scale` turns paper mm into the schematic's. */
export function measurement(taken: Taken, scale: number): Mark[] {
  if ("centre" in taken) {
    const { centre, radius, fromDeg, toDeg } = taken;
    const [a, b] = [onCircle(centre, radius, fromDeg), onCircle(centre, radius, toDeg)];
    const arms = [fromDeg, toDeg].map((deg) => thin([centre, onCircle(centre, radius * 1.12, deg)]));
    const lean = Math.min(8, (toDeg - fromDeg) / 4);
    return [
      ...arms,
      arc(centre, radius, [fromDeg, toDeg], { ...accent, of: "measurement" }),
      arrowhead(a, fromDeg - 90 + lean, scale * 1.5, "accent"),
      arrowhead(b, toDeg + 90 - lean, scale * 1.5, "accent"),
      dot(centre, scale),
    ];
  }
  if ("at" in taken) {
    const slope = atan2(taken.at[1] - taken.from[1], taken.at[0] - taken.from[0]);
    const words = lettering(taken.from, taken.word, { height: 5, align: "end", tone: "accent", bold: true });
    return [
      heavy([onCircle(taken.from, 2 * scale, slope), taken.at]),
      arrowhead(taken.at, slope, scale * 1.5, "accent"),
      words,
    ];
  }
  const [a, b] = shifted(taken);
  return [
    thin([taken.from, a]),
    thin([taken.to, b]),
    ...arrows(a, b, scale),
    dot(taken.from, scale),
    dot(taken.to, scale),
  ];
}
