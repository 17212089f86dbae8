import type { Problem } from "#lib/entry/problem.ts";

/** One fault in what was sent: where it stands, in words, and its kind for programs. */
export type Fault = Omit<Problem, "code"> & { readonly code: string };

/** Thrown anywhere below a route handler: the answer it is to give instead. */
export class Refused extends Error {
  readonly status: number;
  readonly errors: readonly Fault[];
  readonly headers: Readonly<Record<string, string>>;
  /** More members of the problem, such as the record as it stands after a conflict. */
  readonly more: Readonly<Record<string, unknown>>;
  constructor(
    status: number,
    detail: string,
    { errors = [], headers = {}, more = {} }: Partial<Pick<Refused, "errors" | "headers" | "more">> = {},
  ) {
    super(detail);
    this.status = status;
    this.errors = errors;
    this.headers = headers;
    this.more = more;
  }
}

const TITLES: Readonly<Record<number, string>> = {
  400: "Not understood",
  403: "Not allowed from there",
  404: "Not found",
  405: "Not done here",
  409: "Already taken",
  412: "Changed by somebody else",
  413: "Too large",
  415: "Not this kind of content",
  422: "Not possible",
  428: "Say which version",
  500: "Failed here",
  503: "Busy",
  507: "No room",
};

/** The answer to a refusal: problem details as RFC 9457 has them, with `errors` for the single faults. */
export function problemResponse({ status, message, errors, headers, more }: Refused): Response {
  const body = {
    type: "about:blank",
    title: TITLES[status] ?? "Refused",
    status,
    detail: message,
    errors,
    ...more,
  };
  return new Response(JSON.stringify(body), {
    status,
    headers: { "Content-Type": "application/problem+json", ...headers },
  });
}
