import { readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { asks, route } from "#app/_http/route.ts";
import { getRecord } from "#lib/db/records.ts";
import { type TwoRequest, twoRequestSchema } from "#lib/entry/two.ts";
import { assessTwo } from "#lib/fit/two-motors.ts";
import type { Motor } from "#lib/rig/motor.ts";

/** The report of two motors on one stern. It changes nothing: any program may ask. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  POST: asks(async (request) => {
    const asked = await readJson(request, twoRequestSchema);
    const { motors, stern } = "motors" in asked ? asked : await kept(asked);
    const { offsetsMm, seatsMm, aboard, tape } = asked;
    return Response.json(
      assessTwo(motors, stern, {
        offsetsMm,
        ...(seatsMm && { seatsMm: [seatsMm[0] ?? undefined, seatsMm[1] ?? undefined] }),
        ...(aboard && { aboard }),
        ...(tape && { tape }),
      }),
    );
  }),
});

async function kept({ motorIds, sternId }: Extract<TwoRequest, { sternId: string }>) {
  const [one, other, stern] = await Promise.all([
    getRecord("motor", motorIds[0]),
    getRecord("motor", motorIds[1]),
    getRecord("stern", sternId),
  ]);
  if (!one) throw unknown("/motorIds/0", "motor");
  if (!other) throw unknown("/motorIds/1", "motor");
  if (!stern) throw unknown("/sternId", "stern");
  return { motors: [one.record, other.record] as [Motor, Motor], stern: stern.record };
}

function unknown(pointer: string, kind: string): Refused {
  const detail = `There is no ${kind} of that id.`;
  return new Refused(404, detail, { errors: [{ pointer, detail, code: "unknown-id" }] });
}
