/** The API's doors on a real store: reading, writing by version, removing, restoring, fitting. */
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import * as fit from "#app/api/fit/route.ts";
import * as health from "#app/api/health/route.ts";
import * as motorHistory from "#app/api/motors/[id]/history/route.ts";
import * as motorRestore from "#app/api/motors/[id]/restore/route.ts";
import * as motor from "#app/api/motors/[id]/route.ts";
import * as motors from "#app/api/motors/route.ts";
import * as openapi from "#app/api/openapi.json/route.ts";
import * as stern from "#app/api/sterns/[id]/route.ts";
import * as sterns from "#app/api/sterns/route.ts";
import { createRecord, getRecord, historyOf } from "#lib/db/records.ts";
import { assess } from "#lib/fit/assess.ts";
import { ask, problemOf } from "#tests/lib/api/asking.ts";
import { aMotor, aStern } from "#tests/lib/db/samples.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeEach(async () => {
  there = await temporaryStore();
});
afterEach(() => there.remove());

const one = (id: string) => ({ params: { id } });
const idsOf = async (address: string): Promise<string[]> => {
  const { items } = (await (await ask(motors, address)).json()) as { items: { id: string }[] };
  return items.map(({ id }) => id);
};

describe("a record", () => {
  test("sent is stored, and read back is what was sent", async () => {
    const made = await ask(motors, "/api/motors", { method: "POST", body: aMotor("grey") });
    expect([made.status, made.headers.get("location"), made.headers.get("etag")]).toEqual([
      201,
      "/api/motors/grey",
      '"1"',
    ]);
    const read = await ask(motor, "/api/motors/grey", one("grey"));
    expect([read.status, read.headers.get("etag"), await read.json()]).toEqual([200, '"1"', aMotor("grey")]);
  });

  test("with bare numbers is stored as measured", async () => {
    await ask(sterns, "/api/sterns", { method: "POST", body: { id: "pram", label: " Pram ", rakeDeg: 12 } });
    expect(await (await ask(stern, "/api/sterns/pram", one("pram"))).json()).toEqual({
      id: "pram",
      label: "Pram",
      rakeDeg: { value: 12, how: "measured" },
    });
  });

  test("with a fault is refused with its place, and nothing is stored", async () => {
    const body = { ...aMotor("m"), shaftLengthMm: -5, role: "owner" };
    const { errors } = await problemOf(await ask(motors, "/api/motors", { method: "POST", body }), 422);
    expect(errors.map(({ pointer }) => pointer).sort()).toEqual(["/role", "/shaftLengthMm"]);
    expect(await getRecord("motor", "m")).toBeNull();
  });

  test("under an id that is taken is refused at the id", async () => {
    await createRecord("motor", aMotor("m"));
    const { errors } = await problemOf(
      await ask(motors, "/api/motors", { method: "POST", body: aMotor("m") }),
      409,
    );
    expect(errors).toMatchObject([{ pointer: "/id", code: "taken" }]);
  });

  test.each(["export", "import", "new"])(
    "cannot be called %s, which is an address of its own",
    async (id) => {
      await problemOf(await ask(motors, "/api/motors", { method: "POST", body: aMotor(id) }), 409);
    },
  );

  test.each(["none", "../etc/passwd", "' OR 1=1 --", "\u0000", "x".repeat(5000), "__proto__"])(
    "there is none called %j",
    async (id) => {
      await problemOf(await ask(motor, "/api/motors/x", one(id)), 404);
      await problemOf(await ask(motorHistory, "/api/motors/x/history", one(id)), 404);
    },
  );
});

