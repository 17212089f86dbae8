/**
 * Sheets of paper and what is printed on every one: the margin, the title block's particulars, bars that
 * say whether the printer kept the size.
 */
import { arc, type Flat, lettering, line, type Mark, outline } from "#lib/draw/drawing.ts";

/** Sheets people have, upright: width and height, mm (ISO 216 A4; US Letter 8 1/2 by 11 in). */
export const PAPERS = { a4: [210, 297], letter: [215.9, 279.4] } as const;
export type PaperSize = keyof typeof PAPERS;

/** Left free all round, mm: what most printers cannot reach. */
export const MARGIN = 10;

/** Whose drawing it is: the fields of a title block (ISO 7200:2004), as the caller knows them. */
export interface Stamp {
  /** The record drawn, in its owner's words. */
  readonly record: string;
  readonly identification: string;
  readonly owner: string;
  readonly creator: string;
  readonly approval: string;
  /** Date of issue, YYYY-MM-DD. */
  readonly issued: string;
  /** The plan's version and the engine's. */
  readonly version: string;
}

/** A square, its lower left corner and side in true mm. */
export function square([x, y]: Flat, side: number, of: string): Mark {
  return outline(
    [
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ],
    { line: "dimension", of },
  );
}

/** A bar with end ticks, level or plumb, lettered along it. `scale` turns paper mm into true mm. */
export function bar(at: Flat, long: number, way: "level" | "plumb", words: string, scale: number): Mark[] {
  const [x, y] = at;
  const tick = 1.5 * scale;
  const point = (along: number, across: number): Flat =>
    way === "level" ? [x + along, y + across] : [x - across, y + along];
  const style = { line: "dimension", of: `bar ${words}` } as const;
  return [
    line([point(0, 0), point(long, 0)], style),
    line([point(0, -tick), point(0, tick)], style),
    line([point(long, -tick), point(long, tick)], style),
    lettering(point(long / 2, 0.8 * scale), words, {
      height: 1.8,
      align: "middle",
      turnDeg: way === "level" ? 0 : 90,
    }),
  ];
}

/** The 100 mm and the 4 in bar, level or plumb, side by side. */
export const bars = ([x, y]: Flat, way: "level" | "plumb", scale: number): Mark[] => {
  const apart = 5 * scale;
  const next: Flat = way === "level" ? [x, y - apart] : [x + apart, y];
  return [...bar([x, y], 100 * scale, way, "100 mm", scale), ...bar(next, 101.6 * scale, way, "4 in", scale)];
};

/** A cross in a ring to lay one sheet over the next by. */
export const registerCross = ([x, y]: Flat, scale: number): Mark[] => {
  const arm = 4 * scale;
  const style = { line: "dimension", of: "register" } as const;
  return [
    line(
      [
        [x - arm, y],
        [x + arm, y],
      ],
      style,
    ),
    line(
      [
        [x, y - arm],
        [x, y + arm],
      ],
      style,
    ),
    arc([x, y], 2 * scale, [0, 360], style),
  ];
};

/** A mark moved across the plane. */
export function moved(mark: Mark, [dx, dy]: Flat): Mark {
  const to = ([x, y]: Flat): Flat => [x + dx, y + dy];
  switch (mark.mark) {
    case "outline":
      return { ...mark, points: mark.points.map(to) };
    case "arc":
    case "angle":
      return { ...mark, centre: to(mark.centre) };
    case "dimension":
      return {
        ...mark,
        from: to(mark.from),
        to: to(mark.to),
        ...(mark.figureAt && { figureAt: to(mark.figureAt) }),
      };
    case "lettering":
      return { ...mark, at: to(mark.at), ...(mark.leader && { leader: to(mark.leader) }) };
  }
}
