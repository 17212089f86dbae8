/**
 * Numbers nobody took, estimated from motors that have them. Motors of like power, shaft class, strokes
 * and steering are alike: each number is taken to run as a straight line over the logarithm of the power,
 * fitted to the other records with weights that fall as they grow unlike (locally weighted regression,
 * Cleveland 1979, in its simplest form). How far that misses is not supposed but tried: each record is
 * estimated from the others, and the interval is wide enough for nine of ten of those misses (the
 * jackknife; its cover is checked in the tests). An estimate is never stored as a measurement.
 */
import {
  type Motor,
  type MotorKey,
  type MotorNumberKey,
  motorFields,
  type ShaftClass,
} from "#lib/rig/motor.ts";

/** One number estimated. */
export interface LikeEstimate {
  readonly key: MotorKey;
  readonly value: number | readonly number[];
  /** Half of the interval that holds nine of ten. */
  readonly plusMinus: number;
  /** Ids of the records it comes from, the likest first. */
  readonly from: readonly string[];
  /** Fewer than eight records had this number: the interval is a guess twice as wide as the worst miss. */
  readonly few: boolean;
}

/** Share of the misses the interval must hold. */
const COVER = 0.9;
/** With fewer records than this the misses say too little. */
const ENOUGH = 8;
/** With fewer than this there is no estimate at all. */
const LEAST = 3;
/** Of more records only the likest count: the others weigh next to nothing, and every one is tried against all the rest. */
const MOST = 60;

/** Keys that follow the shaft class: other classes say nothing of them. */
const BY_CLASS: readonly MotorKey[] = ["shaftLengthMm"];
/** Class, papers and use, not shape: not to be estimated from other motors. */
const NOT_ESTIMATED: readonly MotorKey[] = ["powerKw"];

/** What is compared between motors. */
interface Likeness {
  readonly lnPower: number;
  readonly shaftClass: ShaftClass | undefined;
  readonly strokes: number | undefined;
  readonly steering: string | undefined;
}

/** Distances at which a record weighs e^-1/2: a factor of 1.6 in power; a class, strokes or steering that differs. */
const SCALE = { lnPower: Math.log(1.6), shaftClass: 0.8, strokes: 0.9, steering: 0.7 };

const likeness = (motor: Motor): Likeness | undefined =>
  motor.powerKw && {
    lnPower: Math.log(motor.powerKw.value),
    shaftClass: motor.shaftClass,
    strokes: motor.strokes,
    steering: motor.steering,
  };

/** How much a record weighs for a motor, 0 to 1. A fact unknown on either side neither joins nor parts them. */
function weight(a: Likeness, b: Likeness): number {
  const differs = (x: unknown, y: unknown) => (x !== undefined && y !== undefined && x !== y ? 1 : 0);
  const squared =
    ((a.lnPower - b.lnPower) / SCALE.lnPower) ** 2 +
    differs(a.shaftClass, b.shaftClass) * SCALE.shaftClass ** 2 +
    differs(a.strokes, b.strokes) * SCALE.strokes ** 2 +
    differs(a.steering, b.steering) * SCALE.steering ** 2;
  return Math.exp(-squared / 2);
}

interface Sample {
  readonly id: string;
  readonly like: Likeness;
  readonly value: number;
}

/** The weighted straight line over ln power, read at the motor's own power; a pull towards level keeps few points from tilting it. */
function fitted(like: Likeness, samples: readonly Sample[]): number {
  const weights = samples.map((sample) => weight(like, sample.like) + 1e-9);
  const total = weights.reduce((sum, w) => sum + w, 0);
  const mean = (of: (sample: Sample) => number) =>
    samples.reduce((sum, sample, i) => sum + weights[i]! * of(sample), 0) / total;
  const [x, y] = [mean(({ like: { lnPower } }) => lnPower), mean(({ value }) => value)];
  const xx = mean(({ like: { lnPower } }) => (lnPower - x) ** 2) + 0.02;
  const xy = mean(({ like: { lnPower }, value }) => (lnPower - x) * (value - y));
  return y + (xy / xx) * (like.lnPower - x);
}

/** The least miss that at least nine of ten misses, weighted by likeness, do not exceed. */
function usualMiss(like: Likeness, samples: readonly Sample[]): number {
  const misses = samples
    .map((sample) => ({
      miss: Math.abs(
        sample.value -
          fitted(
            sample.like,
            samples.filter((other) => other !== sample),
          ),
      ),
      // Misses are pooled more widely than values: how far records scatter changes slowly.
      weight: Math.sqrt(weight(like, sample.like)) + 0.05,
    }))
    .sort((a, b) => a.miss - b.miss);
  const total = misses.reduce((sum, { weight: w }) => sum + w, 0);
  let below = 0;
  for (const { miss, weight: w } of misses) {
    below += w;
    if (below >= COVER * total) return samples.length < ENOUGH ? 2 * misses.at(-1)!.miss : miss;
  }
  return misses.at(-1)!.miss;
}

