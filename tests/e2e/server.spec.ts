/** The server as a whole: what only shows when it really listens. */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { connect, type Socket } from "node:net";
import { dirname, join } from "node:path";
import { expect, test } from "@playwright/test";

const PORT = Number(process.env.E2E_PORT ?? 3108);
const FOLDER = process.env.E2E_FOLDER ?? "";
const NEXT = "node_modules/next/dist/bin/next";
const root = dirname(dirname(import.meta.dirname));

/** A conversation in bytes, as no client library would have it. */
class Wire {
  readonly #socket: Socket;
  said = "";
  closed = false;
  constructor(port = PORT) {
    this.#socket = connect(port, "127.0.0.1");
    this.#socket.on("data", (data) => {
      this.said += data;
    });
    this.#socket.on("error", () => {});
    this.#socket.on("close", () => {
      this.closed = true;
    });
  }
  /** Sends, and waits while the other end is not taking more. */
  async send(text: string): Promise<void> {
    let taken = false;
    this.#socket.write(text, () => {
      taken = true;
    });
    while (!taken && !this.closed) await pause();
  }
  /** Waits for words of the answer, or for the end of the conversation. */
  async hear(words: string): Promise<string> {
    while (!this.said.includes(words) && !this.closed) await pause();
    return this.said;
  }
  end(): void {
    this.#socket.destroy();
  }
}

const pause = () => new Promise((resolve) => setTimeout(resolve, 10));

/** Sends the head of a request and gives the head of the answer. */
async function raw(head: string): Promise<string> {
  const wire = new Wire();
  await wire.send(head);
  const answer = await wire.hear("\r\n\r\n");
  wire.end();
  return answer;
}

const run = (args: string[], env: Record<string, string>): ChildProcess =>
  spawn(process.execPath, args, {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });

const pages = ["/", "/motors", "/sterns", "/motors/new", "/sterns/new", "/checks", "/measuring", "/nowhere"];

for (const path of pages) {
  test(`the page ${path} carries its headers, and its scripts run by its nonce only`, async ({ request }) => {
    const answer = await request.get(path);
    const headers = answer.headers();
    expect(headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "referrer-policy": "same-origin",
      "x-frame-options": "DENY",
      "cross-origin-opener-policy": "same-origin",
    });
    expect(headers).not.toHaveProperty("x-powered-by");
    const nonce = /'nonce-([^']+)' 'strict-dynamic'/.exec(headers["content-security-policy"] ?? "")?.[1];
    const scripts = [...(await answer.text()).matchAll(/<script\b([^>]*)>/g)].map((match) => match[1] ?? "");
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter((attributes) => !attributes.includes(`nonce="${nonce}"`))).toEqual([]);
  });
}

test("what Next would fail on is refused at the door", async () => {
  for (const path of ["/", "/motors", "/api/motors", "/icon.svg"]) {
    expect(await raw(`TRACE ${path} HTTP/1.1\r\nHost: x\r\n\r\n`)).toMatch(/^HTTP\/1\.1 405 /);
  }
  expect(await raw("GET /api/motors/%E0%A4%A HTTP/1.1\r\nHost: x\r\n\r\n")).toMatch(/^HTTP\/1\.1 400 /);
});

test("a body without length and without end is answered long before 60 MB", async () => {
  const wire = new Wire();
  await wire.send(
    `POST /api/motors HTTP/1.1\r\nHost: x\r\nOrigin: http://127.0.0.1:${PORT}\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n`,
  );
  const piece = `10000\r\n${" ".repeat(65_536)}\r\n`;
  let sent = 0;
  for (; sent < 900 && wire.said === "" && !wire.closed; sent++) await wire.send(piece);
  expect(await wire.hear("\r\n")).toMatch(/^HTTP\/1\.1 413 /);
  expect(sent).toBeLessThan(900);
  wire.end();
});

