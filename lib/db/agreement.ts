/** Several takings of one number, and the one number they come to. */
import { consensus } from "#lib/quantity/consensus.ts";
import type { How, Measured, MeasuredList, Unit } from "#lib/quantity/measured.ts";
import { defaultHalfWidth, standardUncertainty } from "#lib/quantity/uncertainty.ts";

/** One number, or the list of the trim-pin holes, as taken. */
export interface Taken {
  readonly value: number | readonly number[];
  readonly plusMinus?: number;
  readonly how: How;
}

/**
 * What part a taking has in the number: it counts; it counts although it lies far from the others; it stands
 * beside because a surer kind of taking is there, because it has another number of trim-pin holes, or
 * because the number was corrected since.
 */
export type Part = "counts" | "outlying" | "less sure" | "other holes" | "corrected";

/** What takings come to. Spreads are in the number's unit; of a list, those of the hole where they are greatest. */
export interface Agreement {
  /** The number as the record has it: the only taking that counts as it was taken, else the consensus. */
  readonly number: Measured | MeasuredList;
  /** Standard uncertainty of it. */
  readonly u: number;
  /** Standard deviation between takings beyond what each claims for itself; 0 where they agree. */
  readonly between: number;
  /** Above 1 the takings scatter more than their own spreads allow. */
  readonly birgeRatio: number;
  /** How many takings it rests on. */
  readonly counted: number;
  /** The part of each taking, in their order. */
  readonly parts: readonly Exclude<Part, "corrected">[];
}

const SUREST_FIRST: readonly How[] = ["measured", "declared", "estimated"];
/** A consensus is written down so finely and no finer, so that a form shows a number people can read, and reads back what it shows. */
const DECIMALS: Readonly<Record<Unit, number>> = { mm: 2, deg: 2, kg: 3, kW: 3, count: 3 };
const rounded = (value: number, decimals = 3): number => Number(value.toFixed(decimals)) + 0;
const LEAST_HALF_WIDTH = 0.001;

const listOf = ({ value }: Taken): readonly number[] => (typeof value === "number" ? [value] : value);

/**
 * The agreement of at least one taking in `unit`, in the order of taking. Only takings of the surest kind
 * there is are combined (measured before declared before estimated): a label speaks for the class and an eye
 * for neither, and a consensus they had moved could no longer be called measured on this very object. The
 * others are kept and shown, and count again as soon as nothing surer is left. Lists are combined hole by
 * hole, and only those with as many holes as most have; where two counts are as frequent, the earlier.
 */
export function agreement(unit: Unit, takings: readonly Taken[]): Agreement {
  const how = SUREST_FIRST.find((each) => takings.some((taking) => taking.how === each));
  if (!how) throw new RangeError("an agreement needs at least one taking");
  const sure = takings.filter((taking) => taking.how === how);
  const holes = mostFrequent(sure.map((taking) => listOf(taking).length));
  const counted = sure.filter((taking) => listOf(taking).length === holes);
  const each = Array.from({ length: holes }, (_, hole) =>
    consensus(counted.map((taking) => ({ value: listOf(taking)[hole]!, u: spreadOf(unit, taking, hole) }))),
  );
  const u = Math.max(...each.map((one) => one.u));
  const partOf = (taking: Taken): Exclude<Part, "corrected"> => {
    if (taking.how !== how) return "less sure";
    const at = counted.indexOf(taking);
    if (at < 0) return "other holes";
    return each.some(({ outlying }) => outlying[at]) ? "outlying" : "counts";
  };
  return {
    number: counted.length === 1 ? bare(counted[0]!) : combined(unit, counted[0]!, each, u),
    u,
    between: Math.max(...each.map(({ between }) => between)),
    birgeRatio: Math.max(...each.map(({ birgeRatio }) => birgeRatio)),
    counted: counted.length,
    parts: takings.map(partOf),
  };
}

/** The half-width u times the root of 3 has the standard uncertainty u by the rectangular law, as every half-width is read. */
function combined(
  unit: Unit,
  like: Taken,
  each: readonly { value: number }[],
  u: number,
): Measured | MeasuredList {
  const values = each.map(({ value }) => rounded(value, DECIMALS[unit]));
  const plusMinus = Math.max(rounded(u * Math.sqrt(3)), LEAST_HALF_WIDTH);
  return bare({ value: typeof like.value === "number" ? values[0]! : values, plusMinus, how: like.how });
}

function bare({ value, plusMinus, how }: Taken): Measured | MeasuredList {
  const rest = { ...(plusMinus === undefined ? {} : { plusMinus }), how };
  return typeof value === "number" ? { value, ...rest } : { value, ...rest };
}

/** Standard uncertainty of a taking. Nobody takes a number without any spread, and a weight must be finite: ± 0 is read as not given. */
function spreadOf(unit: Unit, taking: Taken, hole: number): number {
  const usual = () => defaultHalfWidth(listOf(taking)[hole]!, unit, taking.how);
  return standardUncertainty(Math.max(taking.plusMinus || usual(), LEAST_HALF_WIDTH));
}

function mostFrequent(counts: readonly number[]): number {
  const times = (count: number): number => counts.filter((each) => each === count).length;
  return counts.reduce((best, count) => (times(count) > times(best) ? count : best));
}
