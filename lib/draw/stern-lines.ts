/** Lines of a stern that more than one view needs, and the lines that go with it: datum, water, break. */
import { type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { silhouette } from "#lib/draw/hull.ts";
import { type Berth, fromBracket, type View } from "#lib/draw/view.ts";
import { cos } from "#lib/quantity/angle.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

/** A stern of which these numbers are known. */
export type With<K extends SternKey> = SternValues & Required<Pick<SternValues, K>>;

/** True where every one of the keys is known. */
export const knows = <K extends SternKey>(stern: SternValues, keys: readonly K[]): stern is With<K> =>
  keys.every((key) => stern[key] !== undefined);

/** What must be known of a well before any of it is drawn. */
export const WELL = ["soleDropMm", "soleAngleDeg", "transomThicknessMm"] as const;

/** How far a drawing reaches, true mm: forward of the transom's foot on the datum, and out to each side. */
export interface Reach {
  readonly foreMm: number;
  readonly sideMm: number;
}

/** Along the face from the seat up to the uncut top of the transom. */
export const cheekTop = (stern: With<"transomTopMm">, { rakeDeg, seatMm }: Berth): number =>
  (stern.transomTopMm - seatMm) / cos(rakeDeg);

/** Whatever else stands in the way, as the boxes it was measured as. */
export function boxes(stern: SternValues, berth: Berth, view: View): Mark[] {
  return (stern.obstacles ?? []).map(({ label, fromMm: a, toMm: b }) => {
    const corners = [a[0], b[0]].flatMap((f) =>
      [a[1], b[1]].flatMap((y) => [a[2], b[2]].map((v) => fromBracket(view, [f, y, v], berth))),
    );
    return outline(silhouette(corners), { fill: "wash", of: `obstacle:${label}` });
  });
}

/** Half the breadth of the transom's top as drawn: half the transom's width, or the drawing's reach where that is not known. */
export const halfTop = (stern: SternValues, { sideMm }: Reach): number =>
  stern.transomWidthMm === undefined ? sideMm : stern.transomWidthMm / 2;

/** A break line: the piece goes on, but how far was not measured. */
export function brokenOff(from: Flat, to: Flat): Mark {
  const at = (part: number, aside: number): Flat => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const long = Math.hypot(dx, dy) || 1;
    return [from[0] + part * dx - (aside * dy) / long, from[1] + part * dy + (aside * dx) / long];
  };
  const zigzag = [at(-0.05, 0), at(0.46, 0), at(0.48, 18), at(0.52, -18), at(0.54, 0), at(1.05, 0)];
  return line(zigzag, { line: "dimension", of: "break" });
}

/** The keel line the heights are taken from. */
export const datumLine = (fromRight: number, toLeft: number): Mark =>
  line(
    [
      [fromRight, 0],
      [toLeft, 0],
    ],
    { line: "centre", of: "datum" },
  );

/** The water surface: a level line with the three short strokes under its mark. */
export function waterSurface(
  zMm: number,
  left: number,
  right: number,
  markAt: number,
  scale: number,
): Mark[] {
  const strokes = [2.4, 1.5, 0.6].map((half, i) => {
    const z = zMm - (i + 1) * 0.7 * scale;
    return line(
      [
        [markAt - half * scale, z],
        [markAt + half * scale, z],
      ],
      { line: "dimension", tone: "fits", of: "water" },
    );
  });
  return [
    line(
      [
        [left, zMm],
        [right, zMm],
      ],
      { line: "dimension", tone: "fits", of: "water" },
    ),
    ...strokes,
  ];
}
