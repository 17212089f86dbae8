/**
 * Figures of the boat joiner: corners, cover over a screw's point, holes for tubes, fillets, sheets and
 * boards. No open standard was found for any of them.
 */
import { inches } from "#lib/quantity/length.ts";
import { commonPractice, type Standard } from "#lib/standards/standard.ts";

/** What a joiner allows, by name; lengths in mm. */
export const joinery = {
  notchRadiusMm: commonPractice(
    inches(1),
    "mm",
    "radius of a notch's inside corners: a sharp inside corner gathers the strain of every wave and cracks",
  ),
  sawStrayMm: commonPractice(inches(1 / 16), "mm", "how far a careful saw strays from its line"),
  cheekMm: commonPractice(inches(3), "mm", "least wood left between a notch and the transom's own edge"),
  fittingRoomMm: commonPractice(inches(2), "mm", "room between a saw cut and the nearest fitting or frame"),
  screwCoverMm: commonPractice(inches(1 / 4), "mm", "wood left over the point of a screw"),
  screwSpacingMm: commonPractice(inches(4), "mm", "farthest one screw from the next in a cleat"),
  screwEndMm: commonPractice(inches(1), "mm", "first and last screw from the end of a cleat"),
  tubeRoomMm: commonPractice(inches(1 / 8), "mm", "how much wider than a drain tube its hole is bored"),
  filletRadiusMm: commonPractice(inches(1 / 2), "mm", "radius of an epoxy fillet inside a well"),
  postRoomMm: commonPractice(inches(1 / 16), "mm", "room left round a post where a panel is notched"),
  cleatThicknessMm: commonPractice(inches(1.5), "mm", "thickness of a cleat under a well sole"),
  cleatDepthMm: commonPractice(inches(1.5), "mm", "depth of a cleat under a well sole"),
  soleThicknessMm: commonPractice(12, "mm", "thickness of a well sole of plywood"),
  frontThicknessMm: commonPractice(inches(3 / 4), "mm", "thickness of a well's front beam"),
  kerfMm: commonPractice(3, "mm", "breadth of a saw's cut, left between parts on a sheet or a board"),
  sheetLongMm: commonPractice(2440, "mm", "length of a sheet of plywood"),
  sheetWideMm: commonPractice(1220, "mm", "width of a sheet of plywood"),
  boardLongMm: commonPractice(2400, "mm", "length of a board"),
} as const satisfies Record<string, Standard>;

/** Lengths screws are sold in, mm: by the inch and by the millimetre (common practice, no source). */
export const SCREW_LENGTHS: Readonly<Record<"mm" | "in", readonly number[]>> = {
  in: [0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4].map(inches),
  mm: [12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100],
};

/** A screw's thickness: gauge number, shank, and the pilot for the point in soft and in hard wood, mm. */
export interface Gauge {
  readonly name: string;
  readonly shankMm: number;
  readonly pilotSoftMm: number;
  readonly pilotHardMm: number;
}

const gauge = (number: number, soft: number, hard: number): Gauge => ({
  name: `no. ${number}`,
  // Shank of a wood screw: 0.060 in and 0.013 in for every number (ASME B18.6.1, from memory).
  shankMm: inches(0.06 + 0.013 * number),
  pilotSoftMm: soft,
  pilotHardMm: hard,
});

/** Gauges by the thickest stack each serves, mm; pilots are common practice, no source. */
export const GAUGES: readonly { readonly upToMm: number; readonly gauge: Gauge }[] = [
  { upToMm: inches(1.5), gauge: gauge(8, 2.4, 2.8) },
  { upToMm: inches(2.5), gauge: gauge(10, 2.8, 3.2) },
  { upToMm: Number.POSITIVE_INFINITY, gauge: gauge(12, 3.2, 3.6) },
];

/** How much of a board set down by `setDownMm` still stands above the line it is set down from, mm; minus = it falls short. */
export const standsProudMm = (boardWidthMm: number, setDownMm: number): number => boardWidthMm - setDownMm;

/** Hole bored for a tube, mm: the tube's outside and room for bedding. */
export const holeForTubeMm = (tubeOutsideMm: number): number => tubeOutsideMm + joinery.tubeRoomMm.value;
