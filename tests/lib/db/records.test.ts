import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import {
  allRecords,
  createRecord,
  createRecords,
  getRecord,
  historyOf,
  listRecords,
  removeRecord,
  restoreRecord,
  takingsOf,
  updateRecord,
} from "#lib/db/records.ts";
import { store } from "#lib/db/store.ts";
import { DuplicateId } from "#lib/db/store-error.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

describe("one record", () => {
  test("comes back as it was stored, at version 1", async () => {
    const motor = aMotor("grey-5", {
      pinAnglesDeg: { value: [4, 8.5, 12], how: "measured" },
      extraSolids: [{ label: "Tank", group: "steered", fromMm: [-10, -20, 30], toMm: [40, 50, 60] }],
    });
    await createRecord("motor", motor);
    expect(await getRecord("motor", "grey-5")).toMatchObject({ record: motor, version: 1, demo: false });
  });

  test("is null where there is none, and a stern is no motor", async () => {
    await createRecord("stern", aStern("pram"));
    expect(await getRecord("motor", "pram")).toBeNull();
    expect(await getRecord("stern", "pram")).toMatchObject({ record: aStern("pram") });
  });

  test("takes the next version when changed by somebody who has seen this one", async () => {
    await createRecord("motor", aMotor("m"));
    const changed = aMotor("m", { label: "Blue motor" });
    expect(await updateRecord("motor", "m", 1, changed)).toMatchObject({ record: changed, version: 2 });
    expect(await updateRecord("motor", "m", 1, aMotor("m", { label: "Red motor" }))).toMatchObject({
      conflict: true,
      current: { record: changed, version: 2 },
    });
    expect(await updateRecord("motor", "m", 7, aMotor("m", { label: "Red motor" }))).toHaveProperty(
      "conflict",
    );
    expect((await getRecord("motor", "m"))?.record.label).toBe("Blue motor");
  });

  test("saved as it stands makes no version", async () => {
    await createRecord("motor", aMotor("m"));
    expect(await updateRecord("motor", "m", 1, aMotor("m"))).toMatchObject({ version: 1 });
    expect(await historyOf("motor", "m")).toHaveLength(1);
  });

  test("changed by twenty people at once takes one change and tells the others", async () => {
    await createRecord("motor", aMotor("m"));
    const answers = await Promise.all(
      Array.from({ length: 20 }, (_, i) =>
        updateRecord("motor", "m", 1, aMotor("m", { label: `Motor ${i}` })),
      ),
    );
    const won = answers.filter((answer) => answer && !("conflict" in answer));
    expect(won).toHaveLength(1);
    const now = await getRecord("motor", "m");
    expect(now).toMatchObject({ version: 2 });
    expect(won[0]).toEqual(now);
    expect(await historyOf("motor", "m")).toHaveLength(2);
  });
});

describe("an id", () => {
  test("is used once", async () => {
    await createRecord("motor", aMotor("m"));
    await expect(createRecord("motor", aMotor("m", { label: "Other" }))).rejects.toBeInstanceOf(DuplicateId);
    expect((await getRecord("motor", "m"))?.record.label).toBe("Grey motor m");
  });

  test("is not used again after removal", async () => {
    await createRecord("motor", aMotor("m"));
    await removeRecord("motor", "m", 1);
    await expect(createRecord("motor", aMotor("m"))).rejects.toBeInstanceOf(DuplicateId);
  });

  test("taken twice in one import, or already there, lets nothing of it in", async () => {
    await createRecord("stern", aStern("pram"));
    const good = { kind: "motor", record: aMotor("fresh") } as const;
    await expect(createRecords([good, { kind: "stern", record: aStern("pram") }])).rejects.toMatchObject({
      id: "pram",
    });
    await expect(createRecords([good, good])).rejects.toMatchObject({ id: "fresh" });
    expect(await getRecord("motor", "fresh")).toBeNull();
    expect(await takingsOf("motor", "fresh")).toEqual([]);
  });
});

