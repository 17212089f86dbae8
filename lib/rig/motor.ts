import type { Measured, MeasuredList } from "#lib/quantity/measured.ts";
import type { Field } from "#lib/rig/field.ts";

/**
 * A motor's envelope: the numbers of it that decide how it hangs, steers and tilts, in the trade's order
 * of measuring. A key's meaning, unit and sign are fixed here and nowhere else.
 */
export const motorFields = {
  shaftLengthMm: {
    unit: "mm",
    min: 200,
    max: 1000,
    group: "hang",
    name: "Shaft length",
    take: "From the saddle, where the bracket sits on the transom, straight down the leg to the underside of the anti-ventilation plate.",
    mistake:
      "Measuring on to the propeller shaft or the skeg: the plate is the flat one just above the propeller.",
  },
  measuredAtDeg: {
    unit: "deg",
    min: -30,
    max: 60,
    group: "hang",
    name: "Leg angle while measuring",
    take: "Angle between the leg and the board it hung on while heights along the leg were taken; 0 when it hung parallel, plus when the lower end stood out from the board.",
  },
  clampOpeningMinMm: {
    unit: "mm",
    min: 0,
    max: 150,
    group: "hang",
    name: "Thinnest transom the clamps hold",
    take: "Clamp screws wound right in: from the screw pads to the bracket face that lies against the outside of the transom.",
  },
  clampOpeningMaxMm: {
    unit: "mm",
    min: 10,
    max: 200,
    group: "hang",
    name: "Thickest transom the clamps hold",
    take: "Clamp screws wound right out: from the screw pads to the bracket face that lies against the outside of the transom.",
  },
  tiltAxisForwardMm: {
    unit: "mm",
    min: -150,
    max: 200,
    group: "hang",
    name: "Tilt tube forward of the saddle corner",
    take: "From the face of the transom, square to it and into the boat, to the centre of the tilt tube; minus when the tube lies outside the transom.",
  },
  tiltAxisAboveMm: {
    unit: "mm",
    min: -150,
    max: 250,
    group: "hang",
    name: "Tilt tube above the saddle corner",
    take: "From the saddle up along the transom face to the level of the tilt tube's centre; minus when it lies lower.",
  },
  steerAxisAftMm: {
    unit: "mm",
    min: -50,
    max: 300,
    group: "hang",
    name: "Steering axis aft of the tilt tube",
    take: "From the centre of the tilt tube aft, square to the leg, to the middle of the swivel tube the motor steers in.",
  },
  pinAnglesDeg: {
    unit: "deg",
    min: -30,
    max: 60,
    group: "hang",
    name: "Leg angle in each trim-pin hole",
    take: "Digital level on the board, zeroed, then on the leg with the pin in each hole in turn, lowest hole first; plus when the lower end stands out from the board.",
    mistake: "Reading the leg against the floor instead of against the board it hangs on.",
  },
  tiltArcDeg: {
    unit: "deg",
    min: 10,
    max: 110,
    group: "hang",
    name: "Tilt arc",
    take: "From the leg in the lowest hole to the leg against the full-up stop, read with a level on the leg.",
  },
  bracketWidthMm: {
    unit: "mm",
    min: 50,
    max: 600,
    group: "notch",
    name: "Bracket width",
    take: "Across the clamp bracket at the saddle, from outermost edge to outermost edge.",
  },
  bracketDropMm: {
    unit: "mm",
    min: 20,
    max: 600,
    group: "notch",
    name: "Bracket drop outside",
    take: "From the saddle down the outside face of the transom to the lowest edge of the bracket.",
  },
  steerPortDeg: {
    unit: "deg",
    min: 0,
    max: 180,
    group: "notch",
    name: "Steering, tiller to port",
    take: "From straight ahead to the stop with the tiller swung to port (on a remote motor: the front of the cowl to port).",
  },
  steerStarboardDeg: {
    unit: "deg",
    min: 0,
    max: 180,
    group: "notch",
    name: "Steering, tiller to starboard",
    take: "From straight ahead to the stop with the tiller swung to starboard.",
  },
  cowlFrontMm: {
    unit: "mm",
    min: 0,
    max: 800,
    group: "notch",
    name: "Cowl forward of the steering axis",
    take: "From the steering axis forward to the foremost point of everything above the bracket that turns, tiller left out.",
  },
  cowlAftMm: {
    unit: "mm",
    min: 0,
    max: 900,
    group: "notch",
    name: "Cowl aft of the steering axis",
    take: "From the steering axis aft to the aftermost point of everything above the bracket that turns.",
  },
  cowlWidthMm: {
    unit: "mm",
    min: 50,
    max: 900,
    group: "notch",
    name: "Cowl width",
    take: "Across the widest part of everything above the bracket that turns.",
  },
  cowlBottomMm: {
    unit: "mm",
    min: -300,
    max: 800,
    group: "notch",
    name: "Cowl bottom above the saddle",
    take: "From the saddle up along the leg to the lowest edge of the cowl and its tray; minus when it hangs lower than the saddle.",
  },
  cowlTopMm: {
    unit: "mm",
    min: 50,
    max: 1500,
    group: "notch",
    name: "Cowl top above the saddle",
    take: "From the saddle up along the leg to the highest point of the cowl.",
  },
  midsectionFrontMm: {
    unit: "mm",
    min: 0,
    max: 400,
    group: "notch",
    name: "Leg forward of the steering axis",
    take: "From the steering axis forward to the foremost point of the leg between cowl and plate.",
  },
  midsectionAftMm: {
    unit: "mm",
    min: 0,
    max: 600,
    group: "notch",
    name: "Leg aft of the steering axis",
    take: "From the steering axis aft to the aftermost point of the leg between cowl and plate.",
  },
  midsectionWidthMm: {
    unit: "mm",
    min: 20,
    max: 500,
    group: "notch",
    name: "Leg width",
    take: "Across the widest part of the leg between cowl and plate.",
  },
  tillerLengthMm: {
    unit: "mm",
    min: 100,
    max: 1500,
    group: "notch",
    name: "Tiller length",
    take: "From the steering axis forward to the end of the grip, tiller down.",
    mistake: "Measuring from the front of the cowl: begin at the swivel tube.",
  },
  tillerHeightMm: {
    unit: "mm",
    min: -200,
    max: 800,
    group: "notch",
    name: "Tiller height",
    take: "From the saddle up along the leg to the underside of the tiller, tiller down.",
  },
  tillerThicknessMm: {
    unit: "mm",
    min: 10,
    max: 200,
    group: "notch",
    name: "Tiller thickness",
    take: "The depth of the tiller at its thickest; its breadth is taken to be the same.",
  },
  tillerOffsetMm: {
    unit: "mm",
    min: -300,
    max: 300,
    group: "notch",
    name: "Tiller off the centreline",
    take: "From the middle of the motor sideways to the middle of the tiller; plus to port, minus to starboard.",
  },
  clampDepthMm: {
    unit: "mm",
    min: 20,
    max: 500,
    group: "well",
    name: "Clamp depth inside",
    take: "From the saddle down the inside of the transom to the lowest edge of the clamp pads: the flat depth the motor needs.",
  },
  screwDropMm: {
    unit: "mm",
    min: 0,
    max: 400,
    group: "well",
    name: "Clamp screws below the saddle",
    take: "From the saddle down to the centreline of the clamp screws.",
  },
  handleSwingMm: {
    unit: "mm",
    min: 0,
    max: 300,
    group: "well",
    name: "Clamp-handle swing",
    take: "From the centreline of the clamp screw to the end of its handle, stretched straight out.",
  },
  powerKw: {
    unit: "kW",
    min: 0.1,
    max: 300,
    group: "rest",
    name: "Rated power",
    take: "The rated power on the motor's plate or in its papers.",
  },
  massKg: {
    unit: "kg",
    min: 2,
    max: 500,
    group: "rest",
    name: "Dry mass",
    take: "The motor with its usual propeller, no fuel and no loose tank.",
  },
  propDiameterMm: {
    unit: "mm",
    min: 80,
    max: 600,
    group: "rest",
    name: "Propeller diameter",
    take: "Twice the distance from the shaft's centre to a blade tip.",
  },
  plateToPropCentreMm: {
    unit: "mm",
    min: 40,
    max: 500,
    group: "rest",
    name: "Plate to propeller centre",
    take: "From the underside of the plate down to the centre of the propeller shaft.",
  },
  plateToSkegMm: {
    unit: "mm",
    min: 60,
    max: 800,
    group: "rest",
    name: "Plate to skeg tip",
    take: "From the underside of the plate down to the tip of the skeg.",
  },
} as const satisfies Record<string, Field>;

