import { readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { asks, route } from "#app/_http/route.ts";
import type { Kind } from "#lib/db/kind.ts";
import { getRecord } from "#lib/db/records.ts";
import { type FitRequest, fitRequestSchema } from "#lib/entry/pairing.ts";
import { assess } from "#lib/fit/assess.ts";

/** The report of one pairing. It changes nothing: any program may ask. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  POST: asks(async (request) => {
    const asked = await readJson(request, fitRequestSchema);
    const { motor, stern } = "motor" in asked ? asked : await kept(asked);
    return Response.json(assess(motor, stern, asked.limits));
  }),
});

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
