/** A cut plan on paper: drawings to scale, the plan in words, then the check page and the templates. */
import { type Drawing, lettering, type Mark } from "#lib/draw/drawing.ts";
import { checkPage } from "#lib/draw/paper/check-page.ts";
import { notchLines, notchView } from "#lib/draw/paper/notch-view.ts";
import { page, type Sheeting, type View } from "#lib/draw/paper/page.ts";
import { moved, type PaperSize, type Stamp } from "#lib/draw/paper/paper.ts";
import { partOutlines, partView, reachOf, sidesAt } from "#lib/draw/paper/part-view.ts";
import { textPages } from "#lib/draw/paper/text-pages.ts";
import { type Template, type Tile, tiles } from "#lib/draw/paper/tiles.ts";
import { wellView } from "#lib/draw/paper/well-view.ts";
import type { NotchPlan } from "#lib/fit/cut-plan/notch.ts";
import type { CutPart } from "#lib/fit/cut-plan/part.ts";
import type { CutPlan } from "#lib/fit/cut-plan/plan.ts";

/** The views of a plan, in order: the notch, the well from above, each part. */
export function viewsOfPlan({ notch, well, lengths }: CutPlan): View[] {
  return [
    ...(notch && notch.depth.along.markMm > 0 ? [notchView(notch, lengths)] : []),
    ...(well ? [wellView(well, lengths), ...well.parts.map((part) => partView(part, lengths))] : []),
  ];
}

/** Drawings to scale and the plan in words, on numbered sheets. */
export function planDrawings(plan: CutPlan, paper: PaperSize, stamp: Stamp): Drawing[] {
  const views = viewsOfPlan(plan);
  const dimensions = plan.lengths === "mm" ? "millimetres" : "inches";
  const sheeting = (sheets: number, sheet: number): Sheeting => ({ paper, stamp, dimensions, sheet, sheets });
  const words = textPages(plan, sheeting(0, 0), (i) => i).length;
  const sheets = views.length + words;
  return [
    ...views.map((view, i) => page(view, sheeting(sheets, i + 1))),
    ...textPages(plan, sheeting(sheets, 0), (i) => views.length + i + 1),
  ];
}

/** Words every so far along the template, so that each long side carries its name more than once. */
const EVERY = 400;

/** A part's full-size template: both outlines, and the names of its sides just inside them. */
export function partTemplate(part: CutPart): Template {
  const { left, right, bottom, top } = reachOf(part.outline);
  const wide = right - left;
  const high = top - bottom;
  const words = (x: number, y: number, text: string, align: "start" | "middle" | "end"): Mark =>
    lettering([x, y], text, { height: Math.min(7, high / 5), align, bold: true });
  const spread = (long: number): number[] => {
    const count = Math.max(1, Math.floor(long / EVERY));
    return Array.from({ length: count }, (_, k) => (k + 0.5) / count);
  };
  const low = Math.min(7, high / 5);
  return {
    id: part.id,
    name: part.name,
    face: part.face,
    sides: part.sides,
    marks: [
      ...partOutlines(part),
      ...(high > 90
        ? [
            ...spread(wide).map((share) => words(left + share * wide, top - 14, part.sides.top, "middle")),
            ...spread(wide).map((share) =>
              words(left + share * wide, bottom + 8, part.sides.bottom, "middle"),
            ),
            ...spread(high).flatMap((share) => sideways(part, bottom + share * high)),
          ]
        : [
            words(left + 12, bottom + (high - low) / 2, part.sides.left, "start"),
            words(right - 12, bottom + (high - low) / 2, part.sides.right, "end"),
          ]),
    ],
  };
}

/** The names of the left and right side at a height, just inside the outline there. */
function sideways(part: CutPart, y: number): Mark[] {
  const [left, right] = sidesAt(part.outline, y);
  return [
    lettering([left + 6, y], part.sides.left, { height: 7, bold: true }),
    lettering([right - 6, y], part.sides.right, { height: 7, bold: true, align: "end" }),
  ];
}

/** The notch's full-size template. */
export function notchTemplate(notch: NotchPlan): Template {
  const half = notch.halfWidth.markMm;
  const y = Math.max(10, notch.depth.along.markMm / 2);
  return {
    id: "notch",
    name: "Notch",
    face: "outside face of the transom, looked at from aft; the top line lies on the uncut top",
    sides: { left: "PORT", right: "STARBOARD", top: "UP", bottom: "DOWN" },
    marks: [
      ...notchLines(notch),
      lettering([-half - 8, y], "PORT", { height: 7, bold: true, align: "end" }),
      lettering([half + 8, y], "STARBOARD", { height: 7, bold: true }),
    ],
  };
}

/** All templates of a plan. A cleat needs none of its own: it is laid off with rule and gauge. */
export const templatesOf = ({ notch, well }: CutPlan): Template[] => [
  ...(notch && notch.action !== "none" ? [notchTemplate(notch)] : []),
  ...(well ? well.parts.filter(({ id }) => !id.includes("cleat")).map(partTemplate) : []),
];

/** The check page and every tile. `factor` from `rulerCorrection`. */
export function templatePages(
  plan: CutPlan,
  paper: PaperSize,
  stamp: Stamp,
  factor = 1,
): { check: Drawing; tiles: Tile[] } {
  return {
    check: checkPage(paper, stamp, factor),
    tiles: templatesOf(plan).flatMap((template) => tiles(template, paper, stamp, factor)),
  };
}

/** Everything in one file: check page, drawings, words, templates. */
export function allPages(plan: CutPlan, paper: PaperSize, stamp: Stamp, factor = 1): Drawing[] {
  const templates = templatePages(plan, paper, stamp, factor);
  return [templates.check, ...planDrawings(plan, paper, stamp), ...templates.tiles.map(({ sheet }) => sheet)];
}

/** All parts and the notch full size side by side, for a DXF: room of 100 mm between them. */
export function fullSizeDrawing(plan: CutPlan): Drawing {
  const templates = templatesOf(plan);
  const parts = plan.well?.parts.filter(({ id }) => id.includes("cleat")).map(partTemplate) ?? [];
  let x = 0;
  const marks = [...templates, ...parts].flatMap(({ marks: own }) => {
    const spots = own.flatMap((mark) => (mark.mark === "outline" ? [...mark.points] : []));
    const { left, right, bottom } = reachOf(spots);
    const shift = [x - left, -bottom] as const;
    x += right - left + 100;
    return own.map((mark) => moved(mark, shift));
  });
  const high = Math.max(
    0,
    ...marks.flatMap((mark) => (mark.mark === "outline" ? mark.points.map(([, y]) => y) : [])),
  );
  return {
    title: "Parts full size",
    says: "Every part full size, side by side.",
    scale: 1,
    window: { left: 0, right: x, bottom: 0, top: high },
    marks,
  };
}
