/** What is stored when the writing program has a rival, is killed, or finds the disk full or locked. */
import { pathToFileURL } from "node:url";
import { createClient } from "@libsql/client";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { Connection } from "#lib/db/connection.ts";
import { assertSound } from "#lib/db/soundness.ts";
import { creation } from "#lib/db/statements.ts";
import { run, until } from "#tests/faults/programs.ts";
import { aMotor } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

const WRITER = "tests/faults/writer.ts";
const AT = "2026-01-01T00:00:00.000Z";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

async function stored(): Promise<{ ids: string[]; halves: unknown }> {
  const connection = new Connection(there.file);
  try {
    expect(await assertSound(there, connection)).toEqual([]);
    const { rows } = await connection.read("SELECT id FROM motor");
    const halves = await connection.read(
      "SELECT (SELECT count(*) FROM revision) - (SELECT count(*) FROM motor) AS revisions, (SELECT count(*) FROM observation) - 2 * (SELECT count(*) FROM motor) AS takings",
    );
    return { ids: rows.map(({ id }) => String(id)), halves: { ...halves.rows[0] } };
  } finally {
    await connection.close();
  }
}

const WHOLE = { revisions: 0, takings: 0 };
const linesOf = (text: string): string[] => text.split("\n").filter((line) => line !== "");

test("two programs writing at once: what was acknowledged is stored, neither more nor less", async () => {
  const writers = ["a", "b"].map((prefix) => run(WRITER, [prefix, "100"]));
  expect(await Promise.all(writers.map(({ ended }) => ended))).toEqual([0, 0]);
  const acknowledged = writers.flatMap(({ said }) => linesOf(said()));
  const { ids, halves } = await stored();
  expect(acknowledged.length).toBeGreaterThan(150);
  expect(ids.sort()).toEqual(acknowledged.sort());
  expect(halves).toEqual(WHOLE);
});

test("killed ten times in the middle of writing: nothing acknowledged is lost, nothing is half", async () => {
  const acknowledged: string[] = [];
  for (let round = 0; round < 10; round++) {
    const writer = run(WRITER, [`r${round}`]);
    await until(() => linesOf(writer.said()).length > 5 + 3 * round);
    writer.child.kill("SIGKILL");
    expect(await writer.ended).toBeNull();
    acknowledged.push(...linesOf(writer.said()));
    const { ids, halves } = await stored();
    expect(ids).toEqual(expect.arrayContaining(acknowledged));
    // At most the ten writes under way were stored and not yet acknowledged.
    expect(ids.length - acknowledged.length).toBeLessThanOrEqual(10 * (round + 1));
    expect(halves).toEqual(WHOLE);
  }
});

test("a rival that holds the file two thirds of the time: nothing is lost", async () => {
  const rival = createClient({ url: pathToFileURL(there.file).href, timeout: 1000 });
  let go = true;
  const holding = (async () => {
    while (go) {
      const held = await rival.transaction("write");
      await new Promise((resolve) => setTimeout(resolve, 120));
      await held.rollback();
      await new Promise((resolve) => setTimeout(resolve, 60));
    }
  })();
  const connection = new Connection(there.file);
  const writes = Array.from({ length: 60 }, (_, i) =>
    connection.write(creation("motor", aMotor(`m-${i}`), AT)),
  );
  const outcomes = await Promise.allSettled(writes);
  go = false;
  await holding;
  rival.close();
  await connection.close();
  const acknowledged = outcomes.flatMap(({ status }, i) => (status === "fulfilled" ? [`m-${i}`] : []));
  const { ids, halves } = await stored();
  expect(acknowledged.length).toBeGreaterThan(0);
  expect(ids.sort()).toEqual(acknowledged.sort());
  expect(halves).toEqual(WHOLE);
});

describe("a file that stays locked", () => {
  test("turns writes away as busy, lets reads through, and takes writes again afterwards", async () => {
    const rival = createClient({ url: pathToFileURL(there.file).href });
    const connection = new Connection(there.file);
    const held = await rival.transaction("write");
    const waiting = connection.write(creation("motor", aMotor("m"), AT));
    const refused = expect(waiting).rejects.toMatchObject({ trouble: "busy" });
    expect((await connection.read("SELECT count(*) FROM motor")).rows[0]?.[0]).toBe(0);
    await refused;
    await held.rollback();
    rival.close();
    await connection.write(creation("motor", aMotor("n"), AT));
    await connection.close();
    expect((await stored()).ids).toEqual(["n"]);
  });

  test("keeps two hundred writes waiting and turns the next one away at once", async () => {
    const connection = new Connection(there.file);
    const writes = Array.from({ length: 201 }, (_, i) =>
      connection.write(creation("motor", aMotor(`m-${i}`), AT)),
    );
    const outcomes = await Promise.allSettled(writes);
    await connection.close();
    expect(outcomes.slice(0, 200).every(({ status }) => status === "fulfilled")).toBe(true);
    expect(outcomes[200]).toMatchObject({ status: "rejected", reason: { trouble: "busy" } });
    expect((await stored()).ids).toHaveLength(200);
  });
});

test("every connection, also a new one after a failure, has the settings that keep what is stored", async () => {
  const wanted = {
    synchronous: 3,
    foreign_keys: 1,
    trusted_schema: 0,
    cell_size_check: 1,
    journal_mode: "delete",
    busy_timeout: 20,
  };
  const connection = new Connection(there.file);
  expect(await connection.settings()).toEqual(wanted);
  await expect(connection.write(["DELETE FROM revision", "this is no SQL"])).rejects.toThrow();
  expect(await connection.settings()).toEqual(wanted);
  await connection.write(creation("motor", aMotor("m"), AT));
  expect(await connection.settings()).toEqual(wanted);
  await connection.close();
});
