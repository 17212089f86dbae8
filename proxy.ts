import { type NextRequest, NextResponse } from "next/server";
import { pagePolicy } from "#app/_http/headers.ts";

/**
 * Gives every page its content security policy, with a nonce nobody can guess. The policy goes to the page
 * as well: from it Next takes the nonce for its own scripts. Who may do what is not decided here.
 */
export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(18))).toString("base64");
  const policy = pagePolicy(nonce, process.env.NODE_ENV === "development");
  const headers = new Headers(request.headers);
  headers.set("Content-Security-Policy", policy);
  headers.set("X-Nonce", nonce);
  const response = NextResponse.next({ request: { headers } });
  response.headers.set("Content-Security-Policy", policy);
  return response;
}

/** Pages only: programs' doors set their own policy (and here their bodies would be buffered), and built files need none. */
export const config = { matcher: "/((?!api/|_next/static/).*)" };
