/** The elevation from aft: transom, notch, and the motor straight and hard over. */
import { drawnBracket } from "#lib/draw/bracket-view.ts";
import { clearancesLettered, fouled } from "#lib/draw/clearance-columns.ts";
import { lettering, line, type Mark, type Window } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { envelope, ghostMotor, solidMotor } from "#lib/draw/hung.ts";
import type { Content } from "#lib/draw/sheet.ts";
import { sternElevation } from "#lib/draw/stern-elevation.ts";
import { datumLine, halfTop, type Reach, waterSurface } from "#lib/draw/stern-lines.ts";
import { level } from "#lib/draw/straight-dimensions.ts";
import { HEAD, hardOver, reachOf, type Subject, seenIn, tightest } from "#lib/draw/subject.ts";

/** Elevation from aft: port to the left. */
export function elevation(subject: Subject): Content {
  const { hung, report } = subject;
  const { stern, motor } = hung.mounting.rig;
  const { motion, berth } = hung;
  const reach = reachOf(hung);
  const hard = hardOver(hung);
  const things = [
    ...sternElevation(stern, berth, reach),
    ...hard.flatMap((pose) => ghostMotor(hung, "elevation", pose, HEAD)),
    ...tightest(seenIn("elevation", subject)).flatMap((pose) => ghostMotor(hung, "elevation", pose, HEAD)),
    ...drawnBracket(motor, stern.transomThicknessMm, "elevation", berth),
    ...(motion ? [...solidMotor(hung, "elevation"), ...envelope(hung, "elevation", motion.running)] : []),
  ];
  const around = extent(things, 1);
  const plumbLine = line(
    [
      [0, around.bottom - 20],
      [0, around.top + 20],
    ],
    { line: "centre", of: "centreline" },
  );
  const water = stern.waterlineMm;
  return {
    title: "Elevation from aft",
    says: `The stern from aft, port to the left${motion ? "; the motor straight ahead in full line, hard over in dash-and-dots" : ""}.`,
    things: [
      datumLine(around.right, around.left),
      ...(water === undefined ? [] : waterSurface(water, around.left, around.right, around.right - 40, 10)),
      ...things,
      plumbLine,
      ...fouled("elevation", subject),
    ],
    lettered: (scale) => elevationLettered(subject, reach, around, scale),
    notes: [
      ...(stern.transomWidthMm === undefined
        ? ["Transom width not taken: the transom is broken off at the sides."]
        : ["Only the middle of the transom is measured; its outline is typical of the hull's form."]),
      ...(report.plate ? [] : ["The plate's height cannot be told yet."]),
    ],
  };
}

function elevationLettered(subject: Subject, reach: Reach, around: Window, scale: number): Mark[] {
  const { hung, write } = subject;
  const { stern } = hung.mounting.rig;
  const top = stern.transomTopMm;
  // Beside the cowl, and never on the transom's own edge.
  const side = Math.max(around.top - 2 * scale, (top ?? 0) + 1.2 * scale);
  const marks: Mark[] = clearancesLettered("elevation", subject, around, scale);
  if (stern.notchWidthMm !== undefined && top !== undefined) {
    const half = stern.notchWidthMm / 2;
    marks.push(
      level(
        [-half, hung.berth.seatMm + 40],
        [half, hung.berth.seatMm + 40],
        -(top - 40 - hung.berth.seatMm) / scale - 4,
        stern.notchWidthMm,
        write(stern.notchWidthMm),
        "notch width",
      ),
    );
  }
  if (stern.transomWidthMm !== undefined && top !== undefined) {
    const half = halfTop(stern, reach);
    marks.push(
      level(
        [-half, top],
        [half, top],
        (around.top - top) / scale + 5 + 5 * Math.ceil(seenIn("elevation", subject).length / 2),
        stern.transomWidthMm,
        write(stern.transomWidthMm),
        "transom width",
      ),
    );
  }
  return [
    ...marks,
    lettering([around.left + 1.5 * scale, side], "PORT", { height: 2.6, bold: true }),
    lettering([around.right - 1.5 * scale, side], "STARBOARD", {
      height: 2.6,
      bold: true,
      align: "end",
    }),
    lettering([around.left, 0.8 * scale], "DATUM", { height: 2.3, halo: true }),
  ];
}
