/**
 * Motors and sterns to try laws on: the demonstration's fully measured motors with every number moved a
 * little, on sterns made to take them more or less (all ranges invented, from memory of the trade's sizes,
 * no source). From a number, so that every run sees the same ones.
 */
import motors from "#data/demo/motors.json" with { type: "json" };
import type { Measured, MeasuredList, Unit } from "#lib/quantity/measured.ts";
import { defaultHalfWidth } from "#lib/quantity/uncertainty.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import { runningHole, seatForPlate } from "#lib/rig/plate.ts";
import { motorValues } from "#lib/rig/record.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";
import { numbers } from "#tests/oracle/rigs.ts";

export interface Pair {
  readonly motor: Motor;
  readonly stern: Stern;
}

/** The numbers of a record, without its facts. */
export type Numbers = Readonly<Record<string, Measured | MeasuredList>>;
const fields: Readonly<Record<string, { unit: Unit; min: number; max: number }>> = {
  ...motorFields,
  ...sternFields,
};

/** Keys of the measured numbers a record holds. */
export const keysOf = (record: Motor | Stern): string[] => Object.keys(record).filter((key) => key in fields);

/** A record with each of its numbers changed. */
export function withNumbers<R extends Motor | Stern>(
  record: R,
  change: (entry: Measured | MeasuredList, key: string) => Measured | MeasuredList,
): R {
  const numbers = record as unknown as Numbers;
  const changed = keysOf(record).map((key) => [key, change(numbers[key]!, key)]);
  return { ...record, ...Object.fromEntries(changed) };
}

/** Half-width in force of an entry. */
export function halfWidthOf({ value, how, plusMinus }: Measured | MeasuredList, key: string): number {
  const size = typeof value === "number" ? value : Math.max(...value.map(Math.abs));
  return plusMinus ?? defaultHalfWidth(size, fields[key]!.unit, how);
}

/** A record with every half-width in force written down and multiplied. */
export const spreadBy = <R extends Motor | Stern>(record: R, factor: number | ((key: string) => number)): R =>
  withNumbers(record, (entry, key) => ({
    ...entry,
    plusMinus: halfWidthOf(entry, key) * (typeof factor === "number" ? factor : factor(key)),
  }));

/** Both records without any spread. */
export const exact = ({ motor, stern }: Pair): Pair => ({
  motor: spreadBy(motor, 0),
  stern: spreadBy(stern, 0),
});

type Between = (low: number, high: number) => number;

/** Every number a question can ask of a motor with a tiller, or of one steered remotely. */
const asked = (motor: Motor): string[] =>
  Object.keys(motorFields).filter((key) => !key.startsWith("tiller") || motor.steering === "tiller");

const whole = (motors as unknown as Motor[]).filter(
  (motor) => motor.steering && motor.shaftClass && asked(motor).every((key) => key in motor),
);

const tenth = (value: number): number => Math.round(value * 10) / 10;

function within(value: number, key: string): number {
  const { min, max } = fields[key]!;
  return tenth(Math.min(max, Math.max(min, value)));
}

/** One motor of the demonstration with lengths moved by up to 6 % and 3 mm, angles by 2 degrees. */
function motorOf(between: Between): Motor {
  const one = whole[Math.floor(between(0, whole.length))]!;
  const spread = between(0, 1) < 0.2 ? 0.2 : between(0.5, 2);
  return withNumbers(one, (entry, key) => {
    const plusMinus = tenth(halfWidthOf(entry, key) * spread * 10) / 10;
    const turn = between(-2, 2);
    if (typeof entry.value !== "number")
      return {
        ...entry,
        value: entry.value.map((pin) => within(pin + turn, key)),
        plusMinus,
      } as MeasuredList;
    const by = fields[key]!.unit === "deg" ? turn : entry.value * between(-0.06, 0.06) + between(-3, 3) * 0.5;
    const sure = key === "powerKw" || key === "massKg" ? 0 : by;
    return { ...entry, value: within(entry.value + sure, key), plusMinus } as Measured;
  });
}

function sternOf(between: Between, motor: Motor): Stern {
  const chance = (share: number) => between(0, 1) < share;
  const spread = chance(0.2) ? 0.2 : between(0.5, 2);
  const mm = (value: number, key: string): Measured => ({
    value: within(value, key),
    plusMinus: tenth(spread * (fields[key]!.unit === "deg" ? 0.5 : 1.5)),
    how: "measured",
  });
  const entries = (values: Record<string, number>) =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, mm(value, key)]));
  const rakeDeg = within(between(0, 16), "rakeDeg");
  const leg = motorValues(motor) as Required<ReturnType<typeof motorValues>>;
  const right = seatForPlate(leg, rakeDeg, runningHole(leg.pinAnglesDeg, rakeDeg), -12.7);
  const seatMm = within(right + (chance(0.2) ? between(-60, 60) : between(-16, 16)), "seatMm");
  const uncut = chance(0.15);
  const transomTopMm = uncut ? seatMm : seatMm + between(0, 150);
  const notch = {
    seatMm,
    notchWidthMm: leg.bracketWidthMm + between(20, 600),
    notchCornerRadiusMm: between(0, 40),
  };
  return {
    id: "trial-stern",
    label: "Trial stern",
    hullForm: "vee",
    ...entries({ rakeDeg, transomThicknessMm: between(28, 62), transomTopMm, keelDepthMm: 0 }),
    ...(uncut ? {} : entries(notch)),
    ...(chance(0.75) && wellOf(between, rakeDeg, chance, entries)),
    ...(chance(0.35) && { obstacles: obstaclesOf(between, chance) }),
  };
}

type Chance = (share: number) => boolean;
type Entries = (values: Record<string, number>) => Partial<Stern>;

/** Sides close in forward or run parallel, lean outward or stand square: as wells are built. */
function wellOf(between: Between, rakeDeg: number, chance: Chance, entries: Entries): Partial<Stern> {
  const wellWidthAftMm = between(600, 1700);
  return entries({
    soleDropMm: chance(0.15) ? between(30, 150) : between(150, 320),
    soleAngleDeg: chance(0.4) ? 90 : 90 + rakeDeg + between(-1, 1),
    wellDepthMm: between(500, 1100),
    wellFrontHeightMm: between(60, 400),
    wellWidthAftMm,
    wellWidthFrontMm: wellWidthAftMm * between(0.8, 1),
    sideFlareDeg: chance(0.4) ? 0 : between(0, 15),
    ...(chance(0.6) && { wellSideHeightMm: between(100, 450) }),
  });
}

/** A thwart forward in the boat, or a ladder beside the motor; sometimes both. */
function obstaclesOf(between: Between, chance: Chance): Stern["obstacles"] {
  const [f, v] = [tenth(between(300, 800)), tenth(between(-300, 200))];
  const y = tenth(between(150, 450) * (chance(0.5) ? 1 : -1));
  const thwart = { label: "thwart", fromMm: [f, -600, v - 40], toMm: [f + 200, 600, v] } as const;
  const ladder = {
    label: "ladder",
    fromMm: [-80, y, -350],
    toMm: [-20, y + Math.sign(y) * 300, 20],
  } as const;
  return chance(0.2) ? [thwart, ladder] : [chance(0.5) ? thwart : ladder];
}

/** Pair number `start`. Complete: every question can be answered or does not arise. */
export function pair(start: number): Pair {
  const random = numbers(start * 6007 + 17);
  const between: Between = (low, high) => low + (high - low) * random();
  const motor = motorOf(between);
  return { motor, stern: sternOf(between, motor) };
}
