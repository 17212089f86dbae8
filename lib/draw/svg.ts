/**
 * Drawings as SVG: the one place where true size becomes paper and where y, up on the drawing, is turned
 * over. Colours are the sheet's own tokens, each with its daylight value for readers without them.
 */
import { drawnAngle, drawnDimension, drawnLettering } from "#lib/draw/dimension.ts";
import type { Arc, Drawing, Flat, Lettering, LineKind, Mark, Outline, Tone } from "#lib/draw/drawing.ts";
import { paperSize } from "#lib/draw/lettering.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Line widths on paper, mm, wide to narrow two to one (ISO 128-2, from memory), and the dashes of each kind. */
const LINES: Record<LineKind, { readonly width: number; readonly dashes?: string }> = {
  visible: { width: 0.5 },
  dimension: { width: 0.18 },
  hidden: { width: 0.25, dashes: "2 1" },
  centre: { width: 0.25, dashes: "6 1 0.6 1" },
  extreme: { width: 0.25, dashes: "5 0.9 0.6 0.9 0.6 0.9" },
};

const COLOURS: Record<Tone, string> = {
  ink: "var(--ink, #15191d)",
  faint: "var(--ink-faint, #80868a)",
  accent: "var(--accent, #00605a)",
  fits: "var(--fits, #0072b2)",
  fouls: "var(--fouls, #d55e00)",
  unsure: "var(--unsure, #4d4d4d)",
};
const WASHES: Record<Tone, string> = {
  ink: "var(--paper-sunk, #f1efe6)",
  faint: "var(--paper-sunk, #f1efe6)",
  accent: "var(--accent-wash, #e0efec)",
  fits: "var(--fits-wash, #e1f0f8)",
  fouls: "var(--fouls-wash, #fbeadd)",
  unsure: "var(--unsure-wash, #ebeae6)",
};
const PAPER = "var(--paper, #fbfaf5)";
/** Size of the face for capitals one millimetre high. */
const EM = 1 / 0.7;

const number = (value: number): string => {
  if (!Number.isFinite(value)) throw new Error("a drawing holds a number that is not finite");
  const cut = value.toFixed(3).replace(/\.?0+$/, "");
  return cut === "-0" ? "0" : cut;
};

/** Text made safe for markup. */
const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

/** A drawing's plane on paper: millimetres from the sheet's top left corner, y down. */
interface Plane {
  readonly at: (point: Flat) => string;
  readonly size: (trueMm: number) => string;
}

function planeOf({ window, scale }: Drawing): Plane {
  return {
    at: ([right, up]) => `${number((right - window.left) / scale)} ${number((window.top - up) / scale)}`,
    size: (trueMm) => number(trueMm / scale),
  };
}

function pen({ line, tone }: { line: LineKind; tone: Tone }): string {
  const { width, dashes } = LINES[line];
  const dashed = dashes === undefined ? "" : ` stroke-dasharray="${dashes}"`;
  return `stroke="${COLOURS[tone]}" stroke-width="${width}"${dashed}`;
}

const filling = ({ fill, tone }: Outline | Arc): string =>
  ({ none: "none", paper: PAPER, wash: WASHES[tone], solid: COLOURS[tone] })[fill];

function path(mark: Outline | Arc, data: string): string {
  return `<path data-of="${escaped(mark.of)}" d="${data}" fill="${filling(mark)}" ${pen(mark)}/>`;
}

function outlinePath(mark: Outline, plane: Plane): string {
  const run = mark.points.map(plane.at).join("L");
  return path(mark, `M${run}${mark.closed ? "Z" : ""}`);
}

function arcPath(mark: Arc, plane: Plane): string {
  const { centre, radius, fromDeg, toDeg } = mark;
  const on = (angle: number) => plane.at([centre[0] + radius * cos(angle), centre[1] + radius * sin(angle)]);
  const r = plane.size(radius);
  const sweep = (from: number, to: number) => `A${r} ${r} 0 ${to - from > 180 ? 1 : 0} 0 ${on(to)}`;
  const whole = toDeg - fromDeg >= 360;
  return path(
    mark,
    whole ? `M${on(0)}${sweep(0, 180)}${sweep(180, 360)}Z` : `M${on(fromDeg)}${sweep(fromDeg, toDeg)}`,
  );
}

function text(mark: Lettering, plane: Plane): string {
  const [x, y] = plane.at(mark.at).split(" ");
  const turn = mark.turnDeg === 0 ? "" : ` transform="rotate(${number(-mark.turnDeg)} ${x} ${y})"`;
  const anchor = mark.align === "start" ? "" : ` text-anchor="${mark.align}"`;
  const weight = mark.bold ? ` font-weight="600"` : "";
  const halo = mark.halo
    ? ` stroke="${PAPER}" stroke-width="1" stroke-linejoin="round" paint-order="stroke"`
    : "";
  const size = number(mark.height * EM);
  // Vermilion is for shapes and large lettering only; small words stay ink.
  const tone = mark.tone === "fouls" && mark.height < 5 ? "ink" : mark.tone;
  return `<text x="${x}" y="${y}" font-size="${size}" fill="${COLOURS[tone]}"${anchor}${weight}${halo}${turn}>${escaped(mark.text)}</text>`;
}

function written(mark: Mark, plane: Plane, scale: number): string {
  const all = (marks: readonly Mark[]) => marks.map((part) => written(part, plane, scale)).join("");
  switch (mark.mark) {
    case "outline":
      return outlinePath(mark, plane);
    case "arc":
      return arcPath(mark, plane);
    case "dimension":
      return `<g data-dimension="${escaped(mark.of)}" data-mm="${number(mark.mm)}">${all(drawnDimension(mark, scale))}</g>`;
    case "angle":
      return `<g data-angle="${escaped(mark.of)}">${all(drawnAngle(mark, scale))}</g>`;
    case "lettering":
      return mark.leader ? all(drawnLettering(mark, scale)) : text(mark, plane);
  }
}

/**
 * A drawing as an SVG document: sized in paper millimetres, so that it prints to its scale. `id` makes
 * the title's id one of its own on a page with several drawings; `decoration` leaves it out of the
 * page's reading order, for a picture whose words stand beside it.
 * @throws when a coordinate is not a finite number: a drawing that cannot exist is not drawn
 */
export function toSvg(drawing: Drawing, { id = "drawing", decoration = false } = {}): string {
  const [wide, high] = paperSize(drawing).map(number);
  const plane = planeOf(drawing);
  const [name, words] = [`${escaped(id)}-title`, `${escaped(id)}-says`];
  const named = decoration ? `aria-hidden="true"` : `role="img" aria-labelledby="${name} ${words}"`;
  const ids = decoration ? ["", ""] : [` id="${name}"`, ` id="${words}"`];
  const body = drawing.marks.map((mark) => written(mark, plane, drawing.scale)).join("\n");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}mm" height="${high}mm" viewBox="0 0 ${wide} ${high}" ${named} font-family="var(--lettering, 'Arial Narrow', sans-serif)" stroke-linejoin="round" stroke-linecap="butt">
<title${ids[0]}>${escaped(drawing.title)}</title><desc${ids[1]}>${escaped(drawing.says)}</desc>
${body}
</svg>`;
}
