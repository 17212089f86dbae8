/** One search over motors and sterns: always as they stand now, whoever changed them. */
import { afterEach, beforeEach, expect, test } from "vitest";
import * as search from "#app/api/search/route.ts";
import { createRecord, createRecords, removeRecord, restoreRecord, updateRecord } from "#lib/db/records.ts";
import { takeAgain } from "#lib/db/retake.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

const found = async (query: string, more = ""): Promise<unknown[]> => {
  const answer = await ask(search, `/api/search?query=${encodeURIComponent(query)}${more}`);
  return ((await answer.json()) as { items: unknown[] }).items;
};
const ids = async (query: string, more = "") =>
  (await found(query, more)).map((item) => (item as { id: string }).id);

test("finds motors and sterns together, each with its kind and a few facts", async () => {
  await createRecord("motor", aMotor("m", { label: "Kingfisher" }));
  await createRecord("stern", aStern("s", { label: "Kingfisher's dinghy" }));
  // 4.5 kW are 6.03 hp (NIST SP 811, appendix B.8)
  expect(await found("kingfisher")).toEqual([
    {
      kind: "motor",
      id: "m",
      label: "Kingfisher",
      facts: ["6 hp (4.5 kW)", "short shaft", "tiller", "four-stroke"],
    },
    { kind: "stern", id: "s", label: "Kingfisher's dinghy", facts: ["vee bottom", "rake 12°"] },
  ]);
});

test("knows every change at once: made, renamed, removed, brought back", async () => {
  expect(await ids("heron")).toEqual([]);
  await createRecord("motor", aMotor("m", { label: "Heron" }));
  expect(await ids("heron")).toEqual(["m"]);
  await updateRecord("motor", "m", 1, aMotor("m", { label: "Bittern" }));
  expect([await ids("heron"), await ids("bittern")]).toEqual([[], ["m"]]);
  await removeRecord("motor", "m", 2);
  expect(await ids("bittern")).toEqual([]);
  await restoreRecord("motor", "m");
  expect(await ids("bittern")).toEqual(["m"]);
  await takeAgain("motor", "m", 4, { key: "massKg", taken: { value: 30, how: "measured" } });
  expect(await ids("30 kg")).toEqual(["m"]);
});

test("a motor and a stern of one id are two", async () => {
  await createRecord("motor", aMotor("twin", { label: "Twin" }));
  await createRecord("stern", aStern("twin", { label: "Twin" }));
  await removeRecord("motor", "twin", 1);
  expect(await found("twin")).toMatchObject([{ kind: "stern", id: "twin" }]);
});

test("another store has its own answers", async () => {
  await createRecord("motor", aMotor("m", { label: "Heron" }));
  expect(await ids("heron")).toEqual(["m"]);
  await there.remove();
  there = await temporaryStore();
  await createRecord("motor", aMotor("m", { label: "Bittern" }));
  expect([await ids("heron"), await ids("bittern")]).toEqual([[], ["m"]]);
});

test("twenty at once and a change among them are all answered", async () => {
  await createRecords(
    Array.from({ length: 30 }, (_, at) => ({ kind: "motor", record: aMotor(`m${at}`) }) as const),
  );
  const asked = Array.from({ length: 20 }, () => ids("grey"));
  const made = createRecord("motor", aMotor("late", { label: "Late" }));
  expect((await Promise.all(asked)).map(({ length }) => length)).toEqual(Array(20).fill(10));
  await made;
  expect(await ids("late")).toEqual(["late"]);
});

test("gives ten, or as many as are asked for", async () => {
  await createRecords(
    Array.from({ length: 60 }, (_, at) => ({ kind: "motor", record: aMotor(`m${at}`) }) as const),
  );
  expect((await ids("grey")).length).toBe(10);
  expect((await ids("grey", "&limit=50")).length).toBe(50);
  expect(await ids("")).toEqual([]);
});

test.each(["limit=0", "limit=51", "limit=ten", "limit=1&limit=2", `query=${"x".repeat(1001)}`, "sort=label"])(
  "%s is refused",
  async (query) => {
    await problemOf(await ask(search, `/api/search?${query}`), 400);
  },
);