describe("removal", () => {
  test("hides a record, keeps its history, and is undone", async () => {
    await createRecord("motor", aMotor("m"));
    expect(await removeRecord("motor", "m", 5)).toMatchObject({ conflict: true });
    expect(await removeRecord("motor", "m", 1)).toMatchObject({ version: 2 });
    expect(await getRecord("motor", "m")).toBeNull();
    expect(await allRecords("motor")).toEqual([]);
    expect((await listRecords("motor")).items).toEqual([]);
    expect(await updateRecord("motor", "m", 2, aMotor("m", { label: "x" }))).toBeNull();
    expect(await removeRecord("motor", "m", 2)).toBeNull();
    expect(await restoreRecord("motor", "m")).toMatchObject({ record: aMotor("m"), version: 3 });
    expect(await getRecord("motor", "m")).toMatchObject({ record: aMotor("m"), version: 3 });
    expect((await historyOf("motor", "m")).map(({ action, version }) => [version, action])).toEqual([
      [1, "create"],
      [2, "remove"],
      [3, "restore"],
    ]);
  });

  test("restoring what stands changes nothing, and what never was is null", async () => {
    await createRecord("motor", aMotor("m"));
    expect(await restoreRecord("motor", "m")).toMatchObject({ version: 1 });
    expect(await restoreRecord("motor", "never")).toBeNull();
  });
});

