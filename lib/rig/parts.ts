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

const COWL = ["cowlFrontMm", "cowlAftMm", "cowlWidthMm", "cowlBottomMm", "cowlTopMm"] as const;
const LEG = [
  "midsectionFrontMm",
  "midsectionAftMm",
  "midsectionWidthMm",
  "shaftLengthMm",
  "cowlBottomMm",
] as const;
const TILLER = ["tillerLengthMm", "tillerHeightMm", "tillerThicknessMm", "tillerOffsetMm"] as const;

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

/** The moving parts that are fully known, as boxes. Empty where the motion is not known. */
export function partBoxes(motor: MotorValues): PartBox[] {
  if (!knows(motor, MOTION_KEYS)) return [];
  const steeringAngles = { from: -motor.steerStarboardDeg, to: motor.steerPortDeg };
  const height = (aboveSaddleMm: number) => legHeight(aboveSaddleMm, motor.measuredAtDeg, motor);
  const boxes: PartBox[] = [];
  const add = (id: string, moves: Part["moves"], from: Corner, to: Corner, faceAngles = tiltRange(motor)) =>
    boxes.push({
      id,
      moves,
      from: [from[0], from[1], height(from[2])],
      to: [to[0], to[1], height(to[2])],
      faceAngles,
      steeringAngles,
    });

  if (knows(motor, COWL)) {
    const half = motor.cowlWidthMm / 2;
    add(
      "cowl",
      "steered",
      [-motor.cowlAftMm, -half, motor.cowlBottomMm],
      [motor.cowlFrontMm, half, motor.cowlTopMm],
    );
  }
  if (knows(motor, LEG)) {
    const half = motor.midsectionWidthMm / 2;
    add(
      "midsection",
      "steered",
      [-motor.midsectionAftMm, -half, -motor.shaftLengthMm],
      [motor.midsectionFrontMm, half, motor.cowlBottomMm],
    );
  }
  if (hasTiller(motor) && knows(motor, TILLER)) {
    const half = motor.tillerThicknessMm / 2;
    add(
      "tiller",
      "steered",
      [0, motor.tillerOffsetMm - half, motor.tillerHeightMm],
      [motor.tillerLengthMm, motor.tillerOffsetMm + half, motor.tillerHeightMm + motor.tillerThicknessMm],
      motor.tillerFolds ? pinRange(motor) : tiltRange(motor),
    );
  }
  for (const { label, group, fromMm, toMm } of motor.extraSolids ?? []) add(label, group, fromMm, toMm);
  return boxes;
}

/** The same as solids. */
export const partsOf = (motor: MotorValues): Part[] =>
  partBoxes(motor).map(({ from, to, ...part }) => ({ ...part, solid: box(from, to) }));
