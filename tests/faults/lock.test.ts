/** One server on a file: the second is refused, the lock of a dead one is taken over. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { afterEach, beforeEach, expect, test } from "vitest";
import { assertUnlocked, takeLock } from "#lib/db/lock.ts";
import { allRecords } from "#lib/db/records.ts";
import { closeStore, store } from "#lib/db/store.ts";
import { run, until } from "#tests/faults/programs.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

const HOLDER = "tests/faults/holder.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

test("a second server on a file ends at once, naming the first", async () => {
  await store();
  const start = run("app/_command/start.ts", ["--no-build"], { PORT: "4819" });
  expect(await start.ended).toBe(1);
  expect(start.said()).toBe(
    `The store is in use by process ${process.pid}: two servers on one file would spoil it. Stop the other one first (lock: ${there.lock}).\n`,
  );
  expect(readFileSync(there.lock, "utf8").split("\n")[0]).toBe(String(process.pid));
});

test("a store in use by another process is refused, and free when that has ended well", async () => {
  const holder = run(HOLDER);
  await until(() => holder.said().includes("holding"));
  await expect(store()).rejects.toThrow(`in use by process ${holder.child.pid}`);
  expect(() => assertUnlocked(there.lock)).toThrow(`in use by process ${holder.child.pid}`);
  holder.child.kill("SIGTERM");
  await holder.ended;
  expect(existsSync(there.lock)).toBe(false);
  expect(await allRecords("motor")).toEqual([]);
});

test("the lock of a killed server is taken over", async () => {
  const holder = run(HOLDER);
  await until(() => holder.said().includes("holding"));
  holder.child.kill("SIGKILL");
  await holder.ended;
  expect(existsSync(there.lock)).toBe(true);
  assertUnlocked(there.lock);
  await store();
  expect(readFileSync(there.lock, "utf8").split("\n")[0]).toBe(String(process.pid));
  await closeStore();
  expect(existsSync(there.lock)).toBe(false);
});

test.each([
  "",
  "\n",
  "x\n",
  "-1\n\n",
  "0\n\n",
  "99999999\n1\n",
  "1\n0\n",
  `${process.pid}\nstarted at another time\n`,
])("a lock of nobody alive is taken over: %j", (text) => {
  writeFileSync(there.lock, text);
  takeLock(there.lock)();
  expect(existsSync(there.lock)).toBe(false);
});

test("a lock that cannot be written is said so", () => {
  expect(() => takeLock("/nowhere/store.db.lock")).toThrow(
    /The lock \/nowhere\/store\.db\.lock cannot be written \(ENOENT\)/,
  );
});

test("of five programs that find a dead one's lock at once, one has it", async () => {
  writeFileSync(there.lock, "99999999\n1\n");
  const programs = Array.from({ length: 5 }, () => run(HOLDER));
  const holding = () => programs.filter(({ said }) => said().includes("holding"));
  const refused = () => programs.filter(({ said }) => said().includes("The store is in use by process"));
  await until(() => holding().length + refused().length === 5);
  expect(holding()).toHaveLength(1);
  expect(readFileSync(there.lock, "utf8").split("\n")[0]).toBe(String(holding()[0]?.child.pid));
  for (const { child } of programs) child.kill("SIGTERM");
  await Promise.all(programs.map(({ ended }) => ended));
});