describe("a change", () => {
  beforeEach(async () => {
    await createRecord("motor", aMotor("m"));
  });
  const patch = (body: unknown, ifMatch: string | null = '"1"') =>
    ask(motor, "/api/motors/m", { method: "PATCH", body, headers: { "If-Match": ifMatch }, ...one("m") });

  test("alters what is sent, takes away what is null and leaves the rest", async () => {
    const answer = await patch({ label: "Blue", powerKw: null, massKg: 25 });
    expect([answer.status, answer.headers.get("etag")]).toEqual([200, '"2"']);
    const { powerKw: _, ...rest } = aMotor("m", { label: "Blue" });
    expect(await answer.json()).toEqual({ ...rest, massKg: { value: 25, how: "measured" } });
  });

  test("that does not say which version is 428", async () => {
    await problemOf(await patch({ label: "Blue" }, null), 428);
  });

  test.each(['"2"', '"0"', "*", 'W/"1"', "1", '"1", "2"', '"x"', ""])(
    "to version %s is 412",
    async (seen) => {
      await problemOf(await patch({ label: "Blue" }, seen), 412);
      expect(await getRecord("motor", "m")).toMatchObject({ version: 1, record: aMotor("m") });
    },
  );

  test("after somebody else's is told how the record stands", async () => {
    await patch({ label: "Blue" });
    const answer = await patch({ label: "Red" });
    expect(answer.headers.get("etag")).toBe('"2"');
    expect((await problemOf(answer, 412)).current).toMatchObject({ label: "Blue" });
  });

  test("that makes the whole impossible is refused", async () => {
    const { errors } = await problemOf(await patch({ clampOpeningMinMm: 60, clampOpeningMaxMm: 30 }), 422);
    expect(errors).toMatchObject([{ pointer: "/clampOpeningMinMm", code: "impossible" }]);
    await problemOf(await patch({ label: null }), 422);
    await problemOf(await patch({ id: "other" }), 422);
  });

  test("of what is not there is 404", async () => {
    const answer = await ask(motor, "/api/motors/n", {
      method: "PATCH",
      body: {},
      headers: { "If-Match": '"1"' },
      ...one("n"),
    });
    await problemOf(answer, 404);
  });

  test("by twenty at once is one change, and nineteen are told", async () => {
    const answers = await Promise.all(Array.from({ length: 20 }, (_, i) => patch({ label: `Motor ${i}` })));
    const statuses = answers.map(({ status }) => status).sort();
    expect(statuses).toEqual([200, ...Array(19).fill(412)]);
    expect(await historyOf("motor", "m")).toHaveLength(2);
  });
});

test("a removed record is gone, keeps its history, and comes back", async () => {
  await createRecord("motor", aMotor("m"));
  const remove = (seen: string | null) =>
    ask(motor, "/api/motors/m", { method: "DELETE", headers: { "If-Match": seen }, ...one("m") });
  await problemOf(await remove(null), 428);
  await problemOf(await remove('"4"'), 412);
  expect((await remove('"1"')).status).toBe(204);
  await problemOf(await ask(motor, "/api/motors/m", one("m")), 404);
  expect(await idsOf("/api/motors")).toEqual([]);
  const { versions, takings } = (await (await ask(motorHistory, "/x", one("m"))).json()) as Record<
    string,
    object[]
  >;
  expect([versions?.length, takings?.length]).toEqual([2, 2]);
  const restored = await ask(motorRestore, "/x", { method: "POST", ...one("m") });
  expect([restored.status, restored.headers.get("etag"), await restored.json()]).toEqual([
    200,
    '"3"',
    aMotor("m"),
  ]);
  await problemOf(await ask(motorRestore, "/x", { method: "POST", ...one("never") }), 404);
});

