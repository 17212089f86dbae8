import { Refused } from "#app/_http/problem.ts";

/** A record's version as an entity tag. */
export const etagOf = (version: number): string => `"${version}"`;

/** The version the sender has seen, from If-Match. Throws 428 where it is not said, 412 where it can be no version of ours. */
export function seenVersion(request: Request): number {
  const said = request.headers.get("if-match");
  if (said === null) {
    throw new Refused(428, "Say which version this changes: send the ETag it was read with as If-Match.");
  }
  const version = /^"(\d{1,15})"$/.exec(said.trim())?.[1];
  if (version === undefined)
    throw new Refused(412, "If-Match must be the one ETag the record was read with.");
  return Number(version);
}
