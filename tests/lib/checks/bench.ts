/**
 * One invented motor and stern to work answers on by hand, every number exact (± 0) unless a test gives
 * it a spread: the margin's sign alone then decides. Plumb transom, leg parallel, steering straight,
 * nothing in the way: each test changes only the numbers its arithmetic speaks of.
 */
import { limitOf } from "#lib/checks/check.ts";
import { checks } from "#lib/checks/index.ts";
import { type Answer, examine, type Options } from "#lib/fit/examine.ts";
import type { Measured } from "#lib/quantity/measured.ts";
import { type Motor, motorFields } from "#lib/rig/motor.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { type Stern, sternFields } from "#lib/rig/stern.ts";

const MOTOR = {
  shaftClass: "long",
  steering: "remote",
  shaftLengthMm: 520,
  measuredAtDeg: 0,
  tiltAxisForwardMm: 30,
  tiltAxisAboveMm: 40,
  steerAxisAftMm: 100,
  pinAnglesDeg: [0],
  tiltArcDeg: 95,
  steerPortDeg: 0,
  steerStarboardDeg: 0,
  clampOpeningMinMm: 30,
  clampOpeningMaxMm: 60,
  clampDepthMm: 130,
  screwDropMm: 60,
  handleSwingMm: 55,
  bracketWidthMm: 240,
  cowlFrontMm: 120,
  cowlAftMm: 200,
  cowlWidthMm: 200,
  cowlBottomMm: 200,
  cowlTopMm: 450,
  midsectionFrontMm: 40,
  midsectionAftMm: 60,
  midsectionWidthMm: 80,
  plateToSkegMm: 250,
};

const STERN = {
  rakeDeg: 0,
  transomThicknessMm: 45,
  transomTopMm: 758,
  seatMm: 508,
  notchWidthMm: 600,
  notchCornerRadiusMm: 20,
  soleDropMm: 200,
  soleAngleDeg: 90,
  wellDepthMm: 900,
  wellFrontHeightMm: 1500,
  wellWidthAftMm: 1400,
  wellWidthFrontMm: 1400,
  sideFlareDeg: 0,
};

/** A number (exact), a number as taken, a fact, or undefined for a number nobody took. */
export type Changes = Readonly<Record<string, unknown>>;

const numbered = (key: string): key is RigKey => key in motorFields || key in sternFields;
const bare = (value: unknown): boolean => typeof value === "number" || Array.isArray(value);

function record(id: string, numbers: Changes): Changes {
  const entries = Object.entries(numbers).flatMap(([key, value]) =>
    value === undefined
      ? []
      : [[key, numbered(key) && bare(value) ? { value, plusMinus: 0, how: "measured" } : value]],
  );
  return { id, label: "Bench", ...Object.fromEntries(entries) };
}

const MOTOR_FACTS = ["shaftClass", "steering", "fixing", "tillerFolds", "extraSolids"];
const ofMotor = (key: string): boolean => key in motorFields || MOTOR_FACTS.includes(key);

/** The bench motor and stern with some numbers or facts changed, whichever record they belong to. */
export function bench(changes: Changes = {}): { readonly motor: Motor; readonly stern: Stern } {
  const some = (wanted: boolean) =>
    Object.fromEntries(Object.entries(changes).filter(([key]) => ofMotor(key) === wanted));
  return {
    motor: record("bench-motor", { ...MOTOR, ...some(true) }) as unknown as Motor,
    stern: record("bench-stern", { ...STERN, ...some(false) }) as unknown as Stern,
  };
}

/** A number with a spread. */
export const taken = (value: number, plusMinus: number): Measured => ({ value, plusMinus, how: "measured" });

/** What one question answers on the bench; the plate's height is asked beside it, since it may overrule. */
export function ask(id: string, changes: Changes = {}, options: Options = {}): Answer {
  const { motor, stern } = bench(changes);
  const asked = { ...options, only: [id, "plate-height"] };
  const found = examine(motor, stern, asked).answers.find(({ check }) => check.id === id);
  if (!found) throw new Error(`no question ${id}`);
  return found;
}

/** Its margin; NaN where none could be worked out. */
export const margin = (id: string, changes: Changes = {}): number =>
  ask(id, changes).ruling?.margin ?? Number.NaN;

/** The rooms of all its edges, in the order the question lists them. */
export function rooms(id: string, changes: Changes = {}): number[] {
  const { motor, stern } = bench(changes);
  const { mounting } = examine(motor, stern, { only: [id] });
  const check = checks.find((one) => one.id === id)!;
  return check
    .edges({ mounting, limit: (key) => limitOf(mounting.rig, key), write: (mm) => `${mm} mm` })
    .map(({ room }) => room);
}

/** What it answers with each of these numbers taken away, one at a time: outcome and what it names as missing. */
export const without = (id: string, keys: readonly string[], changes: Changes = {}) =>
  Object.fromEntries(
    keys.map((key) => {
      const { outcome, missing } = ask(id, { ...changes, [key]: undefined });
      return [key, [outcome, ...missing]];
    }),
  );

/** The same, as it must be: cannot tell, naming that number and no other. */
export const untold = (keys: readonly string[]) =>
  Object.fromEntries(keys.map((key) => [key, ["cannot tell", key]]));
