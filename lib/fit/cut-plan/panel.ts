/**
 * A part as it comes off the saw: stock with two parallel faces, bounded by cuts that are planes. The
 * outline on the marked face and the one on the back follow from where the planes cross the faces.
 */

import { type Blocked, without } from "#lib/fit/cut-plan/notching.ts";
import { faceOf, type Place, type Spot, spotInSpace } from "#lib/fit/cut-plan/place.ts";
import { angleBetweenDeg, dot, type Plane, sawSetting, type Vector } from "#lib/fit/cut-plan/planes.ts";
import { tan } from "#lib/quantity/angle.ts";

/** One cut: what it is, what it lies against, and its plane (normal out of the wood). */
export interface CutPlane {
  readonly id: string;
  readonly against: string;
  readonly plane: Plane;
}

/** Stock to be cut. */
export interface Blank {
  readonly place: Place;
  readonly thicknessMm: number;
  readonly cuts: readonly CutPlane[];
  /** What it is notched round: boxes by their corners' planes (see notching.ts). */
  readonly round?: readonly Blocked[];
}

/** One side of an outline: it runs from point `from` to the next; `cut` is absent along a notch. */
interface Side {
  readonly from: Spot;
  readonly cut: number;
}

/** Larger than any boat, mm. */
const FAR = 20_000;

/** A plane's line on the face `belowMm` under the marked one: the wood lies where a right + b up <= c. */
function lineOn(place: Place, { normal, at }: Plane, belowMm: number): [a: number, b: number, c: number] {
  const origin = spotInSpace(place, [0, 0], belowMm);
  return [dot(normal, place.right), dot(normal, place.up), at - dot(normal, origin)];
}

/** What is left of an outline on the wood's side of a line; the new side is numbered `cut`. */
function sawn(sides: readonly Side[], [a, b, c]: readonly [number, number, number], cut: number): Side[] {
  const over = ([x, y]: Spot) => a * x + b * y - c;
  return sides.flatMap((side, i) => {
    const next = sides[(i + 1) % sides.length]!;
    const [here, there] = [over(side.from), over(next.from)];
    if (here > 0 === there > 0) return here > 0 ? [] : [side];
    const share = here / (here - there);
    const at: Spot = [
      side.from[0] + share * (next.from[0] - side.from[0]),
      side.from[1] + share * (next.from[1] - side.from[1]),
    ];
    return here > 0 ? [{ from: at, cut: side.cut }] : [side, { from: at, cut }];
  });
}

/** The sides of the outline on the face `belowMm` under the marked one, anticlockwise; empty where nothing is left. */
function sidesOn({ place, cuts }: Blank, belowMm: number): Side[] {
  const start: Side[] = [
    { from: [-FAR, -FAR], cut: -1 },
    { from: [FAR, -FAR], cut: -1 },
    { from: [FAR, FAR], cut: -1 },
    { from: [-FAR, FAR], cut: -1 },
  ];
  return cuts.reduce((sides, { plane }, i) => sawn(sides, lineOn(place, plane, belowMm), i), start);
}

/** The outline on a face, notches included: anticlockwise, mm. Throws where the cuts leave no part, or one without end. */
export function outlineOn(blank: Blank, belowMm: number): Spot[] {
  const sides = sidesOn(blank, belowMm);
  if (sides.length < 3) throw new RangeError("The cuts leave nothing of the part.");
  if (sides.some(({ cut }) => cut < 0)) throw new RangeError("The cuts do not bound the part.");
  return (blank.round ?? []).reduce<Spot[]>(
    (outline, box) => without(outline, box.cornersOn(blank.place, belowMm)),
    sides.map(({ from }) => from),
  );
}

/** Labels of what the part is really notched round, on either face. */
export function notchesOf(blank: Blank): string[] {
  const plain = { ...blank, round: [] };
  const notched = (box: Blocked, below: number) =>
    without(outlineOn(plain, below), box.cornersOn(blank.place, below)).length >
    outlineOn(plain, below).length;
  return (blank.round ?? [])
    .filter((box) => notched(box, 0) || notched(box, blank.thicknessMm))
    .map(({ label }) => label);
}

/** True where the cuts leave a part at least `leastMm` long and deep on both faces. */
export function leavesPart(blank: Blank, leastMm: number): boolean {
  return [0, blank.thicknessMm].every((below) => {
    const sides = sidesOn(blank, below);
    if (sides.length < 3 || sides.some(({ cut }) => cut < 0)) return false;
    return [0, 1].every((k) => {
      const values = sides.map(({ from }) => from[k as 0 | 1]);
      return Math.max(...values) - Math.min(...values) >= leastMm;
    });
  });
}

/** One cut of a part as the saw is set. */
export interface PartCut {
  readonly id: string;
  readonly against: string;
  /** Across the part (`end`) or along it (`edge`): what the table's angle is counted from. */
  readonly runs: "end" | "edge";
  /** Blade from square, 0 to 90. */
  readonly tiltDeg: number;
  /** Which face is left the longer. */
  readonly longFace: "marked" | "back" | "neither";
  /** The cut's line on the marked face from square to the part's length (`end`), or from the length (`edge`); plus = anticlockwise as one looks at the marked face. */
  readonly tableDeg: number;
  /** The same two as rise over run for a bevel gauge: so many mm over 100. */
  readonly tiltPer100Mm: number;
  readonly tablePer100Mm: number;
  /** Length of the cut on the marked face and on the back, before notching, mm. */
  readonly markedMm: number;
  readonly backMm: number;
}

/** Below this a blade counts as square, degrees. */
const SQUARE_DEG = 0.005;

/** The cuts of a part with their settings; one that leaves no mark on the part is left out. */
export function cutsOf(blank: Blank): PartCut[] {
  const { place, cuts, thicknessMm } = blank;
  const [marked, back] = [sidesOn(blank, 0), sidesOn(blank, thicknessMm)];
  return cuts.flatMap(({ id, against, plane }, i) => {
    const [markedMm, backMm] = [sideLength(marked, i), sideLength(back, i)];
    if (markedMm + backMm < 1e-6) return [];
    const end = isEnd(place, plane.normal);
    const length = end ? place.right : place.up;
    const { tiltDeg, tableDeg } = sawSetting(faceOf(place), length, plane.normal);
    const table = Math.abs(tableDeg) > 90 ? tableDeg - Math.sign(tableDeg) * 180 : tableDeg;
    const longFace = Math.abs(tiltDeg) < SQUARE_DEG ? "neither" : tiltDeg > 0 ? "back" : "marked";
    return [
      {
        id,
        against,
        runs: end ? "end" : "edge",
        tiltDeg: Math.abs(tiltDeg),
        longFace,
        tableDeg: table,
        tiltPer100Mm: 100 * tan(Math.abs(tiltDeg)),
        tablePer100Mm: 100 * tan(Math.abs(table)),
        markedMm,
        backMm,
      },
    ];
  });
}

/** A cut is an end when it faces along the part's right rather than its up. */
const isEnd = ({ right, up }: Place, normal: Vector): boolean =>
  Math.abs(90 - angleBetweenDeg(normal, right)) >= Math.abs(90 - angleBetweenDeg(normal, up));

function sideLength(sides: readonly Side[], cut: number): number {
  const i = sides.findIndex((side) => side.cut === cut);
  if (i < 0) return 0;
  const [a, b] = [sides[i]!.from, sides[(i + 1) % sides.length]!.from];
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}
