import { type NextRequest, NextResponse } from "next/server";
import { DATA_POLICY, pagePolicy } from "#app/_http/headers.ts";
import { problemResponse, Refused } from "#app/_http/problem.ts";
import { refusalOf } from "#app/_http/refusal-of.ts";
import { assertSameSite } from "#app/_http/same-site.ts";

/**
 * Gives every page its content security policy, with a nonce nobody can guess. The policy goes to the page
 * as well: from it Next takes the nonce for its own scripts. A form is taken from this site's own pages
 * only. Who may do what is not decided here.
 */
export function proxy(request: NextRequest): Response {
  try {
    assertPageRequest(request);
  } catch (caught) {
    const refused = problemResponse(refusalOf(caught));
    refused.headers.set("Content-Security-Policy", DATA_POLICY);
    return refused;
  }
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(18))).toString("base64");
  const policy = pagePolicy(nonce, process.env.NODE_ENV === "development");
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", policy);
  headers.set("X-Nonce", nonce);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("Content-Security-Policy", policy);
  return response;
}

function assertPageRequest(request: NextRequest): void {
  const { method } = request;
  if (method === "POST") assertSameSite(request);
  else if (method !== "GET" && method !== "HEAD") {
    throw new Refused(405, "A page is read with GET; its forms are sent with POST.", {
      headers: { Allow: "GET, HEAD, POST" },
    });
  }
}

/** Pages only: programs' doors set their own policy (and here their bodies would be buffered), and built files need none. */
export const config = { matcher: "/((?!api/|_next/static/).*)" };
