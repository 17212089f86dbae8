/** The request wrapper against what a hostile sender tries; one door of each sort stands for all. */
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { z } from "zod";
import { BODY_LIMIT, parseJson, readJson } from "#app/_http/body.ts";
import { refusalAtTheDoor } from "#app/_http/front-door.ts";
import { asks, route } from "#app/_http/route.ts";
import { asStoreError, StoreError } from "#lib/db/store-error.ts";
import { ask, problemOf, SITE } from "#tests/lib/api/asking.ts";

const schema = z.strictObject({ a: z.number().max(10).optional(), list: z.array(z.number()).optional() });
const done = vi.fn();
const echo = async (request: Request) => {
  const read = await readJson(request, schema);
  done();
  return Response.json(read);
};
const door = route({ GET: () => Response.json({ here: true }), POST: echo });
const question = route({ POST: asks(echo) });
let thrown: unknown;
const broken = route({ GET: () => Promise.reject(thrown) });
const post = (body: unknown, headers: Record<string, string | null> = {}) =>
  ask(door, "/x", { method: "POST", body, headers });

describe("a change must come from this site", () => {
  test.each([
    ["missing", { Origin: null }],
    ["null", { Origin: "null" }],
    ["foreign", { Origin: "https://elsewhere.example" }],
    ["of another port", { Origin: "http://localhost:3001" }],
    ["of another scheme", { Origin: "https://localhost:3000" }],
    ["that only begins like ours", { Origin: "http://localhost:3000.elsewhere.example" }],
    [
      "foreign, with forged forwarding",
      {
        Origin: "https://elsewhere.example",
        "X-Forwarded-Host": "elsewhere.example",
        Host: "elsewhere.example",
      },
    ],
    ["ours, but the browser says cross-site", { "Sec-Fetch-Site": "cross-site" }],
    ["ours, but the browser says same-site", { "Sec-Fetch-Site": "same-site" }],
  ])("an Origin %s is refused", async (_what, headers) => {
    done.mockClear();
    await problemOf(await post({ a: 1 }, headers), 403);
    expect(done).not.toHaveBeenCalled();
  });

  test.each([
    ["Origin", SITE],
    ["Origin", "http://127.0.0.1:3000"],
    ["Sec-Fetch-Site", "same-origin"],
    ["Sec-Fetch-Site", "none"],
  ])("%s %s is let in", async (name, value) => {
    expect((await post({ a: 1 }, { [name]: value })).status).toBe(200);
  });

  test("the address can be configured, and then no other counts", async () => {
    vi.stubEnv("SITE_ORIGIN", "https://club.example https://www.club.example");
    expect((await post({}, { Origin: "https://www.club.example" })).status).toBe(200);
    await problemOf(await post({}, { Origin: SITE }), 403);
    vi.unstubAllEnvs();
  });

  test("a question needs no Origin", async () => {
    for (const Origin of [null, "https://elsewhere.example"]) {
      const answer = await ask(question, "/x", { method: "POST", body: { a: 1 }, headers: { Origin } });
      expect(answer.status).toBe(200);
      expect(answer.headers.get("access-control-allow-origin")).toBeNull();
    }
  });
});

describe("a body", () => {
  test.each([
    "text/plain",
    "application/x-www-form-urlencoded",
    "multipart/form-data",
    "application/jsonx",
    "",
    "text/json",
  ])("of kind %j is refused", async (kind) => {
    await problemOf(await post('{"a":1}', { "Content-Type": kind || null }), 415);
  });

  test("may say its letters", async () => {
    expect((await post('{"a":1}', { "Content-Type": "application/JSON; charset=utf-8" })).status).toBe(200);
  });

  test.each(["gzip", "br", "deflate, gzip"])("packed with %s is refused", async (packing) => {
    await problemOf(await post('{"a":1}', { "Content-Encoding": packing }), 415);
  });

  test("that says it is too large is not read", async () => {
    const unread = new ReadableStream({ pull: () => expect.unreachable() }, { highWaterMark: 0 });
    await problemOf(
      await post(unread, { "Content-Type": "application/json", "Content-Length": "62914560" }),
      413,
    );
  });

  test("in pieces, without a length, is read no further than the limit", async () => {
    const piece = new Uint8Array(64 * 1024).fill(0x20);
    let sent = 0;
    let cancelled = false;
    const long = new ReadableStream({
      pull(controller) {
        sent += piece.length;
        controller.enqueue(piece);
        if (sent >= 16 * BODY_LIMIT) controller.close();
      },
      cancel() {
        cancelled = true;
      },
    });
    await problemOf(await post(long, { "Content-Type": "application/json" }), 413);
    expect(sent).toBeLessThanOrEqual(BODY_LIMIT + 3 * piece.length);
    expect(cancelled).toBe(true);
  });

  test("of exactly the limit is read", async () => {
    const text = `{"a":1${" ".repeat(BODY_LIMIT - 7)}}`;
    expect(text).toHaveLength(BODY_LIMIT);
    expect((await post(text)).status).toBe(200);
    await problemOf(await post(`${text} `), 413);
  });

  test.each([
    "",
    "   ",
    "{",
    '{"a":}',
    "{'a':1}",
    "NaN",
    '{"a":NaN}',
    '{"a":0x10}',
    '{"a":01}',
    '{"a":1,}',
    "\ufeff\ufeff{}",
    '"unclosed',
  ])("that is not JSON is refused: %j", async (text) => {
    await problemOf(await post(text), 400);
  });

  test("that is not UTF-8 is refused", async () => {
    const body = new Blob([Uint8Array.of(0x22, 0xff, 0xfe, 0x22)]).stream();
    await problemOf(await post(body, { "Content-Type": "application/json" }), 400);
  });

  test.each([
    ["10,000 deep in lists", "[".repeat(10_000) + "]".repeat(10_000)],
    ["10,000 deep in records", `${'{"a":'.repeat(10_000)}1${"}".repeat(10_000)}`],
    ["deep and never closed", "[{".repeat(5000)],
  ])("%s is refused", async (_what, text) => {
    expect((await problemOf(await post(text), 400)).detail).toMatch(/deep/);
  });

  test("with brackets in its texts is not deep", () => {
    const text = JSON.stringify({ note: `${"[{".repeat(100)}\\"${"[".repeat(100)}` });
    expect(parseJson(text)).toEqual(JSON.parse(text));
  });

  test.each(['{"__proto__":{"admin":true}}', '{"list":[],"a":{"__proto__":null}}', '{"\\u005f_proto__":1}'])(
    "that reaches for a prototype is refused: %s",
    async (text) => {
      await problemOf(await post(text), 400);
      expect(Reflect.get({}, "admin")).toBeUndefined();
    },
  );

  test.each([
    ['{"constructor":{"prototype":{"admin":true}}}', "/constructor"],
    ['{"role":"owner"}', "/role"],
    ['{"createdAt":"1970-01-01"}', "/createdAt"],
    ['{"a":1e309}', "/a"],
    ['{"a":"0x10"}', "/a"],
    ['{"a":""}', "/a"],
    ['{"a":null}', "/a"],
    [`{"a":${"9".repeat(400)}}`, "/a"],
    ['{"a":11}', "/a"],
    ['{"list":[1,"2"]}', "/list/1"],
    ["[]", ""],
    ["null", ""],
  ])("with a fault says where: %s", async (text, pointer) => {
    const { errors } = await problemOf(await post(text), 422);
    expect(errors.map((error) => error.pointer)).toEqual([pointer]);
    expect(errors[0]).toEqual({ pointer, detail: expect.any(String), code: expect.any(String) });
  });

  test("with very many unknown keys lists a hundred", async () => {
    const body = Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`k${i}`, 1]));
    expect((await problemOf(await post(body), 422)).errors).toHaveLength(100);
  });
});

