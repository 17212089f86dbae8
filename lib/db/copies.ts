import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
} from "node:fs";
import { dirname, join } from "node:path";
import type { Place } from "#lib/db/place.ts";

/** Copies made at a start that are kept; copies made before a change of the schema are never deleted. */
const KEPT = 5;
const NAME = /^(\d{4,})-(start|before-.+|replaced)\.db$/;

/** The copies of a store, newest last. Their order is the number in their name, whatever the clock said. */
export function copiesOf(place: Place): string[] {
  if (!existsSync(place.copies)) return [];
  return readdirSync(place.copies)
    .filter((name) => NAME.test(name))
    .sort((a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10))
    .map((name) => join(place.copies, name));
}

/** The newest copy of a store that was sound when it was made; undefined where there is none. */
export const lastGoodCopy = (place: Place): string | undefined =>
  copiesOf(place).findLast((name) => !name.endsWith("-replaced.db"));

/** Copies the file as it is, under the next number. The caller sees to it that nobody writes meanwhile. */
export function copyAside(place: Place, why: "start" | "replaced" | `before-${string}`): string {
  mkdirSync(place.copies, { recursive: true });
  const last = copiesOf(place).at(-1);
  const number = last ? Number.parseInt(last.slice(place.copies.length + 1), 10) + 1 : 1;
  const copy = join(place.copies, `${String(number).padStart(4, "0")}-${why}.db`);
  copySafely(place.file, copy);
  return copy;
}

/** A copy at each start at which something is different from the last copy; the oldest of them make room. */
export function copyAtStart(place: Place): void {
  const last = lastGoodCopy(place);
  if (last && sameBytes(last, place.file)) return;
  copyAside(place, "start");
  const starts = copiesOf(place).filter((name) => name.endsWith("-start.db"));
  for (const old of starts.slice(0, -KEPT)) rmSync(old);
}

/** Puts a copy in the store's place, whole or not at all. */
export function putBack(place: Place, copy: string): void {
  copySafely(copy, place.file);
  rmSync(`${place.file}-journal`, { force: true });
}

/** Whether two files hold the same bytes. */
export const sameBytes = (a: string, b: string): boolean => readFileSync(a).equals(readFileSync(b));

/** Copies through a draft that is on the disk before it gets its name. */
function copySafely(from: string, to: string): void {
  const draft = `${to}.draft`;
  try {
    copyFileSync(from, draft);
    syncToDisk(draft);
    renameSync(draft, to);
    syncToDisk(dirname(to));
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Waits until the disk has a file, or a folder's names. */
export function syncToDisk(path: string): void {
  const handle = openSync(path, "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