describe("a list", () => {
  beforeEach(async () => {
    await createRecord(
      "motor",
      aMotor("a", { label: "Anchor motor", powerKw: { value: 2, how: "declared" } }),
    );
    await createRecord(
      "motor",
      aMotor("b", { label: "Bay motor", shaftClass: "long", powerKw: { value: 6, how: "declared" } }),
    );
    await createRecord("motor", aMotor("c", { label: "Creek motor", powerKw: undefined }));
  });

  test("is narrowed, searched and turned by the page", async () => {
    expect(await idsOf("/api/motors?powerKwMax=2")).toEqual(["a"]);
    expect(await idsOf("/api/motors?shaftClass=long&powerKwMin=5.5")).toEqual(["b"]);
    expect(await idsOf("/api/motors?query=craek")).toEqual(["c"]);
    expect(await idsOf("/api/motors?query=%20")).toEqual(["a", "b", "c"]);
    for (const query of ["", "query=motor&"]) {
      const first = (await (await ask(motors, `/api/motors?${query}limit=2`)).json()) as {
        items: object[];
        next: string;
      };
      expect(first.items).toHaveLength(2);
      const second = await ask(motors, `/api/motors?${query}limit=2&cursor=${first.next}`);
      expect(await second.json()).toEqual({ items: [expect.objectContaining({ id: "c" })] });
    }
  });

  test.each([
    ["limit=0", "/limit"],
    ["limit=201", "/limit"],
    ["limit=1.5", "/limit"],
    ["limit=0x10", "/limit"],
    ["limit=", "/limit"],
    ["powerKwMax=NaN", "/powerKwMax"],
    ["powerKwMax=1e3", "/powerKwMax"],
    ["powerKwMax=-1", "/powerKwMax"],
    ["shaftClass=' OR 1=1 --", "/shaftClass"],
    ["sort=id;DROP TABLE motor", "/sort"],
    ["strokes=3", "/strokes"],
    ["cursor=made-up", "/cursor"],
    ["__proto__[x]=1", "/__proto__[x]"],
  ])("asked for with %s is refused at %s", async (query, pointer) => {
    const answer = await ask(motors, `/api/motors?${query}`);
    expect((await problemOf(answer, 400)).errors.map((error) => error.pointer)).toEqual([pointer]);
  });

  test("asked for twice over is refused", async () => {
    await problemOf(await ask(motors, "/api/motors?limit=1&limit=2"), 400);
    await problemOf(await ask(motors, "/api/motors?query=x&cursor=made-up"), 400);
  });
});

describe("a fit", () => {
  const asked = (body: unknown, headers: Record<string, string | null> = { Origin: null }) =>
    ask(fit, "/api/fit", { method: "POST", body, headers });

  test("of two records is the engine's report, for any program", async () => {
    const answer = await asked({ motor: aMotor("m"), stern: aStern("s") });
    expect([answer.status, await answer.json()]).toEqual([
      200,
      JSON.parse(JSON.stringify(assess(aMotor("m"), aStern("s")))),
    ]);
  });

  test("of two kept records is the same", async () => {
    await createRecord("motor", aMotor("m"));
    await createRecord("stern", aStern("s"));
    const kept = await (await asked({ motorId: "m", sternId: "s" })).json();
    expect(kept).toEqual(await (await asked({ motor: aMotor("m"), stern: aStern("s") })).json());
  });

  test.each([
    [{ motorId: "none", sternId: "s" }, "/motorId"],
    [{ motorId: "m", sternId: "none" }, "/sternId"],
  ])("of %j, which is not kept, says which", async (body, pointer) => {
    await createRecord("motor", aMotor("m"));
    await createRecord("stern", aStern("s"));
    expect((await problemOf(await asked(body), 404)).errors).toMatchObject([{ pointer, code: "unknown-id" }]);
  });

  test("of a faulty motor says where", async () => {
    const body = { motor: { ...aMotor("m"), powerKw: 1e9 }, stern: aStern("s") };
    expect((await problemOf(await asked(body), 422)).errors.map(({ pointer }) => pointer)).toEqual([
      "/motor/powerKw",
    ]);
  });
});

test("health says ok, and nothing about the machine", async () => {
  expect(await (await ask(health, "/api/health")).json()).toEqual({
    ok: true,
    engine: expect.stringMatching(/^\d+\.\d+\.\d+$/),
  });
});

describe("the OpenAPI document", () => {
  test("names every door, and every reference in it leads somewhere", async () => {
    const document = (await (await ask(openapi, "/api/openapi.json")).json()) as {
      openapi: string;
      paths: Record<string, object>;
      components: { schemas: Record<string, { properties?: object }> };
    };
    expect(document.openapi).toMatch(/^3\.1\./);
    expect(Object.keys(document.paths)).toEqual(
      expect.arrayContaining(["/api/fit", "/api/motors", "/api/motors/{id}", "/api/sterns/{id}/restore"]),
    );
    const { schemas } = document.components;
    const references = [...JSON.stringify(document).matchAll(/"\$ref":"#\/components\/schemas\/(\w+)"/g)].map(
      (match) => match[1]!,
    );
    expect(references.length).toBeGreaterThan(10);
    expect(references.filter((name) => !schemas[name])).toEqual([]);
    expect(Object.keys(schemas.Motor?.properties ?? {})).toEqual(
      expect.arrayContaining(["id", "label", "shaftLengthMm", "pinAnglesDeg"]),
    );
  });
});
