/**
 * What the plane of flotation does for a small boat: the weight that sinks it a centimetre and the moment
 * that trims it one. From its length, breadth and fullness C, with the half-breadth taken as
 * B/2 (1 - (x/L)^n) from a transom of full breadth at x = 0 to a stem at x = L. Then C = n/(n + 1), and
 * everything below has a closed form in C, exact for a box (C = 1) and for a wedge (C = 1/2).
 */
import { FRESH_WATER_KG_M3 } from "#lib/standards/hydraulics.ts";

export interface Waterplane {
  readonly waterlineLengthMm: number;
  readonly waterlineBeamMm: number;
  /** Area over length times breadth, from above 0 to 1. */
  readonly fullness: number;
}

/** Hydrostatics of a waterplane; also any vessel's, taken from its own tables. */
export interface Hydrostatics {
  readonly lengthMm: number;
  /** Mass that sinks the boat bodily by 1 cm, kg. */
  readonly kgPerCm: number;
  /** Moment that changes its trim over the length by 1 cm, kg m. */
  readonly kgMPerCm: number;
  /** Centre of flotation forward of the after end of the waterplane, mm. */
  readonly flotationMm: number;
}

/** Waterplane area, m2: C L B. */
export const areaM2 = ({ waterlineLengthMm: l, waterlineBeamMm: b, fullness }: Waterplane): number =>
  (fullness * l * b) / 1e6;

/** Centre of flotation forward of the transom, mm: L / (2 (2 - C)); half the length for a box, a third for a wedge. */
export const flotationMm = ({ waterlineLengthMm, fullness }: Waterplane): number =>
  waterlineLengthMm / (2 * (2 - fullness));

/** Second moment of the waterplane about the athwartships axis through its centre of flotation, m4: B L^3 (C / 3(3 - 2 C) - C / 4(2 - C)^2); B L^3 / 12 for a box. */
export function longitudinalInertiaM4(plane: Waterplane): number {
  const { waterlineLengthMm: l, waterlineBeamMm: b, fullness: c } = plane;
  return (b / 1000) * (l / 1000) ** 3 * (c / (3 * (3 - 2 * c)) - c / (4 * (2 - c) ** 2));
}

/**
 * Hydrostatics of a waterplane in water of a density, kg/m3. The moment takes GM as BM, the second moment
 * over the volume: for a boat of small draught they differ by a few percent at most, and the boat's own
 * weight cancels. Throws where a length is not above 0 or the fullness not within 0 and 1.
 */
export function hydrostatics(plane: Waterplane, densityKgM3 = FRESH_WATER_KG_M3): Hydrostatics {
  const { waterlineLengthMm: l, waterlineBeamMm: b, fullness } = plane;
  if (!(l > 0 && b > 0)) throw new RangeError("a waterplane needs a length and a breadth above 0");
  if (!(fullness > 0 && fullness <= 1)) throw new RangeError("fullness lies above 0 and goes up to 1");
  return {
    lengthMm: l,
    kgPerCm: (densityKgM3 * areaM2(plane)) / 100,
    kgMPerCm: (densityKgM3 * longitudinalInertiaM4(plane)) / (100 * (l / 1000)),
    flotationMm: flotationMm(plane),
  };
}
