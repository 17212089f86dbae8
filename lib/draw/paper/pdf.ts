/**
 * Sheets as a PDF in true millimetres. A user unit is 1/72 in; every length is set in mm and scaled by
 * 72/25.4 once. The lettering is embedded, so that fractions and inch signs print anywhere.
 */
import PDFDocument from "pdfkit";
import type { Arc, Drawing, Flat, Lettering, LineKind, Outline, Tone } from "#lib/draw/drawing.ts";
import { paperSize } from "#lib/draw/lettering.ts";
import { type Simple, simple } from "#lib/draw/paper/simple.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

type Pdf = InstanceType<typeof PDFDocument>;

/** The faces to embed, as bytes: TrueType or OpenType. Not WOFF: its tables are unpacked anew for every glyph, ten times as slow. */
export interface Faces {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** What the file says of itself; `issued` is YYYY-MM-DD. */
export interface PdfInfo {
  readonly title: string;
  readonly author: string;
  readonly issued: string;
}

/** Points in a millimetre. */
const POINT = 72 / 25.4;
/** Size of the face for capitals one millimetre high. */
const EM = 1 / 0.698;

/** Line widths, mm, and dashes of each kind (ISO 128-2, from memory). */
const LINES: Record<LineKind, { readonly width: number; readonly dashes?: readonly number[] }> = {
  visible: { width: 0.5 },
  dimension: { width: 0.25 },
  hidden: { width: 0.25, dashes: [2, 1] },
  centre: { width: 0.25, dashes: [6, 1, 0.6, 1] },
  extreme: { width: 0.25, dashes: [5, 0.9, 0.6, 0.9, 0.6, 0.9] },
};
const COLOURS: Record<Tone, string> = {
  ink: "#000000",
  faint: "#808080",
  accent: "#00605a",
  fits: "#0072b2",
  fouls: "#d55e00",
  unsure: "#4d4d4d",
};
const WASH = "#f0f0f0";

/** Where a point of the drawing lies on the sheet, mm from its top left, y down. */
type Plane = (point: Flat) => Flat;

function pen(pdf: Pdf, { line, tone }: Outline | Arc): void {
  const { width, dashes } = LINES[line];
  pdf.lineWidth(width).strokeColor(COLOURS[tone]).undash();
  // The types know one length only; the library takes the whole pattern.
  if (dashes) pdf.dash(dashes as unknown as number, {});
}

function inked(pdf: Pdf, mark: Outline | Arc): void {
  pen(pdf, mark);
  const fill = { none: undefined, paper: "#ffffff", wash: WASH, solid: COLOURS[mark.tone] }[mark.fill];
  if (fill) pdf.fillColor(fill).fillAndStroke(fill, COLOURS[mark.tone]);
  else pdf.stroke();
}

function drawOutline(pdf: Pdf, mark: Outline, plane: Plane): void {
  const [first, ...rest] = mark.points.map(plane);
  if (!first) return;
  pdf.moveTo(...first);
  for (const point of rest) pdf.lineTo(...point);
  if (mark.closed) pdf.closePath();
  inked(pdf, mark);
}

function drawArc(pdf: Pdf, mark: Arc, plane: Plane, scale: number): void {
  const { centre, radius, fromDeg, toDeg } = mark;
  const [x, y] = plane(centre);
  if (toDeg - fromDeg >= 360) pdf.circle(x, y, radius / scale);
  else {
    const on = (angle: number) => plane([centre[0] + radius * cos(angle), centre[1] + radius * sin(angle)]);
    const [from, to] = [on(fromDeg), on(toDeg)];
    const r = radius / scale;
    pdf.path(`M${from.join(" ")}A${r} ${r} 0 ${toDeg - fromDeg > 180 ? 1 : 0} 0 ${to.join(" ")}`);
  }
  inked(pdf, mark);
}

function drawText(pdf: Pdf, mark: Lettering, plane: Plane): void {
  const [x, y] = plane(mark.at);
  pdf.font(mark.bold ? "bold" : "regular").fontSize(mark.height * EM);
  const wide = pdf.widthOfString(mark.text);
  const left = x - { start: 0, middle: wide / 2, end: wide }[mark.align];
  const options = { lineBreak: false, baseline: "alphabetic" } as const;
  pdf.save();
  if (mark.turnDeg !== 0) pdf.rotate(-mark.turnDeg, { origin: [x, y] });
  if (mark.halo) {
    pdf.lineWidth(1).lineJoin("round").undash().strokeColor("#ffffff").fillColor("#ffffff");
    pdf.text(mark.text, left, y, { ...options, stroke: true, fill: true });
  }
  pdf.fillColor(COLOURS[mark.tone]).text(mark.text, left, y, options);
  pdf.restore();
}

function drawMark(pdf: Pdf, mark: Simple, plane: Plane, scale: number): void {
  if (mark.mark === "outline") drawOutline(pdf, mark, plane);
  else if (mark.mark === "arc") drawArc(pdf, mark, plane, scale);
  else drawText(pdf, mark, plane);
}

/** The sheets as one PDF. Throws where a face cannot be read or a coordinate is not finite. */
export async function toPdf(sheets: readonly Drawing[], faces: Faces, info: PdfInfo): Promise<Uint8Array> {
  const pdf = new PDFDocument({
    autoFirstPage: false,
    font: faces.regular as unknown as string,
    info: { Title: info.title, Author: info.author, CreationDate: new Date(`${info.issued}T00:00:00Z`) },
  });
  const chunks: Uint8Array[] = [];
  pdf.on("data", (chunk: Uint8Array) => chunks.push(chunk));
  const ended = new Promise<void>((resolve, reject) => pdf.on("end", resolve).on("error", reject));
  pdf.registerFont("regular", faces.regular as unknown as ArrayBuffer);
  pdf.registerFont("bold", faces.bold as unknown as ArrayBuffer);
  for (const { window, scale, marks } of sheets) {
    const [wide, high] = paperSize({ window, scale });
    pdf.addPage({ size: [wide * POINT, high * POINT], margin: 0 });
    pdf.scale(POINT).lineJoin("round");
    const plane: Plane = ([right, up]) => [(right - window.left) / scale, (window.top - up) / scale];
    for (const mark of simple(marks, scale)) drawMark(pdf, mark, plane, scale);
  }
  pdf.end();
  await ended;
  return Buffer.concat(chunks);
}