describe("a method", () => {
  test.each(["PUT", "PATCH", "DELETE"])(
    "%s that is not done here is 405 and says what is",
    async (method) => {
      const answer = await ask(door, "/x", { method, headers: { Origin: null } });
      expect(answer.headers.get("allow")).toBe("GET, POST, HEAD, OPTIONS");
      await problemOf(answer, 405);
    },
  );

  test("OPTIONS says what is done and lets no other site in", async () => {
    const answer = await ask(door, "/x", { method: "OPTIONS" });
    expect([answer.status, answer.headers.get("allow")]).toEqual([204, "GET, POST, HEAD, OPTIONS"]);
    expect([...answer.headers.keys()].filter((name) => name.startsWith("access-control"))).toEqual([]);
  });

  test("TRACE does not come in, nor a broken address, nor 60 MB", () => {
    expect(refusalAtTheDoor({ method: "TRACE", url: "/", headers: {} })?.status).toBe(405);
    expect(refusalAtTheDoor({ method: "GET", url: "/api/motors/%E0%A4%A", headers: {} })?.status).toBe(400);
    expect(
      refusalAtTheDoor({ method: "POST", url: "/", headers: { "content-length": "62914560" } })?.status,
    ).toBe(413);
    expect(refusalAtTheDoor({ method: "GET", url: "/motors?query=100%", headers: {} })).toBeUndefined();
    expect(
      refusalAtTheDoor({ method: "POST", url: "/api/fit", headers: { "content-length": "900" } }),
    ).toBeUndefined();
  });
});

describe("what goes wrong inside", () => {
  beforeAll(() => {
    vi.spyOn(console, "error").mockImplementation(() => {});
  });
  afterAll(() => {
    vi.restoreAllMocks();
  });
  const failing = (error: unknown) => {
    thrown = error;
    return ask(broken, "/x");
  };

  test("is logged under a number, and only the number is told", async () => {
    const { detail } = await problemOf(
      await failing(new Error("SELECT * FROM motor at /work/secret.ts:3")),
      500,
    );
    const [number] = /[0-9a-f-]{36}/.exec(detail) ?? [];
    expect(number).toBeDefined();
    expect(vi.mocked(console.error).mock.lastCall?.[0]).toContain(number);
  });

  test("is 500 for anything thrown, whatever it is", async () => {
    for (const thrown of ["text", null, undefined, 0, { status: 200 }])
      await problemOf(await failing(thrown), 500);
  });

  test("a busy store is 503 with a time to try again", async () => {
    const answer = await failing(new StoreError("busy", "The store is busy."));
    expect(answer.headers.get("retry-after")).toBe("1");
    await problemOf(answer, 503);
  });

  test.each([
    ["SQLITE_BUSY_SNAPSHOT", 503],
    ["SQLITE_FULL", 507],
    ["SQLITE_READONLY_DIRECTORY", 503],
    ["SQLITE_CORRUPT", 500],
    ["SQLITE_CONSTRAINT_CHECK", 500],
  ])("%s deep in the causes is %i", async (code, status) => {
    const driver = Object.assign(new Error("SQLITE: SELECT …"), { code });
    await problemOf(await failing(asStoreError(new Error("outer", { cause: driver }))), status);
  });
});
