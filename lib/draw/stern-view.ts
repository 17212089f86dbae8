/**
 * A stern in the three views, from what is known of it. The profile is a section on the centreline,
 * hatched where the saw would go through; what stands beyond is seen in full line.
 */
import { type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { hatching } from "#lib/draw/hatch.ts";
import { silhouette } from "#lib/draw/hull.ts";
import { type Berth, fromBracket, type View } from "#lib/draw/view.ts";
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";
import type { SternKey, SternValues } from "#lib/rig/stern.ts";

type With<K extends SternKey> = SternValues & Required<Pick<SternValues, K>>;
const knows = <K extends SternKey>(stern: SternValues, keys: readonly K[]): stern is With<K> =>
  keys.every((key) => stern[key] !== undefined);

const WELL = ["soleDropMm", "soleAngleDeg", "transomThicknessMm"] as const;
/** Spacing of section hatching, true mm at one to one: three paper millimetres at 1:10. */
const HATCH = 16;

/** How far a drawing reaches, true mm: forward of the transom's foot on the datum, and out to each side. */
export interface Reach {
  readonly foreMm: number;
  readonly sideMm: number;
}

/** A piece cut through: its edge in full line, hatched. */
function section(points: readonly Flat[], of: string, angleDeg = 45): Mark[] {
  return [
    outline(points, { fill: "paper", of }),
    ...hatching(points, HATCH, angleDeg).map((ends) => line(ends, { line: "dimension", of: "hatch" })),
  ];
}

/** Height up the transom's face, from the seat, of a point `forward` of the outside face that stands `zMm` above the datum. */
const upTheFace = (zMm: number, forward: number, { rakeDeg, seatMm }: Berth): number =>
  (zMm - seatMm - forward * sin(rakeDeg)) / cos(rakeDeg);

/** Along the face from the seat up to the uncut top of the transom. */
const cheekTop = (stern: With<"transomTopMm">, { rakeDeg, seatMm }: Berth): number =>
  (stern.transomTopMm - seatMm) / cos(rakeDeg);

/** The section on the centreline, seen from port. */
export function sternProfile(stern: SternValues, berth: Berth, { foreMm }: Reach): Mark[] {
  const at = (point: BracketPoint) => fromBracket("profile", point, berth);
  const bottom = stern.keelDepthMm ?? 0;
  const t = stern.transomThicknessMm;
  const foot = (forward: number) => at([forward, 0, upTheFace(bottom, forward, berth)]);
  const marks: Mark[] = [];
  if (knows(stern, ["transomTopMm"]) && !isUncut(stern) && cheekTop(stern, berth) > 0) {
    const top = cheekTop(stern, berth);
    const beyond = [at([0, 0, 0]), at([t ?? 0, 0, 0]), at([t ?? 0, 0, top]), at([0, 0, top])];
    marks.push(outline(beyond, { of: "cheek", fill: "paper" }));
  }
  if (t === undefined) marks.push(line([foot(0), at([0, 0, 0])], { of: "transom" }));
  else marks.push(...section([foot(0), foot(t), at([t, 0, 0]), at([0, 0, 0])], "transom"));
  const [x, z] = foot(t ?? 0);
  marks.push(
    line(
      [
        [x, z],
        [-foreMm, z],
      ],
      { of: "bottom" },
    ),
  );
  if (bottom > 0) {
    const heel = foot(t ?? 0);
    marks.push(line([heel, [heel[0], 0], [-foreMm, 0]], { of: "keel" }));
  }
  marks.push(...wellProfile(stern, berth, foreMm), ...boxes(stern, berth, "profile"));
  return marks;
}

/** Sole and front bulkhead in section; the far side's top edge where its height is known. */
function wellProfile(stern: SternValues, berth: Berth, foreMm: number): Mark[] {
  if (!knows(stern, WELL)) return [];
  const at = (along: number, above: number) => fromBracket("profile", inWell(stern, along, 0, above), berth);
  const deck = stern.deckThicknessMm;
  const depth = stern.wellDepthMm ?? Math.max(0, foreMm - 200);
  const marks: Mark[] = [];
  if (stern.wellSideHeightMm !== undefined) {
    marks.push(line([at(0, stern.wellSideHeightMm), at(depth, stern.wellSideHeightMm)], { of: "well side" }));
  }
  if (deck === undefined) marks.push(line([at(0, 0), at(depth, 0)], { of: "sole" }));
  else marks.push(...section([at(0, 0), at(depth, 0), at(depth, -deck), at(0, -deck)], "sole", 135));
  if (stern.wellDepthMm !== undefined && stern.wellFrontHeightMm !== undefined) {
    const thick = deck ?? 0;
    const high = stern.wellFrontHeightMm;
    if (deck === undefined) marks.push(line([at(depth, 0), at(depth, high)], { of: "bulkhead" }));
    else
      marks.push(
        ...section(
          [at(depth, -deck), at(depth + thick, -deck), at(depth + thick, high), at(depth, high)],
          "bulkhead",
        ),
      );
  }
  return marks;
}

/** Whatever else stands in the way, as the boxes it was measured as. */
function boxes(stern: SternValues, berth: Berth, view: View): Mark[] {
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

/** A rounded inside corner of the notch, from the cheek down onto the seat; `hand` +1 to the right. */
function notchCorner(half: number, low: number, radius: number, squeeze: number, hand: number): Flat[] {
  return [0, 15, 30, 45, 60, 75, 90].map(
    (angle): Flat => [
      hand * (half - radius + radius * cos(angle)),
      low + squeeze * (radius - radius * sin(angle)),
    ],
  );
}

/** The top edge of the transom from right to left as seen from aft, down into the notch where there is one. */
function topEdge(stern: With<"transomTopMm">, berth: Berth, half: number): Flat[] {
  const top = stern.transomTopMm;
  if (isUncut(stern) || stern.notchWidthMm === undefined)
    return [
      [half, top],
      [-half, top],
    ];
  const cut = Math.min(stern.notchWidthMm / 2, half);
  const radius = Math.max(0, Math.min(stern.notchCornerRadiusMm ?? 0, cut, top - berth.seatMm));
  const right = notchCorner(cut, berth.seatMm, radius, cos(berth.rakeDeg), 1);
  const left = notchCorner(cut, berth.seatMm, radius, cos(berth.rakeDeg), -1).toReversed();
  return [[half, top], [cut, top], ...right, ...left, [-cut, top], [-half, top]];
}

/** The transom's lower edge from left to right for a hull form: typical of the form, for only its middle is measured. */
function lowerEdge(stern: With<"transomTopMm">, half: number): Flat[] {
  const low = stern.keelDepthMm ?? 0;
  const high = stern.transomTopMm;
  const at = (x: number, z: number): Flat => [x * half, low + z * (high - low)];
  if (stern.hullForm === "vee") {
    return [at(-0.88, 0.33), at(0, 0), at(0.88, 0.33)];
  }
  if (stern.hullForm === "round") {
    return Array.from({ length: 21 }, (_, k) => {
      const angle = 180 + k * 9;
      return at(cos(angle), 0.75 * (1 + sin(angle)));
    });
  }
  return [at(-0.88, 0), at(0.88, 0)];
}

/** The transom from aft. Drawn with its true width where that is known; else open at both sides. */
export function sternElevation(stern: SternValues, berth: Berth, reach: Reach): Mark[] {
  if (!knows(stern, ["transomTopMm"]))
    return [
      line(
        [
          [-150, berth.seatMm],
          [150, berth.seatMm],
        ],
        { of: "seat" },
      ),
    ];
  const half = halfTop(stern, reach);
  const edge = topEdge(stern, berth, half);
  const marks: Mark[] = [];
  if (stern.transomWidthMm === undefined) {
    const low = stern.keelDepthMm ?? 0;
    marks.push(
      line(edge, { of: "transom" }),
      line(
        [
          [-half, low],
          [half, low],
        ],
        { of: "bottom" },
      ),
    );
    for (const side of [-1, 1]) marks.push(brokenOff([side * half, low], [side * half, stern.transomTopMm]));
  } else marks.push(outline([...edge, ...lowerEdge(stern, half)], { fill: "paper", of: "transom" }));
  const keel = stern.keelDepthMm ?? 0;
  if (keel > 0)
    marks.push(
      outline(
        [
          [-18, 0],
          [18, 0],
          [20, keel],
          [-20, keel],
        ],
        { fill: "paper", of: "keel" },
      ),
    );
  return [...marks, ...wellElevation(stern, berth), ...boxes(stern, berth, "elevation")];
}

/** The well behind the transom, hidden from aft. */
function wellElevation(stern: SternValues, berth: Berth): Mark[] {
  if (!knows(stern, [...WELL, "wellWidthAftMm"])) return [];
  const half = stern.wellWidthAftMm / 2;
  const high = stern.wellSideHeightMm ?? stern.wellFrontHeightMm ?? 0;
  const lean = high * tan(stern.sideFlareDeg ?? 0);
  const at = (y: number, above: number) => fromBracket("elevation", inWell(stern, 0, y, above), berth);
  return [
    line([at(half + lean, high), at(half, 0), at(-half, 0), at(-half - lean, high)], {
      line: "hidden",
      of: "well",
    }),
  ];
}

/** The stern from above: tops of the cheeks, seat, well sole and front bulkhead. */
export function sternPlan(stern: SternValues, berth: Berth, reach: Reach): Mark[] {
  const at = (point: BracketPoint) => fromBracket("plan", point, berth);
  const half = halfTop(stern, reach);
  const t = stern.transomThicknessMm ?? 0;
  const strip = (from: number, to: number, v: number, of: string): Mark =>
    outline([at([0, from, v]), at([0, to, v]), at([t, to, v]), at([t, from, v])], { fill: "paper", of });
  const marks: Mark[] = [...wellPlan(stern, berth)];
  const cut = isUncut(stern) ? undefined : stern.notchWidthMm;
  if (cut === undefined) return [...marks, strip(-half, half, 0, "transom"), ...boxes(stern, berth, "plan")];
  marks.push(strip(-cut / 2, cut / 2, 0, "seat"));
  if (knows(stern, ["transomTopMm"])) {
    const top = cheekTop(stern, berth);
    for (const hand of [-1, 1])
      marks.push(strip((hand * cut) / 2, hand * Math.max(half, cut / 2), top, "cheek"));
  }
  return [...marks, ...boxes(stern, berth, "plan")];
}

function wellPlan(stern: SternValues, berth: Berth): Mark[] {
  if (!knows(stern, [...WELL, "wellDepthMm", "wellWidthAftMm", "wellWidthFrontMm"])) return [];
  const at = (along: number, y: number, above = 0) =>
    fromBracket("plan", inWell(stern, along, y, above), berth);
  const [aft, front, depth] = [stern.wellWidthAftMm / 2, stern.wellWidthFrontMm / 2, stern.wellDepthMm];
  const marks: Mark[] = [
    outline([at(0, aft), at(depth, front), at(depth, -front), at(0, -aft)], { fill: "paper", of: "sole" }),
  ];
  const high = stern.wellSideHeightMm;
  if (high !== undefined && stern.sideFlareDeg !== undefined) {
    const lean = high * tan(stern.sideFlareDeg);
    for (const hand of [-1, 1]) {
      const edge = [at(0, hand * (aft + lean), high), at(depth, hand * (front + lean), high)];
      marks.push(line(edge, { line: "dimension", of: "well side" }));
    }
  }
  return marks;
}

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
