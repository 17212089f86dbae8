/**
 * A part of the well as it is marked out: the marked face wide, the back dashed, its lengths, and how the
 * saw is set for every cut.
 */
import { type Dimension, type Flat, lettering, type Mark, outline } from "#lib/draw/drawing.ts";
import { boughtSize, degrees, figureUp, riseOverRun, writtenUp } from "#lib/draw/paper/figures.ts";
import type { View } from "#lib/draw/paper/page.ts";
import type { PartCut } from "#lib/fit/cut-plan/panel.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";

/** Furthest reach of an outline to the four sides. */
export function reachOf(spots: readonly Flat[]) {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** The two outlines of a part. */
export const partOutlines = ({ id, outline: marked, back }: CutPart): Mark[] => [
  outline(back, { line: "hidden", of: `${id} back` }),
  outline(marked, { of: id }),
];

/** Where an outline's left and right side stand at a height; its furthest reach where it has nothing there. */
export function sidesAt(spots: readonly Flat[], height: number): [left: number, right: number] {
  const crossings = spots.flatMap((a, i) => {
    const b = spots[(i + 1) % spots.length]!;
    if (a[1] > height === b[1] > height) return [];
    return [a[0] + ((height - a[1]) / (b[1] - a[1])) * (b[0] - a[0])];
  });
  if (crossings.length === 0) {
    const { left, right } = reachOf(spots);
    return [left, right];
  }
  return [Math.min(...crossings), Math.max(...crossings)];
}

/** The names of a part's sides: inside it where it is deep enough, else its two ends under its dimensions. */
export function sideWords(part: CutPart, scale: number, height = 3.5): Mark[] {
  const { left, right, bottom, top } = reachOf([...part.outline, ...part.back]);
  const [x, y] = [(left + right) / 2, (bottom + top) / 2];
  const pad = 3 * scale;
  const words = (at: Flat, text: string, align: "start" | "middle" | "end") =>
    lettering(at, text, { height, align, bold: true });
  if ((top - bottom) / scale < 25) {
    const under = bottom - 27 * scale;
    return [words([left, under], part.sides.left, "start"), words([right, under], part.sides.right, "end")];
  }
  const [from, to] = sidesAt(part.outline, y);
  return [
    words([from + pad, y], part.sides.left, "start"),
    words([to - pad, y], part.sides.right, "end"),
    words([x, top - pad - height * scale], part.sides.top, "middle"),
    words([x, bottom + pad], part.sides.bottom, "middle"),
  ];
}

/** How the saw is set for one cut, in a line. */
export function settingOf(cut: PartCut, lengths: LengthSystem): string {
  const blade =
    cut.longFace === "neither"
      ? "blade square"
      : `blade ${degrees(cut.tiltDeg)} (${riseOverRun(cut.tiltPer100Mm, lengths)}), ${cut.longFace === "marked" ? "marked face" : "back"} the long one`;
  const turned = Math.abs(cut.tableDeg) < 0.05;
  const way = cut.tableDeg > 0 ? "anticlockwise" : "clockwise";
  const table = turned
    ? cut.runs === "end"
      ? "straight across"
      : "along the part"
    : `${degrees(Math.abs(cut.tableDeg))} ${way} from ${cut.runs === "end" ? "square" : "the length"} (${riseOverRun(cut.tablePer100Mm, lengths)})`;
  const name = cut.id.charAt(0).toUpperCase() + cut.id.slice(1);
  return `${name}, against ${cut.against}: ${blade}; ${table}.`;
}

/** The corners of a panel's marked face, from the centreline and up from its foot, anticlockwise: what it is laid off by. */
function cornersOf({ outline: marked, sides }: CutPart, lengths: LengthSystem): string {
  const foot = Math.min(...marked.map(([, up]) => up));
  const corners = marked.map(([right, up]) => {
    const side = right < 0 ? sides.left : sides.right;
    return `${side} ${writtenUp(Math.abs(right), lengths)}, up ${writtenUp(up - foot, lengths)}`;
  });
  return `Corners of the marked face, from the centreline and up from the foot: ${corners.join("; ")}.`;
}

/** A part on a sheet of its own. */
export function partView(part: CutPart, lengths: LengthSystem): View {
  const all = [...part.outline, ...part.back];
  const { left, right, bottom, top } = reachOf(part.outline);
  const whole = reachOf(all);
  const dimension = (
    from: Flat,
    to: Flat,
    along: Dimension["along"],
    offset: number,
    mm: number,
    of: string,
  ): Dimension => ({
    mark: "dimension",
    from,
    to,
    along,
    offset,
    tone: "ink",
    figure: figureUp(mm, lengths),
    mm,
    of,
  });
  const edge = (at: number): [Flat, Flat] => {
    const on = part.outline.filter(([, up]) => Math.abs(up - at) < 0.05).map(([x]) => x);
    return [
      [Math.min(...on), at],
      [Math.max(...on), at],
    ];
  };
  const [topFrom, topTo] = edge(top);
  const [bottomFrom, bottomTo] = edge(bottom);
  const { thicknessMm, kind } = part.stock;
  return {
    title: part.name,
    says: `${part.name}: ${part.face}. Marked face in wide lines, back dashed.`,
    marks: (scale) => [
      ...partOutlines(part),
      ...sideWords(part, scale),
      dimension(topFrom, topTo, "level", 9, part.topMm, `${part.id} along the top`),
      dimension(bottomFrom, bottomTo, "level", -9, part.bottomMm, `${part.id} along the bottom`),
      dimension([whole.right, bottom], [whole.right, top], "plumb", 9, top - bottom, `${part.id} depth`),
      ...(whole.right - whole.left - (right - left) > 0.5
        ? [
            dimension(
              [whole.left, whole.bottom],
              [whole.right, whole.bottom],
              "level",
              -17,
              whole.right - whole.left,
              `${part.id} over both faces`,
            ),
          ]
        : []),
    ],
    notes: [
      `Seen: ${part.face}. ${kind === "sheet" ? "Sheet" : "Board"} ${boughtSize(thicknessMm, lengths)} thick. Lengths are of the marked face, rounded up: leave them long.`,
      ...part.cuts.map((cut) => settingOf(cut, lengths)),
      ...(part.stock.kind === "sheet" ? [cornersOf(part, lengths)] : []),
      ...(part.round.length > 0 ? [`Notched round: ${part.round.join(", ")}.`] : []),
      ...part.notes,
    ],
  };
}
