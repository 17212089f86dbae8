/**
 * The moving parts of a motor as solids, each with the poses it takes. A box in steered coordinates for
 * everything that steers, in leg coordinates for what only tilts; heights above the saddle become heights
 * above the tilt axis.
 */
import type { Mechanism, Part, Range } from "#lib/geometry/mechanism.ts";
import { box } from "#lib/geometry/solid.ts";
import { legHeight } from "#lib/rig/frame.ts";
import type { Corner, MotorKey, MotorValues } from "#lib/rig/motor.ts";

/** Keys without which nothing is known of how the motor moves. */
export const MOTION_KEYS = [
  "measuredAtDeg",
  "tiltAxisForwardMm",
  "tiltAxisAboveMm",
  "steerAxisAftMm",
  "pinAnglesDeg",
  "tiltArcDeg",
  "steerPortDeg",
  "steerStarboardDeg",
] as const satisfies readonly MotorKey[];

/** What each part of a motor needs to be known, its motion left out. */
export const COWL = ["cowlFrontMm", "cowlAftMm", "cowlWidthMm", "cowlBottomMm", "cowlTopMm"] as const;
export const LEG = [
  "midsectionFrontMm",
  "midsectionAftMm",
  "midsectionWidthMm",
  "shaftLengthMm",
  "cowlBottomMm",
] as const;
export const TILLER = ["tillerLengthMm", "tillerHeightMm", "tillerThicknessMm", "tillerOffsetMm"] as const;

type Known<K extends keyof MotorValues> = MotorValues & Required<Pick<MotorValues, K>>;

/** True where every one of the keys is known. */
export const knows = <K extends keyof MotorValues>(
  motor: MotorValues,
  keys: readonly K[],
): motor is Known<K> => keys.every((key) => motor[key] !== undefined);

/** A tiller is there when the motor is said to have one, or its length was taken. */
const hasTiller = (motor: MotorValues): boolean =>
  motor.steering === "tiller" || motor.tillerLengthMm !== undefined;

/** The keys the moving parts need that nobody has taken; `steering` where not even the presence of a tiller is known. */
export function missingOfParts(motor: MotorValues): (MotorKey | "steering")[] {
  const wanted: readonly MotorKey[] = [...MOTION_KEYS, ...COWL, ...LEG, ...(hasTiller(motor) ? TILLER : [])];
  const missing: (MotorKey | "steering")[] = [...new Set(wanted)].filter((key) => motor[key] === undefined);
  if (!hasTiller(motor) && motor.steering === undefined) missing.push("steering");
  return missing;
}

/** How the motor hangs and turns on the saddle corner; undefined where the axes were not taken. */
export function mechanismOf(motor: MotorValues): Mechanism | undefined {
  const { tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm } = motor;
  if (tiltAxisForwardMm === undefined || tiltAxisAboveMm === undefined || steerAxisAftMm === undefined) {
    return undefined;
  }
  return { tiltAxisForwardMm, tiltAxisAboveMm, steerAxisAftMm };
}

/** Face angles from the lowest hole to full up. */
export const tiltRange = (motor: Known<"pinAnglesDeg" | "tiltArcDeg">): Range => ({
  from: motor.pinAnglesDeg[0]!,
  to: motor.pinAnglesDeg[0]! + motor.tiltArcDeg,
});

/** Face angles in which the leg rests in a trim-pin hole. */
export const pinRange = (motor: Known<"pinAnglesDeg" | "tiltArcDeg">): Range => ({
  from: motor.pinAnglesDeg[0]!,
  to: Math.min(motor.pinAnglesDeg.at(-1)!, motor.pinAnglesDeg[0]! + motor.tiltArcDeg),
});

/** A moving part as a box between two opposite corners, in leg (`tilting`) or steered coordinates, with all the poses it takes. */
export interface PartBox extends Pick<Part, "id" | "moves" | "faceAngles" | "steeringAngles"> {
  readonly from: Corner;
  readonly to: Corner;
}

type Whole = Required<MotorValues>;

/** The parts every motor may have: what each needs, and its box with heights above the saddle. */
const BODY: Readonly<
  Record<string, { readonly keys: readonly MotorKey[]; readonly ends: (motor: Whole) => [Corner, Corner] }>
> = {
  cowl: {
    keys: COWL,
    ends: (m) => [
      [-m.cowlAftMm, -m.cowlWidthMm / 2, m.cowlBottomMm],
      [m.cowlFrontMm, m.cowlWidthMm / 2, m.cowlTopMm],
    ],
  },
  midsection: {
    keys: LEG,
    ends: (m) => [
      [-m.midsectionAftMm, -m.midsectionWidthMm / 2, -m.shaftLengthMm],
      [m.midsectionFrontMm, m.midsectionWidthMm / 2, m.cowlBottomMm],
    ],
  },
  tiller: {
    keys: TILLER,
    ends: (m) => [
      [0, m.tillerOffsetMm - m.tillerThicknessMm / 2, m.tillerHeightMm],
      [m.tillerLengthMm, m.tillerOffsetMm + m.tillerThicknessMm / 2, m.tillerHeightMm + m.tillerThicknessMm],
    ],
  },
};

/** The motor's numbers a part rests on, its motion included; an extra solid rests on the motion alone. */
export const keysOfPart = (id: string): readonly MotorKey[] => [...MOTION_KEYS, ...(BODY[id]?.keys ?? [])];

/** Ids of the moving parts that are fully known. None where the motion is not known. */
export function partIds(motor: MotorValues): string[] {
  if (!knows(motor, MOTION_KEYS)) return [];
  const body = Object.keys(BODY).filter(
    (id) => knows(motor, BODY[id]!.keys) && (id !== "tiller" || hasTiller(motor)),
  );
  return [...body, ...(motor.extraSolids ?? []).map(({ label }) => label)];
}

/** One of the parts `partIds` names, as a box; throws for any other. A tiller that folds counts only while the leg rests in a hole. */
export function partBox(motor: MotorValues, id: string): PartBox {
  const whole = motor as Whole;
  const extra = motor.extraSolids?.find(({ label }) => label === id);
  const [from, to] = extra ? [extra.fromMm, extra.toMm] : BODY[id]!.ends(whole);
  const { measuredAtDeg } = whole;
  return {
    id,
    moves: extra?.group ?? "steered",
    from: [from[0], from[1], legHeight(from[2], measuredAtDeg, whole)],
    to: [to[0], to[1], legHeight(to[2], measuredAtDeg, whole)],
    faceAngles: id === "tiller" && motor.tillerFolds ? pinRange(whole) : tiltRange(whole),
    steeringAngles: { from: -whole.steerStarboardDeg, to: whole.steerPortDeg },
  };
}

/** The moving parts that are fully known, as boxes. */
export const partBoxes = (motor: MotorValues): PartBox[] => partIds(motor).map((id) => partBox(motor, id));

/** Kept beside each motor's values: they depend on the motor alone, and a long list hangs it on many sterns. */
const solids = new WeakMap<MotorValues, readonly Part[]>();

/** The same as solids. */
export function partsOf(motor: MotorValues): readonly Part[] {
  const kept = solids.get(motor);
  if (kept) return kept;
  const parts = partBoxes(motor).map(({ from, to, ...part }) => ({ ...part, solid: box(from, to) }));
  solids.set(motor, parts);
  return parts;
}
