import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { StoreError } from "#lib/db/store-error.ts";

/**
 * One program at a time uses a store: its process id stands in a lock file beside it. The lock of a program
 * that is gone (killed, power cut) is taken over. A process id is used again some day, so the time the
 * process started stands there too, where the system tells it.
 */
export function takeLock(lock: string): () => void {
  const mine = identity(process.pid);
  const draft = `${lock}.${process.pid}`;
  try {
    writeFileSync(draft, mine);
    for (let tries = 0; tries < 5; tries++) {
      if (placed(draft, lock)) return () => release(lock, mine);
      const theirs = textOf(lock);
      if (theirs === undefined) continue;
      refuseIfAlive(theirs, lock);
      putAway(lock, theirs);
    }
    throw inUse(lock, "another program");
  } catch (error) {
    const code = codeOf(error);
    if (typeof code !== "string") throw error;
    throw new StoreError(
      "refused",
      `The lock ${lock} cannot be written (${code}); a store in use needs one.`,
      error,
    );
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Throws `refused` when a living program holds the lock; for saying so early. */
export function assertUnlocked(lock: string): void {
  const theirs = textOf(lock);
  if (theirs !== undefined) refuseIfAlive(theirs, lock);
}

/** A hard link is made whole or not at all: nobody ever reads half a lock. */
function placed(draft: string, lock: string): boolean {
  try {
    linkSync(draft, lock);
    return true;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
}

function refuseIfAlive(theirs: string, lock: string): void {
  const pid = Number(theirs.split("\n")[0]);
  if (isAlive(pid) && theirs === identity(pid)) throw inUse(lock, `process ${pid}`);
}

/** Moves a dead program's lock aside; should a third program have taken the place meanwhile, gives it back. */
function putAway(lock: string, dead: string): void {
  const aside = `${lock}.${process.pid}.dead`;
  try {
    renameSync(lock, aside);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return;
    throw error;
  }
  if (textOf(aside) !== dead) placed(aside, lock);
  rmSync(aside, { force: true });
}

function release(lock: string, mine: string): void {
  if (textOf(lock) === mine) rmSync(lock, { force: true });
}

/** Process id, and when it started as far as the system tells (field 22 of Linux's /proc/PID/stat). */
function identity(pid: number): string {
  const stat = textOf(`/proc/${pid}/stat`);
  const started = stat?.slice(stat.lastIndexOf(")") + 2).split(" ")[19] ?? "";
  return `${pid}\n${started}\n`;
}

function isAlive(pid: number): boolean {
  if (!Number.isSafeInteger(pid) || pid <= 0) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return codeOf(error) === "EPERM";
  }
}

function textOf(path: string): string | undefined {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return undefined;
  }
}

const codeOf = (error: unknown): unknown => (error instanceof Error ? Reflect.get(error, "code") : undefined);

const inUse = (lock: string, who: string): StoreError =>
  new StoreError(
    "refused",
    `The store is in use by ${who}: two servers on one file would spoil it. Stop the other one first (lock: ${lock}).`,
  );
