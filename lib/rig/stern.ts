import type { Measured } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";
import type { Corner } from "#lib/rig/motor.ts";

/**
 * A hull's stern: the transom, its notch, the motor well, and how the hull wants its motor. The datum is
 * the lowest fixed line of the hull ahead of the propeller at the transom, on the centreline.
 */
export const sternFields = {
  rakeDeg: {
    unit: "deg",
    min: -20,
    max: 40,
    group: "hang",
    name: "Transom rake",
    take: "Hull propped with the keel line level: angle of the transom's outside face from plumb; plus when its top leans aft.",
    mistake: "Taking it with the hull standing bow-up on its trailer.",
  },
  transomThicknessMm: {
    unit: "mm",
    min: 5,
    max: 150,
    group: "hang",
    name: "Transom thickness",
    take: "Through the transom where the clamps grip, square to its face.",
  },
  transomTopMm: {
    unit: "mm",
    min: 100,
    max: 1500,
    group: "hang",
    name: "Top of the transom",
    take: "From the datum plumb up to the uncut top of the transom on the centreline.",
    mistake: "Measuring along the raked face instead of plumb.",
  },
  keelDepthMm: {
    unit: "mm",
    min: 0,
    max: 400,
    group: "hang",
    name: "Keel depth",
    take: "From the underside of the bottom planking down to the underside of the keel at the transom; 0 where there is no keel.",
  },
  seatMm: {
    unit: "mm",
    min: 100,
    max: 1500,
    group: "hang",
    name: "Seat height",
    take: "From the datum plumb up to the bottom of the notch the motor sits in, as it is now; left empty where nothing is cut.",
    mistake: "Measuring along the raked face instead of plumb.",
  },
  plateHighMm: {
    unit: "mm",
    min: -200,
    max: 200,
    group: "hang",
    name: "Highest plate this hull wants",
    take: "Highest position of the anti-ventilation plate this hull runs well with, above (plus) or below (minus) the datum; left empty for the usual window.",
  },
  plateLowMm: {
    unit: "mm",
    min: -300,
    max: 200,
    group: "hang",
    name: "Lowest plate this hull wants",
    take: "Lowest position of the anti-ventilation plate this hull runs well with, above (plus) or below (minus) the datum; left empty for the usual window.",
  },
  notchWidthMm: {
    unit: "mm",
    min: 50,
    max: 3000,
    group: "notch",
    name: "Notch width",
    take: "Clear width across the notch, from cheek to cheek at its narrowest; left empty where nothing is cut.",
  },
  notchCornerRadiusMm: {
    unit: "mm",
    min: 0,
    max: 300,
    group: "notch",
    name: "Notch corner radius",
    take: "Radius of the rounded inside corner at the bottom of the notch.",
  },
  soleDropMm: {
    unit: "mm",
    min: 20,
    max: 1000,
    group: "well",
    name: "Seat down to the well sole",
    take: "From the seat down the inside face of the transom to the top of the well sole.",
  },
  soleAngleDeg: {
    unit: "deg",
    min: 45,
    max: 135,
    group: "well",
    name: "Sole angle",
    take: "Bevel gauge between the inside face of the transom (upward) and the sole (forward): 90 is square to the transom, 90 plus the rake is level.",
  },
  wellDepthMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Well fore and aft",
    take: "Along the sole, from the inside face of the transom to the aft face of the front bulkhead.",
  },
  wellFrontHeightMm: {
    unit: "mm",
    min: 0,
    max: 1500,
    group: "well",
    name: "Front bulkhead height",
    take: "From the sole up, square to it, to the top of the front bulkhead.",
  },
  wellWidthAftMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Well width at the transom",
    take: "Clear width on the sole, side to side, at the inside face of the transom.",
  },
  wellWidthFrontMm: {
    unit: "mm",
    min: 100,
    max: 3000,
    group: "well",
    name: "Well width at the front",
    take: "Clear width on the sole, side to side, at the front bulkhead.",
  },
  sideFlareDeg: {
    unit: "deg",
    min: -30,
    max: 60,
    group: "well",
    name: "Side flare",
    take: "How far the well's sides lean outward from square to the sole, seen from aft.",
  },
  wellSideHeightMm: {
    unit: "mm",
    min: 0,
    max: 1500,
    group: "well",
    name: "Well side height",
    take: "From the sole up, square to it, to the top of the well's sides; left empty, the sides are taken to go up without end, which is the safe reading.",
  },
  deckThicknessMm: {
    unit: "mm",
    min: 2,
    max: 60,
    group: "well",
    name: "Sole thickness",
    take: "Thickness of the panel the well sole is made of.",
  },
  drainDiameterMm: {
    unit: "mm",
    min: 5,
    max: 200,
    group: "well",
    name: "Drain diameter",
    take: "Inside diameter of one well drain.",
  },
  lengthOverallMm: {
    unit: "mm",
    min: 1500,
    max: 15000,
    group: "rest",
    name: "Length overall",
    take: "Straight and level from the foremost to the aftermost part of the hull, without fittings.",
  },
  transomWidthMm: {
    unit: "mm",
    min: 300,
    max: 5000,
    group: "rest",
    name: "Transom width",
    take: "Straight across the transom at its widest, without fittings.",
  },
  beamMm: {
    unit: "mm",
    min: 500,
    max: 5000,
    group: "rest",
    name: "Beam",
    take: "Straight across the hull at its widest, without fittings.",
  },
  waterlineMm: {
    unit: "mm",
    min: -200,
    max: 1000,
    group: "rest",
    name: "Water above the datum",
    take: "Afloat and loaded, without the motor: from the datum plumb up to the water surface at the transom.",
  },
  waterlineLengthMm: {
    unit: "mm",
    min: 1000,
    max: 15000,
    group: "rest",
    name: "Waterline length",
    take: "Afloat and loaded: length of the hull at the water surface.",
  },
  waterlineBeamMm: {
    unit: "mm",
    min: 300,
    max: 5000,
    group: "rest",
    name: "Waterline beam",
    take: "Afloat and loaded: greatest breadth of the hull at the water surface.",
  },
  ratedPowerKw: {
    unit: "kW",
    min: 0.1,
    max: 500,
    group: "rest",
    name: "Power on the capacity label",
    take: "The greatest motor power on the hull's capacity label, where it has one; it always governs.",
  },
  ratedMotorMassKg: {
    unit: "kg",
    min: 1,
    max: 1000,
    group: "rest",
    name: "Motor mass on the capacity label",
    take: "The greatest motor mass on the hull's capacity label, where it has one; it always governs.",
  },
  ratedTotalMassKg: {
    unit: "kg",
    min: 1,
    max: 5000,
    group: "rest",
    name: "Persons, motor and gear on the capacity label",
    take: "The greatest mass of persons, motor and gear together on the hull's capacity label, where it has one; it always governs.",
    mistake: "Taking the figure for persons alone: it stands above this one on most labels.",
  },
} as const satisfies Record<string, Field>;

