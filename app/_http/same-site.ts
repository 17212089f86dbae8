import { Refused } from "#app/_http/problem.ts";

/** The addresses this site is reached at: SITE_ORIGIN (one or more, with blanks between), else this machine at PORT. */
export function siteOrigins(): readonly string[] {
  const port = process.env.PORT || "3000";
  const said = process.env.SITE_ORIGIN?.trim();
  return said ? said.split(/\s+/) : [`http://localhost:${port}`, `http://127.0.0.1:${port}`];
}

/**
 * Lets a change in only from this site's own pages, or from a program that says so itself: no page of
 * another site can send this Origin. Forwarded-host headers are never looked at.
 */
export function assertSameSite(request: Pick<Request, "headers">): void {
  const origin = request.headers.get("origin");
  if (origin === null) {
    throw new Refused(
      403,
      `A change must name the site it comes from, with the header Origin: ${siteOrigins()[0]}.`,
    );
  }
  const site = request.headers.get("sec-fetch-site");
  const foreign = site !== null && site !== "same-origin" && site !== "none";
  if (foreign || !siteOrigins().includes(origin)) {
    throw new Refused(403, "A change is taken from this site's own pages only.");
  }
}
