import "server-only";
import { drawer } from "#app/_work/drawer.ts";
import { passes } from "#app/shortlist/_parts/sieve.ts";
import type { Stored } from "#lib/db/records.ts";
import {
  classChoices,
  cutOnce,
  motorChoice,
  type OneCut,
  type SeatChoice,
  seatsFor,
  withCut,
} from "#lib/fit/shaft-choice.ts";
import { type Row, rowOf } from "#lib/fit/shortlist.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Motors shown beside each other; the others by narrowing. */
export const MOST_SHOWN = 24;
/** Most motors one cut is asked for. */
export const MOST_CHOSEN = 12;

/** One motor's seat, and what the pairing comes to with it cut. */
export interface MotorChoice {
  readonly motor: Motor;
  readonly demo: boolean;
  readonly choice: SeatChoice;
  readonly after: Row;
}

/** Everything the sheet shows of one stern. */
export interface Choices {
  readonly classes: readonly SeatChoice[];
  readonly motors: readonly MotorChoice[];
  /** Motors that are ticked or pass what is chosen and whose plate can be placed. */
  readonly placed: number;
  /** Those whose plate cannot be placed, for want of a number of their own or of the stern. */
  readonly unplaced: number;
  readonly once?: OneCut;
  /** The pairings of the chosen motors with the one cut. */
  readonly onceRows: readonly Row[];
  readonly chosen: readonly Motor[];
}

/** The seats of every class, of the motors that ask for the least change, and of the one cut for those chosen. */
export async function choicesFor(
  stern: Stern,
  sieve: Readonly<Record<string, string>>,
  chosenIds: readonly string[],
): Promise<Choices> {
  const { stored } = await drawer("motor");
  const wanted = [...stored.values()].filter(
    ({ record }) => passes(record, sieve) || chosenIds.includes(record.id),
  );
  const placed = wanted.flatMap((one) => {
    const seats = seatsFor(one.record, stern);
    return seats ? [{ one, change: Math.abs(seats.middle - seatOf(stern)) }] : [];
  });
  const first = (id: string) => Number(!chosenIds.includes(id));
  placed.sort(
    (a, b) =>
      first(a.one.record.id) - first(b.one.record.id) ||
      a.change - b.change ||
      a.one.record.id.localeCompare(b.one.record.id),
  );
  const chosen = chosenIds.flatMap((id) => stored.get(id)?.record ?? []).slice(0, MOST_CHOSEN);
  const once = chosen.length > 1 ? cutOnce(chosen, stern) : undefined;
  const cut = once && withCut(stern, once.seat, once.notchWidth);
  return {
    classes: classChoices(stern),
    motors: placed.slice(0, MOST_SHOWN).flatMap(({ one }) => choiceOf(one, stern) ?? []),
    placed: placed.length,
    unplaced: wanted.length - placed.length,
    ...(once && { once }),
    onceRows: cut ? chosen.map((motor) => rowOf(motor, cut)) : [],
    chosen,
  };
}

const seatOf = ({ seatMm, transomTopMm }: Stern): number => (seatMm ?? transomTopMm)?.value ?? 0;

function choiceOf({ record: motor, demo }: Stored<Motor>, stern: Stern): MotorChoice | undefined {
  const choice = motorChoice(motor, stern);
  if (!choice) return undefined;
  return { motor, demo, choice, after: rowOf(motor, withCut(stern, choice.middle, choice.notchWidth)) };
}
