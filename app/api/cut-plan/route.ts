import { readJson } from "#app/_http/body.ts";
import { Refused } from "#app/_http/problem.ts";
import { asks, route } from "#app/_http/route.ts";
import { planOf } from "#app/_parts/cut-plan/plan-of.ts";
import { getRecord } from "#lib/db/records.ts";
import { type CutRequest, cutRequestSchema } from "#lib/entry/cut-choices.ts";
import type { Motor } from "#lib/rig/motor.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** The cut plan of one stern for one motor or several. It changes nothing: any program may ask. */
export const { GET, POST, PUT, PATCH, DELETE, OPTIONS } = route({
  POST: asks(async (request) => {
    const asked = await readJson(request, cutRequestSchema);
    const [motors, stern] = await Promise.all([motorsOf(asked), sternOf(asked)]);
    const made = planOf(motors, stern, asked.choices);
    if ("plan" in made) return Response.json(made.plan);
    const detail = made.impossible;
    throw new Refused(422, detail, { errors: [{ pointer: "/choices", detail, code: "impossible" }] });
  }),
});

async function motorsOf(asked: CutRequest): Promise<Motor[]> {
  if ("motor" in asked) return [asked.motor];
  if ("motors" in asked) return asked.motors;
  const ids = "motorId" in asked ? [asked.motorId] : [...new Set(asked.motorIds)];
  return Promise.all(
    ids.map(async (id, at) => {
      const motor = await getRecord("motor", id);
      if (!motor) throw unknown("motor", "motorId" in asked ? "/motorId" : `/motorIds/${at}`);
      return motor.record;
    }),
  );
}

async function sternOf(asked: CutRequest): Promise<Stern> {
  if ("stern" in asked) return asked.stern;
  const stern = await getRecord("stern", asked.sternId);
  if (!stern) throw unknown("stern", "/sternId");
  return stern.record;
}

function unknown(kind: string, pointer: string): Refused {
  const detail = `There is no ${kind} of that id.`;
  return new Refused(404, detail, { errors: [{ pointer, detail, code: "unknown-id" }] });
}
