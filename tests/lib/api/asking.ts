import { expect } from "vitest";

/** The site's own address in these tests. */
export const SITE = "http://localhost:3000";

type Door = Record<string, (request: Request, context: { params: Promise<never> }) => Promise<Response>>;

/** What a request is made of, beside its address. */
export interface Asked {
  readonly method?: string;
  /** Sent as JSON, unless it is text already. */
  readonly body?: unknown;
  readonly headers?: Record<string, string | null>;
  readonly params?: Record<string, string>;
}

/** Asks a route handler as the site's own page would; a header of null is left out. */
export function ask(door: object, address: string, asked: Asked = {}): Promise<Response> {
  const { method = "GET", body, headers = {}, params = {} } = asked;
  const sent = new Headers({ Origin: SITE });
  if (body !== undefined) sent.set("Content-Type", "application/json");
  for (const [name, value] of Object.entries(headers)) {
    if (value === null) sent.delete(name);
    else sent.set(name, value);
  }
  const request = new Request(`${SITE}${address}`, {
    method,
    headers: sent,
    body: body === undefined || body instanceof ReadableStream ? (body as ReadableStream) : textOf(body),
    ...(body instanceof ReadableStream && { duplex: "half" }),
  });
  const handler = (door as Door)[method];
  if (!handler) throw new Error(`no ${method} here`);
  return handler(request, { params: Promise.resolve(params as never) });
}

/** Asserts an answer is a problem of this status, and gives its body. */
export async function problemOf(response: Response, status: number) {
  const text = await response.text();
  expect([response.status, text]).toEqual([status, text]);
  expect(response.headers.get("content-type")).toBe("application/problem+json");
  expect(text).not.toMatch(/SQLITE|SELECT |INSERT |node_modules|\/work|\/tmp|\.ts:|at async/);
  const problem = JSON.parse(text) as {
    status: number;
    detail: string;
    errors: { pointer: string; detail: string; code: string }[];
    current?: object;
  };
  expect(problem.status).toBe(status);
  return problem;
}

const textOf = (body: unknown): string => (typeof body === "string" ? body : JSON.stringify(body));
