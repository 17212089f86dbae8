import { type IncomingMessage, Server, type ServerResponse } from "node:http";
import { DATA_POLICY, EVERYWHERE } from "#app/_http/headers.ts";
import { problemResponse, Refused } from "#app/_http/problem.ts";

/** No door takes a body above 1 MB; one that says it is twice that is not even begun. */
const LARGEST = 2 * 1024 * 1024;
/** A request must have come in whole after this long, ms; a socket that dawdles is closed. */
const HEAD_WITHIN_MS = 15_000;
const WHOLE_WITHIN_MS = 60_000;

type Emit = (this: Server, event: string, ...rest: unknown[]) => boolean;
const GUARDED = Symbol.for("sternwright.front-door");

/**
 * Refuses, before Next sees them, the requests Next answers with a failure of its own: TRACE, and addresses
 * that are no text. Also sets how long a slow sender is waited for, and lets senders go, each with its
 * answer, once the server is told to end. Next makes the server itself, so the
 * guard stands where every server of this process hands out its requests.
 */
export function guardFrontDoor(): void {
  const servers: { emit: Emit; [GUARDED]?: true } = Server.prototype;
  if (servers[GUARDED]) return;
  servers[GUARDED] = true;
  let ending = false;
  for (const signal of ["SIGTERM", "SIGINT"]) {
    process.once(signal, () => {
      ending = true;
    });
  }
  const emit = servers.emit;
  servers.emit = function guarded(event, ...rest) {
    if (event === "connection") {
      this.headersTimeout = HEAD_WITHIN_MS;
      this.requestTimeout = WHOLE_WITHIN_MS;
    }
    if (event !== "request") return emit.call(this, event, ...rest);
    const [request, response] = rest as [IncomingMessage, ServerResponse];
    if (ending) response.setHeader("Connection", "close");
    const refused = refusalAtTheDoor(request);
    if (!refused) return emit.call(this, event, ...rest);
    void refuse(response, refused);
    return true;
  };
}

/** Why a request does not come in at all; undefined where it may. */
export function refusalAtTheDoor({
  method,
  url = "",
  headers,
}: Pick<IncomingMessage, "method" | "url" | "headers">): Refused | undefined {
  if (method === "TRACE")
    return new Refused(405, "TRACE is not answered.", { headers: { Allow: "GET, HEAD, POST" } });
  if (Number(headers["content-length"] ?? 0) > LARGEST)
    return new Refused(413, "This is too large for any door here.");
  try {
    decodeURIComponent(url.split("?")[0] ?? "");
  } catch {
    return new Refused(400, "This address is not written as addresses are: a % in it begins no letter.");
  }
  return undefined;
}

async function refuse(response: ServerResponse, refused: Refused): Promise<void> {
  const answer = problemResponse(refused);
  for (const { key, value } of EVERYWHERE) response.setHeader(key, value);
  response.setHeader("Content-Security-Policy", DATA_POLICY);
  response.setHeader("Cache-Control", "no-store");
  response.setHeader("Connection", "close");
  answer.headers.forEach((value, key) => {
    response.setHeader(key, value);
  });
  response.writeHead(answer.status).end(await answer.text());
}
