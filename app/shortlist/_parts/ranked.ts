import "server-only";
import { drawer } from "#app/_work/drawer.ts";
import { type Listing, listing, mapped } from "#app/_work/listing.ts";
import { type ListAsked, listQuery } from "#app/shortlist/_parts/asked.ts";
import { passes } from "#app/shortlist/_parts/sieve.ts";
import type { Kind } from "#lib/db/kind.ts";
import type { Stored } from "#lib/db/records.ts";
import { estimatorOf, type LikeEstimate } from "#lib/fit/like-motors.ts";
import { bestFirst, foulRowOf, type Row, rowOf, settlesMost } from "#lib/fit/shortlist.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Lists up to this long have every row worked in full; longer ones only those that are looked at. */
const ALL_IN_FULL = 300;

/** A record against all records of the other kind that pass the sieves. */
export interface Candidates {
  /** The kind of those listed. */
  readonly kind: Kind;
  readonly one: Stored<Motor | Stern>;
  readonly others: readonly Stored<Motor | Stern>[];
  /** Before the sieves. */
  readonly kept: number;
  readonly work: Listing;
  readonly tape?: Tape;
  readonly estimates?: (motor: Motor) => readonly LikeEstimate[];
}

/** One row with the record it is about. */
export interface Entry {
  readonly row: Row;
  readonly other: Stored<Motor | Stern>;
  /** Keys of the motor's numbers that come from like motors. */
  readonly estimated: readonly string[];
}

/** A stern's motors, or a motor's sterns, being worked, `whole` with every row in full; null where there is no such record. */
export async function candidates(
  kind: Kind,
  id: string,
  asked: ListAsked,
  { whole = false, tape }: { readonly whole?: boolean; readonly tape?: Tape } = {},
): Promise<Candidates | null> {
  const [motors, sterns] = await Promise.all([drawer("motor"), drawer("stern")]);
  const ofOne = kind === "motor" ? sterns.stored : motors.stored;
  const one = ofOne.get(id) as Stored<Motor | Stern> | undefined;
  if (!one) return null;
  const all = [...(kind === "motor" ? motors : sterns).stored.values()] as Stored<Motor | Stern>[];
  const others = all.filter(({ record }) => passes(record, asked.sieve));
  const listed = others.map(({ record }) => record);
  const estimates = asked.like ? estimatorFor(motors.made, motors.stored) : undefined;
  const inFull = whole || asked.sort !== "" || others.length <= ALL_IN_FULL;
  const work = listing({
    name: `${kind} ${id} ${motors.made} ${sterns.made} ${inFull} ${JSON.stringify(tape)} ${listQuery(asked)}`,
    motors: (kind === "motor" ? listed : [one.record]) as Motor[],
    sterns: (kind === "motor" ? [one.record] : listed) as Stern[],
    whole: inFull,
    ...(tape && { tape }),
    ...(estimates && { estimates }),
  });
  return {
    kind,
    one,
    others,
    kept: all.length,
    work,
    ...(tape && { tape }),
    ...(estimates && { estimates }),
  };
}

let estimator: { readonly made: number; readonly of: (motor: Motor) => readonly LikeEstimate[] } | undefined;

function estimatorFor(made: number, motors: ReadonlyMap<string, Stored<Motor>>) {
  if (estimator?.made !== made) {
    estimator = { made, of: estimatorOf([...motors.values()].map(({ record }) => record)) };
  }
  return estimator.of;
}

/** A list in order: how many of each verdict, the measurement that settles most, and any stretch of its rows. */
export interface Ranked {
  readonly counts: Readonly<Record<Row["verdict"], number>>;
  readonly settles: ReturnType<typeof settlesMost>;
  /** How many rows are shown, over all sheets. */
  readonly length: number;
  readonly rows: (from: number, to: number) => Promise<Entry[]>;
}

/** The rows in the order asked for, those settled by a standing part last and by name. */
export function ranked(
  { kind, one, others, tape, estimates }: Candidates,
  rows: readonly (Row | null)[],
  asked: ListAsked,
): Ranked {
  const entryOf = (i: number, row: Row): Entry => ({
    row,
    other: others[i]!,
    estimated: estimates?.(motorOf(i)).map(({ key }) => key) ?? [],
  });
  const motorOf = (i: number) => (kind === "motor" ? others[i]! : one).record as Motor;
  const sternOf = (i: number) => (kind === "motor" ? one : others[i]!).record as Stern;
  const counts = { fits: 0, "cannot tell": 0, fouls: 0 };
  for (const row of rows) counts[row?.verdict ?? "fouls"] += 1;
  const told = rows.flatMap((row, i) => (row && shownIn(asked, row) ? [{ row, i }] : []));
  told.sort((a, b) => inOrder(asked.sort, a.row, b.row));
  const settled = asked.show ? [] : rows.flatMap((row, i) => (row === null ? [i] : []));
  settled.sort((a, b) => collator.compare(others[a]!.record.label, others[b]!.record.label));
  const optionsOf = (i: number) => ({
    ...(tape && { tape }),
    ...(estimates && { estimates: estimates(motorOf(i)) }),
  });
  // Rows told in short are worked in full where they are looked at.
  const inFull = ({ row, i }: { readonly row: Row | null; readonly i: number }): Entry => {
    if (row && Object.keys(row.answers).length > 0) return entryOf(i, row);
    const whole = row ? rowOf : foulRowOf;
    return entryOf(i, whole(motorOf(i), sternOf(i), optionsOf(i)));
  };
  const inOrderAll = [...told, ...settled.map((i) => ({ row: null, i }))];
  return {
    counts,
    settles: settlesMost(rows.filter((row) => row !== null)),
    length: inOrderAll.length,
    rows: (from, to) => mapped(inOrderAll.slice(from, to), inFull),
  };
}

/** 2 hp before 10 hp. */
const collator = new Intl.Collator("en-GB", { numeric: true });

const shownIn = ({ show }: ListAsked, { verdict }: Row): boolean =>
  show === "" || verdict === "fits" || (show === "open" && verdict === "cannot tell");

function inOrder(sort: string, a: Row, b: Row): number {
  if (sort === "") return bestFirst(a, b);
  const [roomA, roomB] = [a.answers[sort]?.margin, b.answers[sort]?.margin];
  if (roomA === undefined || roomB === undefined) {
    return Number(roomA === undefined) - Number(roomB === undefined) || bestFirst(a, b);
  }
  return roomB - roomA || bestFirst(a, b);
}
