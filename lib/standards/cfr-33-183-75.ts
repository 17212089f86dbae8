/**
 * What an outboard and its gear weigh for the loading rules: 33 CFR 183.75, Table 183.75. The motor's own
 * mass, where it is known, tells more about a boat; these rows are what the rule sets aside for a power.
 */
import { KG_PER_POUND } from "#lib/quantity/mass.ts";
import { WATTS_PER_HORSEPOWER } from "#lib/quantity/power.ts";
import { horsepowerCapacity } from "#lib/standards/cfr-33-183-53.ts";
import type { Citation, Note } from "#lib/standards/citation.ts";

export const motorWeights: Citation = {
  ...horsepowerCapacity,
  clause: "183.75, Table 183.75",
  edition: "82 FR 16512, 5 April 2017, in force 1 June 2018",
  url: "https://www.law.cornell.edu/cfr/text/33/183.75",
};

/** One row, weights in pounds: [from hp, to hp, dry, running, swamped, controls, battery dry, battery submerged, full portable tank, total of running, controls, battery dry and tank]. */
type Row = readonly [number, number, number, number, number, number, number, number, number, number];

/** Table 183.75, columns 1 to 9. */
export const TABLE_183_75: readonly Row[] = [
  [0.1, 2, 30, 32, 27, 0, 0, 0, 0, 32],
  [2.1, 3.9, 42, 44, 37, 0, 0, 0, 0, 44],
  [4, 6.9, 66, 69, 59, 0, 0, 0, 25, 94],
  [7, 10.9, 105, 110, 94, 5, 20, 11, 50, 185],
  [11, 22.9, 127, 133, 113, 6, 45, 25, 50, 234],
  [23, 34.9, 187, 196, 167, 9, 45, 25, 100, 350],
  [35, 64.9, 286, 300, 255, 14, 45, 25, 100, 459],
  [65, 94.9, 439, 461, 392, 22, 45, 25, 100, 628],
  [95, 104.9, 458, 481, 409, 23, 45, 25, 100, 649],
  [105, 144.9, 526, 552, 469, 26, 45, 25, 100, 723],
  [145, 194.9, 561, 589, 501, 28, 45, 25, 100, 762],
  [195, 209.9, 652, 685, 582, 33, 45, 25, 100, 863],
  [210, 300, 699, 734, 624, 35, 45, 25, 100, 914],
  [300.1, 350, 884, 928, 789, 44, 45, 25, 100, 1117],
];

/** How the table's footnotes make one column from another: running = dry + 5 %, swamped = 85 % of running, low transoms (20 in or less) take 10 % off dry. */
export const FOOTNOTES = { runningOverDry: 1.05, swampedOfRunning: 0.85, lowTransomOfDry: 0.9 } as const;

export interface AllowanceOptions {
  /** Transom of 20 in or less: the rule allows the dry weight less 10 %. */
  readonly lowTransom?: boolean;
  /** A fixed fuel system and no portable tank: the tank may be left out. */
  readonly fixedFuel?: boolean;
  readonly diesel?: boolean;
  /** How many such motors; 1 unless given. */
  readonly motors?: number;
}

export type AllowanceNote = Note<
  "between-rows" | "below-table" | "low-transom" | "dry-or-running" | "diesel" | "several"
>;

/** What the rule sets aside for a motor and its gear, kg. The motor's own three weights are of one motor; `totalKg` is of all. */
export interface MotorAllowance {
  /** The row taken, horsepower. */
  readonly rowHp: readonly [number, number];
  readonly dryKg: number;
  readonly runningKg: number;
  readonly swampedKg: number;
  readonly controlsKg: number;
  readonly batteryDryKg: number;
  readonly batterySubmergedKg: number;
  readonly tankKg: number;
  /** Running motor, controls, dry battery and full tank, times the number of motors: column 9. */
  readonly totalKg: number;
  readonly notes: readonly AllowanceNote[];
}

/** The allowance for a motor of `powerKw`; undefined above the table's 350 hp. Throws where the power is not above 0. */
export function motorAllowance(powerKw: number, options: AllowanceOptions = {}): MotorAllowance | undefined {
  if (!(powerKw > 0)) throw new RangeError("an allowance needs a power above 0");
  // To a millionth of a horsepower, so that 2 hp turned into kilowatts and back is 2 hp.
  const hp = Math.round(((powerKw * 1000) / WATTS_PER_HORSEPOWER) * 1e6) / 1e6;
  const row = TABLE_183_75.find(([, to]) => hp <= to);
  return row && allowanceOf(row, hp, options);
}

function allowanceOf(row: Row, hp: number, options: AllowanceOptions): MotorAllowance {
  const [from, to, wholeDry, wholeRunning, wholeSwamped, controls, batteryDry, batterySubmerged] = row;
  const { lowTransom = false, fixedFuel = false, motors = 1 } = options;
  const tank = fixedFuel ? 0 : row[8];
  const dry = lowTransom ? wholeDry * FOOTNOTES.lowTransomOfDry : wholeDry;
  const running = lowTransom ? dry * FOOTNOTES.runningOverDry : wholeRunning;
  const swamped = lowTransom ? running * FOOTNOTES.swampedOfRunning : wholeSwamped;
  return {
    rowHp: [from, to],
    dryKg: dry * KG_PER_POUND,
    runningKg: running * KG_PER_POUND,
    swampedKg: swamped * KG_PER_POUND,
    controlsKg: controls * KG_PER_POUND,
    batteryDryKg: batteryDry * KG_PER_POUND,
    batterySubmergedKg: batterySubmerged * KG_PER_POUND,
    tankKg: tank * KG_PER_POUND,
    totalKg: (running + controls + batteryDry + tank) * motors * KG_PER_POUND,
    notes: notesOf(row, hp, options),
  };
}

function notesOf([from, to]: Row, hp: number, options: AllowanceOptions): AllowanceNote[] {
  const { lowTransom, diesel, motors = 1 } = options;
  const notes: (AllowanceNote | false | undefined)[] = [
    hp < from &&
      from > 0.1 && {
        id: "between-rows",
        says: `The table's rows leave a gap below ${from} hp; the heavier row, ${from} to ${to} hp, is taken, so that the hull is not credited with weight it may have to carry.`,
      },
    hp < 0.1 && { id: "below-table", says: "Below the table's 0.1 hp; its first row is taken." },
    lowTransom && {
      id: "low-transom",
      says: "Transom of 20 in or less: the dry weight less 10 %, and what follows from it, not rounded.",
    },
    {
      id: "dry-or-running",
      says: "The capacity rule names the motor's weight without saying dry or running; the total is the table's own column 9, which has it running.",
    },
    diesel && {
      id: "diesel",
      says: "For a diesel outboard the rule takes its published dry weight and 10 % in place of the row's.",
    },
    motors > 1 && {
      id: "several",
      says: "More motors than one: the total is multiplied by their number, as a trade standard's copy of the table says; the regulation has no row for them (read in a secondary text).",
    },
  ];
  return notes.filter((note) => note !== undefined && note !== false);
}