/** Estimates one number of a motor from the records that have it; undefined where its power is unknown or too few have it. */
export function estimateLike(
  motor: Motor,
  key: MotorKey,
  records: readonly Motor[],
): LikeEstimate | undefined {
  const like = likeness(motor);
  if (!like || NOT_ESTIMATED.includes(key)) return undefined;
  const donors = records
    .filter(
      (record) =>
        record.id !== motor.id &&
        record[key] !== undefined &&
        record[key].how !== "estimated" &&
        (!BY_CLASS.includes(key) || record.shaftClass === motor.shaftClass),
    )
    // In one order whatever the file's: sums of the same numbers differ in their last digit by their order.
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const samples = (read: (record: Motor) => number): Sample[] =>
    likestOf(
      like,
      donors.flatMap((record) => {
        const its = likeness(record);
        return its ? [{ id: record.id, like: its, value: read(record) }] : [];
      }),
    );
  if (key === "pinAnglesDeg") return estimatePins(like, donors, samples);
  const all = samples((record) => record[key as MotorNumberKey]!.value);
  if (all.length < LEAST) return undefined;
  const { min, max } = motorFields[key];
  return {
    key,
    value: Math.min(max, Math.max(min, fitted(like, all))),
    plusMinus: usualMiss(like, all),
    from: likest(like, all),
    few: all.length < ENOUGH,
  };
}

/** The holes of the likest motor, as far off as lowest holes usually are. */
function estimatePins(
  like: Likeness,
  donors: readonly Motor[],
  samples: (read: (record: Motor) => number) => Sample[],
): LikeEstimate | undefined {
  const lowest = samples((record) => record.pinAnglesDeg!.value[0]!);
  if (lowest.length < LEAST) return undefined;
  const from = likest(like, lowest);
  return {
    key: "pinAnglesDeg",
    value: donors.find(({ id }) => id === from[0])!.pinAnglesDeg!.value,
    plusMinus: usualMiss(like, lowest),
    from: from.slice(0, 1),
    few: lowest.length < ENOUGH,
  };
}

/** The samples that count, in the order they came. */
function likestOf(like: Likeness, samples: readonly Sample[]): Sample[] {
  if (samples.length <= MOST) return [...samples];
  const weighed = samples.map((sample, i) => ({ sample, i, weight: weight(like, sample.like) }));
  const kept = weighed.sort((a, b) => b.weight - a.weight || a.i - b.i).slice(0, MOST);
  return kept.sort((a, b) => a.i - b.i).map(({ sample }) => sample);
}

/** Ids of the five records that weigh most. */
const likest = (like: Likeness, samples: readonly Sample[]): string[] =>
  [...samples]
    .sort((a, b) => weight(like, b.like) - weight(like, a.like))
    .slice(0, 5)
    .map(({ id }) => id);

/** Keys of the numbers the motor lacks that are worth estimating; a tiller's only where it is not known to steer remotely. */
const gapsOf = (motor: Motor): MotorKey[] =>
  (Object.keys(motorFields) as MotorKey[]).filter(
    (key) => motor[key] === undefined && !(key.startsWith("tiller") && motor.steering !== "tiller"),
  );

/** Every number the motor lacks that can be estimated; a tiller's only where it is not known to steer remotely. */
export const estimatesFor = (motor: Motor, records: readonly Motor[]): LikeEstimate[] =>
  gapsOf(motor).flatMap((key) => estimateLike(motor, key, records) ?? []);

/** The same for many motors from the same records: motors of equal power, class, strokes and steering that lack the same numbers share their estimates. */
export function estimatorOf(records: readonly Motor[]): (motor: Motor) => readonly LikeEstimate[] {
  const having = new Map<MotorKey, readonly Motor[]>();
  const made = new Map<string, readonly LikeEstimate[]>();
  const donorsOf = (key: MotorKey) => {
    const donors = having.get(key) ?? records.filter((record) => record[key] !== undefined);
    having.set(key, donors);
    return donors;
  };
  return (motor) => {
    const gaps = gapsOf(motor);
    const { powerKw, shaftClass, strokes, steering } = motor;
    const name = JSON.stringify([powerKw?.value ?? 0, shaftClass ?? 0, strokes ?? "", steering ?? 0, gaps]);
    const found = made.get(name) ?? gaps.flatMap((key) => estimateLike(motor, key, donorsOf(key)) ?? []);
    made.set(name, found);
    return found;
  };
}

/** The motor with the estimates put in where it lacks the number, marked as estimated. For looking at, never for storing. */
export function filledIn(motor: Motor, estimates: readonly LikeEstimate[]): Motor {
  if (estimates.length === 0) return motor;
  const numbers = estimates
    .filter(({ key }) => motor[key] === undefined)
    .map(({ key, value, plusMinus }) => [key, { value, plusMinus, how: "estimated" }]);
  return { ...motor, ...Object.fromEntries(numbers) } as Motor;
}
