/** The stern from aft with the seats that could be cut into it, each at its height, with its name and figure. */
import { bareSheet } from "#lib/draw/bare-sheet.ts";
import {
  type Drawing,
  type Flat,
  type LineKind,
  lettering,
  line,
  type Mark,
  outline,
} from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { figureWriter } from "#lib/draw/report-drawings.ts";
import { sternElevation } from "#lib/draw/stern-elevation.ts";
import { datumLine, waterSurface } from "#lib/draw/stern-lines.ts";
import type { LengthSystem } from "#lib/quantity/words.ts";
import { seatNow } from "#lib/rig/plate.ts";
import type { SternValues } from "#lib/rig/stern.ts";

/** One seat to be shown: where it would be, between which heights it may be sawn, and what it is for. */
export interface CandidateSeat {
  /** Short: a class, or the number a legend explains. */
  readonly name: string;
  readonly seatMm: number;
  readonly between?: readonly [number, number];
  /** A class by its nominal length, a motor by its own numbers, or the one cut for several. */
  readonly kind: "class" | "motor" | "once";
}

const LINES: Record<CandidateSeat["kind"], LineKind> = { class: "extreme", motor: "hidden", once: "visible" };
/** Half the length of a seat's line where no notch is cut, true mm. */
const HALF = 150;

/** The elevation from aft with the candidate seats; undefined where the stern's top or seat and its rake are not known. */
export function candidateSeats(
  stern: SternValues,
  seats: readonly CandidateSeat[],
  lengths: LengthSystem,
): Drawing | undefined {
  const seatMm = seatNow(stern);
  if (seatMm === undefined) return undefined;
  const berth = { rakeDeg: stern.rakeDeg ?? 0, seatMm };
  const half = (stern.notchWidthMm ?? 2 * HALF) / 2;
  const reach = { foreMm: 0, sideMm: Math.max(420, half + 160) };
  const hull = sternElevation({ ...stern, transomWidthMm: undefined }, berth, reach);
  const marks = seats.flatMap((seat) => seatMarks(seat, half));
  const { right, left } = extent([...hull, ...marks], 1);
  const water = stern.waterlineMm;
  const write = figureWriter(lengths);
  return bareSheet(
    {
      title: "Seats that could be cut, from aft",
      says: `The transom from aft with ${seats.length} seats at their heights above the datum.`,
      things: [
        ...hull,
        datumLine(right + 60, left - 60),
        ...(water === undefined ? [] : waterSurface(water, left, left + 160, left + 40, 5)),
        ...marks,
      ],
      notes: [],
      lettered: (scale) => [
        ...names(
          seats.filter(({ kind }) => kind === "class"),
          -1,
          left - 5 * scale,
          half,
          scale,
          write,
        ),
        ...names(
          seats.filter(({ kind }) => kind !== "class"),
          1,
          right + 5 * scale,
          half,
          scale,
          write,
        ),
        lettering([left - 58, -3.4 * scale], "DATUM", { height: 2.3, halo: true }),
        lettering([-half, seatMm + 1.2 * scale], `NOW ${write(seatMm)}`, { height: 2.3, halo: true }),
      ],
    },
    lengths,
  );
}

/** The seat as a line on the centreline, and between which heights it may be sawn as a washed band. */
function seatMarks({ seatMm, between, kind }: CandidateSeat, half: number): Mark[] {
  const across = (height: number): Flat[] => [
    [-half, height],
    [half, height],
  ];
  const band = between && [...across(between[0]), ...across(between[1]).toReversed()];
  return [
    ...(band ? [outline(band, { line: "dimension", tone: "accent", fill: "wash", of: "saw between" })] : []),
    line(across(seatMm), {
      line: LINES[kind],
      tone: kind === "class" ? "ink" : "accent",
      of: `seat ${kind}`,
    }),
  ];
}

/** Least distance between two names, paper mm. */
const LANE = 4.2;

/** The seats' names in a column beside the stern, highest first, none over another, so that no two leaders cross. */
function names(
  seats: readonly CandidateSeat[],
  side: 1 | -1,
  x: number,
  half: number,
  scale: number,
  write: (mm: number) => string,
): Mark[] {
  const sorted = seats.toSorted((a, b) => b.seatMm - a.seatMm);
  const lowered: number[] = [];
  for (const { seatMm } of sorted)
    lowered.push(Math.min(seatMm, (lowered.at(-1) ?? Infinity) - LANE * scale));
  // Half of what the last was pushed down is given back to all.
  const back = sorted.length > 0 ? (sorted.at(-1)!.seatMm - lowered.at(-1)!) / 2 : 0;
  return sorted.map(({ name, seatMm }, i) =>
    lettering(
      [x, lowered[i]! + back - 0.9 * scale],
      side > 0 ? `${name}: ${write(seatMm)}` : `${name} ${write(seatMm)}`,
      {
        height: 2.5,
        halo: true,
        align: side > 0 ? "start" : "end",
        leader: [side * half, seatMm],
      },
    ),
  );
}
