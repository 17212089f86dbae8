/**
 * A drawing as DXF, every coordinate true size in millimetres ($INSUNITS 4) whatever its scale on paper; one
 * layer for each kind of line. Dimensions are broken down into lines and words.
 */
import { DxfWriter, LWPolylineFlags, point2d, point3d, Units } from "@tarikjabiri/dxf";
import type { Drawing, Lettering, LineKind } from "#lib/draw/drawing.ts";
import { breadthOf } from "#lib/draw/lettering.ts";
import { oneLine, type Simple, simple } from "#lib/draw/paper/simple.ts";
import { cos, sin } from "#lib/quantity/angle.ts";

/** Layer and pattern of each kind of line; patterns in mm, pen down plus and up minus. */
const LAYERS: Record<
  LineKind,
  {
    readonly layer: string;
    readonly type: string;
    readonly elements: readonly number[];
    readonly colour: number;
  }
> = {
  visible: { layer: "VISIBLE", type: "CONTINUOUS", elements: [], colour: 7 },
  dimension: { layer: "DIMENSION", type: "CONTINUOUS", elements: [], colour: 8 },
  hidden: { layer: "HIDDEN", type: "HIDDEN", elements: [8, -4], colour: 5 },
  centre: { layer: "CENTRE", type: "CENTRE", elements: [24, -4, 2.4, -4], colour: 1 },
  extreme: { layer: "EXTREME", type: "EXTREME", elements: [20, -4, 2.4, -4, 2.4, -4], colour: 3 },
};
const WORDS = "LETTERING";

/** Text without control codes: a line break would end the value and start another group, %% and ^ are codes of their own. */
export const dxfText = (text: string): string =>
  oneLine(text).replace(/%%/g, "% %").replace(/\^/g, "^ ").slice(0, 250);

function add(dxf: DxfWriter, mark: Simple, scale: number): void {
  if (mark.mark === "lettering") addWords(dxf, mark, scale);
  else if (mark.mark === "outline") {
    const layerName = LAYERS[mark.line].layer;
    const vertices = mark.points.map(([x, y]) => ({ point: point2d(x, y) }));
    const flags = mark.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None;
    dxf.addLWPolyline(vertices, { layerName, flags });
  } else {
    const layerName = LAYERS[mark.line].layer;
    const centre = point3d(...mark.centre);
    if (mark.toDeg - mark.fromDeg >= 360) dxf.addCircle(centre, mark.radius, { layerName });
    else dxf.addArc(centre, mark.radius, mark.fromDeg, mark.toDeg, { layerName });
  }
}

/** Words begin at their left end: not every reader keeps an alignment. */
function addWords(dxf: DxfWriter, { at, align, text, turnDeg, height }: Lettering, scale: number): void {
  const high = height * scale;
  const long = breadthOf(text, high);
  const before = { start: 0, middle: long / 2, end: long }[align];
  const start = point3d(at[0] - before * cos(turnDeg), at[1] - before * sin(turnDeg));
  dxf.addText(start, high, dxfText(text), { layerName: WORDS, rotation: turnDeg });
}

/** The drawing as a DXF file's text. */
export function toDxf({ marks, scale }: Pick<Drawing, "marks" | "scale">): string {
  const dxf = new DxfWriter();
  dxf.setUnits(Units.Millimeters);
  for (const { layer, type, elements, colour } of Object.values(LAYERS)) {
    if (elements.length > 0) dxf.addLType(type, type, [...elements]);
    dxf.addLayer(layer, colour, type);
  }
  dxf.addLayer(WORDS, 7, "CONTINUOUS");
  for (const mark of simple(marks, scale)) add(dxf, mark, scale);
  return dxf.stringify();
}