/** A key of one measured number of a stern. */
export type SternKey = keyof typeof sternFields;

export const HULL_FORMS = ["flat", "vee", "round"] as const;
export type HullForm = (typeof HULL_FORMS)[number];

/** Anything else in the motor's way: a box between two corners [f, y, v] of the bracket frame (see frame.ts). */
export interface Obstruction {
  readonly label: string;
  readonly fromMm: Corner;
  readonly toMm: Corner;
}

/** What a stern is, apart from its measured numbers. */
export interface SternKind {
  readonly hullForm?: HullForm;
  readonly hardChine?: boolean;
  /** How many drains of `drainDiameterMm` the well has. */
  readonly drainCount?: number;
  readonly obstacles?: readonly Obstruction[];
  /** The owner's own limits in place of common practice: keys of `practiceLimits` in lib/standards. */
  readonly limits?: Readonly<Record<string, number>>;
}

/** A stern as recorded. An absent key is a number nobody knows; without a seat nothing is cut, without well keys there is no well. */
export type Stern = { readonly id: string; readonly label: string; readonly notes?: string } & SternKind & {
    readonly [K in SternKey]?: Measured;
  };

/** A stern as the engine sees it: plain numbers, spread left out. */
export type SternValues = SternKind & { readonly [K in SternKey]?: number };
