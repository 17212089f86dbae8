import { DATA_POLICY, EVERYWHERE } from "#app/_http/headers.ts";
import { problemResponse, Refused } from "#app/_http/problem.ts";
import { refusalOf } from "#app/_http/refusal-of.ts";
import { assertSameSite } from "#app/_http/same-site.ts";

const METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE"] as const;
type Method = (typeof METHODS)[number];
type Params = Record<string, string | string[]>;

/** Answers one request; throws {@link Refused} to refuse it. `params` are the path's. */
export type Handler<P extends Params = Record<never, string>> = (
  request: Request,
  params: P,
) => Response | Promise<Response>;

/** What Next calls. */
type NextHandler<P extends Params> = (request: Request, context: { params: Promise<P> }) => Promise<Response>;

const asking = new WeakSet<object>();

/** Marks a handler that changes nothing although it is asked by POST: any program may ask, without an Origin. */
export function asks<P extends Params>(handler: Handler<P>): Handler<P> {
  asking.add(handler);
  return handler;
}

/**
 * The one wrapper of every route handler: `export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } =
 * route({ … })`. A method that is not given answers 405; everything but GET must come from this site;
 * every failure becomes a problem with nothing of the inside in it; every answer has its headers.
 */
export function route<P extends Params>(
  doors: Partial<Record<Method, Handler<P>>>,
): Record<Method | "OPTIONS", NextHandler<P>> {
  const allow = [...METHODS.filter((method) => doors[method]), "HEAD", "OPTIONS"]
    .filter((method) => method !== "HEAD" || doors.GET)
    .join(", ");
  const entries = METHODS.map((method) => [method, guarded(doors[method] ?? asks(refuses(allow)), method)]);
  const options = guarded(() => new Response(null, { status: 204, headers: { Allow: allow } }), "GET");
  return Object.fromEntries([...entries, ["OPTIONS", options]]);
}

const refuses =
  (allow: string): Handler =>
  () => {
    throw new Refused(405, `This can be asked with ${allow}.`, { headers: { Allow: allow } });
  };

function guarded<P extends Params>(handler: Handler<P>, method: Method): NextHandler<P> {
  const changes = method !== "GET" && !asking.has(handler);
  return async (request, { params }) => {
    try {
      if (changes) assertSameSite(request);
      return withHeaders(await handler(request, await params));
    } catch (caught) {
      return withHeaders(problemResponse(refusalOf(caught)));
    }
  };
}

function withHeaders(response: Response): Response {
  for (const { key, value } of EVERYWHERE) response.headers.set(key, value);
  response.headers.set("Content-Security-Policy", DATA_POLICY);
  if (!response.headers.has("Cache-Control")) response.headers.set("Cache-Control", "no-store");
  return response;
}
