/** Dimensions and words of the profile. */
import { clearancesLettered } from "#lib/draw/clearance-columns.ts";
import { type Flat, lettering, type Mark, type Window } from "#lib/draw/drawing.ts";
import { extent } from "#lib/draw/extent.ts";
import { forward } from "#lib/draw/forward.ts";
import { ghostMotor, type Hung, plateBelowAxis } from "#lib/draw/hung.ts";
import { plumb, straight } from "#lib/draw/straight-dimensions.ts";
import type { Subject } from "#lib/draw/subject.ts";
import { fromBracket } from "#lib/draw/view.ts";
import { inDegrees } from "#lib/quantity/words.ts";
import { inWell, isUncut } from "#lib/rig/obstacles.ts";

/** What is at the other end of it. */
const FOOT = ["plate", "propeller", "skeg"];

/** Everything lettered on the profile at a scale. */
export function profileLettered(subject: Subject, things: readonly Mark[], scale: number): Mark[] {
  const { hung, write } = subject;
  const { berth, mounting } = hung;
  const { stern } = mounting.rig;
  const at = (f: number, v: number) => fromBracket("profile", [f, 0, v], berth);
  const t = stern.transomThicknessMm ?? 0;
  const bounds = extent(things, scale);
  const small = { height: 2.3, halo: true } as const;
  const marks: Mark[] = [
    ...wellLettered(subject),
    ...heights(subject, bounds.left, at(t, 0), scale),
    ...plateLettered(subject, bounds, scale),
  ];
  marks.push(...clearancesLettered("profile", subject, bounds, scale));
  marks.push(lettering([bounds.left + 14 * scale, 0.8 * scale], "DATUM", small));
  if (stern.waterlineMm !== undefined) {
    const water: Flat = [bounds.right - 12 * scale, stern.waterlineMm + 0.9 * scale];
    marks.push(lettering(water, `WATER ${write(stern.waterlineMm)}`, { ...small, align: "end" }));
  }
  const rake: Flat = [at(t, 0)[0] - 6 * scale, -7 * scale];
  marks.push(
    lettering(rake, `RAKE ${inDegrees(berth.rakeDeg)}`, {
      ...small,
      align: "end",
      leader: at(t / 2, -berth.seatMm * 0.75),
    }),
  );
  return [...marks, ...fullUpLettered(hung, scale), ...forward([bounds.left, -13 * scale], scale)];
}

/** Seat and uncut top over the datum, on lines of their own before the bow end of the drawing. */
function heights(
  { hung: { berth, mounting }, write }: Subject,
  left: number,
  seat: Flat,
  scale: number,
): Mark[] {
  const { transomTopMm } = mounting.rig.stern;
  const standing = (lane: number, mm: number, of: string): Mark =>
    plumb([left, 0], [seat[0], mm], -lane * 7, mm, write(mm), of);
  const marks = [
    standing(
      1,
      berth.seatMm,
      isUncut(mounting.rig.stern) ? "top of the transom above the datum" : "seat above the datum",
    ),
  ];
  if (transomTopMm !== undefined && !isUncut(mounting.rig.stern) && transomTopMm > berth.seatMm + 2 * scale) {
    marks.push(standing(2, transomTopMm, "top of the transom above the datum"));
  }
  return marks;
}

/** Says which ghost is the motor tilted right up, over its after end. */
function fullUpLettered(hung: Hung, scale: number): Mark[] {
  const fullUp = hung.motion?.fullUp;
  if (!fullUp) return [];
  const ghost = ghostMotor(hung, "profile", fullUp);
  const foot = ghost.filter((mark) => mark.mark === "outline" && FOOT.includes(mark.of));
  const shown = foot.length > 0 ? foot : ghost;
  if (shown.length === 0) return [];
  const { right, top } = extent(shown, 1);
  const words = `FULL UP, LEG ${inDegrees(fullUp.faceAngleDeg)}`;
  return [lettering([right, top + 2 * scale], words, { height: 2.3, halo: true, align: "end" })];
}

function wellLettered({ hung, write }: Subject): Mark[] {
  const { stern } = hung.mounting.rig;
  const { soleDropMm, soleAngleDeg, transomThicknessMm, wellDepthMm, wellFrontHeightMm } = stern;
  if (soleDropMm === undefined || soleAngleDeg === undefined || transomThicknessMm === undefined) return [];
  const well = { soleDropMm, soleAngleDeg, transomThicknessMm };
  const at = (along: number, above: number) =>
    fromBracket("profile", inWell(well, along, 0, above), hung.berth);
  const seat = fromBracket("profile", [transomThicknessMm, 0, 0], hung.berth);
  const marks: Mark[] = [
    straight(at(0, 0), seat, 13, soleDropMm, write(soleDropMm), "seat down to the well sole"),
  ];
  if (wellDepthMm !== undefined) {
    marks.push(
      straight(at(wellDepthMm, 0), at(0, 0), -6, wellDepthMm, write(wellDepthMm), "well fore and aft"),
    );
    if (wellFrontHeightMm !== undefined) {
      marks.push(
        straight(
          at(wellDepthMm, 0),
          at(wellDepthMm, wellFrontHeightMm),
          5,
          wellFrontHeightMm,
          write(wellFrontHeightMm),
          "front bulkhead above the sole",
        ),
      );
    }
  }
  return marks;
}

/** The plate's height over the datum, from the report, dimensioned clear of the propeller. */
function plateLettered({ hung, report, write }: Subject, { right }: Window, scale: number): Mark[] {
  const point = plateBelowAxis(hung);
  if (!point || !report.plate) return [];
  const [x, z] = fromBracket("profile", point, hung.berth);
  const mm = report.plate.aboveDatumMm;
  const figure = mm < 0 ? `PLATE ${write(-mm)} BELOW DATUM` : `PLATE ${write(mm)} ABOVE DATUM`;
  const { midsectionAftMm = 0, propDiameterMm = 0 } = hung.mounting.rig.motor;
  const beyond = x + midsectionAftMm + 0.5 * propDiameterMm + 4 * scale;
  const dimension = plumb([beyond, 0], [beyond, z], 0, mm, figure, "plate above the datum");
  const figureAt: Flat = [Math.min(right, beyond + 32 * scale), Math.min(0, z) - 8 * scale];
  return [{ ...dimension, tone: "accent", figureAt }];
}