test("a header that once let requests past the proxy changes nothing", async ({ request }) => {
  for (const name of ["proxy", "proxy:proxy:proxy:proxy:proxy", "middleware"]) {
    const answer = await request.get("/motors", { headers: { "x-middleware-subrequest": name } });
    expect(answer.headers()["content-security-policy"]).toContain("'strict-dynamic'");
  }
});

test("an address with doubled slashes never leads to another site", async () => {
  for (const path of [
    "//elsewhere.example/",
    "/%2f%2felsewhere.example/",
    "/\\elsewhere.example/",
    "/motors/",
  ]) {
    const answer = await raw(
      `GET ${path} HTTP/1.1\r\nHost: x\r\nX-Forwarded-Host: elsewhere.example\r\n\r\n`,
    );
    expect(answer).toMatch(/^HTTP\/1\.1 (308|404) /);
    const location = /^location: (.*)$/im.exec(answer)?.[1] ?? "/";
    expect(new URL(location, "http://here.example").host).toBe("here.example");
  }
});

test("a second server on the same store ends, saying why", async () => {
  const env = { DATABASE_URL: `file:${join(FOLDER, "sternwright.db")}`, PORT: String(PORT + 1) };
  const second = run([NEXT, "start", "-H", "127.0.0.1", "-p", env.PORT], env);
  let said = "";
  second.stderr?.on("data", (data) => {
    said += data;
  });
  const [code] = await once(second, "close");
  expect(code).toBe(1);
  expect(said).toMatch(/The store is in use by process \d+/);
});

test("a server without a store ends, saying how to make one, and makes none", async () => {
  const env = { DATABASE_URL: `file:${join(FOLDER, "none.db")}`, PORT: String(PORT + 1) };
  const server = run([NEXT, "start", "-H", "127.0.0.1", "-p", env.PORT], env);
  let said = "";
  server.stderr?.on("data", (data) => {
    said += data;
  });
  const [code] = await once(server, "close");
  expect(code).toBe(1);
  expect(said).toContain('There is none. Make one with "npm start".');
});

test("told to end with slow senders about, it answers what is under way and waits for nobody else", async () => {
  const port = PORT + 1;
  const env = { DATABASE_URL: `file:${join(FOLDER, `ending-${process.pid}.db`)}`, PORT: String(port) };
  const start = run(["--import", "tsx", "app/_command/start.ts", "--no-build"], env);
  const reached = () =>
    fetch(`http://127.0.0.1:${port}/api/health`).then(
      ({ status }) => status,
      () => 0,
    );
  await expect.poll(reached, { timeout: 30_000 }).toBe(200);
  const headOf = (length: number) =>
    `POST /api/motors HTTP/1.1\r\nHost: x\r\nOrigin: http://127.0.0.1:${port}\r\nContent-Type: application/json\r\nContent-Length: ${length}\r\nExpect: 100-continue\r\n\r\n`;
  const slow = Array.from({ length: 200 }, () => new Wire(port));
  await Promise.all(slow.map((wire) => wire.send(`${headOf(9)}{`)));
  expect(await reached()).toBe(200);
  const bodies = Array.from({ length: 20 }, (_, i) => JSON.stringify({ id: `m-${i}`, label: "Motor" }));
  const wires = bodies.map(() => new Wire(port));
  await Promise.all(wires.map((wire, i) => wire.send(headOf(bodies[i]!.length))));
  // The server has taken the request in once it asks for the body.
  for (const wire of wires) expect(await wire.hear("100 Continue")).toContain("100 Continue");
  const ended = once(start, "close");
  start.kill("SIGTERM");
  await expect.poll(reached).toBe(0);
  await Promise.all(wires.map((wire, i) => wire.send(bodies[i]!)));
  for (const wire of wires) expect(await wire.hear("HTTP/1.1 201")).toContain("HTTP/1.1 201 Created");
  expect((await ended)[0]).toBe(143);
  for (const wire of [...slow, ...wires]) wire.end();
});
