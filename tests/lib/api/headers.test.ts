/** What every answer of every door carries. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { NextRequest } from "next/server";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { pagePolicy } from "#app/_http/headers.ts";
import { ask, SITE } from "#tests/lib/api/asking.ts";
import { temporaryStore } from "#tests/lib/db/temporary-store.ts";
import nextConfig from "../../../next.config.ts";
import { config, proxy } from "../../../proxy.ts";

const METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE", "OPTIONS"];
const doors = readdirSync("app/api", { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith("route.ts"),
);

let there: Awaited<ReturnType<typeof temporaryStore>>;
beforeAll(async () => {
  there = await temporaryStore();
});
afterAll(() => there.remove());

const WANTED = {
  "x-content-type-options": "nosniff",
  "referrer-policy": "same-origin",
  "x-frame-options": "DENY",
  "cross-origin-opener-policy": "same-origin",
  "cross-origin-resource-policy": "same-origin",
  "permissions-policy": expect.stringContaining("camera=()"),
};

test("there are doors to try", () => {
  expect(doors.length).toBeGreaterThanOrEqual(10);
});

describe.each(doors)("%s", (path) => {
  test.each(METHODS)("%s", async (method) => {
    const door: object = await import(join(process.cwd(), "app/api", path));
    const answer = await ask(door, "/api/x", { method, params: { id: "none", kind: "motors" } });
    const headers = Object.fromEntries(answer.headers);
    expect(headers).toMatchObject({
      ...WANTED,
      "content-security-policy":
        "default-src 'none'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'",
      "cache-control": expect.stringMatching(/no-store|no-cache/),
    });
    expect(headers).not.toHaveProperty("x-powered-by");
    expect(headers).not.toHaveProperty("access-control-allow-origin");
    expect(answer.status).toBeLessThan(500);
  });
});

describe("a page", () => {
  const visit = (init: ConstructorParameters<typeof NextRequest>[1] = {}) =>
    proxy(new NextRequest(`${SITE}/motors`, init));

  test("runs scripts by its own nonce only, a new one at every visit", () => {
    const [one, two] = [visit(), visit()].map(
      (answer) => answer.headers.get("content-security-policy") ?? "",
    );
    const nonce = /script-src 'nonce-([A-Za-z0-9+/]{24})' 'strict-dynamic';/;
    expect(nonce.exec(one!)?.[1]).toBeDefined();
    expect(nonce.exec(one!)?.[1]).not.toBe(nonce.exec(two!)?.[1]);
    for (const part of [
      "object-src 'none'",
      "base-uri 'none'",
      "form-action 'self'",
      "frame-ancestors 'none'",
      "connect-src 'self'",
    ]) {
      expect(one!.split("; ")).toContain(part);
    }
    expect(one).not.toContain("unsafe-eval");
  });

  test("gets its policy handed on, for Next to take the nonce from", () => {
    const answer = visit();
    const policy = answer.headers.get("content-security-policy");
    expect(answer.headers.get("x-middleware-request-content-security-policy")).toBe(policy);
  });

  test("may evaluate code in development only", () => {
    expect(pagePolicy("n", true)).toContain("'unsafe-eval'");
    expect(pagePolicy("n", false)).not.toContain("'unsafe-eval'");
  });

  test.each([
    ["a form of another site", "POST", { Origin: "https://elsewhere.example" }, 403],
    ["a form that does not say where from", "POST", {}, 403],
    ["a form of a page in a sandbox", "POST", { Origin: "null" }, 403],
    [
      "a form that forges the forwarding",
      "POST",
      { Origin: "https://elsewhere.example", "X-Forwarded-Host": "elsewhere.example" },
      403,
    ],
    ["PUT", "PUT", { Origin: SITE }, 405],
    ["DELETE", "DELETE", { Origin: SITE }, 405],
    ["its own form", "POST", { Origin: SITE }, 200],
    ["a visit", "GET", {}, 200],
  ])("%s", (_what, method, headers, status) => {
    const answer = visit({ method, headers: headers as Record<string, string> });
    expect(answer.status).toBe(status);
    if (status !== 200) expect(answer.headers.get("content-type")).toBe("application/problem+json");
  });

  test("is every address but the programs' doors and the built files", () => {
    const matcher = new RegExp(`^${config.matcher}$`);
    for (const path of ["/", "/motors", "/motors/x/edit", "/nothere", "/apiary", "/icon.svg"])
      expect(path).toMatch(matcher);
    for (const path of ["/api/motors", "/_next/static/chunks/x.js"]) expect(path).not.toMatch(matcher);
  });
});

test("files and everything else carry the same", async () => {
  const [rule] = (await nextConfig.headers?.()) ?? [];
  expect(rule?.source).toBe("/:path*");
  const headers = Object.fromEntries(
    (rule?.headers ?? []).map(({ key, value }) => [key.toLowerCase(), value]),
  );
  expect(headers).toMatchObject(WANTED);
  expect(nextConfig).toMatchObject({ poweredByHeader: false, images: { unoptimized: true } });
});

vi.spyOn(console, "error").mockImplementation(() => {});
