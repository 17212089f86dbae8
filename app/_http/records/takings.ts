import { readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { found } from "#app/_http/records/paths.ts";
import { changed } from "#app/_http/records/single.ts";
import { route } from "#app/_http/route.ts";
import { etagOf, seenVersion } from "#app/_http/version.ts";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord, takingsOf } from "#lib/db/records.ts";
import { takeAgain } from "#lib/db/retake.ts";
import { type NumberTaken, numbersTaken } from "#lib/db/takings.ts";
import { takingSchema } from "#lib/entry/taking.ts";
import { motorFields } from "#lib/rig/motor.ts";
import { sternFields } from "#lib/rig/stern.ts";

/** What is sent for one taking of each kind. */
export const takingOf = { motor: takingSchema(motorFields), stern: takingSchema(sternFields) };

/** `GET` every number ever taken of a record with what its takings come to, `POST` takes one number again. */
export function takings(kind: Kind) {
  return route<{ id: string }>({
    async GET(_request, { id }) {
      const { record, version } = found(await getRecord(kind, id), kind);
      const numbers = numbersTaken(kind, record, await takingsOf(kind, id));
      const answer = { numbers: Object.fromEntries(numbers.map((each) => [each.key, shown(each)])) };
      return Response.json(answer, { headers: { ETag: etagOf(version), "Cache-Control": "no-cache" } });
    },
    async POST(request, { id }) {
      const version = seenVersion(request);
      const taking = await readJson(request, takingOf[kind]);
      const done = found(await takeAgain(kind, id, version, taking), kind);
      if ("conflict" in done) throw changed(done);
      if ("impossible" in done) {
        const errors = done.impossible.map((fault) => ({ ...fault, pointer: "/value" }));
        throw new Refused(422, errors[0]?.detail ?? "This is not possible.", { errors });
      }
      return Response.json(done.record, { status: 201, headers: { ETag: etagOf(done.version) } });
    },
  });
}

/** One number for other programs: its takings, each with its part, and the consensus where the record still has the number. */
function shown({ takings: all, agreement }: NumberTaken): object {
  if (!agreement) return { takings: all };
  const { number, parts: _, ...spread } = agreement;
  return { consensus: { ...number, ...spread }, takings: all };
}
