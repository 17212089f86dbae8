/** Files out of the API and into it again. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as exportAll from "#app/api/export/route.ts";
import * as importAll from "#app/api/import/route.ts";
import * as exportOne from "#app/api/motors/[id]/export/route.ts";
import * as exportMotors from "#app/api/motors/export/route.ts";
import * as importMotors from "#app/api/motors/import/route.ts";
import * as importSterns from "#app/api/sterns/import/route.ts";
import { allRecords, createRecord, getRecord, removeRecord, takingsOf } from "#lib/db/records.ts";
import { closeStore } from "#lib/db/store.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

const motors = [
  aMotor("a", { notes: "=1+1", pinAnglesDeg: { value: [4, 8.25], how: "measured" } }),
  aMotor("b", { label: 'Say "b", comma; semicolon', year: 1991 }),
];
const send = (door: object, body: unknown, type = "application/json") =>
  ask(door, "/import", { method: "POST", body, headers: { "Content-Type": type } });
const motorsNow = async () => (await allRecords("motor")).map(({ record }) => record);

describe.each(["json", "csv"])("a %s file of all motors", (format) => {
  const type = format === "csv" ? "text/csv" : "application/json";
  beforeEach(async () => {
    for (const motor of motors) await createRecord("motor", motor);
  });
  const exported = () => ask(exportMotors, `/api/motors/export?format=${format}`);

  test("is a download of its kind", async () => {
    const { headers } = await exported();
    expect(headers.get("content-type")).toContain(type);
    expect(headers.get("content-disposition")).toBe(`attachment; filename="motors.${format}"`);
  });

  test("goes into an empty store and gives the same records", async () => {
    const text = await (await exported()).text();
    await there.remove();
    there = await temporaryStore();
    const answer = await send(importMotors, text, type);
    expect([answer.status, await answer.json()]).toEqual([201, { stored: 2, unchanged: 0 }]);
    expect(await motorsNow()).toEqual(motors);
    expect(await takingsOf("motor", "a")).toHaveLength(3);
  });

  test("sent back unchanged changes nothing; with one more, stores that", async () => {
    const text = await (await exported()).text();
    expect(await (await send(importMotors, text, type)).json()).toEqual({ stored: 0, unchanged: 2 });
    await createRecord("motor", aMotor("c"));
    const more = await (await exported()).text();
    await there.remove();
    there = await temporaryStore();
    await createRecord("motor", motors[0]!);
    expect(await (await send(importMotors, more, type)).json()).toEqual({ stored: 2, unchanged: 1 });
  });

  test("with a record that stands otherwise, or was removed, stores nothing", async () => {
    await createRecord("motor", aMotor("c"));
    const text = await (await exported()).text();
    await removeRecord("motor", "b", 1);
    expect((await problemOf(await send(importMotors, text, type), 409)).detail).toContain('"b"');
    expect((await motorsNow()).map(({ id }) => id).sort()).toEqual(["a", "c"]);
  });
});

test("one record is a file under its own name", async () => {
  await createRecord("motor", motors[0]!);
  const json = await ask(exportOne, "/x?format=json", { params: { id: "a" } });
  expect(json.headers.get("content-disposition")).toBe('attachment; filename="a.json"');
  expect(await json.json()).toEqual(motors[0]);
  const csv = await ask(exportOne, "/x?format=csv", { params: { id: "a" } });
  expect((await csv.text()).split("\r\n")[0]).toContain("shaftLengthMm");
  await problemOf(await ask(exportOne, "/x", { params: { id: "none" } }), 404);
  await problemOf(await ask(exportOne, "/x?format=xls", { params: { id: "a" } }), 400);
});

test("everything goes out and comes in again as one file", async () => {
  await createRecord("motor", motors[0]!);
  await createRecord("stern", aStern("pram"));
  const text = await (await ask(exportAll, "/api/export")).text();
  await there.remove();
  there = await temporaryStore();
  expect(await (await send(importAll, text)).json()).toEqual({ stored: 2, unchanged: 0 });
  expect((await getRecord("stern", "pram"))?.record).toEqual(aStern("pram"));
});

describe("a file with a fault is refused whole:", () => {
  test.each([
    ["a faulty number", [aMotor("x"), { ...aMotor("y"), powerKw: -1 }], "/1/powerKw"],
    ["an id twice", [aMotor("x"), aMotor("x")], "/1/id"],
    ["an unknown key", [{ ...aMotor("x"), role: "owner" }], "/0/role"],
    ["another kind altogether", "hello", ""],
  ])("%s", async (_what, body, pointer) => {
    const { errors } = await problemOf(await send(importMotors, JSON.stringify(body)), 422);
    expect(errors.map((error) => error.pointer)).toEqual([pointer]);
    expect(await motorsNow()).toEqual([]);
  });

  test("a faulty stern among good motors", async () => {
    const body = {
      motors: [aMotor("x")],
      sterns: [aStern("s", { rakeDeg: { value: 99, how: "measured" } })],
    };
    const { errors } = await problemOf(await send(importAll, body), 422);
    expect(errors.map((error) => error.pointer)).toEqual(["/sterns/0/rakeDeg/value"]);
    expect(await motorsNow()).toEqual([]);
  });

  test("a cell of a table, by row and column", async () => {
    const { errors } = await problemOf(
      await send(importSterns, "id,label,rakeDeg\ns,Skiff,steep\n", "text/csv"),
      422,
    );
    expect(errors).toMatchObject([{ pointer: "/2/rakeDeg", row: 2 }]);
  });

  test("the address of the file of another site", async () => {
    const headers = { Origin: "https://elsewhere.example" };
    await problemOf(await ask(importMotors, "/import", { method: "POST", body: [], headers }), 403);
  });

  test.each([
    ["text/plain", "id,label\na,b", 415],
    ["application/json", "[".repeat(100_000), 400],
    ["application/json", " ".repeat(1024 * 1024 + 1), 413],
    ["text/csv", `id,label\n"${"x".repeat(900_000)}`, 422],
    ["text/csv", `${"a,".repeat(400_000)}`, 422],
    ["text/csv", "id,label\n\u0000".repeat(10), 422],
  ])("%s %#", async (type, body, status) => {
    await problemOf(await send(importMotors, body, type), status);
  });
});

test("a thousand motors go in at once", async () => {
  const many = Array.from({ length: 1000 }, (_, i) => aMotor(`m${i}`));
  expect(await (await send(importMotors, many)).json()).toEqual({ stored: 1000, unchanged: 0 });
  await closeStore();
  expect(await motorsNow()).toHaveLength(1000);
});
