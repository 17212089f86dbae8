import type { Chance } from "#app/_command/chance.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { type Motor, type MotorNumberKey, motorFields, type ShaftClass } from "#lib/rig/motor.ts";
import { nominalShaft } from "#lib/standards/common-practice.ts";

/** Powers (hp) at which motors of the usual build are drawn up below; in between, straight lines (common practice, no source). */
const AT_HP = [2, 6, 15, 30, 60] as const;
const USUAL: Readonly<Partial<Record<MotorNumberKey, readonly number[]>>> = {
  massKg: [13, 26, 46, 66, 110],
  clampOpeningMinMm: [20, 25, 28, 31, 36],
  clampOpeningMaxMm: [48, 57, 61, 65, 74],
  tiltAxisForwardMm: [18, 25, 32, 37, 44],
  tiltAxisAboveMm: [22, 30, 36, 33, 26],
  steerAxisAftMm: [66, 82, 98, 114, 136],
  tiltArcDeg: [68, 70, 68, 66, 65],
  bracketWidthMm: [140, 180, 243, 285, 333],
  bracketDropMm: [110, 135, 192, 238, 305],
  cowlFrontMm: [95, 140, 185, 212, 253],
  cowlAftMm: [165, 240, 310, 365, 445],
  cowlWidthMm: [200, 265, 315, 355, 418],
  cowlBottomMm: [105, 120, 131, 141, 151],
  cowlTopMm: [350, 430, 500, 570, 690],
  midsectionFrontMm: [26, 30, 40, 45, 55],
  midsectionAftMm: [34, 44, 67, 88, 118],
  midsectionWidthMm: [50, 62, 80, 94, 114],
  tillerLengthMm: [400, 490, 575, 690, 760],
  tillerHeightMm: [135, 152, 167, 184, 200],
  tillerThicknessMm: [32, 36, 41, 46, 50],
  clampDepthMm: [110, 122, 135, 146, 165],
  screwDropMm: [50, 56, 61, 66, 74],
  handleSwingMm: [45, 50, 59, 64, 70],
  propDiameterMm: [184, 203, 235, 264, 308],
  plateToPropCentreMm: [92, 104, 115, 128, 149],
  plateToSkegMm: [202, 226, 251, 278, 321],
};
const POWERS_HP = [2, 2.5, 3.5, 4, 5, 6, 8, 9.9, 10, 15, 20, 25, 30, 40, 50, 60];

const COLOURS = "grey,black,white,blue,red,green,yellow,orange,silver,brown".split(",");
const MARKS =
  "patched cowl,dented skeg,new propeller,worn clamps,cracked tray,spare tank,rebuilt gearbox,stiff tiller,fresh paint,bent pin,short tiller,high thrust,loose bracket,painted leg,zinc-coated bracket,hand throttle".split(
    ",",
  );
const KEEPERS =
  "boat shed,slipway,harbour office,rowing shed,sail loft,ferry landing,hire fleet,sea scouts,survey launch,rescue boat,committee boat,safety boat,yacht tender,fish quay,oyster punt,camp site,lock house,boat school,diving club,island mail".split(
    ",",
  );

/** The value drawn up for a power, by straight lines between the powers above. */
function usual(key: MotorNumberKey, hp: number): number {
  const row = USUAL[key]!;
  const at = Math.max(
    1,
    AT_HP.findIndex((each) => each >= hp),
  );
  const [low, high] = [AT_HP[at - 1]!, AT_HP[at]!];
  return row[at - 1]! + ((row[at]! - row[at - 1]!) * (hp - low)) / (high - low);
}

/** A generated motor: nobody ever saw it. Its numbers hang together as those of a motor of its power do. */
export function generatedMotor(seed: number, number: number, { share, between, pick }: Chance): Motor {
  const hp = pick(POWERS_HP);
  const shaftClass = classOf(hp, share());
  const steering = share() < (hp < 20 ? 0.9 : 0.35) ? "tiller" : "remote";
  const strokes = share() < 0.55 ? 4 : 2;
  const [known, unsure] = knownShares(share());
  const taken = (value: number, halfWidth: number): Measured =>
    share() < unsure
      ? { value, how: share() < 0.5 ? "declared" : "estimated" }
      : { value, plusMinus: halfWidth, how: "measured" };
  const numbers = Object.keys(motorFields).flatMap((key): [string, unknown][] => {
    const field = motorFields[key as keyof typeof motorFields];
    if (share() > known || (steering === "remote" && key.startsWith("tiller"))) return [];
    if (key === "shaftLengthMm") return [[key, taken(lengthOf(shaftClass, between(8, 28)), 1.5)]];
    if (key === "measuredAtDeg") return [[key, taken(pick([0, 0, 12]), 0.5)]];
    if (key === "pinAnglesDeg") return [[key, { value: pick(PINS), plusMinus: 0.5, how: "measured" }]];
    if (key === "tillerOffsetMm") return [[key, taken(pick([0, 0, -15, 20, 25, 30]), 1)]];
    if (key.startsWith("steer") && field.unit === "deg") return [[key, taken(hp < 5 ? 180 : 45, 0.5)]];
    if (!(key in USUAL) || key === "massKg") return [];
    const value = usual(key as MotorNumberKey, hp) * between(0.95, 1.05);
    return [[key, taken(Math.round(value), field.unit === "deg" ? 0.5 : value > 150 ? 1.5 : 1)]];
  });
  const name = `${hp} hp ${shaftClass}-shaft ${steering}, ${strokes === 4 ? "four" : "two"}-stroke`;
  return {
    id: `generated-motor-${seed}-${number}`,
    label: `${name}, ${pick(COLOURS)}, ${pick(KEEPERS)} ${number}`,
    notes: `Generated for trials (seed ${seed}); there is no such motor. Last seen at the ${pick(KEEPERS)}, ${pick(MARKS)}.`,
    shaftClass,
    steering,
    strokes,
    year: Math.round(strokes === 2 ? between(1972, 2005) : between(1996, 2025)),
    powerKw: { value: Number(((hp * WATTS_PER_HORSEPOWER) / 1000).toFixed(1)), how: "declared" },
    ...(share() < 0.8 && { massKg: taken(Math.round(usual("massKg", hp) * between(0.92, 1.1)), 0.5) }),
    ...(steering === "tiller" && share() < 0.7 && { tillerFolds: true }),
    ...Object.fromEntries(numbers),
  };
}

const PINS = [
  [4, 8, 12, 16],
  [4, 8, 12, 16, 20],
  [6, 10, 14, 18, 22],
];

/** Most of them measured through, some in part, some known from papers only: the share of numbers known, and of these the share not measured. */
function knownShares(chance: number): readonly [known: number, unsure: number] {
  if (chance < 0.6) return [1, 0];
  return chance < 0.85 ? [0.7, 0.25] : [0.05, 1];
}

function classOf(hp: number, chance: number): ShaftClass {
  if (hp < 5) return chance < 0.8 ? "short" : "long";
  if (chance < 0.35) return hp < 20 ? "short" : "long";
  if (chance < 0.85) return "long";
  return hp >= 40 && chance > 0.95 ? "ultra-long" : "extra-long";
}

const lengthOf = (shaftClass: ShaftClass, more: number): number =>
  Math.round(nominalShaft[shaftClass].value + more);
