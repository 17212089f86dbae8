/** The stern from aft: the transom with its notch; the well behind it hidden. */
import { type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { boxes, brokenOff, halfTop, knows, type Reach, WELL, type With } from "#lib/draw/stern-lines.ts";
import { type Berth, fromBracket } from "#lib/draw/view.ts";
import { cos, sin, tan } from "#lib/quantity/angle.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";
import type { SternValues } from "#lib/rig/stern.ts";

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