describe("takings", () => {
  test("are one for each number, with the text as it was typed", async () => {
    await createRecord("motor", aMotor("m"), { shaftLengthMm: '16 15/16"', label: "not a number" });
    expect(await takingsOf("motor", "m")).toMatchObject([
      { key: "shaftLengthMm", value: 430, plusMinus: 2, how: "measured", raw: '16 15/16"' },
      { key: "powerKw", value: 4.5, how: "declared" },
    ]);
    expect((await takingsOf("motor", "m"))[1]).not.toHaveProperty("plusMinus");
  });

  test("grow only by the numbers that changed, in their value, their spread or how they were taken", async () => {
    await createRecord("motor", aMotor("m"));
    await updateRecord(
      "motor",
      "m",
      1,
      aMotor("m", { shaftLengthMm: { value: 431, plusMinus: 2, how: "measured" } }),
    );
    await updateRecord(
      "motor",
      "m",
      2,
      aMotor("m", { shaftLengthMm: { value: 431, plusMinus: 1, how: "measured" } }),
    );
    await updateRecord(
      "motor",
      "m",
      3,
      aMotor("m", { shaftLengthMm: { value: 431, plusMinus: 1, how: "declared" } }),
    );
    await updateRecord("motor", "m", 4, aMotor("m", { label: "New name", shaftLengthMm: undefined }));
    const takings = await takingsOf("motor", "m");
    expect(takings.map(({ key, value, plusMinus, how }) => [key, value, plusMinus, how])).toEqual([
      ["shaftLengthMm", 430, 2, "measured"],
      ["powerKw", 4.5, undefined, "declared"],
      ["shaftLengthMm", 431, 2, "measured"],
      ["shaftLengthMm", 431, 1, "measured"],
      ["shaftLengthMm", 431, 1, "declared"],
    ]);
    const order = takings.map(({ sequence }) => sequence);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test("hold the trim-pin holes as one list", async () => {
    await createRecord("motor", aMotor("m", { pinAnglesDeg: { value: [4, 8, 12], how: "measured" } }));
    await updateRecord(
      "motor",
      "m",
      1,
      aMotor("m", { pinAnglesDeg: { value: [4, 8, 13], how: "measured" } }),
    );
    const holes = (await takingsOf("motor", "m")).filter(({ key }) => key === "pinAnglesDeg");
    expect(holes.map(({ value }) => value)).toEqual([
      [4, 8, 12],
      [4, 8, 13],
    ]);
  });
});

describe("lists", () => {
  test("go by label without regard to capitals, a page at a time, each record once", async () => {
    const labels = ["delta", "Alpha", "charlie", "Bravo", "bravo", "Écho", "10 kW", "alpha"];
    for (const [i, label] of labels.entries()) await createRecord("motor", aMotor(`m${i}`, { label }));
    const seen: string[] = [];
    let cursor: string | undefined;
    do {
      const page = await listRecords("motor", { limit: 3, cursor });
      seen.push(...page.items.map(({ record }) => record.label));
      cursor = page.next;
    } while (cursor);
    expect(seen).toEqual(["10 kW", "Alpha", "alpha", "Bravo", "bravo", "charlie", "delta", "Écho"]);
  });

  test("narrow by class, steering, strokes and power; unknown power passes no bound", async () => {
    await createRecord("motor", aMotor("small", { powerKw: { value: 1.8, how: "declared" }, strokes: 2 }));
    await createRecord(
      "motor",
      aMotor("big", { powerKw: { value: 30, how: "declared" }, shaftClass: "long", steering: "remote" }),
    );
    await createRecord("motor", aMotor("unknown", { powerKw: undefined, strokes: 0 }));
    const ids = async (filter: Parameters<typeof listRecords>[1]) =>
      (await listRecords("motor", filter)).items.map(({ record }) => record.id);
    expect(await ids({ powerKwMax: 1.8 })).toEqual(["small"]);
    expect(await ids({ powerKwMin: 2 })).toEqual(["big"]);
    expect(await ids({ shaftClass: "long" })).toEqual(["big"]);
    expect(await ids({ steering: "tiller" })).toEqual(["small", "unknown"]);
    expect(await ids({ strokes: 0 })).toEqual(["unknown"]);
    expect(await ids({ strokes: 2, shaftClass: "long" })).toEqual([]);
  });

  test.each(["", "x", "W10=", "bnVsbA", "eyJhIjoxfQ", "' OR 1=1 --"])(
    "refuse a made-up cursor %j",
    async (cursor) => {
      await expect(listRecords("motor", { cursor })).rejects.toMatchObject({ trouble: "bad cursor" });
    },
  );
});

test("a clock set back changes no order", async () => {
  vi.useFakeTimers({ toFake: ["Date"] });
  try {
    for (const [i, now] of ["2038-01-20", "1970-01-01", "2026-05-01", "2026-04-30"].entries()) {
      vi.setSystemTime(now);
      const motor = aMotor("m", { shaftLengthMm: { value: 430 + i, how: "measured" } });
      if (i === 0) await createRecord("motor", motor);
      else await updateRecord("motor", "m", i, motor);
    }
  } finally {
    vi.useRealTimers();
  }
  expect((await historyOf("motor", "m")).map(({ at }) => at.slice(0, 4))).toEqual([
    "2038",
    "1970",
    "2026",
    "2026",
  ]);
  const lengths = (await takingsOf("motor", "m")).filter(({ key }) => key === "shaftLengthMm");
  expect(lengths.map(({ value }) => value)).toEqual([430, 431, 432, 433]);
  expect(await getRecord("motor", "m")).toMatchObject({
    version: 4,
    record: { shaftLengthMm: { value: 433 } },
  });
});

test("SQL in every text is only text", async () => {
  const nasty = `'); DROP TABLE motor; --"\`\\ \u0000`;
  const motor = aMotor("m", { label: nasty.replace("\u0000", ""), notes: "' OR '1'='1" });
  await createRecord("motor", motor, { shaftLengthMm: nasty.replace("\u0000", "") });
  expect((await getRecord("motor", "m"))?.record).toEqual(motor);
  expect(await getRecord("motor", "' OR '1'='1")).toBeNull();
});

describe("the store's own rules", () => {
  test.each([
    "UPDATE observation SET value = '1'",
    "DELETE FROM observation",
    "UPDATE revision SET record = '{}'",
    "DELETE FROM revision",
    "DELETE FROM motor",
    "DELETE FROM stern",
    "UPDATE motor SET label = 'quietly'",
    "UPDATE motor SET version = version + 1",
    "UPDATE motor SET version = version + 2",
    "UPDATE stern SET id = 'other', version = version + 1",
    "UPDATE motor SET record = 'not json', version = version + 1",
    "INSERT INTO revision VALUES ('boat', 'x', 1, '{}', 'create', '')",
    "INSERT OR REPLACE INTO revision VALUES ('motor', 'm', 1, '{}', 'edit', '')",
    "INSERT OR REPLACE INTO observation SELECT sequence, id, object_kind, object_id, key, '1', plus_minus, how, raw, taken_at, by, again, comment FROM observation",
    "INSERT OR REPLACE INTO stern SELECT id, 'new', 1, 0, '', '', NULL, '{}', NULL FROM stern",
  ])("refuse: %s", async (sql) => {
    await createRecord("motor", aMotor("m"));
    await createRecord("stern", aStern("s"));
    await expect((await store()).write([sql])).rejects.toMatchObject({ trouble: "constraint" });
    expect(await historyOf("motor", "m")).toMatchObject([
      { version: 1, action: "create", record: aMotor("m") },
    ]);
  });
});
