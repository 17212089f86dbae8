import { readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { asks, route } from "#app/_http/route.ts";
import type { Kind } from "#lib/db/kind.ts";
import { allRecords, getRecord } from "#lib/db/records.ts";
import { type FitRequest, fitRequestSchema } from "#lib/entry/pairing.ts";
import { assess } from "#lib/fit/assess.ts";
import { estimatesFor } from "#lib/fit/like-motors.ts";
import type { Motor } from "#lib/rig/motor.ts";

/** The report of one pairing. It changes nothing: any program may ask. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  POST: asks(async (request) => {
    const asked = await readJson(request, fitRequestSchema);
    const { motor, stern } = "motor" in asked ? asked : await kept(asked);
    const estimates = asked.estimateMissing ? await fromLike(motor) : undefined;
    const { limits, tape, aboard } = asked;
    return Response.json(
      assess(motor, stern, limits, {
        ...(tape && { tape }),
        ...(aboard && { aboard }),
        ...(estimates && { estimates }),
      }),
    );
  }),
});

/** What the motor lacks, estimated from the motors kept here. */
async function fromLike(motor: Motor) {
  return estimatesFor(
    motor,
    (await allRecords("motor")).map(({ record }) => record),
  );
}

async function kept({ motorId, sternId }: Extract<FitRequest, { motorId: string }>) {
  const [motor, stern] = await Promise.all([getRecord("motor", motorId), getRecord("stern", sternId)]);
  if (!motor) throw unknown("motor");
  if (!stern) throw unknown("stern");
  return { motor: motor.record, stern: stern.record };
}

function unknown(kind: Kind): Refused {
  const detail = `There is no ${kind} of that id.`;
  return new Refused(404, detail, { errors: [{ pointer: `/${kind}Id`, detail, code: "unknown-id" }] });
}
