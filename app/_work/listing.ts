import "server-only";
import { contentHash } from "#app/_work/drawer.ts";
import { keptRows, letGo } from "#app/_work/kept-rows.ts";
import { type Depth, type Listed, rowsOf } from "#app/_work/pairings.ts";
import { worked } from "#app/_work/pool.ts";
import type { LikeEstimate } from "#lib/fit/like-motors.ts";
import type { Tape } from "#lib/quantity/uncertainty.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** Up to so many pairings are worked where they are asked for, more of them beside the pages. */
const AT_ONCE = 60;
/** Pairings in one stretch for a worker: some tenths of a second at most. */
const STRETCH = 200;
/** Longest the page's own thread works without looking up, ms. */
const BREATH_MS = 10;

/** Motors against sterns, and how they are to be looked at. */
export interface Asked {
  /** Tells this list from others while it is being worked. */
  readonly name: string;
  readonly motors: readonly Motor[];
  readonly sterns: readonly Stern[];
  /** Numbers that come from like motors, for each motor; absent, only what was taken counts. */
  readonly estimates?: (motor: Motor) => readonly LikeEstimate[];
  /** The tape the measured lengths were read from. */
  readonly tape?: Tape;
  /** Every row in full, those settled by a standing part too. */
  readonly whole?: boolean;
}

/** A list being worked: how far it is, and its rows, motor by motor, when it is done. */
export interface Listing {
  readonly total: number;
  readonly done: () => number;
  readonly rows: Promise<readonly Listed[]>;
}

/** Lists being worked just now, so that a page that asks again does not start again. */
const KEY = Symbol.for("sternwright.listings");
const shared = globalThis as { [KEY]?: Map<string, Listing> };

/** The rows of every motor against every stern. What was worked before is not worked again. */
export function listing(asked: Asked): Listing {
  shared[KEY] ??= new Map();
  const running = shared[KEY];
  const found = running.get(asked.name) ?? started(asked);
  running.set(asked.name, found);
  const over = () => running.delete(asked.name);
  found.rows.then(over, over);
  return found;
}

interface Filled {
  readonly motor: Motor;
  readonly estimates?: readonly LikeEstimate[];
}

interface Place {
  readonly motor: number;
  readonly stern: number;
  readonly depth: Depth;
}

function started(asked: Asked): Listing {
  const total = asked.motors.length * asked.sterns.length;
  let done = 0;
  const count = (more: number) => {
    done += more;
  };
  return { total, done: () => done, rows: rowsFor(asked, count) };
}

async function rowsFor({ motors, sterns, estimates, tape, whole }: Asked, count: (more: number) => void) {
  const filled = await mapped(
    motors,
    (motor): Filled => ({ motor, ...(estimates && { estimates: estimates(motor) }) }),
  );
  const shelves = sterns.map((stern) => keptRows(contentHash(stern), JSON.stringify(tape ?? "usual")));
  const rows: Listed[] = new Array(motors.length * sterns.length);
  const places: Place[] = [];
  await mapped(filled, (each, motor) =>
    sterns.forEach((stern, j) => {
      // Only where something is kept is it worth telling one motor's numbers from another's.
      const kept = shelves[j]!.size > 0 ? shelves[j]!.get(contentOf(each)) : undefined;
      const known = kept === undefined || (kept === null && whole) ? undefined : kept;
      if (known === undefined) places.push({ motor, stern: j, depth: depthFor(kept, whole) });
      else {
        rows[motor * sterns.length + j] = known && { ...known, motor: each.motor.id, stern: stern.id };
        count(1);
      }
    }),
  );
  const work = stretched(places).map(async (stretch) => {
    const answers = await answered(stretch, places.length, filled, sterns, tape);
    stretch.forEach(({ motor, stern }, i) => {
      rows[motor * sterns.length + stern] = answers[i]!;
      shelves[stern]!.set(contentOf(filled[motor]!), answers[i]!);
    });
    count(stretch.length);
  });
  await Promise.all(work);
  letGo();
  return rows;
}

const depthFor = (kept: Listed | undefined, whole = false): Depth =>
  kept === null ? "fouls" : whole ? "whole" : "short";

/** What decides a row on the motor's side: its own numbers and those put in from like motors. */
const contentOf = ({ motor, estimates }: Filled): string =>
  estimates && estimates.length > 0 ? `${contentHash(motor)} ${contentHash(estimates)}` : contentHash(motor);

/** Stretches of one depth each. */
function stretched(places: readonly Place[]): Place[][] {
  return (["short", "whole", "fouls"] as const).flatMap((depth) => {
    const alike = places.filter((place) => place.depth === depth);
    const count = Math.ceil(alike.length / STRETCH);
    return Array.from({ length: count }, (_, i) => alike.slice(i * STRETCH, (i + 1) * STRETCH));
  });
}

/** The rows of a stretch: at once where the whole list is short, else beside the pages. */
async function answered(
  places: readonly Place[],
  all: number,
  filled: readonly Filled[],
  sterns: readonly Stern[],
  tape: Tape | undefined,
): Promise<Listed[]> {
  const number = new Map<number, number>();
  for (const { motor } of places) if (!number.has(motor)) number.set(motor, number.size);
  const stretch = {
    motors: [...number.keys()].map((motor) => filled[motor]!),
    sterns,
    pairs: places.map(({ motor, stern }) => [number.get(motor)!, stern] as const),
    depth: places[0]!.depth,
    ...(tape && { tape }),
  };
  return all <= AT_ONCE ? rowsOf(stretch) : worked(stretch);
}

/** Like `map`, letting others have their turn every few milliseconds. */
export async function mapped<T, U>(items: readonly T[], work: (item: T, i: number) => U): Promise<U[]> {
  const made: U[] = [];
  let since = performance.now();
  for (const [i, item] of items.entries()) {
    made.push(work(item, i));
    if (performance.now() - since < BREATH_MS) continue;
    await new Promise((resume) => setImmediate(resume));
    since = performance.now();
  }
  return made;
}

/** The rows if they are there within so many ms; undefined while they are still being worked. */
export async function within(list: Listing, ms: number): Promise<readonly Listed[] | undefined> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<undefined>((resume) => {
    timer = setTimeout(() => resume(undefined), ms);
  });
  try {
    return await Promise.race([list.rows, late]);
  } finally {
    clearTimeout(timer);
  }
}
