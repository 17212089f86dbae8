/**
 * A drawing as plain data. Every coordinate is true size in millimetres on the plane of the view: x to
 * the right, y UP. Lettering, arrowheads and line widths are sizes on paper, in paper millimetres. The
 * writer (svg.ts) is the only place that divides by the scale and turns y over.
 */

/** A point of the drawing plane: [right, up], true-size millimetres. */
export type Flat = readonly [right: number, up: number];

/**
 * What a line stands for, after ISO 128-2 (from memory): `visible` continuous wide; `dimension` continuous
 * narrow (dimension, extension, leader and hatch lines); `hidden` dashed narrow; `centre` long-dash-dot
 * narrow; `extreme` long-dash-double-dot narrow, a moving part in another position.
 */
export type LineKind = "visible" | "dimension" | "hidden" | "centre" | "extreme";

/** Colour by meaning, never by itself: whatever has a tone is lettered or shaped to say the same. */
export type Tone = "ink" | "faint" | "accent" | "fits" | "fouls" | "unsure";

/** What a closed outline is filled with: nothing, the paper (it hides what lies behind), or a light wash of its tone. */
export type Fill = "none" | "paper" | "wash" | "solid";

/** A run of straight lines, or a closed outline. */
export interface Outline {
  readonly mark: "outline";
  readonly points: readonly Flat[];
  readonly closed: boolean;
  readonly line: LineKind;
  readonly tone: Tone;
  readonly fill: Fill;
  /** What it is, in a word ("cowl", "transom"): for tests and for whoever reads the file. */
  readonly of: string;
}

/** Part of a circle, anticlockwise from `fromDeg` to `toDeg` (0 = to the right, 90 = up); 0 to 360 is the whole circle. */
export interface Arc {
  readonly mark: "arc";
  readonly centre: Flat;
  readonly radius: number;
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly line: LineKind;
  readonly tone: Tone;
  readonly fill: Fill;
  readonly of: string;
}

/**
 * A dimension between two points, measured `along` the line between them, or level, or plumb. The
 * dimension line stands `offset` paper millimetres from the points: plus = to the left of the way from
 * `from` to `to` (`along`), above (`level`), or to the right (`plumb`) of both.
 */
export interface Dimension {
  readonly mark: "dimension";
  readonly from: Flat;
  readonly to: Flat;
  readonly along: "along" | "level" | "plumb";
  readonly offset: number;
  readonly tone: Tone;
  /** The figure as lettered. */
  readonly figure: string;
  /** Where the figure stands level, with a leader to the dimension line; absent = over the line. */
  readonly figureAt?: Flat;
  /** How a figure that stands apart lies to that point; `middle` where not said. */
  readonly figureAlign?: "start" | "middle" | "end";
  /** The length the figure stands for, millimetres: what the tests compare with the report. */
  readonly mm: number;
  /** What is dimensioned, in words that can stand in a table. */
  readonly of: string;
}

/** An angle between two directions at `centre`, anticlockwise from `fromDeg` to `toDeg`, the arc `radius` true-size mm out. */
export interface AngleDimension {
  readonly mark: "angle";
  readonly centre: Flat;
  readonly radius: number;
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly tone: Tone;
  readonly figure: string;
  readonly of: string;
}

/** Lettering. `height` is the height of capitals on paper, mm (ISO 3098 steps: 2.5, 3.5, 5, 7; from memory). */
export interface Lettering {
  readonly mark: "lettering";
  readonly at: Flat;
  readonly text: string;
  readonly height: number;
  readonly align: "start" | "middle" | "end";
  readonly tone: Tone;
  readonly bold: boolean;
  /** Anticlockwise, degrees. */
  readonly turnDeg: number;
  /** A leader runs from beside the words to this point and ends in a dot or an arrowhead. */
  readonly leader?: Flat;
  /** Clears the paper behind the words, so that lines do not run through them. */
  readonly halo: boolean;
}

/** Anything that stands on a drawing. */
export type Mark = Outline | Arc | Dimension | AngleDimension | Lettering;

/** The part of the plane a drawing shows, true-size millimetres. */
export interface Window {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A drawing: what it shows, to which scale, and every mark on it. */
export interface Drawing {
  readonly title: string;
  /** One or two sentences that say what is seen, for those who cannot see it. */
  readonly says: string;
  /** n of "1:n": so many true millimetres to a millimetre of paper. */
  readonly scale: number;
  readonly window: Window;
  /** In the order of drawing: what comes later lies on top. */
  readonly marks: readonly Mark[];
}

type Style = Partial<Pick<Outline, "line" | "tone" | "fill" | "of">>;

/** An open run of straight lines; visible ink unless told otherwise. */
export function line(points: readonly Flat[], style: Style = {}): Outline {
  return {
    mark: "outline",
    closed: false,
    line: "visible",
    tone: "ink",
    fill: "none",
    of: "line",
    ...style,
    points,
  };
}

/** A closed outline; visible ink on an empty inside unless told otherwise. */
export function outline(points: readonly Flat[], style: Style = {}): Outline {
  return {
    mark: "outline",
    closed: true,
    line: "visible",
    tone: "ink",
    fill: "none",
    of: "outline",
    ...style,
    points,
  };
}

/** An arc, or a whole circle when the angles are left out. */
export function arc(
  centre: Flat,
  radius: number,
  angles: readonly [number, number] = [0, 360],
  style: Style = {},
): Arc {
  return {
    mark: "arc",
    line: "visible",
    tone: "ink",
    fill: "none",
    of: "arc",
    ...style,
    centre,
    radius,
    fromDeg: angles[0],
    toDeg: angles[1],
  };
}

/** Lettering at a point: 2.5 mm high, starting there, unless told otherwise. */
export function lettering(
  at: Flat,
  text: string,
  style: Partial<Omit<Lettering, "mark" | "at" | "text">> = {},
): Lettering {
  return {
    mark: "lettering",
    height: 2.5,
    align: "start",
    tone: "ink",
    bold: false,
    turnDeg: 0,
    halo: false,
    ...style,
    at,
    text,
  };
}