/** A key of one measured number of a motor; `pinAnglesDeg` holds several. */
export type MotorKey = keyof typeof motorFields;
/** Motor keys that hold a single number. */
export type MotorNumberKey = Exclude<MotorKey, "pinAnglesDeg">;

export const SHAFT_CLASSES = ["short", "long", "extra-long", "ultra-long"] as const;
export type ShaftClass = (typeof SHAFT_CLASSES)[number];
export const STEERINGS = ["tiller", "remote"] as const;
export type Steering = (typeof STEERINGS)[number];
/** Strokes per working cycle; 0 stands for an electric motor. */
export const STROKES = [0, 2, 4] as const;
export type Strokes = (typeof STROKES)[number];

export const FIXINGS = ["clamped", "bolted"] as const;
/** How the motor is held: by clamp screws, or bolted through the transom. */
export type Fixing = (typeof FIXINGS)[number];

/** A corner of a box: [x, y, height above the saddle along the leg], or [f, y, v] for an obstacle of a stern; millimetres. */
export type Corner = readonly [number, number, number];

/** Anything else that moves with the motor: a box, x and y in leg coordinates (`tilting`) or steered coordinates (`steered`), heights above the saddle. */
export interface ExtraSolid {
  readonly label: string;
  readonly group: "tilting" | "steered";
  readonly fromMm: Corner;
  readonly toMm: Corner;
}

/** What a motor is, apart from its measured numbers. */
export interface MotorKind {
  readonly shaftClass?: ShaftClass;
  readonly steering?: Steering;
  readonly strokes?: Strokes;
  readonly year?: number;
  /** Absent is taken as clamped. */
  readonly fixing?: Fixing;
  /** True where the tiller is folded up out of the way before the motor is tilted. Absent is taken as "does not fold". */
  readonly tillerFolds?: boolean;
  readonly extraSolids?: readonly ExtraSolid[];
}

/** A motor as recorded. An absent key is a number nobody knows; there is no other way to say so. */
export type Motor = { readonly id: string; readonly label: string; readonly notes?: string } & MotorKind & {
    readonly [K in MotorNumberKey]?: Measured;
  } & { readonly pinAnglesDeg?: MeasuredList };

/** A motor as the engine sees it: plain numbers in millimetres and degrees, spread left out. */
export type MotorValues = MotorKind & { readonly [K in MotorNumberKey]?: number } & {
  readonly pinAnglesDeg?: readonly number[];
};
